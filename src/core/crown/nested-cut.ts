/** Cutting crown nested: upside down, its wall bevel against the saw's fence, its ceiling bevel on the table. */
import { failed, ok, type Outcome } from '../faults/fault.ts';
import { radians, type Radians } from '../units/angle.ts';
import { checkCorner, checkPitch } from './crown-angles.ts';
import type { CrownCut } from './crown-cut.ts';
import { slopedCorner, type SlopeMeets } from './sloped-cut.ts';

/**
 * Miter and bevel that cut a nested crown for a corner of two walls: whatever its spring, half of what
 * the corner lacks of a half turn, and an upright blade. The fence stands for the wall and the table for
 * the ceiling, so the plane that halves the corner is upright on the saw as it is in the room.
 * @param corner between the two walls, above 0 and below a half turn.
 * @returns faults `crown.corner-out-of-range`.
 */
export function computeNestedCut(given: { readonly corner: Radians }): Outcome<CrownCut> {
  const faults = checkCorner(given.corner);
  if (faults.length > 0) return failed(...faults);
  return ok({ miter: radians((Math.PI - given.corner) / 2), bevel: radians(0) });
}

/**
 * The same where the crown stays on its wall and turns with the ceiling: a square miter, and a blade that
 * tilts by half of what the corner in the wall's plane lacks of a half turn. The plane that halves
 * that corner is square to the wall, so on the saw it is square to the fence.
 * @param pitch of the ceiling along the wall, from level, above 0 and below a right angle.
 * @returns faults `crown.pitch-out-of-range`.
 */
export function computeNestedSlopedCut(given: {
  readonly pitch: Radians;
  readonly meets: SlopeMeets;
}): Outcome<CrownCut> {
  const faults = checkPitch(given.pitch);
  if (faults.length > 0) return failed(...faults);
  const corner = slopedCorner(given.pitch, given.meets);
  return ok({ miter: radians(0), bevel: radians((Math.PI - corner) / 2) });
}
