import { countOf, profileOf, roomOf, servesBlank, type ProblemIndex } from './indexed-problem.ts';
import type { StickBound, StickDemand, StickPlan } from '../problem/problem.ts';

/** A served piece, or a matched group of them, that is cut in one. */
export interface ServedBlock {
  readonly profile: string;
  /** The lengths with a kerf each, in the planner's units. */
  readonly weight: number;
  /** The shortest piece in it with its kerf. */
  readonly lightest: number;
  readonly cents: number;
}

/** A spliced piece. */
export interface ServedSplice {
  readonly demandId: string;
  readonly profile: string;
  readonly cents: number;
  /** What its fewest parts take up, the overlaps and a kerf each with them. */
  readonly leastUnits: number;
}

export interface Served {
  readonly blocks: readonly ServedBlock[];
  readonly splices: readonly ServedSplice[];
}

/** What a plan serves, each with what a bound says that it is worth; 0 where it says nothing. */
export function readServed(index: ProblemIndex, plan: StickPlan, bound: StickBound): Served {
  const unserved = new Set(plan.unserved.map(({ demandId }) => demandId));
  const spliced = new Set<string>();
  for (const { pieces } of plan.sticks) {
    for (const { demandId, part } of pieces) if (part !== undefined) spliced.add(demandId);
  }
  const duals = new Map(bound.duals.map((dual) => [dualKey(dual), dual.cents]));
  const centsOf = (key: Parameters<typeof dualKey>[0]): number => duals.get(dualKey(key)) ?? 0;
  const longest = longestRooms(index);
  const { kerf } = index.problem;
  const blocks: ServedBlock[] = [];
  const splices: ServedSplice[] = [];
  for (const demand of index.problem.demands) {
    const { id, length, match = '' } = demand;
    if (unserved.has(id)) continue;
    const profile = profileOf(index, demand);
    if (spliced.has(id)) {
      const leastUnits = unitsOfFewestParts(index, demand, longest.get(profile) ?? 0);
      const cents = centsOf({ length, profile, spliced: true });
      splices.push({ demandId: id, profile, cents, leastUnits });
    } else if (match === '') {
      const weight = length + kerf;
      blocks.push({ profile, weight, lightest: weight, cents: centsOf({ length, profile }) });
    }
  }
  for (const [match, group] of index.groups) {
    const served = group.filter(({ id }) => !unserved.has(id) && !spliced.has(id));
    const [first] = served;
    if (first === undefined) continue;
    const profile = profileOf(index, first);
    const length = served.reduce((sum, one) => sum + one.length, 0);
    const own = duals.get(dualKey({ length, profile, match }));
    blocks.push({
      profile,
      weight: length + kerf * served.length,
      lightest: served.reduce((least, one) => Math.min(least, one.length), Infinity) + kerf,
      cents: own ?? served.reduce((sum, one) => sum + centsOf({ length: one.length, profile }), 0),
    });
  }
  return { blocks, splices };
}

/** What a line of a bound's duals is about. */
export function dualKey({
  length,
  profile,
  spliced = false,
  match = '',
}: {
  readonly length: number;
  readonly profile: string;
  readonly spliced?: boolean;
  readonly match?: string;
}): string {
  return JSON.stringify([length, spliced, match, profile]);
}

/** The longest part that any stick gives that can be had, by profile. */
function longestRooms(index: ProblemIndex): ReadonlyMap<string, number> {
  return new Map(
    [...index.profiles.values()].map(({ id, blank }) => [
      id,
      index.problem.supplies
        .filter((supply) => countOf(supply) > 0 && servesBlank(supply, blank))
        .reduce((most, supply) => Math.max(most, roomOf(index, supply)), 0),
    ]),
  );
}

/** Derived: n parts of p at most reach n·p - (n - 1)·overlap. */
function unitsOfFewestParts(index: ProblemIndex, demand: StickDemand, longest: number): number {
  const { kerf, splice } = index.problem;
  const overlap = (index.profiles.get(profileOf(index, demand))?.splice ?? splice)?.overlap ?? 0;
  let parts = 1;
  if (demand.length > longest && longest > overlap) {
    parts = Math.ceil((demand.length - overlap) / (longest - overlap));
  }
  return demand.length + (parts - 1) * overlap + parts * kerf;
}
