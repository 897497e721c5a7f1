import type { SpliceRule, StickDemand } from './problem.ts';
import { leastPartOf } from './splice-parts.ts';

/** Ways that are looked through at most. */
const MOST_WAYS = 400;

/**
 * The ways to cut a spliced piece into `count` parts whose joints all lie where the piece wants them: the
 * parts from its left end to its right, those with the longest parts first. Of ways with the same
 * lengths in another order the one stands whose joints are wanted most. None where the piece wants
 * its joints nowhere, or can't have them there.
 *
 * @param longest the longest part that may be, in the planner's units
 */
export function jointWays(
  { length, joints }: StickDemand,
  rule: SpliceRule,
  count: number,
  longest: number,
): readonly (readonly number[])[] {
  if (joints === undefined || joints.length === 0 || count < 2) return [];
  const { overlap } = rule;
  const least = leastPartOf(rule, length, count);
  const fits = (part: number): boolean => part >= least && part <= longest;
  const ranks = new Map(joints.map((at, rank) => [at, rank]));
  const rightFirst = [...ranks.keys()].sort((a, b) => b - a);
  const ends = new Map<string, boolean>();
  /** Whether what lies right of a joint can be cut into so many parts. */
  const canEnd = (from: number, parts: number): boolean => {
    const key = `${from} ${parts}`;
    const known = ends.get(key);
    if (known !== undefined) return known;
    const can =
      parts === 1
        ? fits(length - from + overlap)
        : rightFirst.some((at) => fits(at - from + overlap) && canEnd(at, parts - 1));
    ends.set(key, can);
    return can;
  };
  const found = new Map<string, { parts: readonly number[]; sorted: number[]; rank: number }>();
  let looked = 0;
  const walk = (parts: readonly number[], from: number, rank: number): void => {
    if (parts.length === count - 1) {
      const whole = [...parts, length - from + overlap];
      const sorted = [...whole].sort((a, b) => b - a);
      const known = found.get(sorted.join());
      looked += 1;
      if (known === undefined || rank < known.rank) {
        found.set(sorted.join(), { parts: whole, sorted, rank });
      }
      return;
    }
    for (const at of rightFirst) {
      const part = parts.length === 0 ? at : at - from + overlap;
      if (looked >= MOST_WAYS || !fits(part)) continue;
      if (!canEnd(at, count - 1 - parts.length)) continue;
      walk([...parts, part], at, rank + (ranks.get(at) ?? 0));
    }
  };
  walk([], 0, 0);
  return [...found.values()]
    .sort((a, b) => byLongest(a.sorted, b.sorted))
    .map(({ parts }) => parts);
}

function byLongest(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((part, place) => part !== other[place]);
  return at < 0 ? 0 : (other[at] ?? 0) - (one[at] ?? 0);
}
