/** What is taken for granted of a saw that Shop doesn't say: said once, before a cove leans on it. */
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { computeRise, FLANGE_ALLOWANCE_INCHES } from '../../core/cove/saw-limits.ts';
import { bladeOf } from '../../core/cove/cove-sizes.ts';
import { radians } from '../../core/units/angle.ts';
import type { Profile } from '../job.ts';
import type { Shop } from '../shop.ts';
import type { RawTable } from './raw-table.ts';
import { whereSetting } from './find-setting.ts';

/** A caution for the height that a cove of the job goes by and Shop leaves open; none without coves. */
export function cautionAssumedHeights(
  shop: Shop,
  profiles: readonly Profile[],
  table: RawTable | undefined,
): Caution[] {
  const coves = profiles.filter((one) => one.make !== 'buy');
  if (coves.length === 0) return [];
  const { greatestHeightUpright: upright, greatestHeightAt45: at45 } = shop;
  const place = (one: Caution, key: 'greatestHeightUpright' | 'greatestHeightAt45'): Caution => {
    const where = whereSetting(table, key);
    return where === undefined ? one : placeFault(one, where);
  };
  if (upright === undefined) {
    const { most } = computeRise(radians(0), bladeOf(shop), {});
    const details = { allowance: { inches: FLANGE_ALLOWANCE_INCHES } };
    const one = fault('job.heights-assumed', 'sheet.Shop', { inches: most }, { details });
    return [place(one, 'greatestHeightUpright')];
  }
  if (at45 !== undefined || coves.every(({ cove }) => cove.offCenter === 0)) return [];
  const one = fault('job.height-at-45-assumed', 'sheet.Shop', { inches: Number(upright) });
  return [place(one, 'greatestHeightAt45')];
}
