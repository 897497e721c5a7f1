import { entryAt } from '../entry-at.ts';
import { demandRows, type Instance } from './instance.ts';

export interface DualBound {
  readonly costCents: number;
  /** The duals are to be multiplied by it, so that nothing unlimited is worth more than its price. */
  readonly scale: number;
}

/**
 * What prices of pieces prove: no plan costs less than the pieces are worth together, less what the
 * limited supplies are worth above their price; where an unlimited one is worth more than its price,
 * all prices are scaled down till it isn't.
 *
 * Derived from linear duality; the scaling after A. A. Farley, A note on bounding a class of linear
 * programming problems, including cutting stock problems, Operations Research 38 (1990) [M].
 *
 * @param duals of the instance's rows, in cents; those of strips and supplies are not used
 * @param worth of each slot the most that its layouts are worth at these duals
 */
export function dualBound(
  instance: Instance,
  duals: ArrayLike<number>,
  worth: ArrayLike<number>,
): DualBound {
  const rows = demandRows(instance);
  let demanded = 0;
  for (let row = 0; row < rows; row += 1) {
    demanded += entryAt(duals, row) * entryAt(instance.rowLeast, row);
  }
  // A splice is worth what its parts are, cut in the way that is worth least.
  for (const { demands, ways } of instance.choices) {
    const worths = ways.map(({ items }) =>
      items.reduce((sum, item) => sum + entryAt(duals, item), 0),
    );
    demanded += worths.length === 0 ? 0 : demands.length * Math.min(...worths);
  }
  const supplies = supplyWorths(instance, worth);
  const credits = mostCredits(instance);
  let scale = 1;
  instance.supplies.forEach(({ supply, count }, at) => {
    const own = entryAt(supplies, at);
    if (Number.isFinite(count) || own <= supply.priceCents) return;
    // Credit does not shrink with the duals: worth at a scale s is at most s · worth + (1 - s) · credit.
    const credit = Math.min(entryAt(credits, at), supply.priceCents);
    scale = Math.min(scale, own > credit ? (supply.priceCents - credit) / (own - credit) : 1);
  });
  const excess = instance.supplies.reduce((sum, { supply, count }, at) => {
    if (!Number.isFinite(count)) return sum;
    const scaled = scale * entryAt(supplies, at) + (1 - scale) * entryAt(credits, at);
    return sum + count * Math.max(0, scaled - supply.priceCents);
  }, 0);
  return { costCents: scale * demanded - excess, scale };
}

/** The most that one stick or board of each supply is worth, in cents. */
export function supplyWorths(instance: Instance, worth: ArrayLike<number>): Float64Array {
  const most = new Float64Array(instance.supplies.length);
  instance.slots.forEach(({ supply }, slot) => {
    if (supply >= 0) most[supply] = Math.max(entryAt(most, supply), entryAt(worth, slot));
  });
  instance.supplies.forEach(({ rips }, at) => {
    for (const { strips } of rips) {
      const together = strips.reduce(
        (sum, { slot, count }) => sum + count * entryAt(worth, slot),
        0,
      );
      most[at] = Math.max(entryAt(most, at), together);
    }
  });
  return most;
}

/** The most that the offcuts of one stick or board of each supply can be credited. */
function mostCredits(instance: Instance): Float64Array {
  const bySlot = instance.slots.map(({ blank, capCents }) =>
    instance.profiles
      .filter((profile) => profile.blank === blank)
      .reduce(
        (most, { offcutCredit }) =>
          Math.max(most, Math.min(capCents, offcutCredit?.mostCents ?? 0)),
        0,
      ),
  );
  return supplyWorths(instance, bySlot);
}
