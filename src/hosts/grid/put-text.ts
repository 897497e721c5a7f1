/** Puts a word into the chosen cell, as if it had been typed. */
import { CellValueType, ICommandService } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import { finishTyping } from './finish-typing.ts';
import type { Grid } from './grid.ts';

/** Its looks stay; one step for Undo. */
export async function putText(grid: Grid, text: string): Promise<void> {
  await finishTyping(grid);
  const book = grid.book();
  const active = book.getActiveCell();
  if (active === null) return;
  const [row, column] = [active.getRow(), active.getColumn()];
  await grid.services.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
    unitId: book.getId(),
    subUnitId: book.getActiveSheet().getSheetId(),
    range: { startRow: row, startColumn: column, endRow: row, endColumn: column },
    value: { v: text, t: CellValueType.STRING, f: null, si: null, p: null },
  });
}
