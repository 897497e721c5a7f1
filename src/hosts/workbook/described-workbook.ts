/** What is described as a plain workbook. */
import { absoluteRange, soundRange } from '../../core/cells/cell-range.ts';
import {
  DESCRIPTION_VERSION,
  type CellDescription,
  type SheetDescription,
  type WorkbookDescription,
} from '../../sheets/grammar/description.ts';
import { columnPixels } from '../../sheets/grammar/page-size.ts';
import { rowHeights } from '../../sheets/grammar/row-height.ts';
import { STANDARD_FONT } from '../../sheets/grammar/styles.ts';
import { withNotes } from '../notes.ts';
import { DESCRIBED_STYLES } from './described-styles.ts';
import type { PlainCell, PlainSheet, PlainWorkbook } from './plain-workbook.ts';

/** Of columns beyond those described. */
const OTHER_PIXELS = 73;

/** The workbook, from a description that has been cleaned and checked; without its drawings. */
export function describedWorkbook(description: WorkbookDescription): PlainWorkbook {
  const { title, sheets, names = [], properties = {}, made } = description;
  return {
    title,
    ...(made === undefined ? {} : { made }),
    font: STANDARD_FONT,
    styles: DESCRIBED_STYLES,
    // A workbook of its own is the person's, sheets and all.
    sheets: sheets.map((sheet) => describedSheet(sheet, { ours: false })),
    names: names.map(({ name, sheet, range }) => ({
      name,
      refersTo: absoluteRange(sheet, soundRange(range)),
    })),
    properties: withNotes({ 'Description version': DESCRIPTION_VERSION }, properties),
  };
}

/** One of its sheets, in the styles of DESCRIBED_STYLES. */
export function describedSheet(
  sheet: SheetDescription,
  { ours }: Pick<PlainSheet, 'ours'>,
): PlainSheet {
  const { name, print, merges = [], tables = [], validations = [], highlights = [] } = sheet;
  const joined = merges.map(soundRange);
  return {
    name,
    hidden: false,
    ours,
    cells: cells(sheet, joined),
    columns: Object.fromEntries(
      sheet.columns.map(({ width }, column) => [column, { pixels: columnPixels(width) }]),
    ),
    otherPixels: OTHER_PIXELS,
    rows: Object.fromEntries(
      Array.from(rowHeights(sheet), ([row, { height }]) => [row, { points: height }]),
    ),
    merges: joined,
    freeze: sheet.freeze ?? { rows: 0, columns: 0 },
    gridLines: true,
    rightToLeft: false,
    tables,
    page: { print, validations, highlights },
    ...(sheet.isProtected === true ? { isProtected: true } : {}),
    pictures: [],
  };
}

function cells(sheet: SheetDescription, merges: PlainSheet['merges']): PlainSheet['cells'] {
  const made = sheet.rows.map(({ cells: row }) => {
    const ofRow: Record<number, PlainCell> = {};
    const count = Math.max(row.length, sheet.columns.length);
    for (let c = 0; c < count; c++) {
      const cell = row[c] ?? null;
      const style = sheet.columns[c]?.style;
      if (cell !== null) ofRow[c] = plainCell(cell);
      else if (style !== undefined) ofRow[c] = { value: null, style };
    }
    return ofRow;
  });
  // What a merge hides has its first cell's style, or its border would have gaps.
  for (const { top, left, bottom, right } of merges) {
    const style = sheet.rows[top]?.cells[left]?.style ?? 'plain';
    for (let r = top; r <= bottom; r++) {
      const ofRow = (made[r] ??= {});
      for (let c = left; c <= right; c++) {
        if (r !== top || c !== left) ofRow[c] = { value: null, style };
      }
    }
  }
  return made;
}

function plainCell({ value, formula, style = 'plain' }: CellDescription): PlainCell {
  if (formula !== undefined) return { value, formula, style };
  return { value: value === '' ? null : value, style };
}
