/** Stock that looks right and can't serve: a piece as long as its stick, which loses its end trims. */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import { sayMoney } from '../core/units/say-money.ts';
import type { planSticks } from '../cutting/plan-sticks.ts';
import type { PlanSticksOptions } from '../cutting/problem/problem.ts';
import type { PreparedGroup, PreparedProfile } from './group-profiles.ts';
import { stateProblem } from './group-problem.ts';
import type { UsedStock } from './used-stock.ts';
import type { StockItem } from './job.ts';
import type { Shop } from './shop.ts';

interface SpoiledFit {
  readonly name: string;
  readonly item: StockItem;
  readonly pieces: number;
  readonly longest: ExactInches;
}

/**
 * A caution for each profile and length of its stock, at the stock's row: how many pieces fit the stick
 * but not what its trims leave, and what a quick plan saves in lumber, less credit, with the end trim
 * that just lets them fit. Where it saves nothing, no money is said.
 *
 * @param plan the stick planner, here or in a worker
 * @param netCents what the group pays for lumber as planned, its credit taken off
 */
export async function spoiledFitCautions(
  group: PreparedGroup,
  used: UsedStock,
  shop: Shop,
  plan: typeof planSticks,
  { seed, pause, now }: PlanSticksOptions,
  netCents: number,
): Promise<Caution[]> {
  const cautions: Caution[] = [];
  for (const one of group.flatMap((prepared) => listSpoiled(prepared, shop))) {
    const { name, item, pieces, longest } = one;
    const endTrim = item.length.sub(longest).div(2);
    const stating = stateProblem(group, used, { ...shop, endTrim });
    const planned =
      'fault' in stating
        ? undefined
        : await plan(stating.stated.problem, {
            budget: { steps: 0 },
            ...(seed === undefined ? {} : { seed }),
            ...(pause === undefined ? {} : { pause }),
            ...(now === undefined ? {} : { now }),
          });
    const trimmed = planned?.ok === true ? planned.value.plan : undefined;
    const saved =
      trimmed === undefined || trimmed.unserved.length > 0
        ? 0
        : netCents - (trimmed.costCents - trimmed.creditCents);
    const money = sayMoney(saved, shop.currency, shop.decimalSign);
    const given = { inches: Number(item.length.sub(shop.endTrim.mul(2))) };
    const limit = { inches: Number(item.length) };
    const details = {
      pieces: pieces === 1 ? '1 piece' : `${pieces} pieces`,
      fits: pieces === 1 ? 'fits' : 'fit',
      trim: { inches: Number(endTrim) },
      saving: saved > 0 ? ` That costs ${money} of lumber.` : '',
    };
    cautions.push(
      placeFault(fault('job.trim-spoils-fit', own(name), given, { limit, details }), item.where),
    );
  }
  return cautions;
}

/** Of each length of a profile's stock, the pieces that lie between it and what its trims leave. */
function listSpoiled(
  { profile, toPlan: pieces, units }: PreparedProfile,
  shop: Shop,
): SpoiledFit[] {
  const trims = shop.endTrim.mul(2);
  const items = new Map(units.map(({ item }) => [item.length.toFraction(), item]));
  return [...items.values()].flatMap((item) => {
    const usable = item.length.sub(trims);
    const spoiled = pieces.filter(
      ({ cutLength }) => cutLength.gt(usable) && cutLength.lte(item.length),
    );
    const [first] = spoiled;
    if (first === undefined) return [];
    const longest = spoiled.reduce(
      (most, { cutLength }) => (cutLength.gt(most) ? cutLength : most),
      first.cutLength,
    );
    return [{ name: profile.name, item, pieces: spoiled.length, longest }];
  });
}
