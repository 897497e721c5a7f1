import { makeCutList, type CutList, type PartLength } from './cut-list.ts';
import { isBetter, makeDraft, type Draft } from './draft.ts';
import { MOST_PLANNED_PIECES } from '../problem/limits.ts';
import { openings, type Opening } from './opening.ts';
import type { StickDemand, StickProblem } from '../problem/problem.ts';
import { jointWays } from '../problem/joint-ways.ts';
import { seededChance } from '../seeded-chance.ts';
import {
  evenPart,
  fewestParts,
  longestEndlessPart,
  longestPartOf,
} from '../problem/splice-parts.ts';
import { longestPiece, type StickKind } from '../stick-kind.ts';

/** So many shuffled orders are tried at most, fewer where there are many pieces. */
const MOST_SHUFFLES = 400;
const MOST_SHUFFLED_PIECES = 400_000;

/**
 * The quick plans: best fit, first fit and fullest sticks in every opening, then other splices, then,
 * where a limited stock left pieces unserved, shuffled orders and splices of what was left over.
 * Each step hands over the best draft so far.
 */
export function* quickPlans(
  problem: StickProblem,
  kinds: readonly StickKind[],
  seed: number,
): Generator<Draft, void> {
  const longest = longestPartOf(problem, longestPiece(problem, kinds));
  const overlong = (demand: StickDemand): boolean => demand.length > longest && longest > 0;
  const partLongest: PartLength = (demand) => (overlong(demand) ? longest : undefined);
  const cut = (partLength: PartLength): CutList => makeCutList(problem, kinds, partLength);
  const draft = (list: CutList, opening: Opening): Draft =>
    makeDraft(problem, kinds, list, opening, [...list.blocks.keys()]);

  const list = cut(partLongest);
  const [first, ...others] = openings(kinds, list.blocks[0]?.weight ?? 0);
  let best = draft(list, first);
  yield best;
  for (const opening of others) {
    best = better(best, draft(list, opening));
    yield best;
  }
  for (const partLength of otherSplices(problem, kinds, longest, list.spliced)) {
    best = better(best, draft(cut(partLength), best.opening));
    yield best;
  }
  for (best of shuffles(problem, kinds, best, seed)) yield best;
  for (const partLength of rescueSplices(problem, kinds, best)) {
    const rescued = cut(partLength);
    for (const opening of openings(kinds, rescued.blocks[0]?.weight ?? 0)) {
      best = better(best, draft(rescued, opening));
      yield best;
    }
  }
  for (best of shuffles(problem, kinds, best, seed + 1)) yield best;
}

function better(best: Draft, other: Draft): Draft {
  return isBetter(other, best) ? other : best;
}

/** Part lengths of the kinds that need no more joints than the longest, and even parts. */
function otherSplices(
  problem: StickProblem,
  kinds: readonly StickKind[],
  longest: number,
  spliced: ReadonlySet<number>,
): readonly PartLength[] {
  const { splice } = problem;
  if (splice === undefined || spliced.size === 0) return [];
  const { overlap, grid } = splice;
  const even = (demand: StickDemand): number => {
    const count = fewestParts(demand.length, longest, overlap);
    const ways = jointWays(demand, splice, count, longest);
    return ways.length > 0
      ? Math.min(...ways.map((parts) => Math.max(...parts)))
      : evenPart(demand.length, longest, overlap, grid);
  };
  const shorter = shorterParts(problem, kinds, overlap).filter((part) => part < longest);
  return [0, ...shorter].map((part): PartLength => (demand, index) => {
    if (!spliced.has(index)) return undefined;
    const least = even(demand);
    return part === 0 ? least : part >= least ? part : longest;
  });
}

/**
 * Pieces that found no stick, cut in parts from sticks of each length: the last resort, where the
 * sticks that would hold them whole are used up.
 */
function rescueSplices(
  problem: StickProblem,
  kinds: readonly StickKind[],
  best: Draft,
): readonly PartLength[] {
  const overlap = problem.splice?.overlap;
  const left = new Set(leftOver(best));
  if (overlap === undefined || left.size === 0) return [];
  const parts = shorterParts(problem, kinds, overlap);
  const longest = parts.at(-1) ?? 0;
  const inReason = parts.filter((part) => {
    const count = problem.demands.reduce(
      (sum, { length }, at) => sum + fewestParts(length, left.has(at) ? part : longest, overlap),
      0,
    );
    return count <= MOST_PLANNED_PIECES;
  });
  const endless = longestEndlessPart(problem);
  const partsOf = (length: number, part: number): number => fewestParts(length, part, overlap);
  return inReason.map((part): PartLength => (demand, index) => {
    const { length } = demand;
    if (left.has(index)) {
      const isMore = endless > overlap && partsOf(length, part) > partsOf(length, endless);
      return isMore ? endless : part;
    }
    return demand.length > longest ? longest : undefined;
  });
}

function shorterParts(
  problem: StickProblem,
  kinds: readonly StickKind[],
  overlap: number,
): readonly number[] {
  // A part that is little but overlap would come in absurd numbers.
  const least = 2 * overlap;
  return [
    ...new Set(kinds.map((kind) => longestPartOf(problem, kind.capacity - problem.kerf))),
  ].filter((part) => part > least);
}

/** Demands that the stock left over, by their place. */
function leftOver(draft: Draft): readonly number[] {
  return draft.list.blocks.flatMap((block, at) =>
    (draft.stickOf[at] ?? -1) < 0 ? block.demands : [],
  );
}

/** While the stock leaves pieces over: the same list in orders that are shaken a little or a lot. */
function* shuffles(
  problem: StickProblem,
  kinds: readonly StickKind[],
  from: Draft,
  seed: number,
): Generator<Draft, void> {
  let best = from;
  const { list } = from;
  const ways = openings(kinds, list.blocks[0]?.weight ?? 0).filter(({ fit }) => fit !== 'fullest');
  const chance = seededChance(seed);
  const tries = Math.min(MOST_SHUFFLES, Math.ceil(MOST_SHUFFLED_PIECES / (list.blocks.length + 1)));
  for (let at = 0; at < tries && leftOver(best).length > 0; at += 1) {
    const opening = ways[Math.floor(chance() * ways.length)] ?? from.opening;
    const shake = 0.1 + 0.9 * chance();
    const keys = list.blocks.map((block) => block.weight * (1 + shake * (chance() - 0.5)));
    const order = [...list.blocks.keys()].sort((a, b) => (keys[b] ?? 0) - (keys[a] ?? 0) || a - b);
    best = better(best, makeDraft(problem, kinds, list, opening, order));
    yield best;
  }
}
