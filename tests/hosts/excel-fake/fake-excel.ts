/**
 * A strict stand-in for Excel, for tests in Node and in a browser: `program` is handed to the host
 * in the place of Excel's globals. See kernel.ts for what it is strict about, type-into-cell.ts for
 * what becomes of text, formula-text.ts for formulas. It calculates nothing: what formulas come to
 * is told when a person's cell is set up, or asked of `calculate`.
 */
import type { WorkbookView } from '../workbook-view.ts';
import { readBox } from './address.ts';
import { readFormula } from './formula-text.ts';
import { FakeContext } from './kernel.ts';
import { OfficeError } from './office-error.ts';
import { PAGE_CLASSES } from './page-members.ts';
import type { Handler, Program } from './program.ts';
import { PROPERTY_CLASSES } from './property-members.ts';
import { RANGE_CLASSES } from './range-members.ts';
import { sheetView } from './view-of.ts';
import { addTable, NAME_CLASSES } from './name-members.ts';
import { FORMAT_CLASSES } from './format-members.ts';
import { PART_CLASSES } from './part-members.ts';
import { typeIntoCell } from './type-into-cell.ts';
import { RULE_CLASSES } from './rule-members.ts';
import { WORKBOOK_CLASSES } from './workbook-members.ts';
import { FakeSheet, FakeWorkbook, type FakeCell } from './workbook-model.ts';

/** A person's cell: a value as it stands, a formula with what it comes to, an error, a date. */
export type PersonsCell =
  | string
  | number
  | boolean
  | null
  | { readonly formula: string; readonly value: string | number | boolean }
  | { readonly error: string }
  | { readonly date: number }
  /** A number in a format: 0.15 under 0%. */
  | { readonly held: number; readonly format: string }
  /** Whatever a person types, and Excel makes of it. */
  | { readonly typed: string };

export const FAKE_CLASSES = {
  ...WORKBOOK_CLASSES,
  ...NAME_CLASSES,
  ...RANGE_CLASSES,
  ...FORMAT_CLASSES,
  ...RULE_CLASSES,
  ...PAGE_CLASSES,
  ...PART_CLASSES,
  ...PROPERTY_CLASSES,
};

/** The requirement set that the fake knows unless told otherwise. */
const LATEST = 13;

export class FakeExcel {
  readonly workbook = new FakeWorkbook();
  /** ExcelApi 1.x that it supports. */
  minor = LATEST;
  /** Operations of each request so far, carried out or failed. */
  readonly requests: number[] = [];
  /** After how many operations a request fails, by its number. */
  readonly #failures = new Map<number, number>();
  #failsFrom = Infinity;
  #editing: { promise: Promise<void>; end: () => void } | null = null;
  readonly #handlers = new Set<Handler>();
  readonly #changedSheets = new Set<string>();

