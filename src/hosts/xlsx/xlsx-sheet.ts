/** One sheet of a plain workbook as the .xlsx writer takes it. */
import type { Cell, CellStyle, WriteSheet } from 'hucre/xlsx';

import { cellName, soundRange } from '../../core/cells/cell-range.ts';
import type { TableDescription } from '../../sheets/grammar/description.ts';
import { cleanText, MOST_CELL_TEXT } from '../../sheets/grammar/check/clean-text.ts';
import { DIGIT_PIXELS } from '../../sheets/grammar/page-size.ts';
import { formulaForFile } from '../formulas/file-formulas.ts';
import type { PlainCell, PlainSheet } from '../workbook/plain-workbook.ts';
import { errorResult } from './finish-file.ts';
import { extrasForFile } from './page-for-file.ts';
import { escapeText } from './xlsx-text.ts';

type XlsxCell = Partial<Cell>;
type XlsxTable = NonNullable<WriteSheet['tables']>[number];
/** By the names that cells call them. */
export type CellStyles = ReadonlyMap<string, CellStyle>;

/** What the library would turn into an error's cell (its own list): it is written as rich text. */
const LOOKS_LIKE_ERROR =
  /^#(VALUE!|REF!|N\/A|NAME\?|NULL!|DIV\/0!|NUM!|GETTING_DATA|SPILL!|CALC!)$/;

/**
 * ECMA-376 part 1, 18.3.1.85: locked cells take nothing. Widths and heights stay a person's, whose
 * program may show other letters.
 */
const PROTECTION: NonNullable<WriteSheet['protection']> = {
  sheet: true,
  objects: true,
  scenarios: true,
  formatColumns: true,
  formatRows: true,
};

/** The sheet without the names that belong to it. */
export function xlsxSheet(sheet: PlainSheet, styles: CellStyles): WriteSheet {
  const { cells, columns, rows, freeze } = sheet;
  const { pageSetup, ...extras } = extrasForFile(sheet.page);
  // eslint-disable-next-line @typescript-eslint/no-unused-vars -- they are written as names
  const { printTitlesRow, printTitlesColumn, printArea, ...setup } = pageSetup ?? {};
  return {
    ...extras,
    name: sheet.name,
    hidden: sheet.hidden,
    columns: Array.from({ length: countOf(columns) }, (_, at) => {
      const { pixels, hidden } = columns[at] ?? {};
      return {
        ...(pixels === undefined ? {} : { width: storedWidth(pixels) }),
        ...(hidden === true ? { hidden } : {}),
      };
    }),
    // The library leaves out rows past the last cell, and with them the room of a picture there.
    rows: Array.from({ length: Math.max(countOf(rows), countOf(cells)) }, () => []),
    cells: new CellsInTurn(sheet, styles),
    rowDefs: new Map(
      Object.entries(rows).map(([row, { points, hidden }]) => [
        Number(row),
        {
          ...(points === undefined ? {} : { height: points }),
          ...(hidden === true ? { hidden } : {}),
        },
      ]),
    ),
    merges: sheet.merges.map(({ top, left, bottom, right }) => ({
      startRow: top,
      startCol: left,
      endRow: bottom,
      endCol: right,
    })),
    tables: sheet.tables.map((one) => xlsxTable(sheet, one)),
    ...(freeze.rows + freeze.columns === 0 ? {} : { freezePane: { ...freeze } }),
    view: {
      showGridLines: sheet.gridLines,
      rightToLeft: sheet.rightToLeft,
      ...(sheet.tabColor === undefined ? {} : { tabColor: { rgb: sheet.tabColor } }),
    },
    ...(pageSetup === undefined ? {} : { pageSetup: setup }),
    ...(sheet.isProtected === true ? { protection: PROTECTION } : {}),
    images: sheet.pictures.map(({ png, row, column, width, height, title, alt }) => ({
      data: png,
      type: 'png',
      // The library wants an end, of which nothing is left when the anchors are rewritten.
      anchor: { from: { row, col: column }, to: { row: row + 1, col: column + 1 } },
      width,
      height,
      title,
      altText: alt,
    })),
  };
}

/** Of rows or columns from the first to the last that is there. */
function countOf(lines: Readonly<Record<number, unknown>>): number {
  return Object.keys(lines).reduce((most, at) => Math.max(most, Number(at) + 1), 0);
}

/** ECMA-376 part 1, 18.3.1.13: a column's stored width holds the padding too. */
function storedWidth(pixels: number): number {
  return Math.trunc((pixels / DIGIT_PIXELS) * 256) / 256;
}

/**
 * The cells by row and column, each made when the library comes to it: all at once, those of 10,000
 * runs would be half of the memory that a workbook is written in. The library goes through them, and
 * does nothing else with them.
 */
class CellsInTurn extends Map<string, XlsxCell> {
  readonly #sheet: PlainSheet;
  readonly #styles: CellStyles;

  constructor(sheet: PlainSheet, styles: CellStyles) {
    super();
    this.#sheet = sheet;
    this.#styles = styles;
  }

  override *[Symbol.iterator](): MapIterator<[string, XlsxCell]> {
    for (const [row, cells] of Object.entries(this.#sheet.cells)) {
      for (const [column, cell] of Object.entries(cells)) {
        const style = this.#styles.get(cell.style ?? '');
        yield [
          `${row},${column}`,
          style === undefined ? content(cell) : { style, ...content(cell) },
        ];
      }
    }
  }
}

function content({ value, error, formula, spill }: PlainCell): XlsxCell {
  const held = typeof value === 'string' ? text(value) : value;
  if (formula !== undefined) {
    return {
      formula: formulaForFile(formula),
      formulaResult: error === true ? errorResult(errorCode(value)) : held,
      ...(spill === undefined
        ? {}
        : { formulaType: 'array', formulaRef: oneCell(spill), formulaDynamic: true }),
    };
  }
  if (error === true) return { value: errorCode(value) };
  if (held === '' || (typeof held === 'number' && !Number.isFinite(held))) return { value: null };
  return typeof held === 'string' && LOOKS_LIKE_ERROR.test(held)
    ? { value: held, richText: [{ text: held }] }
    : { value: held };
}

/** Errors that files know; newer ones, and a grid's own, are written as the one that stands for any. */
function errorCode(value: PlainCell['value']): string {
  const code = String(value);
  return /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/u.test(code) ? code : '#VALUE!';
}

/** A1:A1 is written as A1. */
function oneCell(range: string): string {
  const { top, left, bottom, right } = soundRange(range);
  return top === bottom && left === right ? cellName(top, left) : range;
}

function xlsxTable({ cells }: PlainSheet, { name, range }: TableDescription): XlsxTable {
  const { top, left, right } = soundRange(range);
  const columns = Array.from({ length: right - left + 1 }, (_, at) => ({
    name: text(String(cells[top]?.[left + at]?.value)),
  }));
  return { name, range, columns, style: 'TableStyleLight1' };
}

function text(typed: string): string {
  return escapeText(cleanText(typed).slice(0, MOST_CELL_TEXT));
}
