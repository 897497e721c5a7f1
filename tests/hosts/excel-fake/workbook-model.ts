/** The workbook behind the fake: plain state, changed only while a request is carried out. */
import type { Box } from './address.ts';
import type { FormulaText } from './formula-text.ts';

export interface FakeLook {
  format: string;
  font: string;
  size: number;
  bold: boolean;
  italic: boolean;
  color: string | null;
  fill: string | null;
  align: string;
  vertical: string;
  wrap: boolean;
  /** Weight by side. */
  border: Record<string, string>;
}

export const newLook = (): FakeLook => ({
  format: 'General',
  font: 'Calibri',
  size: 11,
  bold: false,
  italic: false,
  color: null,
  fill: null,
  align: 'General',
  vertical: 'Bottom',
  wrap: false,
  border: {},
});

export interface FakeCell {
  value: string | number | boolean | null;
  isError: boolean;
  formula: FormulaText | null;
  /** Where a formula's value is told; else the workbook's `calculate` is asked. */
  told: boolean;
  look: FakeLook;
}

export interface FakeName {
  readonly name: string;
  readonly sheet: FakeSheet | null;
  formula: FormulaText;
  visible: boolean;
}

export interface FakeTable {
  readonly id: string;
  name: string;
  readonly sheet: FakeSheet;
  box: Box;
  showHeaders: boolean;
  showTotals: boolean;
  style: string;
}

export interface FakeValidation {
  readonly box: Box;
  rule: Excel.DataValidationRule | null;
  /** Of a list's source. */
  source: FormulaText | null;
  alert: Excel.DataValidationErrorAlert | null;
  ignoreBlanks: boolean;
}

export interface FakeHighlight {
  readonly box: Box;
  formula: FormulaText | null;
  bold: boolean;
  italic: boolean;
  color: string | null;
  fill: string | null;
  border: Record<string, string>;
}

export interface FakeShape {
  readonly image: string;
  name: string;
  altTextTitle: string;
  altTextDescription: string;
  lockAspectRatio: boolean;
  width: number;
  height: number;
  left: number;
  top: number;
  placement: string;
}

export interface FakePage {
  values: Record<string, unknown>;
  titleRows: string | null;
  printArea: string | null;
  header: Record<string, string>;
  breaks: number[];
}

export class FakeSheet {
  readonly id: string;
  name: string;
  visibility = 'Visible';
  isProtected = false;
  deleted = false;
  readonly cells = new Map<number, FakeCell>();
  merges: Box[] = [];
  tables: FakeTable[] = [];
  names: FakeName[] = [];
  validations: FakeValidation[] = [];
  /** First goes before the others. */
  highlights: FakeHighlight[] = [];
  freeze: { rows: number; columns: number } | null = null;
  /** From 0: hidden by hand or by a filter. */
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  readonly widths = new Map<number, number>();
  readonly heights = new Map<number, number>();
  readonly page: FakePage = {
    values: {},
    titleRows: null,
    printArea: null,
    header: {},
    breaks: [],
  };
  shapes: FakeShape[] = [];

  constructor(id: string, name: string) {
    this.id = id;
    this.name = name;
  }

  at(row: number, column: number): FakeCell | undefined {
    return this.cells.get(row * 16_384 + column);
  }

  /** The cell, made where there was none. */
  make(row: number, column: number): FakeCell {
    const key = row * 16_384 + column;
    let cell = this.cells.get(key);
    if (cell === undefined) {
      cell = { value: null, isError: false, formula: null, told: false, look: newLook() };
      this.cells.set(key, cell);
    }
    return cell;
  }

  remove(row: number, column: number): void {
    this.cells.delete(row * 16_384 + column);
  }

  *all(): Generator<readonly [row: number, column: number, cell: FakeCell]> {
    for (const [key, cell] of this.cells) yield [Math.floor(key / 16_384), key % 16_384, cell];
  }

  /** The smallest box around the cells that hold something (or, also, look like something). */
  used(valuesOnly: boolean): Box | null {
    const box = { top: Infinity, left: Infinity, bottom: -1, right: -1 };
    for (const [row, column, cell] of this.all()) {
      if (valuesOnly && cell.value === null && cell.formula === null) continue;
      box.top = Math.min(box.top, row);
      box.left = Math.min(box.left, column);
      box.bottom = Math.max(box.bottom, row);
      box.right = Math.max(box.right, column);
    }
    return box.bottom < 0 ? null : box;
  }
}

/** A custom XML part. */
export interface FakeXmlPart {
  readonly id: string;
  readonly namespaceUri: string;
  readonly xml: string;
  deleted: boolean;
}

export interface FakeProperty {
  readonly key: string;
  value: unknown;
  deleted: boolean;
}

export class FakeWorkbook {
  name = 'Maple house.xlsx';
  isProtected = false;
  sheets: FakeSheet[] = [];
  names: FakeName[] = [];
  readonly settings = new Map<string, unknown>();
  xmlParts: FakeXmlPart[] = [];
  readonly properties: FakeProperty[] = [];
  decimalSeparator = '.';
  calculationMode = 'Automatic';
  calculationState = 'Done';
  /** Whether dates are typed with the day first, as outside America. */
  dayFirst = false;
  active: FakeSheet | null = null;
  activeCell = { row: 0, column: 0 };
  screenSuspended = 0;
  /** What a formula comes to, by its sheet's name and its place. */
  calculate: (sheet: string, cell: string) => string | number | boolean = () => 0;
  #ids = 0;

  newId(): string {
    this.#ids += 1;
    return `{${this.#ids}}`;
  }

  get tables(): FakeTable[] {
    return this.sheets.flatMap((sheet) => sheet.tables);
  }

  sheet(key: string): FakeSheet | undefined {
    const same = (sheet: FakeSheet): boolean => sheet.name.toLowerCase() === key.toLowerCase();
    return this.sheets.find((sheet) => sheet.id === key) ?? this.sheets.find(same);
  }
}
