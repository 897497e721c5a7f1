/** The workbook that stands on the page: its name, whether it was changed, and how another takes its place. */
import { CommandType, type IWorkbookData } from '@univerjs/core';
import type { Grid } from '../../hosts/grid/grid.ts';
import type { WorkNow } from '../keep/kept-work.ts';

export interface Desk {
  readonly grid: Grid;
  readonly name: () => string;
  /** Whether anything was changed since the workbook was opened, made or downloaded. */
  readonly touched: () => boolean;
  /** As it is to be kept or saved. */
  readonly take: () => WorkNow;
  /** Puts a workbook in the place of the one that is there. */
  readonly put: (data: IWorkbookData) => void;
  /** It stands in a file now. */
  readonly saved: () => void;
}

export interface DeskEvents {
  readonly onChange: () => void;
  readonly onPut: (name: string) => void;
}

/** @param touched Of the workbook that the grid holds now. */
export function makeDesk(grid: Grid, touched: boolean, events: DeskEvents): Desk {
  const { api } = grid;
  let name = grid.book().save().name;
  let isTouched = touched;
  api.addEvent(api.Event.CommandExecuted, ({ id, type, options }) => {
    if (type !== CommandType.MUTATION || !id.startsWith('sheet.')) return;
    // What the formulas come to follows from what was changed before.
    if (options?.onlyLocal === true) return;
    isTouched = true;
    events.onChange();
  });
  return {
    grid,
    name: () => name,
    touched: () => isTouched,
    take: () => ({ name, touched: isTouched, data: grid.book().save() }),
    put: (data) => {
      grid.open(data);
      ({ name } = data);
      isTouched = false;
      events.onPut(name);
      events.onChange();
    },
    saved: () => {
      isTouched = false;
      events.onChange();
    },
  };
}
