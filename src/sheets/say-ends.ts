/** The ends of a piece in the words of the shop, each angle with what it is measured from. */
import type { Profile } from '../planning/job.ts';
import type { PieceEnd } from '../planning/piece.ts';
import { formatDegrees } from '../core/units/format-mark.ts';

/** What an end is and how the saw stands for it, and the point that the length is measured to. */
export interface EndWords {
  readonly end: string;
  readonly point: string;
}

const SQUARE_END: EndWords = { end: 'square', point: 'square end' };

/**
 * A miter of an upright or flat molding halves the wall's corner C: derived, the saw turns 90 - C / 2
 * from a square cut. A molding at a spring angle takes two angles, which stand on Set-ups. A return
 * turns a right angle, whatever the wall does.
 */
export function sayEnd(end: PieceEnd, profile: Profile | undefined): EndWords {
  return { end: sayKind(end, profile?.spring !== undefined), point: end.point };
}

function sayKind({ kind, cornerDeg }: PieceEnd, sprung: boolean): string {
  if (kind === 'square') return SQUARE_END.end;
  if (kind === 'cope') return `cope, ${formatDegrees(cornerDeg)} corner`;
  const corner = kind === 'return' ? 90 : cornerDeg;
  if (sprung) return `${kind}, ${formatDegrees(corner)} corner: see Set-ups`;
  return `${kind}, ${formatDegrees(90 - corner / 2)} from square`;
}

/** Ends of one part of a spliced piece: the piece's own at its outer ends, a scarf at each joint. */
export function sayPartEnds(
  ends: { readonly left: EndWords; readonly right: EndWords },
  part: number,
  parts: number,
  spliceAngleDeg: number,
): { left: EndWords; right: EndWords } {
  const end = `scarf, ${formatDegrees(spliceAngleDeg)} from square`;
  // The two sides of a joint lap: one runs long at the back, the other at the face.
  const left = { end, point: 'long point of the scarf at the face' };
  const right = { end, point: 'long point of the scarf at the back' };
  return {
    left: part === 1 ? ends.left : left,
    right: part === parts ? ends.right : right,
  };
}

export const SPARE_ENDS = { left: SQUARE_END, right: SQUARE_END } as const;
