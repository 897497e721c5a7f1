/** A CSV file as a workbook of one sheet. */
import { own } from '../../../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../../../core/faults/fault.ts';
import { cleanText } from '../../../sheets/grammar/check/clean-text.ts';
import { columnPixels } from '../../../sheets/grammar/page-size.ts';
import { STANDARD_FONT } from '../../../sheets/grammar/styles.ts';
import { readRecords } from '../../csv/csv-records.ts';
import { pageFromFile } from '../../xlsx/sheet-page.ts';
import { MOST_GRID_COLUMNS, MOST_GRID_ROWS } from '../../tables/limits.ts';
import {
  STANDARD_PIXELS,
  type PlainCell,
  type PlainSheet,
  type PlainWorkbook,
} from '../../workbook/plain-workbook.ts';
import { plainNumber } from '../paste/plain-number.ts';

/** By names that none of our own styles has. */
const STYLES = {
  'file-text': { format: '@' },
  'file-lines': { format: '@', wrap: true },
} as const satisfies PlainWorkbook['styles'];
const LONGEST_SHEET_NAME = 31;
/** In characters. */
const [NARROWEST, WIDEST] = [9, 40];

/**
 * Plain numbers become numbers; all else stays the text that it is: 3/4 is no date, 007 keeps its
 * zeros, =1+1 is no formula.
 *
 * @returns The workbook, its sheet named as the file; or one fault: file.too-large, file.not-text,
 *   file.not-csv, file.too-many-lines, grid.too-many-rows, grid.no-sheet.
 */
export function csvWorkbook(bytes: Uint8Array, fileName: string): Outcome<PlainWorkbook> {
  const cells: Record<number, Record<number, PlainCell>> = {};
  const widths: number[] = [];
  let rows = 0;
  let last = -1;
  const read = readRecords(bytes, fileName, (texts) => {
    const row = rows++;
    if (row >= MOST_GRID_ROWS) {
      const isFilled = texts.some((text) => text.trim() !== '');
      if (isFilled) last = row;
      return isFilled ? 'stop' : 'go on';
    }
    const ofRow: Record<number, PlainCell> = {};
    texts.slice(0, MOST_GRID_COLUMNS).forEach((text, column) => {
      if (text === '') return;
      ofRow[column] = cellOf(text);
      widths[column] = Math.max(widths[column] ?? NARROWEST, Math.min(text.length + 1, WIDEST));
    });
    if (Object.keys(ofRow).length === 0) return 'go on';
    cells[row] = ofRow;
    last = row;
    return 'go on';
  });
  if (!read.ok) return read;
  if (last < 0) return failed(fault('grid.no-sheet', 'file', fileName));
  if (last >= MOST_GRID_ROWS) {
    return failed(fault('grid.too-many-rows', own(fileName), last + 1, { limit: MOST_GRID_ROWS }));
  }
  const name = sheetName(fileName);
  const sheet: PlainSheet = {
    name,
    hidden: false,
    ours: false,
    cells,
    columns: Object.fromEntries(
      Array.from({ length: widths.length }, (_, column) => [
        column,
        { pixels: columnPixels(widths[column] ?? NARROWEST) },
      ]),
    ),
    otherPixels: STANDARD_PIXELS,
    rows: {},
    merges: [],
    freeze: { rows: 0, columns: 0 },
    gridLines: true,
    rightToLeft: false,
    tables: [],
    page: pageFromFile({}),
    pictures: [],
  };
  return ok({ title: name, font: STANDARD_FONT, styles: STYLES, sheets: [sheet], names: [] });
}

/** Text gets the format for text, or it would be taken for something else when it is next typed over. */
function cellOf(typed: string): PlainCell {
  const number = plainNumber(typed);
  if (number !== null) return { value: number };
  const value = cleanText(typed);
  return { value, style: value.includes('\n') ? 'file-lines' : 'file-text' };
}

/** The file's name without what a sheet's can't hold. */
function sheetName(fileName: string): string {
  const base = fileName.replace(/^.*[\\/]/u, '').replace(/\.[^.]*$/u, '');
  const held = cleanText(base)
    .replace(/[\\/?*[\]:\n\t]/gu, ' ')
    .replace(/^'+|'+$/gu, '')
    .trim();
  const short = held
    .slice(0, LONGEST_SHEET_NAME)
    .replace(/\p{Surrogate}$/u, '')
    .trim();
  return short === '' || short.toLowerCase() === 'history' ? 'Sheet1' : short;
}
