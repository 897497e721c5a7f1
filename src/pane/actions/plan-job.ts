/** Plans the job, lets it be stopped, and writes what was planned. */
import { dayOf } from '../../core/units/calendar-day.ts';
import type { WorkbookHost } from '../../hosts/host.ts';
import type { Job } from '../../planning/job.ts';
import { readSeconds } from '../plan/search-seconds.ts';
import type { Planner } from '../planner.ts';
import { openHostOf } from '../state/open-host.ts';
import { isOccupied } from '../state/is-occupied.ts';
import type { PlanResult } from '../state/pane-state.ts';
import type { ActionTools } from './action-tools.ts';
import { yieldNowAndThen, yieldToBrowser } from '../../hosts/yield-to-browser.ts';
import { checkJob } from './check-job.ts';

export interface PlanActions {
  /** Reads the inputs as they are now, and plans them. */
  readonly plan: () => Promise<void>;
  /** Within a second or so; the best plan so far is kept. */
  readonly stop: () => void;
}

/** Under which the seconds that were typed last are kept. */
export const SECONDS_PREFERENCE = 'seconds';

const now = (): number => performance.now();

export function planActions(tools: ActionTools): PlanActions {
  const { store, planner, run, services } = tools;
  const stopping = { asked: false };

  const wasStopped = (): boolean => stopping.asked;

  async function planFound(
    host: WorkbookHost,
    loaded: Planner,
    job: Job,
    fingerprint: string,
    seconds: number,
  ): Promise<void> {
    const { turn } = store.get().planning;
    const stamp = { fingerprint, day: dayOf(services.clock()), effort: { seconds } };
    // A plan of a workbook that is no longer open is of no use to anybody.
    const isGone = (): boolean => openHostOf(store.get()) !== host;
    await yieldToBrowser();
    const { plan, faults, cautions } = await loaded.planJob(job, {
      signal: {
        get aborted() {
          return wasStopped() || isGone();
        },
      },
      seconds,
      now,
      pause: yieldNowAndThen(now),
      onGroup: (done, of, profile) =>
        store.send({
          type: 'planning moved',
          turn,
          progress: { done, of, profile, phase: '', costCents: undefined, boundCents: undefined },
        }),
      onProgress: (progress) => store.send({ type: 'planning moved', turn, progress }),
    });
    await yieldToBrowser();
    const result =
      plan === undefined
        ? undefined
        : { plan, fingerprint, stamp, wrong: loaded.checkJobPlan(plan) };
    if (isGone() || (wasStopped() && !isWorthKeeping(result, store.get().planning.result))) {
      store.send({ type: 'planning stopped', turn });
      return;
    }
    store.send({ type: 'planning ended', turn, fingerprint, result, faults, cautions });
  }

  return {
    plan: () =>
      run(async () => {
        const host = openHostOf(store.get());
        const before = store.get().reading.found;
        if (host === undefined || before?.job === undefined || isOccupied(store.get())) return;
        const seconds = readSeconds(store.get().planning.seconds, before.shop.decimalSign);
        if (!seconds.ok) return;
        services.preferences.set(SECONDS_PREFERENCE, store.get().planning.seconds);
        stopping.asked = false;
        store.send({ type: 'planning begun', of: before.job.profiles.length });
        const { turn } = store.get().planning;
        await yieldToBrowser();
        // What was typed a moment ago belongs to the plan too.
        const found = await checkJob(tools);
        const loaded = await planner();
        if (found?.job === undefined || loaded === undefined) {
          store.send({ type: 'planning dropped', turn });
        } else if (wasStopped()) {
          store.send({ type: 'planning stopped', turn });
        } else {
          await planFound(host, loaded, found.job, found.fingerprint, seconds.value);
        }
      }),
    stop: () => {
      stopping.asked = true;
      store.send({ type: 'planning stopping' });
    },
  };
}

/** A plan that a stop cut short replaces none of the same inputs that costs no more. */
function isWorthKeeping(cut: PlanResult | undefined, earlier: PlanResult | undefined): boolean {
  if (cut === undefined) return false;
  return (
    earlier?.fingerprint !== cut.fingerprint ||
    earlier.plan.totals.costCents > cut.plan.totals.costCents
  );
}
