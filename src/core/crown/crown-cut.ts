/** Cutting crown lying flat on the saw's table, its back down. */
import { failed, ok, type Outcome } from '../faults/fault.ts';
import { radians, type Radians } from '../units/angle.ts';
import { checkCorner, checkSpring } from './crown-angles.ts';

export interface CrownCut {
  /** Turn of the saw from a square crosscut, from 0 to a right angle. */
  readonly miter: Radians;
  /** Tilt of the blade from upright, from 0 to a right angle. */
  readonly bevel: Radians;
}

/**
 * Miter and bevel that cut a crown, lying flat, for a corner of two walls.
 *
 * An outside corner takes the same two angles as the inside corner of the same measure, cut the
 * other way round; a corner past a half turn is given as what it lacks of a full one.
 *
 * Derived: along the wall is x, up is z, and the miter plane is upright and halves the corner C, so
 * its unit normal is (sin C/2, -cos C/2, 0). The back leans off the wall by the spring s: across its
 * width runs (0, sin s, cos s) and out of it (0, -cos s, sin s). The cut meets the back along the
 * line that is in both; its slope there is tan miter = sin s / tan C/2, and the normals of the two
 * planes give sin bevel = cos s · cos C/2.
 * @param spring between back and wall, above 0 and below a right angle.
 * @param corner between the two walls, above 0 and below a half turn; a square room has a right angle.
 * @returns faults `crown.spring-out-of-range`, `crown.corner-out-of-range`, both where both are.
 */
export function computeCrownCut(given: {
  readonly spring: Radians;
  readonly corner: Radians;
}): Outcome<CrownCut> {
  const { spring, corner } = given;
  const faults = [...checkSpring(spring), ...checkCorner(corner)];
  if (faults.length > 0) return failed(...faults);
  return ok({
    miter: radians(Math.atan2(Math.sin(spring) * Math.cos(corner / 2), Math.sin(corner / 2))),
    bevel: radians(Math.asin(Math.cos(spring) * Math.cos(corner / 2))),
  });
}
