import { entryAt } from '../entry-at.ts';
import type {
  PlannedPiece,
  SpliceRule,
  StickDemand,
  StickPlan,
  StickProblem,
} from '../problem/problem.ts';
import { jointWays } from '../problem/joint-ways.ts';
import {
  fewestParts,
  isMatched,
  leastPartOf,
  longestEndlessPart,
  maySplice,
  spliceParts,
} from '../problem/splice-parts.ts';
import { usableLength } from '../problem/supplies.ts';
import { longestPiece, type StickKind } from '../stick-kind.ts';

/** What is cut from one stick together: a piece, a part of one, or a matched group. */
export interface Block {
  /** The lengths with a kerf each, in the planner's units. */
  readonly weight: number;
  readonly pieces: readonly PlannedPiece[];
  /** The demands in it, by their place in the problem. */
  readonly demands: readonly number[];
}

export interface CutList {
  /** Heaviest first. */
  readonly blocks: readonly Block[];
  /** What no stick can give, whatever the plan. */
  readonly unservable: StickPlan['unserved'];
  /** The demands that come in parts, by their place in the problem. */
  readonly spliced: ReadonlySet<number>;
}

/** The longest part that a demand is spliced from, in units; undefined leaves it whole. */
export type PartLength = (demand: StickDemand, index: number) => number | undefined;

/** Turns demands into blocks: parts where `partLength` says so, matched groups as one. */
export function makeCutList(
  problem: StickProblem,
  kinds: readonly StickKind[],
  partLength: PartLength,
): CutList {
  const blocks: Block[] = [];
  const spliced = new Set<number>();
  const groups = new Map<string, number[]>();
  problem.demands.forEach((demand, index) => {
    const part = maySplice(demand) ? partLength(demand, index) : undefined;
    if (problem.splice !== undefined && part !== undefined && part < demand.length) {
      spliced.add(index);
      blocks.push(...partBlocks(problem, demand, index, part, problem.splice));
    } else if (isMatched(demand)) {
      const group = groups.get(demand.match ?? '') ?? [];
      groups.set(demand.match ?? '', group);
      group.push(index);
    } else {
      blocks.push(wholeBlock(problem, [index]));
    }
  });
  for (const group of groups.values()) blocks.push(wholeBlock(problem, group));
  const capacity = longestPiece(problem, kinds) + problem.kerf;
  const fitting = blocks.filter((block) => block.weight <= capacity);
  const tooLong = blocks.filter((block) => block.weight > capacity);
  return {
    blocks: fitting.sort(heaviestFirst),
    unservable: tooLong.flatMap((block) => refuse(problem, block)),
    spliced,
  };
}

// Blocks of one weight are told apart by what they are, so that reordered demands change nothing.
function heaviestFirst(a: Block, b: Block): number {
  return (
    b.weight - a.weight ||
    a.pieces.length - b.pieces.length ||
    (a.pieces[0]?.part ?? -1) - (b.pieces[0]?.part ?? -1)
  );
}

function wholeBlock(problem: StickProblem, indices: readonly number[]): Block {
  const pieces = indices
    .map((index) => entryAt(problem.demands, index))
    .map(({ id, length }) => ({ demandId: id, length }));
  return { weight: weigh(problem, pieces), pieces, demands: indices };
}

function partBlocks(
  problem: StickProblem,
  demand: StickDemand,
  index: number,
  longestPart: number,
  rule: SpliceRule,
): readonly Block[] {
  const { overlap, grid } = rule;
  const count = fewestParts(demand.length, longestPart, overlap);
  const least = leastPartOf(rule, demand.length, count);
  const parts =
    partsAtJoints(problem, demand, rule, longestPart, count) ??
    spliceParts(demand.length, longestPart, overlap, least, grid);
  return parts.map((length, part) => {
    const pieces = [{ demandId: demand.id, length, part }];
    return { weight: weigh(problem, pieces), pieces, demands: [index] };
  });
}

/** Where shorter parts than some stick gives can't have their joints where they are wanted, longer ones may. */
function partsAtJoints(
  problem: StickProblem,
  demand: StickDemand,
  rule: SpliceRule,
  longestPart: number,
  count: number,
): readonly number[] | undefined {
  if (demand.joints === undefined) return undefined;
  const [first] = jointWays(demand, rule, count, longestPart);
  if (first !== undefined) return first;
  return jointWays(demand, rule, count, longestEndlessPart(problem))[0];
}

function weigh(problem: StickProblem, pieces: readonly PlannedPiece[]): number {
  return pieces.reduce((sum, { length }) => sum + length + problem.kerf, 0);
}

/** Why a block can't be cut: by every stick that is listed, be it on hand or not. */
function refuse(problem: StickProblem, block: Block): StickPlan['unserved'] {
  const usable = problem.supplies.map((supply) => usableLength(problem, supply));
  const longest = usable.reduce((most, length) => Math.max(most, length), 0);
  const spliceable =
    problem.splice !== undefined &&
    problem.splice.overlap < longest &&
    block.demands.every((at) => problem.demands.slice(at, at + 1).every(maySplice));
  return block.pieces.map(({ demandId, length }) => ({
    demandId,
    why: spliceable
      ? 'stock used up'
      : length > longest
        ? 'longer than every stick'
        : block.weight - problem.kerf > longest
          ? 'matched group too long'
          : 'stock used up',
  }));
}
