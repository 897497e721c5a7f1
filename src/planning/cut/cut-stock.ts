/** Which sticks and boards are opened already, since something is cut from them: nobody pulls or buys them again. */
import type { StockItem } from '../job.ts';
import type { ProfilePlan } from '../job-plan.ts';

/** The numbers of the opened sticks or boards of each row of Stock, and whether they were from the rack. */
export type CutStock = ReadonlyMap<StockItem, ReadonlyMap<number, boolean>>;

export function listCutStock(profiles: readonly Pick<ProfilePlan, 'sticks'>[]): CutStock {
  const cut = new Map<StockItem, Map<number, boolean>>();
  for (const { item, unit, fromRack, isCut } of profiles.flatMap(({ sticks }) => sticks)) {
    if (isCut !== true) continue;
    const ofItem = cut.get(item) ?? new Map<number, boolean>();
    cut.set(item, ofItem.set(unit, fromRack));
  }
  return cut;
}

/** How many of a row's sticks or boards are cut already that came from the rack, or were bought. */
export function countCutStock(cut: CutStock, item: StockItem, from: 'rack' | 'buy'): number {
  const units = [...(cut.get(item)?.values() ?? [])];
  return units.filter((fromRack) => fromRack === (from === 'rack')).length;
}
