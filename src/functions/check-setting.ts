/** Settings that no saw can be brought to, refused before the cut is worked out. */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { checkRise } from '../core/cove/saw-limits.ts';
import { checkKerf } from '../core/cove/check-sizes.ts';
import { fault, type Fault } from '../core/faults/fault.ts';

/**
 * Every fault of a setting whose angles are in range and whose sizes are above 0; inches.
 *
 * Derived: with h = s cos b + (t/2) sin b (core/cove/cut.ts) the middle plane is above the table, its
 * slope height s above 0, only where the height h is more than (t/2) sin b.
 */
export function checkSetting(setting: Setting, blade: Blade): readonly Fault[] {
  const { height, tilt } = setting;
  const kerf = checkKerf(blade);
  if (kerf.length > 0) return kerf;
  const corner = (blade.kerf / 2) * Math.sin(tilt);
  if (height <= corner) {
    const given = { inches: height };
    return [fault('cove.height-below-corner', 'height', given, { limit: { inches: corner } })];
  }
  return checkRise(height, tilt, blade, {});
}
