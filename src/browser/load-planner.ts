/** The planner in one chunk of its own: neither the functions nor the pane's first look wait for it. */
import { comparePlans } from '../planning/compare/compare-plans.ts';
import { describeChanges } from '../sheets/changes/changes-sheet.ts';
import { describeCopyChanges } from '../sheets/changes/copy-changes.ts';
import { readCopyOf } from '../sheets/client/read-copy-of.ts';
import { checkJobPlan } from '../planning/check-job-plan.ts';
import { exportPlan } from '../exports/export-plan.ts';
import { writeShopView } from '../exports/shop-view/shop-view.ts';
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
import { describeClientCopy } from '../sheets/client/client-sheet.ts';
import { describeInput } from '../sheets/describe-input.ts';
import { describePlan } from '../sheets/describe-plan.ts';
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
  describeChanges,
  readCopyOf,
  describeCopyChanges,
  describePlan,
  describeClientCopy,
  exportPlan,
  writeShopView,
  describeInput,
};
