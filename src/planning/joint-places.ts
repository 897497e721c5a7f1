/**
 * Where the joints of a spliced piece lie on its wall: on studs, as far from the room's door as can be, and
 * opening away from it. Common practice [C].
 */
import Fraction from 'fraction.js';
import type { ExactInches } from '../core/units/length.ts';
import type { Piece } from './piece.ts';
import type { Shop } from './shop.ts';

/** How much of a stud's face a joint is nailed to: dressed 2x lumber. */
const STUD_FACE_INCHES = new Fraction(3, 2);

/** The part that laps over the other at the face: a joint that opens is seen from the other side only. */
export type FrontPart = 'left' | 'right';

export interface Joint {
  /** Of the lap's middle, from the wall's left corner; absent where it isn't known where the piece lies. */
  readonly at?: ExactInches;
  /** The how-many-eth stud it lies on from the wall's left corner, at the shop's spacing; absent: on none. */
  readonly stud?: number;
  readonly front: FrontPart;
}

type Lying = Pick<Piece, 'onWall' | 'left' | 'cutLength'>;

/**
 * Where the parts of a piece may end so that their joint lies on a stud: the lap's middle on the stud's, as
 * near as the shop's precision comes; from the piece's left end, those farthest from the door first.
 * Studs are laid out from the wall's left corner, at the shop's spacing [C]; where they truly are is to be
 * found at the wall. None where the spacing isn't known, or where on a wall of Walls the piece lies.
 */
export function wantedJoints(
  piece: Lying,
  overlap: ExactInches,
  { studSpacing, lengthPrecision }: Pick<Shop, 'studSpacing' | 'lengthPrecision'>,
): readonly ExactInches[] {
  const start = startOf(piece);
  if (start === undefined || studSpacing.lte(0)) return [];
  const half = overlap.div(2);
  const ends: { end: ExactInches; away: number }[] = [];
  const last = start.add(piece.cutLength).div(studSpacing).floor();
  for (let stud = 1; last.gte(stud); stud++) {
    const middle = studSpacing.mul(stud);
    const exact = middle.sub(start).add(half);
    const end = exact.div(lengthPrecision).round().mul(lengthPrecision);
    const isInside = end.gt(overlap) && end.lt(piece.cutLength);
    if (!isInside || end.sub(exact).abs().gt(STUD_FACE_INCHES.div(2))) continue;
    ends.push({ end, away: Math.abs(Number(middle) - (piece.onWall?.door ?? 0)) });
  }
  return ends.sort((one, other) => other.away - one.away).map(({ end }) => end);
}

/** The joints of a piece from left to right, given its parts so. */
export function placeJoints(
  piece: Lying,
  parts: readonly ExactInches[],
  overlap: ExactInches,
  { studSpacing }: Pick<Shop, 'studSpacing'>,
): readonly Joint[] {
  const start = startOf(piece);
  let end = overlap;
  return parts.slice(0, -1).map((part): Joint => {
    end = end.add(part).sub(overlap);
    if (start === undefined) return { front: 'right' };
    const at = start.add(end).sub(overlap.div(2));
    const door = piece.onWall?.door;
    const front = door !== undefined && at.gt(door) ? 'left' : 'right';
    const stud = studAt(at, studSpacing);
    return { at, front, ...(stud === undefined ? {} : { stud }) };
  });
}

/** From the wall's left corner to the piece's left end, as it is cut: below 0 where that laps an outside corner. */
function startOf({ onWall, left }: Lying): ExactInches | undefined {
  return onWall?.lies?.from.sub(left.added);
}

function studAt(at: ExactInches, spacing: ExactInches): number | undefined {
  if (spacing.lte(0)) return undefined;
  const stud = at.div(spacing).round();
  const off = at.sub(stud.mul(spacing)).abs();
  return stud.gte(1) && off.lte(STUD_FACE_INCHES.div(2)) ? Number(stud) : undefined;
}
