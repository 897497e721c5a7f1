import { entryAt } from './entry-at.ts';
import type { Instance, RelaxedSplice } from './column-generation/instance.ts';
import type { AskedSplice } from './column-generation/make-instance.ts';
import { spliceWays } from './column-generation/splice-ways.ts';
import { profilesOf, spliceRuleOf } from './problem/profiles.ts';
import { countOf, servesBlank, usableLength } from './problem/supplies.ts';
import type { SpliceRule, StickProblem } from './problem/problem.ts';
import type { CutList } from './quick/cut-list.ts';
import { fewestParts } from './problem/splice-parts.ts';

/** Lengths that a part is fitted beside, those asked for most first. */
const MOST_BESIDE = 24;

/** The spliced demands of a cut list, alike ones together, with the ways to cut them into as many parts as listed. */
export function askSplices(
  problem: StickProblem,
  lists: readonly CutList[],
  isServed: (demandId: string) => boolean,
): readonly AskedSplice[] {
  const profiles = profilesOf(problem);
  return lists.flatMap((list, profile) => {
    const own = entryAt(profiles, profile);
    const splice = spliceRuleOf(problem, own);
    if (splice === undefined || list.spliced.size === 0) return [];
    const usable = problem.supplies
      .filter((supply) => countOf(supply) > 0 && servesBlank(supply, own.blank))
      .map((supply) => usableLength(problem, supply));
    const beside = commonest(list);
    const parts = partsOf(list);
    const byLength = new Map<
      string,
      AskedSplice & { demands: number[]; ways: (readonly number[])[] }
    >();
    for (const at of list.spliced) {
      const demand = problem.demands[at];
      if (demand === undefined || !isServed(demand.id)) continue;
      const { length, joints } = demand;
      const asListed = parts.get(at) ?? [];
      // As many parts as the quick plan has: the fewest, or more where stock ran out.
      const count = asListed.length;
      const alike = JSON.stringify([length, count, joints]);
      const known = byLength.get(alike);
      const one = known ?? {
        profile,
        demands: [],
        ways: [...spliceWays(problem, splice, demand, usable, beside, count)],
      };
      byLength.set(alike, one);
      one.demands.push(at);
      const key = sortedKey(asListed);
      if (asListed.length > 1 && !one.ways.some((way) => sortedKey(way) === key)) {
        one.ways.push(asListed);
      }
    }
    return [...byLength.values()];
  });
}

/** What the spliced demands take up at least, of parts of any length. */
export function relaxSplices(
  problem: StickProblem,
  splices: readonly AskedSplice[],
  instance: Instance,
): readonly (readonly RelaxedSplice[])[] {
  return instance.profiles.map((named, profile) => {
    const rule = spliceRuleOf(problem, named);
    const longest = entryAt(instance.slotsOf, profile).reduce(
      (most, slot) => Math.max(most, entryAt(instance.slots, slot).capacity - problem.kerf),
      0,
    );
    const counts = new Map<number, number>();
    for (const { profile: own, demands } of splices) {
      if (own !== profile) continue;
      const { length } = entryAt(problem.demands, entryAt(demands, 0));
      counts.set(length, (counts.get(length) ?? 0) + demands.length);
    }
    return [...counts].map(([length, count]) => {
      const units = rule === undefined ? 0 : leastUnits(problem, rule, length, longest);
      return { length, units, count };
    });
  });
}

function leastUnits(
  { kerf }: StickProblem,
  { overlap }: SpliceRule,
  length: number,
  longest: number,
): number {
  const parts = length <= longest ? 1 : fewestParts(length, longest, overlap);
  return length + (parts - 1) * overlap + parts * kerf;
}

function commonest({ blocks }: CutList): readonly number[] {
  const counts = new Map<number, number>();
  for (const { pieces } of blocks) {
    const [only] = pieces;
    if (pieces.length !== 1 || only === undefined || only.part !== undefined) continue;
    counts.set(only.length, (counts.get(only.length) ?? 0) + 1);
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1] || b[0] - a[0])
    .slice(0, MOST_BESIDE)
    .map(([length]) => length);
}

/** The parts of each spliced demand as the list has them, in order. */
function partsOf({ blocks }: CutList): ReadonlyMap<number, readonly number[]> {
  const parts = new Map<number, number[]>();
  for (const { pieces, demands } of blocks) {
    const [only] = pieces;
    const demand = demands[0] ?? -1;
    if (only?.part === undefined) continue;
    const own = parts.get(demand) ?? [];
    own[only.part] = only.length;
    parts.set(demand, own);
  }
  return parts;
}

function sortedKey(parts: readonly number[]): string {
  return [...parts].sort((a, b) => b - a).join();
}
