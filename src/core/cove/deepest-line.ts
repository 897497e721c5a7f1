/**
 * The deepest line on the wood: where an off-center leads to, and what a gauge finds.
 *
 * A tilted blade is deepest at its rim's upper corner, c = (t/2) cos b cos a nearer the middle of the
 * cove than the line where the blade's middle plane tops out (t the kerf, b the tilt, a the approach).
 * That corner is the deepest line from one kerf off center on. Nearer to the middle the flat that the
 * kerf leaves is most of the bottom; the corner of a blade that hardly leans lies half a kerf on the
 * other side, though the wood is as good as level from corner to corner. There the deepest line goes
 * over evenly from the middle of that flat, which an upright blade has at 0, to its corner at one kerf:
 *
 *   e = m - min(1, e / t) c = m - (min(e, t) / 2) cos b cos a,
 *
 * e the deepest line and m the blade's middle, both off center. Solved for e: m - c where that is a
 * kerf or more, else m / (1 + c / t). Both agree at e = t, e grows with m throughout, and the deepest
 * line always lies from the corner to the middle of the flat.
 */
import type { Blade, Cove } from './cove.ts';

/**
 * How far the deepest line lies off center; inches.
 *
 * @param bladeMiddle how far the line lies off center where the blade's middle plane tops out
 * @param lean cos b cos a: the part of half a kerf from that line to the rim's upper corner
 */
export function offCenterOfDeepest(bladeMiddle: number, lean: number, kerf: number): number {
  const corner = bladeMiddle - (kerf / 2) * lean;
  return corner >= kerf ? corner : bladeMiddle / (1 + lean / 2);
}

/**
 * How far from the blade's middle plane toward its corner the line lies that a cove's off-center
 * leads to, along the rim of the blade: 0 to half the kerf, inches. Known before the setting is.
 */
export function towardCorner({ offCenter, offCenterTo }: Cove, { kerf }: Blade): number {
  return offCenterTo === 'blade middle' ? 0 : Math.min(offCenter, kerf) / 2;
}

/** What a cut has off center, led to the line that the cove asks for; inches. */
export function offCenterAsAsked(
  cut: { readonly offCenter: number; readonly bladeMiddle: number },
  { offCenterTo }: Pick<Cove, 'offCenterTo'>,
): number {
  return offCenterTo === 'blade middle' ? cut.bladeMiddle : cut.offCenter;
}
