/** Base that is cut a little longer than its wall, bowed, and sprung in between two walls. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../../core/units/length.ts';
import type { Run, RunEnd } from '../job.ts';
import { SPRING_IN_OVER } from '../settings/usual-sizes.ts';
import type { Shop } from '../shop.ts';

/**
 * What a run is cut longer: the shop's spring-in where it lies at the floor from one inside corner to
 * the next, square or coped at both, on a wall that is long enough to bow; else 0. Of a mitered corner a longer piece
 * would part the miter. Common practice [C].
 */
export function springInOf(
  run: Run,
  { springIn, unit }: Pick<Shop, 'springIn' | 'unit'>,
): ExactInches {
  const { onWall, left, right, length, measuredAs } = run;
  const isSprung =
    onWall?.lies !== undefined &&
    onWall.at === 'floor' &&
    measuredAs === 'wall' &&
    length.gt(SPRING_IN_OVER[unit]) &&
    onWall.lies.isWhole &&
    onWall.leftTurn === 'inside' &&
    onWall.rightTurn === 'inside' &&
    isButted(left) &&
    isButted(right);
  return isSprung ? springIn : new Fraction(0);
}

function isButted({ kind }: RunEnd): boolean {
  return kind === 'square' || kind === 'cope';
}
