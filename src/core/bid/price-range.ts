/**
 * Between which figures a price is likely to end, and what moves it most: each rate and each waste drawn ten
 * thousand times by chance that repeats. What all of a job has in common is one of them: a job that goes
 * badly goes badly all round.
 */
import { failed, ok, type Outcome } from '../faults/fault.ts';
import { checkTriangular, computeTriangular, type Triangular } from './triangular.ts';

/** A rate or a waste that isn't known. */
export interface Unsure extends Triangular {
  readonly name: string;
}

export interface RangeQuestion {
  readonly factors: readonly Unsure[];
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

/** How many draws came to a price from `from` on and below `to`. */
export interface PriceBar {
  readonly from: number;
  readonly to: number;
  readonly draws: number;
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
  /** Side by side and of one width, a round one, from the least price drawn to the most. */
  readonly bars: readonly PriceBar[];
}

export const DRAWS = 10_000;
/** Eight jobs in ten lie within the band. */
const BAND = { low: 0.1, high: 0.9 } as const;
const MOST_BARS = 20;
const CENTS = 100;
/** Round numbers within each power of ten. */
const ROUND = [1, 2, 5, 10] as const;

/**
 * The band of a price, and its drivers: each factor's price at its high less that at its low, the others
 * likely; by these swings, not by shares of a variance, since anybody can work them out again.
 * @returns faults `bid.range-unsound`, `bid.range-out-of-order`, one for each factor at fault.
 */
export function computePriceRange(question: RangeQuestion): Outcome<PriceRange> {
  const { factors, priceOf, chance } = question;
  const faults = factors.flatMap((one) => checkTriangular(one.name, one));
  if (faults.length > 0) return failed(...faults);
  const prices = Float64Array.from({ length: DRAWS }, () =>
    priceOf(factors.map((factor) => computeTriangular(factor, chance()))),
  ).sort();
  const likely = priceAt(question, () => 'likely');
  return ok({
    low: quantileOf(prices, BAND.low),
    likely,
    high: quantileOf(prices, BAND.high),
    middle: quantileOf(prices, 1 / 2),
    holds: prices.filter((price) => price <= likely).length / DRAWS,
    drivers: listDrivers(question),
    bars: listBars(prices),
  });
}

function listDrivers(question: RangeQuestion): Driver[] {
  const swings = question.factors.map((one) => {
    const at = (end: keyof Triangular) =>
      priceAt(question, (other) => (other === one ? end : 'likely'));
    return { name: one.name, atLow: at('low'), atHigh: at('high') };
  });
  const all = swings.reduce((sum, { atLow, atHigh }) => sum + (atHigh - atLow), 0);
  return swings
    .map((one) => ({ ...one, share: all === 0 ? 0 : (one.atHigh - one.atLow) / all }))
    .sort((one, other) => other.share - one.share);
}

/** With one of the three of each factor. */
function priceAt(
  { factors, priceOf }: RangeQuestion,
  endOf: (one: Unsure) => keyof Triangular,
): number {
  return priceOf(factors.map((factor) => factor[endOf(factor)]));
}

/** Between the two nearest of the sorted, in proportion. */
function quantileOf(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const [from, to] = [sorted[below], sorted[Math.min(below + 1, sorted.length - 1)]];
  if (from === undefined || to === undefined) throw new RangeError('No price was drawn.');
  return from + (to - from) * (place - below);
}

/** Counted in whole cents, so that a price on an edge is always above it. */
function listBars(sorted: Float64Array): PriceBar[] {
  const inCents = Array.from(sorted, (price) => Math.round(price * CENTS));
  const [least = 0, most = least] = [inCents[0], inCents.at(-1)];
  const width = roundUp((most - least) / (MOST_BARS - 1));
  const first = Math.floor(least / width);
  const counts = new Array<number>(Math.floor(most / width) - first + 1).fill(0);
  for (const price of inCents) {
    const at = Math.floor(price / width) - first;
    counts[at] = (counts[at] ?? 0) + 1;
  }
  return counts.map((draws, at) => ({
    from: ((first + at) * width) / CENTS,
    to: ((first + at + 1) * width) / CENTS,
    draws,
  }));
}

/** The least of 1, 2, 5, 10, 20 and so on that is no less; 1 at least. */
function roundUp(cents: number): number {
  const power = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, cents))));
  return power * (ROUND.find((one) => one * power >= cents) ?? 10);
}
