/** Which row of Openings a piece of casing, apron or stool is of. */
import type { Opening } from '../job.ts';
import type { Piece } from '../piece.ts';

/** @returns What tells the opening of a piece; undefined for one that Runs, or Walls and Trim, ask for. */
export function openingOfPiece(
  openings: readonly Opening[],
): (piece: Piece) => Opening | undefined {
  const byPlace = new Map(openings.map((opening) => [JSON.stringify(opening.where), opening]));
  return ({ made, where }) => (made === undefined ? byPlace.get(JSON.stringify(where)) : undefined);
}
