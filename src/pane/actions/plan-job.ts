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
import type { JobFound } from '../job/job-found.ts';
import { checkJob } from './check-job.ts';
import { keepPlanAs, readTicksNow } from './kept-plans.ts';

export interface PlanActions {
  /** Reads the inputs as they are now, and plans them. */
  readonly plan: () => Promise<void>;
  /** The same as if nothing were cut: what is ticked on the sheets is planned again. */
  readonly planAnew: () => Promise<void>;
  /** Within a second or so; the best plan so far is kept. */
  readonly stop: () => void;
}

/** Under which the seconds that were typed last are kept. */
export const SECONDS_PREFERENCE = 'seconds';

/** Under which it is noted, for the visit, that a planning runs. */
export const PLANNING = 'planning';

const now = (): number => performance.now();

export function planActions(tools: ActionTools): PlanActions {
  const { store, planner, run, services } = tools;
  const stopping = { asked: false };

  const wasStopped = (): boolean => stopping.asked;

  async function planFound(
    host: WorkbookHost,
    loaded: Planner,
    job: Job,
    { fingerprint, inputs: tables }: JobFound,
    seconds: number,
    isAnew: boolean,
  ): Promise<void> {
    const { turn } = store.get().planning;
    const clock = services.clock();
    const made = { day: dayOf(clock), moment: clock.toISOString() };
    // A plan of a workbook that is no longer open is of no use to anybody.
    const isGone = (): boolean => openHostOf(store.get()) !== host;
    await yieldToBrowser();
    const ticks = await readTicksNow(tools, loaded);
    const { written } = store.get().planning;
    const ticked =
      written === undefined || ticks === undefined ? [] : loaded.cutFromPlan(written.plan, ticks);
    const cut = isAnew ? [] : ticked;
    const { plan, faults, cautions } = await loaded.planJob(job, {
      cut,
      ...(cut.length === 0 || written === undefined ? {} : { earlier: written.plan }),
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
    const result: PlanResult | undefined =
      plan === undefined
        ? undefined
        : {
            plan,
            fingerprint,
            tables,
            ...made,
            effort: { seconds },
            wrong: loaded.checkJobPlan(plan),
            cutKey: loaded.keyOfCut(cut),
            ...(isAnew && ticked.length > 0 ? { droppedCutKey: loaded.keyOfCut(ticked) } : {}),
          };
    if (isGone() || (wasStopped() && !isWorthKeeping(result, store.get().planning.result))) {
      store.send({ type: 'planning stopped', turn });
      return;
    }
    store.send({ type: 'planning ended', turn, fingerprint, result, faults, cautions });
    if (result === undefined || result.wrong.length > 0) return;
    await keepPlanAs(tools, host, 'plan', loaded.keepPlan(result));
  }

  const plan = (isAnew: boolean): Promise<void> =>
    run(async () => {
      const host = openHostOf(store.get());
      const before = store.get().reading.found;
      if (host === undefined || before?.job === undefined || isOccupied(store.get())) return;
      const seconds = readSeconds(store.get().planning.seconds, before.shop.decimalSign);
      if (!seconds.ok) return;
      services.preferences.set(SECONDS_PREFERENCE, store.get().planning.seconds);
      stopping.asked = false;
      services.visit.set(PLANNING, 'yes');
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
        await planFound(host, loaded, found.job, found, seconds.value, isAnew);
      }
    }).finally(() => services.visit.set(PLANNING, ''));

  return {
    plan: () => plan(false),
    planAnew: () => plan(true),
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
    earlier.cutKey !== cut.cutKey ||
    earlier.plan.totals.costCents > cut.plan.totals.costCents
  );
}
