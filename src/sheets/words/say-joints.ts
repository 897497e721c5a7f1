/** Why a piece is longer than its wall, and where its joints lie: beside its ends, what a fitter must know of it. */
import type { LengthReading } from '../../core/units/length.ts';
import type { Joint } from '../../planning/joint-places.ts';
import type { Piece } from '../../planning/piece.ts';
import type { Shop } from '../../planning/shop.ts';
import { printExact } from './print-length.ts';

type Said = LengthReading & Pick<Shop, 'studSpacing'>;

/** Its own note last; each a sentence without a stop. `joints` from left to right. */
export function sayNotes(
  { sprungIn, note }: Pick<Piece, 'sprungIn' | 'note'>,
  joints: readonly Joint[],
  shop: Said,
): string[] {
  return [
    ...(sprungIn === undefined ? [] : [`${printExact(sprungIn, shop)} over, to spring in`]),
    ...joints.flatMap((joint) => sayJoint(joint, shop)),
    ...(note === '' ? [] : [note]),
  ];
}

/** `joint 176" from the left corner, on stud 11: find the stud first; its left part laps over the right one`. */
function sayJoint({ at, stud, front }: Joint, shop: Said): string[] {
  if (at === undefined) return [];
  const on =
    stud !== undefined
      ? `, on stud ${stud} at ${printExact(shop.studSpacing, shop)} from there: find the stud first`
      : shop.studSpacing.gt(0)
        ? ', on no stud: put a block behind it'
        : '';
  const behind = front === 'left' ? 'right' : 'left';
  return [
    `joint ${printExact(at, shop)} from the wall's left corner${on}`,
    `its ${front} part laps over the ${behind} one`,
  ];
}
