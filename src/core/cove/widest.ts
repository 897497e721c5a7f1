/** What one tilt allows: the widest cove, and the approach that gives a width. */
import { QUARTER_TURN, radians, type Radians } from '../units/angle.ts';
import { GROWTH_STEP_RADIANS, STRAIGHT_ACROSS_MARGIN_RADIANS } from '../units/tolerance.ts';
import { bisectLast } from './bisect.ts';
import type { Blade } from './cove.ts';
import { computeCut } from './cut.ts';

/** The approach at which the width is greatest at this height and tilt, at most a quarter turn. */
export function approachOfWidest(blade: Blade, height: number, tilt: Radians): Radians {
  if (tilt === 0) {
    const chord = computeCut(blade, { approach: QUARTER_TURN, tilt, height }).width;
    return radians(Math.atan2(chord, blade.kerf));
  }
  const grows = (approach: number): boolean => widthGrows(blade, height, tilt, approach);
  if (grows(QUARTER_TURN - STRAIGHT_ACROSS_MARGIN_RADIANS)) return QUARTER_TURN;
  return radians(bisectLast(grows, 0, QUARTER_TURN));
}

/** The widest cove at this height and tilt, whatever the approach. */
export function computeWidestCove(blade: Blade, height: number, tilt: Radians): number {
  const approach = approachOfWidest(blade, height, tilt);
  return computeCut(blade, { approach, tilt, height }).width;
}

/**
 * The approach that cuts a width at this height and tilt: the smaller of two, on which the width
 * still grows with the angle. Undefined when the width is out of reach at this tilt.
 */
export function approachForWidth(
  blade: Blade,
  height: number,
  tilt: Radians,
  width: number,
): Radians | undefined {
  const most = approachOfWidest(blade, height, tilt);
  const widthAt = (approach: number): number =>
    computeCut(blade, { approach: radians(approach), tilt, height }).width;
  if (width > widthAt(most) || width <= widthAt(0)) return undefined;
  return radians(bisectLast((approach) => widthAt(approach) < width, 0, most));
}

/** Whether the width still grows with the approach: by its central difference. */
function widthGrows(blade: Blade, height: number, tilt: Radians, approach: number): boolean {
  const widthAt = (angle: number): number =>
    computeCut(blade, { approach: radians(angle), tilt, height }).width;
  const half = GROWTH_STEP_RADIANS / 2;
  return widthAt(approach + half) - widthAt(approach - half) > 0;
}
