/** What is used of each row of Stock before a group is planned, and which numbers its own sticks get. */
import type { StockItem } from './job.ts';

export interface UsedStock {
  /** Numbers of the sticks and boards that are cut already, of all groups. */
  readonly cut: ReadonlyMap<StockItem, ReadonlySet<number>>;
  /** How many more the groups planned before have opened. */
  readonly opened: ReadonlyMap<StockItem, number>;
}

/** What is left: the rack is emptied first, then the most that may be bought. What is cut was taken from it. */
export function remainingOf(
  item: StockItem,
  { cut, opened }: UsedStock,
): { have: number; buyMost: number | null } {
  const numbers = [...(cut.get(item) ?? [])];
  const cutOfRack = numbers.filter((number) => number <= item.have).length;
  const openedBefore = opened.get(item) ?? 0;
  const rack = item.have - cutOfRack;
  const bought = numbers.length - cutOfRack + Math.max(0, openedBefore - rack);
  return {
    have: Math.max(0, rack - openedBefore),
    buyMost: item.buyMost === null ? null : Math.max(0, item.buyMost - bought),
  };
}

/**
 * The numbers, from 1, of sticks or boards that a group opens of a row: those that are cut keep theirs,
 * so they are passed over, and so are as many as were opened before.
 *
 * @param opened before, by earlier groups and at another price
 */
export function numberUnits(
  cut: ReadonlySet<number> | undefined,
  opened: number,
  count: number,
): number[] {
  const numbers: number[] = [];
  for (let number = 1, free = 0; numbers.length < count; number += 1) {
    if (cut?.has(number) === true) continue;
    free += 1;
    if (free > opened) numbers.push(number);
  }
  return numbers;
}
