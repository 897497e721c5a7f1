/** The saw's table as the shop gives it. */
import type { TableSize } from '../core/cove/rails.ts';
import type { SawShop } from './shop.ts';

/** The table in inches; undefined where the shop does not say how far it reaches before and behind the arbor. */
export function tableSizeOf(shop: SawShop): TableSize | undefined {
  const { tableFront: front, tableBack: back, tableWidth: width, slotToBlade } = shop;
  if (front === undefined || back === undefined) return undefined;
  return {
    front: Number(front),
    back: Number(back),
    ...(width === undefined ? {} : { width: Number(width) }),
    ...(slotToBlade === undefined ? {} : { slotToBlade: Number(slotToBlade) }),
  };
}
