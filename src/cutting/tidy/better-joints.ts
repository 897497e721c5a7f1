import { entryAt } from '../entry-at.ts';
import { jointWays } from '../problem/joint-ways.ts';
import type { StickDemand, StickProblem } from '../problem/problem.ts';
import { profilesOf, spliceRuleOf } from '../problem/profiles.ts';
import { capacityOf, usableLength } from '../problem/supplies.ts';
import type { Block } from '../quick/cut-list.ts';
import { weightOf, type WholeStick } from '../whole-stick.ts';
import { creditOf } from '../write-plan.ts';

/** Past so many parts there are too many orders to try. */
const MOST_PARTS = 4;

/** A part with the stick that it lies on, by its place. */
interface Lying {
  readonly stick: number;
  readonly block: Block;
}

/**
 * Cuts each spliced piece from the sticks that it comes from so that its joints lie where it wants them most:
 * for the same money, since no stick comes or goes and what offcuts are worth stays.
 */
export function betterJoints(
  problem: StickProblem,
  sticks: readonly WholeStick[],
): readonly WholeStick[] {
  const wanting = problem.demands.flatMap((demand, at) =>
    demand.firstJointsBest === true ? [[at, demand] as const] : [],
  );
  if (wanting.length === 0) return sticks;
  const partsOf = new Map<number, Lying[]>();
  sticks.forEach(({ blocks }, stick) => {
    for (const block of blocks) {
      const [only] = block.pieces;
      if (only?.part === undefined) continue;
      const demand = entryAt(block.demands, 0);
      const known = partsOf.get(demand) ?? [];
      partsOf.set(demand, known);
      known[only.part] = { stick, block };
    }
  });
  let best = sticks;
  for (const [at, demand] of wanting) {
    const parts = partsOf.get(at);
    if (parts !== undefined) best = recut(problem, best, demand, parts) ?? best;
  }
  return best;
}

/** @returns undefined where the joints lie where they are wanted most already, or no other way fits. */
function recut(
  problem: StickProblem,
  sticks: readonly WholeStick[],
  demand: StickDemand,
  parts: readonly Lying[],
): readonly WholeStick[] | undefined {
  const own = profilesOf(problem).find(
    ({ id }) => id === entryAt(sticks, entryAt(parts, 0).stick).profile,
  );
  const rule = own && spliceRuleOf(problem, own);
  if (rule === undefined || parts.length > MOST_PARTS) return undefined;
  const ranks = new Map(demand.joints?.map((at, rank) => [at, rank]));
  const rankOf = (lengths: readonly number[]): number => {
    let end = rule.overlap;
    return lengths
      .slice(0, -1)
      .reduce((sum, part) => sum + (ranks.get((end += part - rule.overlap)) ?? Infinity), 0);
  };
  const now = rankOf(parts.map(({ block }) => entryAt(block.pieces, 0).length));
  if (now === Infinity) return undefined;
  const rooms = parts.map(({ stick }) => usableLength(problem, entryAt(sticks, stick).supply));
  const ways = jointWays(demand, rule, parts.length, Math.max(...rooms))
    .map((lengths) => ({ lengths, rank: rankOf(lengths) }))
    .filter(({ rank }) => rank < now)
    .sort((one, other) => one.rank - other.rank);
  for (const { lengths } of ways) {
    for (const order of ordersOf(parts.length)) {
      const places = order.map((place) => entryAt(parts, place).stick);
      const changed = exchange(problem, sticks, parts, lengths, places);
      if (changed !== undefined) return changed;
    }
  }
  return undefined;
}

/** The sticks with new parts in place of the old ones; undefined where one is too short, or offcuts are worth less. */
function exchange(
  problem: StickProblem,
  sticks: readonly WholeStick[],
  parts: readonly Lying[],
  lengths: readonly number[],
  places: readonly number[],
): readonly WholeStick[] | undefined {
  const old = new Set(parts.map(({ block }) => block));
  const touched = new Set(places);
  const after = new Map(
    [...touched].map((place) => {
      const stick = entryAt(sticks, place);
      const fresh = lengths.flatMap((length, part): Block[] => {
        const { demands, pieces } = entryAt(parts, part).block;
        if (entryAt(places, part) !== place) return [];
        const { demandId } = entryAt(pieces, 0);
        return [{ weight: length + problem.kerf, pieces: [{ demandId, length, part }], demands }];
      });
      const blocks = [...stick.blocks.filter((block) => !old.has(block)), ...fresh];
      return [place, { ...stick, blocks: blocks.sort((a, b) => b.weight - a.weight) }] as const;
    }),
  );
  const changed = [...after.values()];
  if (changed.some((stick) => weightOf(stick) > capacityOf(problem, stick.supply))) {
    return undefined;
  }
  const profiles = profilesOf(problem);
  const before = [...touched].map((place) => entryAt(sticks, place));
  if (creditOf(problem, changed, profiles) !== creditOf(problem, before, profiles)) {
    return undefined;
  }
  return sticks.map((stick, place) => after.get(place) ?? stick);
}

/** Every order of so many places, from 0. */
function ordersOf(count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return ordersOf(count - 1).flatMap((order) =>
    Array.from({ length: count }, (_, at) => [
      ...order.slice(0, at),
      count - 1,
      ...order.slice(at),
    ]),
  );
}
