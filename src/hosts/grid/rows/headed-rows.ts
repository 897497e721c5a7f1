/** The rows around the chosen cell that are sorted and filtered, with the headings over them. */
import { extractPureTextFromCell, type IRange, type Worksheet } from '@univerjs/core';
import { expandToContinuousRange } from '@univerjs/sheets';
import { columnLetters, type CellRange } from '../../../core/cells/cell-range.ts';
import type { Grid } from '../grid.ts';
import { gridSheet } from '../grid-sheets.ts';
import { tablesNow } from '../tables-now.ts';

export interface HeadedRows {
  readonly sheetId: string;
  readonly sheet: string;
  /** Of the rows themselves, without the headings; from 0. */
  readonly range: CellRange;
  /** A column each, from the range's first on. */
  readonly headings: readonly string[];
  /** The chosen cell's, from 0 among them. */
  readonly chosen: number;
}

/** A table that begins within these is what its sheet is there for. */
const TOP_ROWS = 10;

/**
 * The table that the chosen cell stands in, or the one that its sheet is there for; on a sheet of the person's
 * own that has none, the cells around it. Undefined where there are no rows: on a sheet of ours what is no
 * table proper belongs together as it stands.
 */
export function headedRows(grid: Grid): HeadedRows | undefined {
  const active = grid.book().getActiveCell();
  if (active === null) return undefined;
  const worksheet = grid.book().getActiveSheet().getSheet();
  const { name, ours } = gridSheet(worksheet);
  const at = { row: active.getRow(), column: active.getColumn() };
  const tables = [...tablesNow(grid.book().getWorkbook()).values()]
    .filter(({ sheet }) => sheet === name)
    .map(({ range }) => range);
  const [first] = tables;
  const isTheSheet = tables.length === 1 && first !== undefined && first.top < TOP_ROWS;
  const table = tables.find((one) => isIn(one, at)) ?? (isTheSheet ? first : undefined);
  if (table !== undefined)
    return withHeadings(worksheet, { ...table, top: table.top + 1 }, at, true);
  if (ours || tables.length > 0) return undefined;
  const around = expandToContinuousRange(
    { startRow: at.row, endRow: at.row, startColumn: at.column, endColumn: at.column },
    { up: true, down: true, left: true, right: true },
    worksheet,
  );
  const range = cellRange(around);
  const headed = hasHeadings(worksheet, range);
  return withHeadings(worksheet, headed ? { ...range, top: range.top + 1 } : range, at, headed);
}

function withHeadings(
  worksheet: Worksheet,
  range: CellRange,
  at: { readonly column: number },
  headed: boolean,
): HeadedRows | undefined {
  const { top, left, bottom, right } = range;
  if (bottom <= top) return undefined;
  return {
    sheetId: worksheet.getSheetId(),
    sheet: worksheet.getName(),
    range,
    headings: Array.from({ length: right - left + 1 }, (_, index) => {
      const text = headed ? shownText(worksheet, top - 1, left + index).trim() : '';
      return text === '' ? `Column ${columnLetters(left + index)}` : text;
    }),
    chosen: Math.min(Math.max(at.column - left, 0), right - left),
  };
}

/** As it stands in the cell: 7' 3 1/2", $12.00. */
export function shownText(worksheet: Worksheet, row: number, column: number): string {
  return extractPureTextFromCell(worksheet.getCell(row, column));
}

function hasHeadings(worksheet: Worksheet, { top, left, right }: CellRange): boolean {
  for (let column = left; column <= right; column++) {
    const { v, f } = worksheet.getCellRaw(top, column) ?? {};
    if (typeof v !== 'string' || v.trim() === '' || (f ?? '') !== '') return false;
  }
  return true;
}

function isIn(
  { top, left, bottom, right }: CellRange,
  at: { readonly row: number; readonly column: number },
): boolean {
  return top <= at.row && at.row <= bottom && left <= at.column && at.column <= right;
}

export function cellRange({ startRow, startColumn, endRow, endColumn }: IRange): CellRange {
  return { top: startRow, left: startColumn, bottom: endRow, right: endColumn };
}

export function gridRange({ top, left, bottom, right }: CellRange): IRange {
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
}
