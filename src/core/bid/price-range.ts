/**
 * Between which figures a price is likely to end, and what moves it most: each rate and each waste drawn ten
 * thousand times by chance that repeats, all of a job under one factor, since a job that goes badly goes badly all round.
 */
import { failed, ok, type Outcome } from '../faults/fault.ts';
import { checkTriangular, computeTriangular, type Triangular } from './triangular.ts';

/** A rate or a waste that isn't known. */
export interface Unsure extends Triangular {
  readonly name: string;
}

export interface RangeQuestion {
  readonly factors: readonly Unsure[];
  /** By which the whole job may go worse or better than the factors say: 1 is as they say. */
  readonly job: Unsure;
  /** What it comes to, in money, with these values of the factors in their order. More of one never costs less. */
  readonly priceOf: (values: readonly number[]) => number;
  /** From 0 up to 1, the same again for the same question. */
  readonly chance: () => number;
}

/** A factor and what it does to the price alone, all others being likely. */
export interface Driver {
  readonly name: string;
  readonly atLow: number;
  readonly atHigh: number;
  /** Of the swings of all, 0 to 1; 0 where nothing moves the price. */
  readonly share: number;
}

export interface PriceRange {
  /** One job in ten comes to less. */
  readonly low: number;
  /** All as is likely. Where more can go wrong than right it lies in the lower part of the band, or below it. */
  readonly likely: number;
  /** One job in ten comes to more. */
  readonly high: number;
  /** As many jobs come to less as to more. */
  readonly middle: number;
  /** The part of all jobs that come to no more than the likely figure, 0 to 1. */
  readonly holds: number;
  /** The largest swing first. */
  readonly drivers: readonly Driver[];
}

export const DRAWS = 10_000;
/** Eight jobs in ten lie within the band. */
const BAND = { low: 0.1, high: 0.9 } as const;

/**
 * The band of a price, and its drivers: each factor's price at its high less that at its low, the others
 * likely; by these swings, not by shares of a variance, since anybody can work them out again.
 * @returns faults `bid.range-unsound`, `bid.range-out-of-order`, one for each factor at fault.
 */
export function computePriceRange(question: RangeQuestion): Outcome<PriceRange> {
  const { factors, job, priceOf, chance } = question;
  const faults = [job, ...factors].flatMap((one) => checkTriangular(one.name, one));
  if (faults.length > 0) return failed(...faults);
  const prices = Float64Array.from({ length: DRAWS }, () => {
    const drawnJob = computeTriangular(job, chance());
    return priceOf(factors.map((factor) => computeTriangular(factor, chance()) * drawnJob));
  }).sort();
  const likely = priceAt(question, () => 'likely');
  return ok({
    low: quantileOf(prices, BAND.low),
    likely,
    high: quantileOf(prices, BAND.high),
    middle: quantileOf(prices, 1 / 2),
    holds: prices.filter((price) => price <= likely).length / DRAWS,
    drivers: listDrivers(question),
  });
}

function listDrivers(question: RangeQuestion): Driver[] {
  const swings = [question.job, ...question.factors].map((one) => {
    const at = (end: keyof Triangular) =>
      priceAt(question, (other) => (other === one ? end : 'likely'));
    return { name: one.name, atLow: at('low'), atHigh: at('high') };
  });
  const all = swings.reduce((sum, { atLow, atHigh }) => sum + (atHigh - atLow), 0);
  return swings
    .map((one) => ({ ...one, share: all === 0 ? 0 : (one.atHigh - one.atLow) / all }))
    .sort((one, other) => other.share - one.share);
}

/** With one of the three of each factor, and of the job's. */
function priceAt(
  { factors, job, priceOf }: RangeQuestion,
  endOf: (one: Unsure) => keyof Triangular,
): number {
  return priceOf(factors.map((factor) => factor[endOf(factor)] * job[endOf(job)]));
}

/** Between the two nearest of the sorted, in proportion. */
function quantileOf(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const [from, to] = [sorted[below], sorted[Math.min(below + 1, sorted.length - 1)]];
  if (from === undefined || to === undefined) throw new RangeError('No price was drawn.');
  return from + (to - from) * (place - below);
}
