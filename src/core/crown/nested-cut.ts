/** Cutting crown nested: upside down, its wall bevel against the saw's fence, its ceiling bevel on the table. */
import { failed, ok, type Outcome } from '../faults/fault.ts';
import { radians, type Radians } from '../units/angle.ts';
import { checkCorner } from './crown-angles.ts';
import type { CrownCut } from './crown-cut.ts';

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
