/** Brings cells of a sheet into view and chooses them. */
import { ICommandService } from '@univerjs/core';
import { ScrollToRangeOperation } from '@univerjs/sheets-ui';
import type { CellRange } from '../../core/cells/cell-range.ts';
import type { Grid } from './grid.ts';

/** @returns Whether there is such a sheet. */
export function showCells(
  grid: Grid,
  name: string,
  { top, left, bottom, right }: CellRange,
): boolean {
  const book = grid.book();
  const sheet = book.getSheetByName(name);
  if (sheet === null) return false;
  book.setActiveSheet(sheet);
  const range = sheet.getRange(top, left, bottom - top + 1, right - left + 1);
  book.setActiveRange(range);
  void grid.services
    .get(ICommandService)
    .executeCommand(ScrollToRangeOperation.id, { range: range.getRange() });
  return true;
}