  /** What the host takes. */
  readonly program = {
    excel: {
      run: async <T>(
        options: Excel.RunOptions,
        batch: (context: Excel.RequestContext) => Promise<T>,
      ): Promise<T> => {
        const context = new FakeContext(this.#program(), options.delayForCellEdit === true);
        const result = await batch(context as unknown as Excel.RequestContext);
        await context.sync();
        return result;
      },
    },
    office: {
      context: {
        requirements: {
          isSetSupported: (name: string, version: string): boolean => {
            const [major, minor] = version.split('.').map(Number);
            return name === 'ExcelApi' && major === 1 && (minor ?? 0) <= this.minor;
          },
        },
      },
    },
  };

  get syncs(): number {
    return this.requests.length;
  }

  // -- The person's hand

  /** A sheet of the person's with these rows from A1. */
  addSheet(name: string, rows: readonly (readonly PersonsCell[])[] = []): FakeSheet {
    const sheet = new FakeSheet(this.workbook.newId(), name);
    this.workbook.sheets.push(sheet);
    this.workbook.active ??= sheet;
    rows.forEach((cells, row) =>
      cells.forEach((cell, column) => this.#put(sheet, row, column, cell)),
    );
    return sheet;
  }

  addTable(sheet: FakeSheet, range: string, name: string): void {
    addTable(this.workbook, sheet, readBox(range), true).name = name;
  }

  merge(sheet: FakeSheet, range: string): void {
    sheet.merges.push(readBox(range));
  }

  addName(name: string, formula: string): void {
    const read = readFormula(formula, this.workbook);
    this.workbook.names.push({ name, sheet: null, formula: read, visible: true });
  }

  select(sheet: FakeSheet, cell: string): void {
    const { top, left } = readBox(cell);
    this.workbook.active = sheet;
    this.workbook.activeCell = { row: top, column: left };
  }

  /** The person goes to a cell, and those who listen are told. */
  async goesTo(sheet: FakeSheet, cell: string): Promise<void> {
    this.select(sheet, cell);
    await this.#tell([sheet.id], 'onSelectionChanged', cell);
  }

  /** Puts something into a cell, and those who listen are told. */
  async types(sheet: FakeSheet, cell: string, value: PersonsCell): Promise<void> {
    const { top, left } = readBox(cell);
    this.#put(sheet, top, left, value);
    await this.#tell([sheet.id]);
  }

  /** What a formula comes to changes by a recalculation: Excel tells of that alone, not of a change. */
  async recalculates(
    sheet: FakeSheet,
    cell: string,
    value: string | number | boolean,
  ): Promise<void> {
    const { top, left } = readBox(cell);
    sheet.make(top, left).value = value;
    await this.#tell([sheet.id], 'onCalculated');
  }

  startEditing(): void {
    let end = (): void => undefined;
    const promise = new Promise<void>((resolve) => {
      end = resolve;
    });
    this.#editing = { promise, end };
  }

  stopEditing(): void {
    this.#editing?.end();
    this.#editing = null;
  }

  // -- Failing

  /**
   * The nth request from now fails: before anything, after so many of its operations (Excel takes
   * none of these back), or with Infinity after all of them.
   */
  failAt(n: number, afterOperations = 0): void {
    this.#failures.set(this.syncs + n, afterOperations);
  }

  /** The nth request from now fails, and every one after it. */
  failFrom(n: number): void {
    this.#failsFrom = this.syncs + n;
  }

  recover(): void {
    this.#failures.clear();
    this.#failsFrom = Infinity;
  }

  // -- Looking

  view(): WorkbookView {
    const program = this.#program();
    return {
      title: '',
      sheets: this.workbook.sheets.map((sheet) => sheetView(sheet, program)),
      names: Object.fromEntries(
        this.workbook.names.map(({ name, formula }) => [name, formula.text]),
      ),
      properties: Object.fromEntries(this.workbook.properties.map((one) => [one.key, one.value])),
    };
  }

  get sheetNames(): string[] {
    return this.workbook.sheets.map(({ name }) => name);
  }

  /** All there is of these sheets, as text, to be compared later. */
  snapshot(sheets: readonly FakeSheet[]): string {
    const { names, settings, properties, xmlParts } = this.workbook;
    const formula = (one: { readonly text: string } | null): string | null => one?.text ?? null;
    const cellOf = ({ formula: own, ...rest }: FakeCell): object => ({
      ...rest,
      formula: formula(own),
    });
    return JSON.stringify({
      names: names.map((one) => [one.name, one.formula.text, one.visible]),
      settings: [...settings],
      xmlParts: xmlParts.map(({ xml }) => xml),
      properties: properties.map(({ key, value }) => [key, value]),
      sheets: sheets.map((sheet) => ({
        name: sheet.name,
        isProtected: sheet.isProtected,
        visibility: sheet.visibility,
        merges: sheet.merges,
        freeze: sheet.freeze,
        page: sheet.page,
        shapes: sheet.shapes,
        place: this.workbook.sheets.indexOf(sheet),
        cells: [...sheet.cells].map(([key, cell]) => [key, cellOf(cell)]),
        names: sheet.names.map((one) => [one.name, one.formula.text]),
        tables: sheet.tables.map(({ name, box, style }) => [name, box, style]),
        validations: sheet.validations.map((one) => ({ ...one, source: formula(one.source) })),
        highlights: sheet.highlights.map((one) => ({ ...one, formula: formula(one.formula) })),
        widths: [...sheet.widths],
        heights: [...sheet.heights],
      })),
    });
  }

  #put(sheet: FakeSheet, row: number, column: number, given: PersonsCell): void {
    if (given === null) return;
    const cell = sheet.make(row, column);
    if (typeof given !== 'object') cell.value = given;
    else if ('error' in given) Object.assign(cell, { value: given.error, isError: true });
    else if ('held' in given) Object.assign(cell, { value: given.held }).look.format = given.format;
    else if ('typed' in given) typeIntoCell(cell, given.typed, this.workbook);
    else if ('date' in given) Object.assign(cell, { value: given.date }).look.format = 'd-mmm-yy';
    else {
      const formula = readFormula(given.formula, this.workbook);
      Object.assign(cell, { formula, value: given.value, told: true });
    }
  }

  #program(): Program {
    return {
      classes: FAKE_CLASSES,
      workbook: this.workbook,
      minor: this.minor,
      handlers: this.#handlers,
      changed: (id) => this.#changedSheets.add(id),
      beginRequest: (delay, operations) => this.#beginRequest(delay, operations),
      endRequest: () => {
        const changed = [...this.#changedSheets];
        this.#changedSheets.clear();
        void this.#tell(changed);
      },
    };
  }

  async #beginRequest(delay: boolean, operations: number): Promise<number | undefined> {
    if (this.#editing !== null) {
      if (!delay) throw new OfficeError('InvalidOperationInCellEditMode', 'a cell is being edited');
      await this.#editing.promise;
    }
    this.requests.push(operations);
    if (this.syncs >= this.#failsFrom) return 0;
    return this.#failures.get(this.syncs);
  }

  async #tell(sheetIds: readonly string[], event = 'onChanged', address = ''): Promise<void> {
    for (const worksheetId of sheetIds) {
      for (const one of this.#handlers) {
        if (one.event === event) await one.call({ worksheetId, address });
      }
    }
  }
}
