/** What the pane shows goes with the row that the person is on. */
import type { Where } from '../../core/faults/fault.ts';
import type { ChosenRow } from '../../hosts/host.ts';
import { sameName } from '../../planning/job.ts';
import type { PaneState } from './pane-state.ts';

/** The cove of a row of Profiles, the cove and the room of one of Runs, the room of one of Walls; no other changes anything. */
export function rowChosen(state: PaneState, row: ChosenRow): PaneState {
  const { found } = state.reading;
  if (found === undefined) return state;
  const isHere = (where: Where | undefined): boolean =>
    where !== undefined &&
    'sheet' in where &&
    where.sheet === row.sheet &&
    lineOf(where.cell) === row.line;
  const run = found.runs.find(({ from }) => isHere(from.row))?.run;
  const cove =
    run === undefined
      ? found.coves.find(({ where }) => isHere(where))
      : found.coves.find(({ name }) => sameName(name, run.profile));
  const chosen = cove?.name ?? state.profile.chosen;
  const wall = found.asRead.walls.find(({ where }) => isHere(where));
  const room = run?.room ?? wall?.room ?? state.room;
  if (chosen === state.profile.chosen && room === state.room) return state;
  return { ...state, room, profile: { ...state.profile, chosen } };
}

function lineOf(cell: string): number {
  return Number(/\d+$/u.exec(cell)?.[0] ?? 0);
}
