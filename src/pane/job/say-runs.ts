/** The list of runs in the pane, in words. */
import { sameName } from '../../planning/job.ts';
import type { ListedRun } from '../../planning/list-runs.ts';
import type { RoomFittings } from '../../planning/rooms/room-fittings.ts';
import { orderOf } from '../../sheets/rooms/rooms-words.ts';
import { count } from '../../sheets/words/print-length.ts';

/** More lines than these slow the pane down; the command line lists all. */
export const MOST_LISTED = 200;

export const isMade = ({ from }: ListedRun): boolean => from.row === undefined;

export function runsIn(runs: readonly ListedRun[], room: string): ListedRun[] {
  return runs.filter(({ run }) => sameName(run.room, room));
}

/** `18 runs: 16 made from Walls and Trim, 2 typed in Runs`. */
export function sayRunCount(runs: readonly ListedRun[]): string {
  const made = runs.filter(isMade).length;
  const typed = runs.length - made;
  const parts = [
    ...(made === 0 ? [] : [`${made} made from Walls and Trim`]),
    ...(typed === 0 ? [] : [`${typed} typed in Runs`]),
  ];
  return parts.length === 0 ? 'No runs.' : `${count(runs.length, 'run')}: ${parts.join(', ')}.`;
}

/** Where no row can be put: a file that is open beside the pane. */
export const TYPE_IT_THERE =
  'This file stays as it is here. To take a run over, type a row in its Runs with the same room, wall (under Run) and profile: it then stands in place of the made run.';

/** The marks that a room's plan has for the pieces of each run, by `placeKey`. */
export function marksOf(fittings: RoomFittings | undefined): ReadonlyMap<string, string[]> {
  const marks = new Map<string, string[]>();
  fittings?.trims.forEach(({ pieces }, trim) => {
    for (const fitted of pieces) {
      const { kind, made } = fitted.piece;
      if (made === undefined || kind !== 'run') continue;
      const key = placeKey(made);
      marks.set(key, [...(marks.get(key) ?? []), orderOf(trim, fitted)]);
    }
  });
  return marks;
}

/** A wall and a row of Trim, as what is made of them names the two. */
export function placeKey({ wall, trim }: NonNullable<ListedRun['from']['made']>): string {
  return JSON.stringify([wall, trim]);
}
