import type { SpliceRule, StickDemand, StickProblem } from './problem.ts';
import { usableLength } from './supplies.ts';

/** [C] common practice, no source: a part shorter than about two feet looks like a patch. */
export const LEAST_PART_INCHES = 24;

/**
 * The least length of a part that is cut from a piece of `length` in `count` parts: the rule's, and
 * more than the overlap; where even parts are shorter, theirs, rounded down to the grid.
 */
export function leastPartOf(
  { overlap, grid = 1, leastPart = 0 }: SpliceRule,
  length: number,
  count: number,
): number {
  const even = Math.floor((length + (count - 1) * overlap) / count / grid) * grid;
  return Math.min(Math.max(leastPart, overlap + 1), Math.max(even, overlap + 1));
}

/** The longest part of a stick's usable length, on the grid that parts keep to. */
export function longestPartOf(problem: StickProblem, usable: number): number {
  const grid = problem.splice?.grid ?? 1;
  return Math.floor(usable / grid) * grid;
}

/** The longest part that a stick gives which never runs out, of a problem of one profile; 0 where all do. */
export function longestEndlessPart(problem: StickProblem): number {
  const rooms = problem.supplies
    .filter(({ buyMost }) => buyMost === null)
    .map((supply) => usableLength(problem, supply));
  return longestPartOf(problem, Math.max(0, ...rooms));
}

/** How many parts a spliced piece needs at least; every length in the planner's units, 1 or more. */
export function fewestParts(length: number, longestPart: number, overlap: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (longestPart - overlap)));
}

/**
 * The parts of a piece spliced from sticks that give `longestPart`, the fewest possible: whole
 * sticks and a rest; where the rest would be shorter than `leastPart`, it takes what it lacks of the
 * last whole one, and of those before it where that is too little: the last two are evened out, or all.
 *
 * @param length the piece, in the planner's units, whole, more than 0
 * @param longestPart the longest part that may be, whole, more than `overlap`
 * @param overlap lost at each joint, whole, 0 or more
 * @param leastPart the least part that is cut willingly, whole, 0 or more
 * @param grid parts are multiples of it where length, longest part and overlap are
 * @returns the parts, each longer than `overlap` (where there are two or more), at most
 *   `longestPart`, and together the length and an overlap for each joint
 *
 * Derived: n parts of p at most reach n·p - (n - 1)·overlap, so n ≥ (length - overlap) / (p - overlap).
 */
export function spliceParts(
  length: number,
  longestPart: number,
  overlap: number,
  leastPart: number,
  grid = 1,
): readonly number[] {
  const count = fewestParts(length, longestPart, overlap);
  const rest = length + (count - 1) * overlap - (count - 1) * longestPart;
  if (count === 1) return [length];
  const wholes = Array.from({ length: count - 2 }, () => longestPart);
  if (rest >= leastPart) return [...wholes, longestPart, rest];
  const longer = Math.ceil((longestPart + rest) / 2 / grid) * grid;
  const shorter = longestPart + rest - longer;
  if (shorter >= leastPart || count === 2) return [...wholes, longer, shorter];
  return evenParts(length + (count - 1) * overlap, count, grid);
}

/** Parts that sum to `total`, on the grid but for what is left of it, and differ by a grid at most. */
function evenParts(total: number, count: number, grid: number): readonly number[] {
  const steps = Math.floor(total / grid);
  const least = Math.floor(steps / count);
  const longer = steps - least * count;
  const odd = total - steps * grid;
  // What is off the grid lies on the first of the shorter parts: it stays within the longer ones' length.
  return Array.from({ length: count }, (_, at) =>
    at < longer ? (least + 1) * grid : least * grid + (at === longer ? odd : 0),
  );
}

/** The longest of parts that are as even as can be, the fewest possible, in the planner's units. */
export function evenPart(length: number, longestPart: number, overlap: number, grid = 1): number {
  const count = fewestParts(length, longestPart, overlap);
  return Math.ceil((length + (count - 1) * overlap) / count / grid) * grid;
}

/** Whether a piece may come in parts at all, where the job allows splices. */
export function maySplice(demand: StickDemand): boolean {
  return !demand.onePiece && !isMatched(demand);
}

export function isMatched(demand: StickDemand): boolean {
  return demand.match !== undefined && demand.match !== '';
}
