/** Crown that stays on its wall while the ceiling over it begins to slope, or slopes the other way. */
import { failed, type Outcome } from '../faults/fault.ts';
import { QUARTER_TURN, radians, type Radians } from '../units/angle.ts';
import { checkPitch, checkSpring } from './crown-angles.ts';
import { computeCrownCut, type CrownCut } from './crown-cut.ts';

/** What the slope meets: a level ceiling, or a slope of the same pitch on its other side. */
export type SlopeMeets = 'level' | 'slope';

/** The corner in the wall's plane at which the crown changes its direction, below a half turn. */
export function slopedCorner(pitch: Radians, meets: SlopeMeets): Radians {
  return radians(Math.PI - (meets === 'level' ? 1 : 2) * pitch);
}

/**
 * Miter and bevel that cut a crown, lying flat, where it turns up or down along its wall.
 *
 * Derived: such a corner lies in the wall's plane, as one from wall to wall lies in the ceiling's. Wall and
 * ceiling change places, and with them the spring, which is measured from the wall, and what it lacks of a
 * right angle, which is measured from the ceiling. So tan miter = cos s / tan C/2 and
 * sin bevel = sin s · cos C/2, C the corner in the wall's plane.
 *
 * Published calculations of such cuts are at odds: one divides the angle whose tangent is cos s, in
 * degrees, by tan C/2 instead of cos s itself, which gives 4.45° for a spring of 45° and slopes of 7.2° each way; the
 * planes in space give 5.10° (tests/core/crown/sloped-crown.test.ts).
 * @param spring between back and wall, above 0 and below a right angle.
 * @param pitch of the ceiling along the wall, from level, above 0 and below a right angle.
 * @returns faults `crown.spring-out-of-range`, `crown.pitch-out-of-range`, both where both are.
 */
export function computeSlopedCut(given: {
  readonly spring: Radians;
  readonly pitch: Radians;
  readonly meets: SlopeMeets;
}): Outcome<CrownCut> {
  const { spring, pitch, meets } = given;
  const faults = [...checkSpring(spring), ...checkPitch(pitch)];
  if (faults.length > 0) return failed(...faults);
  return computeCrownCut({
    spring: radians(QUARTER_TURN - spring),
    corner: slopedCorner(pitch, meets),
  });
}
