/** What a profile's lumber would cost by its offcut allowance, whatever sticks the plan opens. */
import { boughtForUsed } from './grade-yield.ts';
import type { Job } from './job.ts';
import type { ProfilePlan } from './job-plan.ts';
import { cents } from './money.ts';
import { findStock, type StockUnit } from './stock-units.ts';

export interface AllowedLumber {
  /** The row of Stock that it is priced by. */
  readonly unit: StockUnit;
  /** Boards for what is made here go by the board foot, all else by the foot. */
  readonly per: 'foot' | 'board foot';
  /** Net; with the allowance, a percent of net. */
  readonly net: number;
  readonly allowancePercent: number;
  /** For one of `per` of clear wood, unrounded: over the yield of its grade, where it has one. */
  readonly eachCents: number;
  readonly cents: number;
  /**
   * As planned: the clear wood that is opened over net, in percent of net; absent where it isn't known. Yield is
   * in neither percent: it makes the foot dearer, of both.
   */
  readonly plannedPercent?: number;
}

/**
 * Net length or board feet and the allowance on them, at the least price of the rows that can be bought
 * without end (else of those that can be bought, else of all). So it goes by the inputs alone: no time of
 * search moves it, and more of anything never costs less. Set-up spares are not in it: they are what an
 * allowance is for.
 *
 * @returns undefined where no row of Stock serves the profile
 */
export function allowedLumber(
  { profile, tally, sticks }: Pick<ProfilePlan, 'profile' | 'tally' | 'sticks'>,
  job: Job,
): AllowedLumber | undefined {
  const { units } = findStock(profile, job);
  const endless = units.filter(({ item }) => item.buyMost === null);
  const toBuy = units.filter(({ item }) => item.buyMost !== 0);
  const eligible = endless.length > 0 ? endless : toBuy.length > 0 ? toBuy : units;
  const priced = eligible.map((unit) => priceBy(unit, tally, sticks));
  return priced.reduce<AllowedLumber | undefined>(
    (least, one) => (least === undefined || one.cents < least.cents ? one : least),
    undefined,
  );
}

function priceBy(
  unit: StockUnit,
  tally: ProfilePlan['tally'],
  sticks: ProfilePlan['sticks'],
): AllowedLumber {
  const { item, boardFeet, priceCents, strips } = unit;
  const { offcutAllowancePercent: allowancePercent, lengthNet, lengthBought } = tally;
  const { boardFeetNet, boardFeetBought } = tally;
  const of = (net: number, per: AllowedLumber['per'], eachCents: number, bought?: number) => ({
    ...{ unit, per, net, allowancePercent, eachCents },
    cents: cents(net * (1 + allowancePercent / 100) * eachCents),
    ...(bought === undefined || net === 0 ? {} : { plannedPercent: (bought / net - 1) * 100 }),
  });
  if (item.kind === 'board' && boardFeet !== undefined && boardFeetNet !== undefined) {
    return of(boardFeetNet, 'board foot', priceCents / boardFeet, clearOf(boardFeetBought, sticks));
  }
  const each = priceCents / strips / (Number(item.length) / 12);
  return of(Number(lengthNet) / 12, 'foot', each, Number(lengthBought) / 12);
}

/** What is bought of clear wood; undefined where its sticks are of more than one yield. */
function clearOf(bought: number | undefined, sticks: ProfilePlan['sticks']): number | undefined {
  const [one = 1, ...others] = new Set(sticks.map(({ item }) => Number(boughtForUsed(item))));
  return bought === undefined || others.length > 0 ? undefined : bought / one;
}
