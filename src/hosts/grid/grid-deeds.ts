/** What the page's tools ask of the grid: its own commands, on the cells that are chosen. */
import { ICommandService, IUndoRedoService, RedoCommand, UndoCommand } from '@univerjs/core';
import type {} from '@univerjs/sheets-numfmt/facade';
import type {} from '@univerjs/sheets-ui/facade';
import { SetRangeBoldCommand } from '@univerjs/sheets-ui';
import type { Grid } from './grid.ts';

const COMMANDS = {
  undo: UndoCommand.id,
  redo: RedoCommand.id,
  bold: SetRangeBoldCommand.id,
} as const;

export async function doInGrid(grid: Grid, deed: keyof typeof COMMANDS): Promise<void> {
  await grid.services.get(ICommandService).executeCommand(COMMANDS[deed]);
}

/** Tells now, and from now on, whether there is anything to take back or to do again. */
export function watchUndo(grid: Grid, tell: (can: Record<'undo' | 'redo', boolean>) => void): void {
  grid.services
    .get(IUndoRedoService)
    .undoRedoStatus$.subscribe(({ undos, redos }) => tell({ undo: undos > 0, redo: redos > 0 }));
}

/** @param pattern A number format as spreadsheets write it; empty for none. */
export function formatChosen(grid: Grid, pattern: string): void {
  for (const range of grid.book().getActiveSheet().getSelection()?.getActiveRangeList() ?? []) {
    range.setNumberFormat(pattern);
  }
}

export interface CellInSight {
  readonly text: string;
  /** In pixels from the corner of the cells' canvas. */
  readonly rect: DOMRect;
}

/** What the chosen cell shows, and where; undefined where none is chosen. */
export function chosenInSight(grid: Grid): CellInSight | undefined {
  const active = grid.book().getActiveCell();
  return active === null
    ? undefined
    : { text: active.getDisplayValue(), rect: active.getCellRect() };
}
