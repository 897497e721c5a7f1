/** What the hours that there are now say of a plan's rates. */
import type { Job } from '../../planning/job.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { homeOfRate } from '../../planning/work/home-of-rate.ts';
import {
  learnFromHours,
  type LearnedFromHours,
  type WorkLearned,
} from '../../planning/work/learn-from-hours.ts';

const MINUTES_PER_HOUR = 60;

/**
 * Hours are no input of a plan: they may have been written down since. Rows of Work are those that were read
 * now, which say the same as the plan's and know where they stand.
 */
export function learnedNow(
  plan: JobPlan,
  { hours, work }: Pick<Job, 'hours' | 'work'>,
): LearnedFromHours {
  return learnFromHours([{ ...plan, job: { ...plan.job, hours, work } }]);
}

/** Whether no cell of the person's own says it yet. @param job as it is read now */
export function isNewRow(job: Job, { row, rate }: WorkLearned): boolean {
  return homeOfRate(job, row, rate.rate * MINUTES_PER_HOUR).kind === 'row';
}
