/** A corner without a bevel gauge: two marks and a tape. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { inchesGiven } from '../faults/quantity.ts';
import { radians, type Radians } from '../units/angle.ts';
import { MM_PER_INCH, type LengthUnit } from '../units/length-unit.ts';

/** How far out from the corner both walls are marked: 36 in, or 900 mm. */
export function markOutInches(unit: LengthUnit): number {
  return unit === 'mm' ? 900 / MM_PER_INCH : 36;
}

/**
 * The corner between two walls, each marked `markOut` from it, by the straight distance `across` from
 * mark to mark. At an outside corner the marks stand on straightedges that run past it: the same angle.
 *
 * Derived: corner and marks make a triangle with two equal sides, halved by the line from the corner
 * square to `across`: sin C/2 = (across / 2) / markOut.
 * @param across inches, above 0 and below twice `markOut`.
 * @param argument what faults call it.
 * @returns above 0 and below a half turn; faults `length.unreadable`, `length.not-positive`,
 * `room.tape-too-long`.
 */
export function computeCornerByTape(
  across: number,
  markOut: number,
  argument: Argument,
): Outcome<Radians> {
  const given = inchesGiven(across);
  if (!Number.isFinite(across)) return failed(fault('length.unreadable', argument, given));
  if (across <= 0) return failed(fault('length.not-positive', argument, given));
  if (across >= 2 * markOut) {
    const limit = { inches: 2 * markOut };
    const details = { markOut: { inches: markOut } };
    return failed(fault('room.tape-too-long', argument, given, { limit, details }));
  }
  return ok(radians(2 * Math.asin(across / (2 * markOut))));
}
