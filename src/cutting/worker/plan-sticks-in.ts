/** The caller's side: the stick planner as anybody calls it, at work in a worker. */
import { planSticks } from '../plan-sticks.ts';
import { callWorker, type CallerDeps } from './call-worker.ts';
import type { RunningWorker } from './messages.ts';

/**
 * Plans sticks in a worker, started with the first call and kept for the next. The options mean
 * what they mean to `planSticks`, but that a stop is answered within a second with the best plan so
 * far, `pause` and `loadSolver` are the worker's own, and answers pass our check before they are
 * used. Where no worker can be had, or it dies before its first plan, this thread plans.
 *
 * @param startWorker may throw: then this thread plans
 */
export function planSticksIn(
  startWorker: () => RunningWorker,
  deps: CallerDeps,
): typeof planSticks {
  let idle: RunningWorker | undefined;
  let calls = 0;

  function takeWorker(): RunningWorker | undefined {
    const taken = idle;
    idle = undefined;
    if (taken !== undefined) return taken;
    try {
      return startWorker();
    } catch {
      return undefined;
    }
  }

  /** One that waits for work is enough; it dies unheard. */
  function putBack(worker: RunningWorker): void {
    if (idle !== undefined) {
      worker.end();
      return;
    }
    idle = worker;
    worker.onCrash(() => {
      if (idle === worker) idle = undefined;
    });
  }

  return async (problem, given) => {
    const options = given ?? {};
    // What is stopped before it begins needs no worker for its first quick plan.
    const worker = options.signal?.aborted === true ? undefined : takeWorker();
    if (worker !== undefined) {
      let isFree = false;
      try {
        const called = await callWorker(worker, ++calls, problem, options, deps);
        ({ isFree } = called);
        if (called.outcome !== undefined) return called.outcome;
      } finally {
        if (isFree) putBack(worker);
        else worker.end();
      }
    }
    return planSticks(problem, { now: deps.now, ...options });
  };
}
