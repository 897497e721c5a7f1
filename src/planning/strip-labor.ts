/** What one more stick or blank put to use costs in labor: the part of a profile's hours that its sticks decide. */
import type { StripLabor } from '../cutting/problem/problem.ts';
import type { Shop } from './shop.ts';

/**
 * The trimming cut and, for a cove, its passes: carried round once each, and fed over the blade by
 * its length. What a piece adds (its crosscut, its share of smoothing) is the same on any stick, and
 * so are joints, since parts are the fewest. Derived from `tallyProfile`'s hours; overhead comes on
 * lumber and labor alike, so it decides nothing and is left out.
 *
 * @param passes over the blade that a blank takes; 0 for what is bought
 * @returns undefined where labor costs nothing
 */
export function laborOfStrip(
  passes: number,
  shop: Pick<Shop, 'crosscutSeconds' | 'handlingPerPass' | 'feed' | 'hourlyRate'>,
  unitsPerInch: number,
): StripLabor | undefined {
  const centsPerHour = shop.hourlyRate * 100;
  const cents = ((shop.crosscutSeconds + passes * shop.handlingPerPass) / 3600) * centsPerHour;
  const centsPerInch = (passes / (shop.feed * 12 * 60)) * centsPerHour;
  const labor = { cents, centsPerUnit: centsPerInch / unitsPerInch };
  return labor.cents > 0 || labor.centsPerUnit > 0 ? labor : undefined;
}
