/** What besides the minutes of Work may come out otherwise than it is typed, and by how much. */
import { fault, placeFault, type Fault } from '../core/faults/fault.ts';
import type { Unsure } from '../core/bid/price-range.ts';
import { settingOf, type Shop, type ShopCells } from './shop.ts';

/** What all of a job's hours, its rate, its lumber's price and the amount of it are times. */
export const PRICE_UNKNOWNS = {
  wholeJob: { name: 'the whole job', low: 'wholeJobLow', high: 'wholeJobHigh' },
  hourlyRate: { name: 'hourly rate', low: 'hourlyRateLow', high: 'hourlyRateHigh' },
  lumberPrice: { name: 'lumber price', low: 'lumberPriceLow', high: 'lumberPriceHigh' },
  waste: { name: 'waste', low: 'wasteLow', high: 'wasteHigh' },
} as const satisfies Readonly<
  Record<string, { readonly name: string; readonly low: keyof Shop; readonly high: keyof Shop }>
>;
export type PriceUnknown = keyof typeof PRICE_UNKNOWNS;

const UNKNOWNS = Object.keys(PRICE_UNKNOWNS) as PriceUnknown[];

/** What is typed where all is as likely: the rate itself; of what is typed in percent, none more or less. */
function likelyOf(unknown: PriceUnknown, { hourlyRate }: Shop): number {
  return unknown === 'hourlyRate' ? hourlyRate : 0;
}

/** Those that the shop has a low or a high for, as factors: 1 is as likely. A blank end is as likely too. */
export function listUnknowns(
  shop: Shop,
): { readonly unknown: PriceUnknown; readonly is: Unsure }[] {
  return UNKNOWNS.flatMap((unknown) => {
    const { name, low, high } = PRICE_UNKNOWNS[unknown];
    if (shop[low] === undefined && shop[high] === undefined) return [];
    const likely = likelyOf(unknown, shop);
    const timesOf = (typed = likely): number =>
      unknown === 'hourlyRate' ? typed / likely : 1 + typed / 100;
    return [
      { unknown, is: { name, low: timesOf(shop[low]), likely: 1, high: timesOf(shop[high]) } },
    ];
  });
}

/**
 * A low above what is likely, or a high below it: at its cell.
 *
 * @param isRateRead Whether the hourly rate is what somebody typed, or the usual one.
 */
export function checkUnknowns(shop: Shop, cells: ShopCells, isRateRead: boolean): Fault[] {
  return UNKNOWNS.flatMap((unknown) => {
    const likely = likelyOf(unknown, shop);
    const isRate = unknown === 'hourlyRate';
    if (isRate && !isRateRead) return [];
    return (['low', 'high'] as const).flatMap((end) => {
      const key = PRICE_UNKNOWNS[unknown][end];
      const typed = shop[key];
      if (typed === undefined) return [];
      const refuse = (code: Parameters<typeof fault>[0]): Fault[] => {
        const details = { isPercent: isRate ? '' : 'yes' };
        const one = fault(code, settingOf(key).key, typed, { limit: likely, details });
        const where = cells[key];
        return [where === undefined ? one : placeFault(one, where)];
      };
      if (isRate && likely === 0) return refuse('job.range-without-rate');
      if (end === 'low' && typed > likely) return refuse('job.range-low-above');
      if (end === 'high' && typed < likely) return refuse('job.range-high-below');
      return [];
    });
  });
}
