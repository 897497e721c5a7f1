/** The planner in one chunk of its own: neither the functions nor the pane's first look wait for it. */
import { comparePlans } from '../planning/compare/compare-plans.ts';
import { checkJobPlan } from '../planning/check-job-plan.ts';
import { readJob } from '../planning/input/read-job.ts';
import { VERSION } from '../core/version.ts';
import { cutFromPlan, keepsCuts, markCut } from '../planning/cut/cut-from-plan.ts';
import { keepPlan } from '../planning/kept/keep-plan.ts';
import { keyOfCut } from '../planning/kept/kept-cut.ts';
import { withHoursOf } from '../planning/kept/hours-since.ts';
import { readKeptPlan } from '../planning/kept/read-kept-plan.ts';
import { readTicks } from '../sheets/read-ticks.ts';
import { judgeJob } from '../planning/judge-job.ts';
import { planJob } from '../planning/plan-job.ts';
import { yieldToBrowser } from '../hosts/yield-to-browser.ts';
import type { Job } from '../planning/job.ts';
import type { JobPlanning } from '../planning/job-planning.ts';
import type { Planner } from '../pane/planner.ts';
import { describeInput } from '../sheets/describe-input.ts';
import { planInWorker } from './start-worker.ts';

/** Ends a planning between two of its groups. */
const STALE = new Error('Nobody asks for it any more.');

async function planQuick(job: Job, isStale: () => boolean): Promise<JobPlanning | undefined> {
  try {
    // A stop that a worker hears would have this thread plan what the worker had not begun.
    return await planJob(
      { ...job, options: [] },
      {
        seconds: 0,
        now: () => performance.now(),
        planSticks: async (problem, options) => {
          await yieldToBrowser();
          if (isStale()) throw STALE;
          return planInWorker(problem, options);
        },
      },
    );
  } catch (error) {
    if (error === STALE) return undefined;
    throw error;
  }
}

export const planner: Planner = {
  readJob,
  judgeJob,
  // The quick plan alone is made before a worker has begun.
  planJob: (job, { seconds, ...options }) =>
    seconds === 0
      ? planJob(job, options)
      : planJob(job, {
          planSticks: planInWorker,
          ...options,
          ...(seconds === undefined ? {} : { seconds }),
        }),
  planQuick,
  checkJobPlan,
  keepPlan: (kept) => keepPlan(kept, VERSION),
  readKeptPlan: (text, pause) => readKeptPlan(text, VERSION, pause),
  readTicks,
  cutFromPlan,
  withHoursOf,
  markCut,
  keepsCuts,
  keyOfCut,
  comparePlans,
  describeInput,
  loadWriter: async () => (await import('./load-writer.ts')).writer,
};
