/** Between which figures a plan's price is likely to end, where Work or Shop say a low or a high. */
import { computePriceRange, type PriceRange } from '../core/bid/price-range.ts';
import { seededChance } from '../cutting/seeded-chance.ts';
import type { JobPlan, JobWork, ProfilePlan } from './job-plan.ts';
import { cents, priceLines } from './money.ts';
import { priceJob } from './price-job.ts';
import { listUnknowns, type PriceUnknown } from './price-unknowns.ts';
import { moneyOfLines } from './work/work-lines.ts';
import { isNotIncluded, sayWork, type WorkLine, type WorkRow } from './work/work-row.ts';
import { worksOf } from './work/works-of.ts';

/** One for all jobs: the same plan has the same range. */
const SEED = 1;

/** What a draw of the unsure says. */
type Times = Readonly<Record<PriceUnknown, number>>;
type LaborOf = (values: readonly number[], times: Times) => PricedLabor;
interface PricedLabor {
  readonly hours: number;
  readonly money: number;
}

/**
 * The price without tax, in the currency. The plan's sticks and counts stay: what is drawn is the minutes of
 * rows of Work, the rate, one factor of all hours, what lumber costs and how much of it is used. Lumber that
 * is wasted brings no credit; what is credited is worth as much as lumber costs.
 *
 * @returns undefined where nothing that is in the price has a low or a high
 */
export function rangeOfPrice(plan: Omit<JobPlan, 'range'>): PriceRange | undefined {
  const { shop } = plan.job;
  const rows = unsureRows(plan);
  const unknowns = listUnknowns(shop);
  if (plan.profiles.length === 0 || rows.length + unknowns.length === 0) return undefined;
  const placeOf = new Map(rows.map((row, at) => [row, unknowns.length + at]));
  const profiles = plan.profiles.map((planned) => {
    const factors = factorRows(plan, planned);
    return { money: planned.money, laborOf: laborBy(planned.work, factors, placeOf) };
  });
  const { jobWork } = plan;
  const jobLaborOf = laborBy(jobWork.lines, [], placeOf);
  const priceOf = (values: readonly number[]): number => {
    const times: Record<PriceUnknown, number> = { ...AS_LIKELY };
    unknowns.forEach(({ unknown }, at) => (times[unknown] = values[at] ?? 1));
    const priced = profiles.map(({ money, laborOf }) => {
      const lumber = cents(money.lumberCents * times.lumberPrice * times.waste);
      const credit = Math.min(lumber, Math.floor(money.offcutCreditCents * times.lumberPrice));
      return { money: priceLines(lumber, credit, laborOf(values, times), shop) };
    });
    const ofJob: JobWork =
      jobWork.money === undefined
        ? jobWork
        : { ...jobWork, money: priceLines(0, 0, jobLaborOf(values, times), shop) };
    return priceJob(priced, ofJob, shop).priceCents / 100;
  };
  const factors = [
    ...unknowns.map(({ is }) => is),
    ...rows.map((row) => ({
      name: sayWork(row),
      likely: row.minutes,
      low: row.range?.low ?? row.minutes,
      high: row.range?.high ?? row.minutes,
    })),
  ];
  const range = computePriceRange({ factors, priceOf, chance: seededChance(SEED) });
  // What the reader let through is in order.
  if (!range.ok) throw new RangeError('Work or Shop has a range that is out of order.');
  return range.value;
}

const AS_LIKELY: Times = { wholeJob: 1, hourlyRate: 1, lumberPrice: 1, waste: 1 };

/** Those that say Low or High and are in the price, each once. */
function unsureRows(plan: Pick<JobPlan, 'profiles' | 'jobWork' | 'job'>): WorkRow[] {
  const used = [
    ...plan.profiles.flatMap((planned) => [
      ...planned.work.map(({ row }) => row),
      ...factorRows(plan, planned),
    ]),
    ...plan.jobWork.lines.map(({ row }) => row),
  ];
  return [...new Set(used)].filter(({ range }) => range !== undefined);
}

/** Those that its work by the foot is times; none where it has no such work. */
function factorRows({ job }: Pick<JobPlan, 'job'>, { profile, work }: ProfilePlan): WorkRow[] {
  if (!work.some(({ row }) => row.per === 'foot')) return [];
  return worksOf(profile, job.work).filter((row) => row.per === 'factor' && !isNotIncluded(row));
}

/**
 * Hours by what was drawn. What is sure is added up beforehand, since this is asked for each draw. The rate
 * is known to the price's lines, so its factor is one of the hours.
 *
 * @param factors Rows that the hours of work by the foot are times.
 * @param placeOf Where among the drawn values a row's minutes, or its factor, stand.
 */
function laborBy(
  lines: readonly WorkLine[],
  factors: readonly WorkRow[],
  placeOf: ReadonlyMap<WorkRow, number>,
): LaborOf {
  const money = moneyOfLines(lines);
  const other = minutesBy(lines, placeOf, false);
  const byFoot = minutesBy(lines, placeOf, true);
  const sureFactor = factors.reduce((all, row) => (placeOf.has(row) ? all : all * row.minutes), 1);
  const drawnFactors = factors.flatMap((row) => placeOf.get(row) ?? []);
  return (values, { wholeJob, hourlyRate }) => {
    const valueAt = (at: number): number => values[at] ?? 0;
    const factor = drawnFactors.reduce((all, at) => all * valueAt(at), sureFactor);
    const minutes = other(values) + byFoot(values) * factor;
    return { hours: (minutes / 60) * wholeJob * hourlyRate, money };
  };
}

/** Of the lines that are by the foot, or of all others: what is sure, and what is drawn by its count. */
function minutesBy(
  lines: readonly WorkLine[],
  placeOf: ReadonlyMap<WorkRow, number>,
  isByFoot: boolean,
): (values: readonly number[]) => number {
  const own = lines.filter(({ row }) => (row.per === 'foot') === isByFoot);
  const sure = own.reduce(
    (sum, { row, count }) => (placeOf.has(row) ? sum : sum + count * row.minutes),
    0,
  );
  const drawn = own.flatMap(({ row, count }) => {
    const at = placeOf.get(row);
    return at === undefined ? [] : [{ at, count }];
  });
  return (values) => drawn.reduce((sum, { at, count }) => sum + count * (values[at] ?? 0), sure);
}
