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
import type { Planner } from '../pane/planner.ts';
import { describeInput } from '../sheets/describe-input.ts';
import { planInWorker } from './start-worker.ts';

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
