import { gcd } from '../greatest-divisor.ts';
import { compareRates, marginalRates, rateOf, type Rate } from './pour-volume.ts';
import type { StickBound, StickDemand, StickProblem } from '../problem/problem.ts';
import { fewestParts } from '../problem/splice-parts.ts';
import { longestPiece, stickKinds, type StickKind } from '../stick-kind.ts';

/** What is to be cut: the demands that a plan serves, and which of them it splices. */
export interface Served {
  readonly whole: readonly StickDemand[];
  readonly spliced: readonly StickDemand[];
}

/**
 * The least that the served demands can cost by volume alone: their lengths with a kerf each, poured
 * into the sticks that are long enough and cheapest by length, limited ones up to their count.
 *
 * @returns the bound with its duals and credits, see StickBound; it is never above the true least
 *   cost, for it is worked in whole numbers and rounded down before the last step
 *
 * Derived: a stick's capacity is its length less both end trims and one kerf more, so its pieces,
 * each with a kerf, sum to at most that. A piece's dual is its length and kerf times a price of
 * length for the shortest kind that holds it; a stick or board is worth at most its strips times its
 * capacity times the highest price among what fits it. What that is above its own price is its
 * credit; the prices are such that an unlimited kind needs none. A spliced piece may lie in any kind
 * and counts with the overlaps and kerfs of its fewest joints.
 */
export function volumeBound(problem: StickProblem, served: Served): StickBound {
  const kinds = stickKinds(problem);
  const asked = askedFor(problem, kinds, served);
  const volumes = kinds.map((_, place) =>
    asked
      .filter((one) => one.place === place)
      .reduce((sum, { weight, count }) => sum + weight * count, 0),
  );
  const rates = marginalRates(kinds, volumes);
  const rateAt = (place: number): Rate => rates[place] ?? { cents: 0n, units: 1n };
  const scale = exactScale(
    asked.reduce((sum, one) => sum + worth(one.weight * one.count, rateAt(one.place), 1n), 0n),
  );
  const duals = asked.map((one) => ({
    ...one,
    scaled: worth(one.weight, rateAt(one.place), scale),
  }));
  const places = [...new Set(asked.map(({ place }) => place))];
  const credits = kinds.flatMap((kind, place) => {
    const fitting = places.filter((shortest) => shortest <= place);
    const scaled = creditOf(kind, fitting.map(rateAt), scale);
    return scaled > 0n ? [{ kind, scaled }] : [];
  });
  const total =
    duals.reduce((sum, { scaled, count }) => sum + scaled * BigInt(count), 0n) -
    credits.reduce((sum, { kind, scaled }) => sum + scaled * BigInt(kind.count), 0n);
  const toCents = (scaled: bigint): number => Number(scaled) / Number(scale);
  return {
    costCents: Number(roundUp(total, scale * commonDivisor(kinds, asked)) / scale),
    duals: duals.map(({ length, scaled }) => ({ length, profile: '', cents: toCents(scaled) })),
    credits: credits.map(({ kind, scaled }) => ({
      supplyId: kind.supply.id,
      cents: toCents(scaled),
    })),
  };
}

/** A served length: how often, what it weighs with its kerfs, and the shortest kind for it. */
interface Asked {
  readonly length: number;
  readonly count: number;
  readonly weight: number;
  readonly place: number;
}

/** The served lengths, longest first, each once. */
function askedFor(
  problem: StickProblem,
  kinds: readonly StickKind[],
  { whole, spliced }: Served,
): readonly Asked[] {
  const counts = new Map<number, number>();
  for (const { length } of [...whole, ...spliced]) {
    counts.set(length, (counts.get(length) ?? 0) + 1);
  }
  // Where only some of a length are spliced, all of it counts as what is worth less: any kind does.
  const anyKind = new Set(spliced.map(({ length }) => length));
  return [...counts]
    .sort(([a], [b]) => b - a)
    .map(([length, count]) => {
      const weight = leastWeight(problem, kinds, length);
      const place = anyKind.has(length) ? 0 : kinds.findIndex(({ capacity }) => capacity >= weight);
      return { length, count, weight, place };
    });
}

/** The length with its kerf; where it can only be spliced, with what its fewest joints take. */
function leastWeight(problem: StickProblem, kinds: readonly StickKind[], length: number): number {
  const longest = longestPiece(problem, kinds);
  if (length <= longest || problem.splice === undefined) return length + problem.kerf;
  const { overlap } = problem.splice;
  const parts = fewestParts(length, longest, overlap);
  return length + (parts - 1) * overlap + parts * problem.kerf;
}

/** Cents that so many units are worth at a rate, rounded down to a whole 1/scale of a cent. */
function worth(units: number, rate: Rate, scale: bigint): bigint {
  return (BigInt(units) * rate.cents * scale) / rate.units;
}

/** What a stick or board is worth above its price at the highest rate, in 1/scale of a cent. */
function creditOf(kind: StickKind, rates: readonly Rate[], scale: bigint): bigint {
  const highest = [...rates].sort((a, b) => compareRates(b, a))[0];
  if (highest === undefined) return 0n;
  const full = rateOf(kind).units * highest.cents * scale;
  return divideUp(full, highest.units) - BigInt(kind.priceCents) * scale;
}

/** The finest power of two, at most 2^20, that keeps sums of so many cents exact as numbers. */
function exactScale(cents: bigint): bigint {
  let scale = 2n ** 20n;
  while (scale > 1n && (cents + 1n) * scale > BigInt(Number.MAX_SAFE_INTEGER)) scale /= 2n;
  return scale;
}

/** Of the prices of every kind that something served can be cut from. */
function commonDivisor(kinds: readonly StickKind[], asked: readonly Asked[]): bigint {
  const shortest = asked.reduce((least, { place }) => Math.min(least, place), kinds.length);
  const divisor = kinds.slice(shortest).reduce((common, kind) => gcd(common, kind.priceCents), 0);
  return BigInt(Math.max(1, divisor));
}

function divideUp(dividend: bigint, divisor: bigint): bigint {
  return (dividend + divisor - 1n) / divisor;
}

/** The least multiple of `step` from `value` up, 0 for what is less than 0. */
function roundUp(value: bigint, step: bigint): bigint {
  return value <= 0n ? 0n : divideUp(value, step) * step;
}
