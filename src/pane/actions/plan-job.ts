/** Plans the job, lets it be stopped, and writes what was planned. */
import type { WorkbookHost } from '../../hosts/host.ts';
import type { Job } from '../../planning/job.ts';
import type { Planner } from '../planner.ts';
import { openHostOf } from '../state/open-host.ts';
import { isOccupied } from '../state/is-occupied.ts';
import type { ActionTools } from './action-tools.ts';
import { breathe, rest } from './breathe.ts';
import { checkJob } from './check-job.ts';

export interface PlanActions {
  /** Reads the inputs as they are now, and plans them. */
  readonly plan: () => Promise<void>;
  readonly stop: () => void;
}

export function planActions(tools: ActionTools): PlanActions {
  const { store, planner, run } = tools;
  const stopping = { asked: false };

  const wasStopped = (): boolean => stopping.asked;

  async function planFound(
    host: WorkbookHost,
    loaded: Planner,
    job: Job,
    fingerprint: string,
  ): Promise<void> {
    const { turn } = store.get().planning;
    // A plan of a workbook that is no longer open is of no use to anybody.
    const isOver = (): boolean => wasStopped() || openHostOf(store.get()) !== host;
    await rest();
    const { plan, faults, cautions } = await loaded.planJob(job, {
      signal: {
        get aborted() {
          return isOver();
        },
      },
      pause: breathe(() => performance.now()),
      onProfile: (done, of, profile) =>
        store.send({
          type: 'planning moved',
          turn,
          progress: { done, of, profile, phase: '', costCents: undefined, boundCents: undefined },
        }),
      onProgress: (progress) => store.send({ type: 'planning moved', turn, progress }),
    });
    await rest();
    if (isOver()) {
      store.send({ type: 'planning stopped', turn });
      return;
    }
    const result =
      plan === undefined ? undefined : { plan, fingerprint, wrong: loaded.checkJobPlan(plan) };
    store.send({ type: 'planning ended', turn, fingerprint, result, faults, cautions });
  }

  return {
    plan: () =>
      run(async () => {
        const host = openHostOf(store.get());
        const before = store.get().reading.found;
        if (host === undefined || before?.job === undefined || isOccupied(store.get())) return;
        stopping.asked = false;
        store.send({ type: 'planning begun', of: before.job.profiles.length });
        const { turn } = store.get().planning;
        await rest();
        // What was typed a moment ago belongs to the plan too.
        const found = await checkJob(tools);
        const loaded = await planner();
        if (found?.job === undefined || loaded === undefined) {
          store.send({ type: 'planning dropped', turn });
        } else if (wasStopped()) {
          store.send({ type: 'planning stopped', turn });
        } else {
          await planFound(host, loaded, found.job, found.fingerprint);
        }
      }),
    stop: () => {
      stopping.asked = true;
      store.send({ type: 'planning stopping' });
    },
  };
}
