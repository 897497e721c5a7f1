/** Between which figures a plan's price is likely to end, where rows of Work say Low and High. */
import { computePriceRange, type PriceRange } from '../core/bid/price-range.ts';
import { seededChance } from '../cutting/seeded-chance.ts';
import type { JobPlan, JobWork, ProfilePlan } from './job-plan.ts';
import { priceLines } from './money.ts';
import { priceJob } from './price-job.ts';
import { moneyOfLines } from './work/work-lines.ts';
import { isNotIncluded, type WorkLine, type WorkRow } from './work/work-row.ts';
import { worksOf } from './work/works-of.ts';

/** One for all jobs: the same plan has the same range. */
const SEED = 1;
/** Work says nothing of the job as a whole: what moves its rows moves each by itself. */
const WHOLE_JOB = { name: 'The whole job', low: 1, likely: 1, high: 1 };

/** How a line's minutes are now. */
type MinutesOf = (row: WorkRow) => number;

/**
 * The price without tax, the plan's sticks and counts as they are: minutes alone are drawn. In the currency.
 *
 * @param nameOf What a row of Work is called.
 * @returns undefined where no row that is in the price says Low or High
 */
export function rangeOfPrice(
  plan: JobPlan,
  nameOf: (row: WorkRow) => string,
): PriceRange | undefined {
  const factorsOf = new Map(
    plan.profiles.map((planned) => [planned, factorRows(plan, planned)] as const),
  );
  const used = new Set(
    [
      ...plan.profiles.flatMap((planned) => [
        ...planned.work.map(({ row }) => row),
        ...(factorsOf.get(planned) ?? []),
      ]),
      ...plan.jobWork.lines.map(({ row }) => row),
    ].filter(({ range }) => range !== undefined),
  );
  const rows = [...used];
  if (rows.length === 0) return undefined;
  const priceOf = (values: readonly number[]): number => {
    const drawn = new Map(rows.map((row, at) => [row, values[at] ?? row.minutes]));
    const minutesOf: MinutesOf = (row) => drawn.get(row) ?? row.minutes;
    const profiles = plan.profiles.map((planned) => {
      const { lumberCents, offcutCreditCents } = planned.money;
      const times = (factorsOf.get(planned) ?? []).reduce((all, row) => all * minutesOf(row), 1);
      const labor = laborBy(planned.work, minutesOf, times);
      return { money: priceLines(lumberCents, offcutCreditCents, labor, plan.job.shop) };
    });
    return priceJob(profiles, jobWorkBy(plan, minutesOf), plan.job.shop).priceCents / 100;
  };
  const factors = rows.map((row) => ({
    name: nameOf(row),
    likely: row.minutes,
    low: row.range?.low ?? row.minutes,
    high: row.range?.high ?? row.minutes,
  }));
  const range = computePriceRange({ factors, job: WHOLE_JOB, priceOf, chance: seededChance(SEED) });
  // What the reader let through is in order.
  if (!range.ok) throw new RangeError('Work has a range that is out of order.');
  return range.value;
}

/** Those that its work by the foot is times; none where it has no such work. */
function factorRows({ job }: JobPlan, { profile, work }: ProfilePlan): WorkRow[] {
  if (!work.some(({ row }) => row.per === 'foot')) return [];
  return worksOf(profile, job.work).filter((row) => row.per === 'factor' && !isNotIncluded(row));
}

/** @param times What the hours of work by the foot are times. */
function laborBy(
  lines: readonly WorkLine[],
  minutesOf: MinutesOf,
  times: number,
): { readonly hours: number; readonly money: number } {
  const hours = lines.reduce(
    (sum, { row, count }) => sum + (count * minutesOf(row) * (row.per === 'foot' ? times : 1)) / 60,
    0,
  );
  return { hours, money: moneyOfLines(lines) };
}

function jobWorkBy({ jobWork, job }: JobPlan, minutesOf: MinutesOf): JobWork {
  if (jobWork.money === undefined) return jobWork;
  const labor = laborBy(jobWork.lines, minutesOf, 1);
  return { ...jobWork, hours: labor.hours, money: priceLines(0, 0, labor, job.shop) };
}
