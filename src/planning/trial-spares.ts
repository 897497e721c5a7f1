/** Set-up spares that take a stick of their own: what they cost, and that scrap would do. */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../core/faults/fault.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { spareLength } from './group-problem.ts';
import { isSpare } from './job-plan.ts';
import type { CuttingGroup, CutStick, ProfilePlan } from './job-plan.ts';
import type { Shop } from './shop.ts';

type SparePlan = Pick<ProfilePlan, 'profile' | 'sticks'>;

/**
 * A caution for each cove whose spare is alone on its stick or blank: without the spare it would not be
 * opened. What is saved is the stick's price; of a board, only where nothing else is cut from it.
 */
export function loneSpareCautions(
  profiles: readonly SparePlan[],
  groups: readonly Pick<CuttingGroup, 'stockUse'>[],
  shop: Shop,
): Caution[] {
  const spare = spareLength(shop);
  if (spare === undefined) return [];
  const sticks = profiles.flatMap((one) => one.sticks);
  const uses = groups.flatMap(({ stockUse }) => stockUse);
  return profiles.flatMap(({ profile, sticks: its }) => {
    const alone = its.find(({ pieces }) => pieces.every(isSpare));
    if (alone === undefined || alone.isCut === true || isShared(alone, sticks)) return [];
    const price = uses.find(({ item }) => item === alone.item)?.priceCents ?? 0;
    if (price === 0) return [];
    const given = { inches: Number(spare) };
    const details = { cost: sayMoney(price, shop.currency, shop.decimalSign) };
    return [
      placeFault(
        fault('job.spare-takes-stick', own(profile.name), given, { details }),
        profile.where,
      ),
    ];
  });
}

/** Whether the same board gives other blanks too. */
function isShared({ item, unit, id }: CutStick, sticks: readonly CutStick[]): boolean {
  return sticks.some((one) => one.item === item && one.unit === unit && one.id !== id);
}
