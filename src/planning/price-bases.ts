/** What a job costs and is priced at by the plan's sticks and by the offcut allowance, one beside the other. */
import type { Costing, JobPlan, ProfilePlan } from './job-plan.ts';
import { hoursOf } from './work/hours.ts';
import { priceJob, type JobPrice } from './price-job.ts';
import type { PriceBasis } from './settings/money-settings.ts';

export interface BasisTotals extends JobPrice {
  /** Without credit. */
  readonly lumberCents: number;
  readonly offcutCreditCents: number;
  /** That of the whole job's work with it; so are hours. */
  readonly laborCents: number;
  readonly costCents: number;
  readonly hours: number;
}

export function costingBy(
  { byPlan, byAllowance }: Pick<ProfilePlan, 'byPlan' | 'byAllowance'>,
  basis: PriceBasis,
): Costing {
  return { plan: byPlan, allowance: byAllowance }[basis];
}

/** The job's totals, were its price to go by the one or the other. */
export function totalsBy(
  { profiles, jobWork, job: { shop } }: Pick<JobPlan, 'profiles' | 'jobWork' | 'job'>,
  basis: PriceBasis,
): BasisTotals {
  const costings = profiles.map((one) => costingBy(one, basis));
  const sum = (value: (one: Costing) => number): number =>
    costings.reduce((all, one) => all + value(one), 0);
  return {
    lumberCents: sum(({ money }) => money.lumberCents),
    offcutCreditCents: sum(({ money }) => money.offcutCreditCents),
    laborCents: sum(({ money }) => money.laborCents) + (jobWork.money?.laborCents ?? 0),
    costCents: sum(({ money }) => money.costCents) + (jobWork.money?.costCents ?? 0),
    hours: sum(({ hours }) => hoursOf(hours)) + jobWork.hours,
    ...priceJob(costings, jobWork, shop),
  };
}

/** By how many percent of the price by the allowance that by the plan is more; undefined where that is nothing. */
export function planOverAllowance(
  byPlanCents: number,
  byAllowanceCents: number,
): number | undefined {
  return byAllowanceCents === 0 ? undefined : (byPlanCents / byAllowanceCents - 1) * 100;
}
