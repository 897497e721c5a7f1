/** What one tilt allows: the widest cove, and the approach that gives a width. */
import { radians, type Radians } from '../units/angle.ts';
import type { Blade } from './cove.ts';
import { computeCut } from './cut.ts';

const QUARTER_TURN = Math.PI / 2;
/** Halvings of a quarter turn until a double has no more digits to give. */
const HALVINGS = 60;

/** The approach at which the width is greatest at this height and tilt, at most a quarter turn. */
function approachOfWidest(blade: Blade, height: number, tilt: Radians): Radians {
  if (tilt === 0) {
    const chord = computeCut(blade, { approach: radians(QUARTER_TURN), tilt, height }).width;
    return radians(Math.atan2(chord, blade.kerf));
  }
  const grows = (approach: number): boolean => widthSlope(blade, height, tilt, approach) > 0;
  if (grows(QUARTER_TURN - 1e-9)) return radians(QUARTER_TURN);
  return radians(lastWhere(grows, 0, QUARTER_TURN));
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
  return radians(lastWhere((approach) => widthAt(approach) < width, 0, most));
}

/** Derived: by the envelope theorem the edges' own slopes by the approach serve, offsets held still. */
function widthSlope(blade: Blade, height: number, tilt: Radians, approach: number): number {
  const step = 1e-6;
  const at = (angle: number): number =>
    computeCut(blade, { approach: radians(angle), tilt, height }).width;
  return at(approach + step / 2) - at(approach - step / 2);
}

/** The last point of [least, most] at which a condition that holds at first still holds. */
export function lastWhere(holds: (at: number) => boolean, least: number, most: number): number {
  let low = least;
  let high = most;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
