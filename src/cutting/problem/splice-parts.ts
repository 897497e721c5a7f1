import type { StickDemand, StickProblem } from './problem.ts';

/**
 * [C] common practice, no source: a part shorter than about two feet looks like a patch, so the last
 * two parts are evened out rather than leave one.
 */
export const LEAST_PART_INCHES = 24;

/** The longest part of a stick's usable length, on the grid that parts keep to. */
export function longestPartOf(problem: StickProblem, usable: number): number {
  const grid = problem.splice?.grid ?? 1;
  return Math.floor(usable / grid) * grid;
}

/** How many parts a spliced piece needs at least; every length in the planner's units, 1 or more. */
export function fewestParts(length: number, longestPart: number, overlap: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (longestPart - overlap)));
}

/**
 * The parts of a piece spliced from sticks that give `longestPart`, the fewest possible: whole
 * sticks and a rest, the last two evened out where the rest would be shorter than `leastPart`.
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
  return [...wholes, longer, longestPart + rest - longer];
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
