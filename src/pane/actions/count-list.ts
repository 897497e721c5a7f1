/** Counts what the list comes to while it is typed: the quick plan, made when the typing rests. */
import type { JobFound } from '../job/job-found.ts';
import { isOccupied } from '../state/is-occupied.ts';
import type { PaneState } from '../state/pane-state.ts';
import type { ActionTools } from './action-tools.ts';

/** Beyond the rest before the tables are read: whoever types on is not slowed down. */
export const COUNT_REST_MS = 300;

export interface CountActions {
  /** From now on; returns what ends it. */
  readonly keepCounted: () => () => void;
}

export function countActions(tools: ActionTools): CountActions {
  const { store, planner, run } = tools;
  return {
    keepCounted: () => {
      let timer: ReturnType<typeof setTimeout> | undefined;
      let wanted: string | undefined;
      const count = (found: JobFound): Promise<void> =>
        run(async () => {
          const { fingerprint, job } = found;
          const isStale = (): boolean => wanted !== fingerprint;
          const loaded = await planner();
          if (loaded === undefined || job === undefined) return;
          const counted = await loaded.planQuick(job, isStale);
          if (counted === undefined || isStale()) return;
          const { plan, faults } = counted;
          // A plan that does not add up is a fault of ours: Plan says so, and nothing is counted by it.
          const isSound = plan !== undefined && loaded.checkJobPlan(plan).length === 0;
          const shown = isSound ? plan : undefined;
          store.send({ type: 'list counted', counted: { fingerprint, plan: shown, faults } });
        });
      const look = (): void => {
        const found = toCount(store.get());
        if (found?.fingerprint === wanted) return;
        wanted = found?.fingerprint;
        clearTimeout(timer);
        if (found !== undefined) timer = setTimeout(() => void count(found), COUNT_REST_MS);
      };
      const unsubscribe = store.subscribe(look);
      look();
      return () => {
        wanted = undefined;
        clearTimeout(timer);
        unsubscribe();
      };
    },
  };
}

/** More are too many to be counted at every rest of the typing. */
export const MOST_COUNTED = 1_000;

export function isTooLong({ runs }: Pick<JobFound, 'runs'>): boolean {
  return runs.reduce((sum, { run }) => sum + run.quantity, 0) > MOST_COUNTED;
}

/** Where it would be looked at, and isn't known: what is cut already is counted by Plan alone. */
function toCount(state: PaneState): JobFound | undefined {
  const { tab, reading, planning, counted } = state;
  const { found } = reading;
  if (tab !== 'job' || found?.job === undefined || isOccupied(state)) return undefined;
  const isKnown = [counted, planning.result].some((one) => one?.fingerprint === found.fingerprint);
  const isCut = planning.ticks !== undefined && planning.ticks.sticksCut > 0;
  return isKnown || isCut || isTooLong(found) ? undefined : found;
}
