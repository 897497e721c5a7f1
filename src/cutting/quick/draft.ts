import { entryAt } from '../entry-at.ts';
import type { CutList } from './cut-list.ts';
import { canServe, exchange, shortestKind, type Need } from './exchange.ts';
import type { Opening } from './opening.ts';
import { pack, type Packing } from './pack.ts';
import type { StickProblem } from '../problem/problem.ts';
import type { StickKind } from '../stick-kind.ts';

/** A plan before it is written out: who shares a stick, and of which kind the stick is. */
export interface Draft {
  readonly list: CutList;
  readonly opening: Opening;
  /** The stick of each block, or -1. */
  readonly stickOf: Int32Array;
  /** The kind of each stick, by its place; -1 where the stick stays empty. */
  readonly kindOf: Int32Array;
  readonly unservedCount: number;
  /** What the unserved pieces measure together, in units. */
  readonly unservedLength: number;
  /** How many parts spliced pieces are cut into, all together. */
  readonly partCount: number;
  /** Of the sticks and their labor. */
  readonly costCents: number;
  readonly stickCount: number;
  readonly longestOffcut: number;
}

/** Packs a list in one way, mends what can be mended, and exchanges the sticks for the cheapest. */
export function makeDraft(
  problem: StickProblem,
  kinds: readonly StickKind[],
  list: CutList,
  opening: Opening,
  order: readonly number[],
): Draft {
  const packing = pack(list.blocks, order, kinds, opening);
  const need: Need = kinds.map(() => 0);
  dropBrokenSplices(list, packing);
  for (const used of packing.used) if (used > 0) addNeed(need, shortestKind(kinds, used), 1);
  placeLeftovers(list, packing, kinds, need);
  const exchanged = exchange(kinds, need);
  if (exchanged === undefined) throw new RangeError('A packing used more sticks than there are.');
  const kindOf = handOut(packing.used, kinds, exchanged.take);
  const unserved = new Set<number>();
  list.blocks.forEach((block, at) => {
    if (entryAt(packing.stickOf, at) < 0) for (const demand of block.demands) unserved.add(demand);
  });
  const offcuts = packing.used.map((used, stick) => {
    const kind = kinds[kindOf[stick] ?? -1];
    return kind === undefined ? 0 : kind.capacity - problem.kerf - used;
  });
  return {
    list,
    opening,
    stickOf: packing.stickOf,
    kindOf,
    unservedCount: unserved.size + list.unservable.length,
    unservedLength: [...unserved].reduce((sum, at) => sum + entryAt(problem.demands, at).length, 0),
    partCount: list.blocks.reduce(
      (sum, { pieces: [first] }, at) =>
        sum + (first?.part !== undefined && entryAt(packing.stickOf, at) >= 0 ? 1 : 0),
      0,
    ),
    costCents: exchanged.costCents,
    stickCount: packing.used.filter((used) => used > 0).length,
    longestOffcut: offcuts.reduce((most, offcut) => Math.max(most, offcut), 0),
  };
}

/** What serves more pieces is better, then more length of them, fewer parts of spliced pieces, less cost, fewer sticks, a longer single offcut. */
export function isBetter(one: Draft, than: Draft): boolean {
  const differences = [
    one.unservedCount - than.unservedCount,
    one.unservedLength - than.unservedLength,
    one.partCount - than.partCount,
    one.costCents - than.costCents,
    one.stickCount - than.stickCount,
    than.longestOffcut - one.longestOffcut,
  ];
  return (differences.find((difference) => difference !== 0) ?? 0) < 0;
}

/** A spliced piece of which one part found no stick gives back the sticks of the others. */
function dropBrokenSplices(list: CutList, { stickOf, used }: Packing): void {
  const broken = new Set<number>();
  list.blocks.forEach((block, at) => {
    if (entryAt(stickOf, at) < 0) for (const demand of block.demands) broken.add(demand);
  });
  if (broken.size === 0) return;
  list.blocks.forEach((block, at) => {
    const stick = entryAt(stickOf, at);
    if (stick < 0 || !block.demands.some((demand) => broken.has(demand))) return;
    stickOf[at] = -1;
    used[stick] = entryAt(used, stick) - block.weight;
  });
}

/** Sticks looked at, at most, for room for what was left over. */
const MOST_LOOKS = 200_000;

/**
 * Sticks were begun of one kind or another, though a shorter may hold what came into them: seen so,
 * there may be one yet for a block that found none.
 */
function placeLeftovers(
  list: CutList,
  { stickOf, used }: Packing,
  kinds: readonly StickKind[],
  need: Need,
): void {
  let looks = MOST_LOOKS;
  const grow = (stick: number, weight: number): boolean => {
    const before = used[stick] ?? 0;
    const after = shortestKind(kinds, before + weight);
    if (after < 0) return false;
    if (before > 0) addNeed(need, shortestKind(kinds, before), -1);
    addNeed(need, after, 1);
    if (canServe(kinds, need)) {
      used[stick] = before + weight;
      return true;
    }
    addNeed(need, after, -1);
    if (before > 0) addNeed(need, shortestKind(kinds, before), 1);
    return false;
  };
  list.blocks.forEach((block, at) => {
    if (entryAt(stickOf, at) >= 0 || block.demands.some((demand) => list.spliced.has(demand)))
      return;
    const begun = used.length;
    let stick = begun;
    if (!grow(begun, block.weight)) {
      looks -= begun;
      stick = looks < 0 ? -1 : used.findIndex((_, other) => grow(other, block.weight));
    }
    if (stick >= 0) stickOf[at] = stick;
  });
}

function addNeed(need: Need, place: number, by: number): void {
  need[place] = entryAt(need, place) + by;
}

/** Names each stick's kind: of sticks that need the same, the fullest get the shortest. */
function handOut(
  used: readonly number[],
  kinds: readonly StickKind[],
  take: readonly (readonly number[])[],
): Int32Array {
  const kindOf = new Int32Array(used.length).fill(-1);
  const fullestFirst = used
    .map((weight, stick) => ({ weight, stick }))
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => b.weight - a.weight || a.stick - b.stick);
  const left = take.map((row) => [...row]);
  for (const { weight, stick } of fullestFirst) {
    const row = entryAt(left, shortestKind(kinds, weight));
    const place = row.findIndex((count) => count > 0);
    row[place] = entryAt(row, place) - 1;
    kindOf[stick] = place;
  }
  return kindOf;
}
