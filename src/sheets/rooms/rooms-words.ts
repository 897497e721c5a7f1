/** What the sheet Rooms says in sentences. */
import type { Room } from '../../core/room/wall.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { sameName } from '../../planning/job.ts';
import type { FittedPiece, FittedTrim } from '../../planning/rooms/room-fittings.ts';
import type { Joint } from '../../planning/joint-places.ts';
import type { Piece } from '../../planning/piece.ts';
import type { Shop } from '../../planning/shop.ts';
import { count, printExact } from '../words/print-length.ts';
import { GLYPH_LEGEND } from '../words/say-ends.ts';
import { sayNotes } from '../words/say-joints.ts';

export const HOW_TO_READ =
  'Left and right are as you face a wall from inside; walls follow each other to the right. A line along a wall is a piece: its number is its order (3A is the third of A), a bar across its end is a square cut, a slant a miter, an arc a cope, a hook a return, and an arrow is the way that fitting goes on. Lines nearest to the walls are at the floor, those farthest from them at the ceiling: how far they stand from a wall is not to scale.';

export const IN_THE_LIST = `What has one number is joined at outside corners, to the walls that are named, before it goes up as one. What is between openings meets no other and goes up as fitting comes by. ${GLYPH_LEGEND} A length is that of Pieces: change it there. Tick what is up.`;

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** `A` for the first trim of a room, `AA` for the 27th. */
export function letterOf(trim: number): string {
  const [round, at] = [Math.floor(trim / LETTERS.length), trim % LETTERS.length];
  return (LETTERS[at] ?? '').repeat(round + 1);
}

/** `3A`, unlike the sticks' A3. */
export function orderOf(trim: number, { order }: Pick<FittedPiece, 'order'>): string {
  return `${order}${letterOf(trim)}`;
}

/** `A: Base at the floor, inside corners coped`. */
export function sayTrim({ row, place }: FittedTrim, trim: number, reading: LengthReading): string {
  const where =
    place.at === 'height'
      ? place.height === undefined
        ? ' at a height that is not given'
        : `, its lower edge ${printExact(place.height, reading)} above the floor`
      : ` at the ${place.at}`;
  const corners = row.insideCorners === 'cope' ? 'coped' : 'mitered';
  return `${letterOf(trim)}: ${row.profile}${where}, inside corners ${corners}`;
}

/**
 * What a fitter must know of a piece beside its ends.
 *
 * @param walls the room's, in order
 * @param joints the piece's, from left to right
 */
export function sayNote(
  { piece, joinedTo }: Pick<FittedPiece, 'piece' | 'joinedTo'>,
  walls: Room['walls'],
  joints: readonly Joint[],
  shop: Shop,
): string {
  const notes: string[] = [];
  const isRun = piece.kind === 'run';
  if (piece.done) notes.push('done already');
  if (!isRun) notes.push(`return of its ${piece.id.endsWith('left') ? 'left' : 'right'} end`);
  if (isRun && piece.made !== undefined) {
    if (joinedTo.length > 0) {
      const names = joinedTo.map((wall) => walls[wall]?.name ?? '');
      notes.push(`joined to ${names.join(', ')}`);
    }
    if (isBetweenOpenings(piece, walls)) {
      notes.push('between openings');
    }
    if (piece.made.isTakenOver === true) notes.push('as Runs has it');
    if (piece.onWall !== undefined && piece.onWall.lies === undefined) {
      notes.push('cut it in pieces at the wall: an opening has no Position');
    }
  }
  const parts = joints.length + 1;
  if (parts > 1) notes.push(`spliced from ${count(parts, 'part')}, see Cutting`);
  return [...notes, ...sayNotes(piece, joints, shop)].join('; ');
}

function isBetweenOpenings({ onWall, run }: Piece, walls: Room['walls']): boolean {
  const length = walls.find(({ name }) => sameName(name, run))?.length;
  if (onWall?.lies === undefined || length === undefined) return false;
  const { from, to } = onWall.lies;
  return from.gt(0) && to.lt(length);
}

export const AROUND_OPENINGS = 'Around doors and windows: up before the trim that ends at them';
export const TYPED = 'Typed in Runs: their order is not known here';
export const NO_TRIM = 'Nothing is planned for this room.';

/** Openings that no one can draw, since nobody knows where on their walls they are. */
export function sayUndrawn(undrawn: readonly string[]): string {
  return `Not on the plan, since it is not known where on the wall: ${undrawn.join(', ')}.`;
}

/** In place of a drawing, in a job of more rooms than are drawn. */
export function sayMostDrawn(most: number): string {
  return `The first ${most} rooms are drawn, this one is not.`;
}
