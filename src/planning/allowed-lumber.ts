/** What a profile's lumber costs by its offcut allowance, whatever sticks the plan opens. */
import { allowanceFactor, allowancePercentOf } from '../core/lumber/offcut-allowance.ts';
import { boughtForUsed } from './grade-yield.ts';
import type { Job, Profile } from './job.ts';
import type { CutStick, Tally } from './job-plan.ts';
import { cents } from './money.ts';
import { findStock, type AllowedLumber, type StockUnit } from './stock-units.ts';
import { boardFeetPerInch } from './tally.ts';

/**
 * Net length or board feet and the allowance on them, at the least price of the rows that can be bought
 * without end (else of those that can be bought, else of all). So it goes by the inputs alone: no time of
 * search moves it, and more of anything never costs less; which row is the least goes by what an inch of
 * net costs, not by how long all is. Set-up spares are not in it: they are what an allowance is for.
 *
 * @throws RangeError where no row of Stock serves the profile: then there is no plan
 */
export function allowedLumber(
  profile: Profile,
  { lengthNet, offcutAllowancePercent }: Pick<Tally, 'lengthNet' | 'offcutAllowancePercent'>,
  job: Job,
): AllowedLumber {
  const { units } = findStock(profile, job);
  const endless = units.filter(({ item }) => item.buyMost === null);
  const toBuy = units.filter(({ item }) => item.buyMost !== 0);
  const eligible = endless.length > 0 ? endless : toBuy.length > 0 ? toBuy : units;
  const [first, ...others] = eligible.map((unit) => priceUnit(profile, unit, job.shop));
  if (first === undefined) throw new RangeError(`No row of Stock serves ${profile.name}.`);
  const least = others.reduce(
    (one, other) => (other.eachInchCents < one.eachInchCents ? other : one),
    first,
  );
  const { unit, per, eachCents, perInch } = least;
  const factor = allowanceFactor(offcutAllowancePercent, job.shop.allowanceOf);
  const net = Number(lengthNet) * perInch;
  const inches = Number(lengthNet) * factor;
  const longest = eligible.reduce(
    (one, { item }) => (item.length.gt(one.length) ? item : one),
    unit.item,
  );
  return {
    ...{ unit, per, net, inches, eachCents },
    longestStick: longest.length,
    allowancePercent: offcutAllowancePercent,
    sticks: roundUpCount(inches / Number(unit.item.length)),
    cents: cents(net * factor * eachCents),
  };
}

/** A millionth over a whole one is what arithmetic leaves; sheets round by the same formula. */
export function roundUpCount(count: number): number {
  return Math.ceil(Math.round(count * 1e6) / 1e6);
}

/** What one of its unit costs, and how many of these an inch of net is; of a board with a yield, of clear wood. */
function priceUnit(profile: Profile, unit: StockUnit, shop: Job['shop']) {
  const { item, boardFeet, priceCents, strips } = unit;
  const feetPerInch = boardFeetPerInch(profile, shop);
  const isByTheBoardFoot =
    item.kind === 'board' && boardFeet !== undefined && feetPerInch !== undefined;
  const per: AllowedLumber['per'] = isByTheBoardFoot ? 'board foot' : 'foot';
  const eachCents = isByTheBoardFoot
    ? priceCents / boardFeet
    : priceCents / strips / (Number(item.length) / 12);
  const perInch = isByTheBoardFoot ? feetPerInch : 1 / 12;
  return { unit, per, eachCents, perInch, eachInchCents: eachCents * perInch };
}

/**
 * As planned: the clear wood that is opened over net, in percent of what the shop's allowance is of. Yield is in
 * neither percent: it makes the foot dearer, of both.
 *
 * @returns undefined where it isn't known
 */
export function plannedPercent(
  { per }: Pick<AllowedLumber, 'per'>,
  { tally, sticks }: { readonly tally: Tally; readonly sticks: readonly CutStick[] },
  { allowanceOf }: Pick<Job['shop'], 'allowanceOf'>,
): number | undefined {
  const { lengthNet, lengthBought, boardFeetNet, boardFeetBought } = tally;
  const [net, bought] =
    per === 'foot'
      ? [Number(lengthNet), Number(lengthBought)]
      : [boardFeetNet, clearOf(boardFeetBought, sticks)];
  if (net === undefined || bought === undefined || net === 0) return undefined;
  return allowancePercentOf(net, bought, allowanceOf);
}

/** What is bought of clear wood; undefined where its sticks are of more than one yield. */
function clearOf(bought: number | undefined, sticks: readonly CutStick[]): number | undefined {
  const [one = 1, ...others] = new Set(sticks.map(({ item }) => Number(boughtForUsed(item))));
  return bought === undefined || others.length > 0 ? undefined : bought / one;
}
