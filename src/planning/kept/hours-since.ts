/** Hours that were written down after a plan was kept: they stand beside it, and it stays what it was. */
import type { RawTable } from '../input/raw-table.ts';
import { sameName, type Job } from '../job.ts';
import type { JobPlan } from '../job-plan.ts';
import { cautionHours, isOfHours } from '../work/caution-hours.ts';

/** The tables that a plan was made from, with the Hours that there are now. */
export function withHours(kept: readonly RawTable[], now: readonly RawTable[]): RawTable[] {
  const isHours = ({ name }: RawTable): boolean => sameName(name, 'Hours');
  return [...kept.filter((table) => !isHours(table)), ...now.filter(isHours)];
}

/** The plan as it is, with a job's hours and what is to be said of them. */
export function withHoursOf(plan: JobPlan, { hours }: Pick<Job, 'hours'>): JobPlan {
  const now = { ...plan, job: { ...plan.job, hours } };
  const others = plan.cautions.filter((one) => !isOfHours(one));
  return { ...now, cautions: [...others, ...cautionHours(now)] };
}
