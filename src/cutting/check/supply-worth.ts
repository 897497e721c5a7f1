import { bestFills, worthCutAtWill, type Fills, type ValuedBlock } from './knapsack.ts';
import { creditRule, laborFor, roomOf, servesBlank, type ProblemIndex } from './indexed-problem.ts';
import type { StickBound, StickProfile, StickSupply } from '../problem/problem.ts';
import { restWorths } from './rest-of-strip.ts';
import type { Served } from './served-blocks.ts';

/** A bound as it is checked, with the problem and what the plan serves. */
export interface BoundRead {
  readonly index: ProblemIndex;
  readonly bound: StickBound;
  readonly served: Served;
  /** Cents for each unit of a splice, by profile. */
  readonly rates: ReadonlyMap<string, number>;
  /** How many of what all is counted in make a cent: a power of two. */
  readonly grains: number;
  /** What would take long, or can't be worked out exactly, is left out. */
  readonly isQuick: boolean;
}

export interface SupplyWorth {
  readonly supply: StickSupply;
  /** Grains that the most which can be cut from one stick or board is worth, in its best rip. */
  readonly most: bigint;
  /** False where lengths had to be rounded, so that it may be less, or it was not worked out. */
  readonly isExact: boolean;
}

/** What each supply is worth by a bound's duals. A part of `checkBound`, see there. */
export function supplyWorths(
  read: BoundRead,
  supplies: readonly StickSupply[],
): readonly SupplyWorth[] {
  const profiles = [...read.index.profiles.values()];
  const cutters = profiles.map((profile) => stripWorth(read, profile, supplies));
  const blanks = [...new Set(profiles.map(({ blank }) => blank))];
  return supplies.map((supply) => {
    const ways = supply.rips ?? blanks.map((blank) => [{ blank, count: supply.strips }]);
    const together = ways.map((way, rip) =>
      way.reduce((sum, { blank, count }) => {
        const own = cutters.filter((cutter) => cutter.blank === blank);
        const worth = own.reduce((best, { worthOf }) => Math.max(best, worthOf(supply, rip)), 0);
        return sum + BigInt(count) * BigInt(worth);
      }, 0n),
    );
    const most = together.reduce((best, one) => (one > best ? one : best), 0n);
    return { supply, most, isExact: cutters.every((cutter) => cutter.isExact) };
  });
}

interface StripWorth {
  readonly blank: string;
  readonly isExact: boolean;
  /** Grains that the most which can be cut from one strip of a supply is worth less its labor, by the rip it is of. */
  readonly worthOf: (supply: StickSupply, rip: number) => number;
}

function stripWorth(
  { index, served, rates, grains, isQuick }: BoundRead,
  profile: StickProfile,
  usable: readonly StickSupply[],
): StripWorth {
  const { kerf } = index.problem;
  const { blank } = profile;
  const longest = usable
    .filter((supply) => servesBlank(supply, blank))
    .reduce((most, supply) => Math.max(most, roomOf(index, supply) + kerf), 0);
  const blocks = countBlocks(served, profile.id, grains);
  const isSpliced = served.splices.some((splice) => splice.profile === profile.id);
  const rate = isSpliced ? (rates.get(profile.id) ?? 0) * grains : 0;
  const fills = bestFills(blocks, longest, isQuick);
  const parts = rate > 0 ? [{ weight: 1, worth: rate, count: longest }] : [];
  const rests = new Map<number, (rest: number) => number>();
  const known = new Map<string, number>();
  const worthOf = (supply: StickSupply, rip: number): number => {
    const capacity = roomOf(index, supply) + kerf;
    const rule = creditRule(index, profile, supply, rip);
    // Rooms tell lengths apart: all sticks lose the same end trims.
    const key = `${capacity} ${rule.mostCents}`;
    const restOf = rests.get(rule.mostCents) ?? restWorths(rule, kerf, rate, grains, longest);
    rests.set(rule.mostCents, restOf);
    let worth = known.get(key) ?? mostOf(fills, capacity, restOf, isSpliced ? rate : -1);
    if (!fills.isExact && rule.mostCents === 0 && !known.has(key)) {
      worth = Math.min(worth, worthCutAtWill([...blocks, ...parts], capacity));
    }
    known.set(key, worth);
    return Math.max(0, worth - laborFor(profile, supply) * grains);
  };
  return { blank, isExact: fills.isExact, worthOf };
}

/** @param part grains that the least of a splice is worth; less than 0 where none is spliced */
function mostOf(
  { weights, worths }: Fills,
  capacity: number,
  restOf: (rest: number) => number,
  part: number,
): number {
  let most = part < 0 ? 0 : part + restOf(capacity - 1);
  for (let at = 0; at < weights.length; at += 1) {
    const rest = capacity - (weights[at] ?? 0);
    if (rest < 0) break;
    most = Math.max(most, (worths[at] ?? 0) + restOf(rest));
  }
  return most;
}

/** Blocks of a profile that are alike, counted. */
function countBlocks({ blocks }: Served, profile: string, grains: number): readonly ValuedBlock[] {
  const counted = new Map<string, { weight: number; worth: number; count: number }>();
  for (const { profile: own, weight, cents } of blocks) {
    if (own !== profile) continue;
    const key = `${weight} ${cents}`;
    const alike = counted.get(key);
    if (alike === undefined) counted.set(key, { weight, worth: cents * grains, count: 1 });
    else alike.count += 1;
  }
  return [...counted.values()];
}
