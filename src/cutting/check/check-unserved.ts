import { countOf, profileOf, roomOf, servesBlank, type ProblemIndex } from './indexed-problem.ts';
import type { StickDemand, StickPlan, StickSupply } from '../problem/problem.ts';

/**
 * Checks that the reason why a piece is unserved holds by the sticks that serve its profile, that no
 * stick which is still to be had would have served it, and that they stand in the order of the
 * demands. A part of `checkPlan`, see there.
 *
 * @param usedOf how many of a supply the plan uses
 */
export function checkUnserved(
  index: ProblemIndex,
  plan: StickPlan,
  usedOf: (supply: StickSupply) => number,
): readonly string[] {
  if (plan.unserved.length === 0) return [];
  const reach = new Map([...index.profiles.keys()].map((id) => [id, reachOf(index, id, usedOf)]));
  const groups = groupLengths(index);
  return [
    ...plan.unserved.flatMap(({ demandId, why }) => {
      const demand = index.demands.get(demandId);
      const own = demand && reach.get(profileOf(index, demand));
      if (demand === undefined || own === undefined) return [];
      const together = groups.get(demand.match ?? '') ?? demand.length;
      if (why === 'longer than every stick') return checkTooLong(index, demand, own.longest);
      if (why === 'matched group too long') {
        return together > own.longest
          ? []
          : [`The matched group of piece ${demandId} is not too long.`];
      }
      return own.fresh !== undefined && together <= roomOf(index, own.fresh)
        ? [`Piece ${demandId} is unserved and ${own.fresh.id} is not used up.`]
        : [];
    }),
    ...checkOrder(index, plan),
  ];
}

interface Reach {
  /** What the longest stick that serves the profile gives, had or not. */
  readonly longest: number;
  /** The longest supply that serves the profile and is not used up. */
  readonly fresh?: StickSupply;
}

function reachOf(
  index: ProblemIndex,
  profile: string,
  usedOf: (supply: StickSupply) => number,
): Reach {
  const blank = index.profiles.get(profile)?.blank ?? '';
  const serving = index.problem.supplies.filter((supply) => servesBlank(supply, blank));
  const longest = serving.reduce((most, supply) => Math.max(most, roomOf(index, supply)), 0);
  const fresh = serving
    .filter((supply) => usedOf(supply) < countOf(supply))
    .reduce<StickSupply | undefined>(
      (best, supply) => (best === undefined || supply.length > best.length ? supply : best),
      undefined,
    );
  return fresh === undefined ? { longest } : { longest, fresh };
}

/** What one stick has to give for each matched group: its lengths with the kerfs between. */
function groupLengths({ problem, groups }: ProblemIndex): ReadonlyMap<string, number> {
  return new Map(
    [...groups].map(([match, group]) => {
      const sum = group.reduce((total, { length }) => total + length, 0);
      return [match, sum + problem.kerf * (group.length - 1)];
    }),
  );
}

function checkTooLong(
  index: ProblemIndex,
  demand: StickDemand,
  longest: number,
): readonly string[] {
  if (demand.length <= longest) return [`Piece ${demand.id} is not longer than every stick.`];
  const rule = index.profiles.get(profileOf(index, demand))?.splice ?? index.problem.splice;
  const isWhole = demand.onePiece || (demand.match ?? '') !== '';
  if (isWhole || rule === undefined) return [];
  const { overlap, grid = 1 } = rule;
  const longestPart = Math.floor(longest / grid) * grid;
  return overlap < longestPart ? [`Piece ${demand.id} could be spliced.`] : [];
}

function checkOrder({ problem }: ProblemIndex, plan: StickPlan): readonly string[] {
  const place = new Map(problem.demands.map(({ id }, at) => [id, at]));
  return plan.unserved.flatMap(({ demandId }, at) => {
    const before = plan.unserved[at - 1];
    const isEarlier =
      before !== undefined && (place.get(demandId) ?? 0) < (place.get(before.demandId) ?? 0);
    return isEarlier ? [`Unserved ${demandId} stands after a later piece.`] : [];
  });
}
