/** How far a crown reaches on wall and ceiling, and the bevels of its back. */
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { radians, type Radians } from '../units/angle.ts';
import { checkSpring } from './crown-angles.ts';

export interface CrownSize {
  /** Down the wall, in inches. */
  readonly drop: number;
  /** Out along the ceiling, in inches. */
  readonly projection: number;
}

/**
 * Drop and projection of a crown, its face taken from the edge on the wall to the edge on the ceiling.
 * Stock crown, whose back bevels take a part of the face, closes by less: let a person override.
 * Derived: face, wall and ceiling make a right triangle whose angle at the wall is the spring.
 * @param faceWidth in inches, above 0.
 * @param spring between back and wall, above 0 and below a right angle.
 * @returns inches; faults `length.unreadable`, `length.not-positive`, `crown.spring-out-of-range`.
 */
export function computeCrownSize(given: {
  readonly faceWidth: number;
  readonly spring: Radians;
}): Outcome<CrownSize> {
  const { faceWidth, spring } = given;
  const faults = [...checkSpring(spring)];
  if (!Number.isFinite(faceWidth)) {
    faults.unshift(fault('length.unreadable', 'faceWidth', String(faceWidth)));
  } else if (faceWidth <= 0) {
    faults.unshift(fault('length.not-positive', 'faceWidth', { inches: faceWidth }));
  }
  if (faults.length > 0) return failed(...faults);
  return ok({ drop: faceWidth * Math.cos(spring), projection: faceWidth * Math.sin(spring) });
}

export interface BackBevels {
  /** Between the back and the bevel that lies on the wall. */
  readonly wall: Radians;
  /** Between the back and the bevel that lies on the ceiling. */
  readonly ceiling: Radians;
}

/**
 * The two bevels of a crown's back, one to lie on the wall and one on the ceiling, each measured from
 * the back; together a right angle, since wall and ceiling are square to each other.
 * The blade that cuts a bevel into a blank's square edge tilts by the other one of the two.
 * @param spring between back and wall, above 0 and below a right angle.
 * @returns faults `crown.spring-out-of-range`.
 */
export function computeBackBevels(given: { readonly spring: Radians }): Outcome<BackBevels> {
  const faults = checkSpring(given.spring);
  if (faults.length > 0) return failed(...faults);
  return ok({ wall: given.spring, ceiling: radians(Math.PI / 2 - given.spring) });
}
