/** How far the parts of a spliced piece lie over each other at a joint. */
import Fraction from 'fraction.js';
import { toRadians, degrees } from '../core/units/angle.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { Profile } from './job.ts';
import { roundUp } from './pieces/cut-length.ts';
import type { Shop } from './shop.ts';

/** Derived: a scarf at an angle from square runs over thickness · tan(angle). Undefined without a thickness. */
export function spliceOverlap(profile: Profile | undefined, shop: Shop): ExactInches | undefined {
  if (profile?.blankThickness === undefined) return undefined;
  const overlap = Number(profile.blankThickness) * Math.tan(toRadians(degrees(shop.spliceAngle)));
  const exact = new Fraction(Math.round(overlap * 2 ** 20), 2 ** 20);
  return roundUp(exact, shop.lengthPrecision);
}
