/** Several changes of the grid that are one step for whoever takes it back. */
import { ICommandService, IUndoRedoService, type IMutationInfo } from '@univerjs/core';
import type { Grid } from './grid.ts';

export interface OneChange {
  /**
   * Does something, and keeps how it is taken back.
   *
   * @param isDone Whether it has been done: where it failed half way, it is asked before it is taken
   *   back. Not needed of what does nothing where there is nothing to take back.
   * @throws Error where the grid refuses it.
   */
  make(change: IMutationInfo, back: IMutationInfo, isDone?: () => boolean): void;
  /** Takes all of it back, as if it had never been. */
  takeBack(): void;
  /** Ends it: from now on Undo takes all of it back at once, and then what came before it. */
  keep(): void;
}

interface Step {
  readonly change: IMutationInfo;
  readonly back: IMutationInfo;
  readonly isDone: () => boolean;
}

/** Where another person's changes go, the grid doesn't jump after them: nor after these. */
const STAY = { fromCollab: true } as const;

export function oneChange(grid: Grid): OneChange {
  const { services } = grid;
  const commands = services.get(ICommandService);
  const unitID = grid.book().getId();
  const made: Step[] = [];
  return {
    make: (change, back, isDone = () => true) => {
      // Whoever hears of it may fail when it is done already: so it is kept before.
      made.push({ change, back, isDone });
      if (!commands.syncExecuteCommand(change.id, change.params, STAY)) {
        throw new Error(change.id);
      }
    },
    takeBack: () => {
      for (const { back, isDone } of made.splice(0).reverse()) {
        if (isDone()) commands.syncExecuteCommand(back.id, back.params, STAY);
      }
    },
    keep: () => {
      services.get(IUndoRedoService).pushUndoRedo({
        unitID,
        redoMutations: made.map(({ change }) => change),
        undoMutations: made.map(({ back }) => back).reverse(),
      });
    },
  };
}
