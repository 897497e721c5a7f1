/** Tells which row the person has gone to. */
import { CommandType, ICommandService } from '@univerjs/core';
import { SetSelectionsOperation, SetWorksheetActiveOperation } from '@univerjs/sheets';
import type { ChosenRow } from '../host.ts';
import type { Grid } from './grid.ts';

const MOVES = new Set([SetSelectionsOperation.id, SetWorksheetActiveOperation.id]);
/** Whoever walks through rows is followed to the one where they stay. */
const SETTLE_MS = 150;

export function watchRow(grid: Grid, chosen: (row: ChosenRow) => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (): void => {
    const book = grid.book();
    const cell = book.getActiveCell();
    if (cell === null) return;
    chosen({ sheet: book.getActiveSheet().getSheetName(), line: cell.getRow() + 1 });
  };
  const listener = grid.services.get(ICommandService).onCommandExecuted(({ id, type }) => {
    if (type === CommandType.COMMAND || !MOVES.has(id)) return;
    clearTimeout(timer);
    timer = setTimeout(tell, SETTLE_MS);
  });
  return () => {
    clearTimeout(timer);
    listener.dispose();
  };
}
