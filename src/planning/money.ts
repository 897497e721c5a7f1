/** Money in whole cents, rounded once, at the line. */
import { offcutCents } from '../cutting/problem/offcut-credit.ts';
import type { TakenStick } from './cut-sticks.ts';
import { boughtForUsed } from './grade-yield.ts';
import type { OpenedRow } from './opened-rows.ts';
import type { StatedGroup } from './group-problem.ts';
import type { Profile } from './job.ts';
import type { Money, Totals } from './job-plan.ts';
import type { Shop } from './shop.ts';
import { HALF_CENT_SLACK_CENTS } from './tolerance.ts';

/**
 * One profile's lines, or those of the work for the whole job. Labor is hours at the rate, and what work costs
 * beside them. Overhead comes on lumber less credit and labor, and with them makes the cost.
 * Contingency comes on the cost; markup on lumber less credit and on labor, each at its own percent. The
 * margin is a share of the price: price = (cost + contingency + markup) / (1 - margin).
 */
export function priceLines(
  lumberCents: number,
  offcutCreditCents: number,
  work: { readonly hours: number; readonly money: number },
  shop: Shop,
): Money {
  const laborCents = cents((work.hours * shop.hourlyRate + work.money) * 100);
  const materialCents = lumberCents - offcutCreditCents;
  const base = materialCents + laborCents;
  const overheadCents = cents((base * shop.overhead) / 100);
  const costCents = base + overheadCents;
  const contingencyCents = cents((costCents * shop.contingency) / 100);
  const markupCents = cents(
    (materialCents * shop.materialMarkup + laborCents * shop.laborMarkup) / 100,
  );
  const beforeMargin = costCents + contingencyCents + markupCents;
  return {
    lumberCents,
    offcutCreditCents,
    laborCents,
    overheadCents,
    costCents,
    contingencyCents,
    markupCents,
    priceCents: cents(beforeMargin / (1 - shop.margin / 100)),
  };
}

/**
 * Shares what a group pays for lumber among its profiles, row by row of Stock. Boards are paid by the
 * area of the strips used of them: by their widths, since all of a row are as long. Sticks are paid by
 * their number. So the profiles that opened a row's boards also pay for its blanks that nothing is cut
 * from. Derived; shares sum to the group's lumber.
 *
 * @returns cents by the profile's name
 */
export function shareLumber(
  profiles: readonly Profile[],
  rows: readonly OpenedRow[],
): ReadonlyMap<string, number> {
  const shares = new Map(profiles.map(({ name }) => [name, 0]));
  for (const { supply, units } of rows) {
    const weights = weightsOf(profiles, supply, units);
    shareCents(units.size * supply.priceCents, weights).forEach((share, at) => {
      const name = profiles[at]?.name ?? '';
      shares.set(name, (shares.get(name) ?? 0) + share);
    });
  }
  return shares;
}

/**
 * Shares the board feet of a group's opened boards and sticks among its profiles, as shareLumber
 * shares what they cost.
 *
 * @returns board feet by the profile's name; none of one that uses stock of unknown board feet
 */
export function shareBoardFeet(
  profiles: readonly Profile[],
  rows: readonly OpenedRow[],
): ReadonlyMap<string, number> {
  const shares = new Map<string, number>(profiles.map(({ name }) => [name, 0]));
  for (const { supply, units } of rows) {
    const weights = weightsOf(profiles, supply, units);
    const boardFeet = (supply.boardFeet ?? Number.NaN) * Number(boughtForUsed(supply.item));
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    weights.forEach((weight, at) => {
      const name = profiles[at]?.name ?? '';
      if (weight > 0)
        shares.set(name, (shares.get(name) ?? 0) + (units.size * boardFeet * weight) / all);
    });
  }
  return new Map([...shares].filter(([, boardFeet]) => !Number.isNaN(boardFeet)));
}

/** How much each profile uses of what is opened of a row. */
function weightsOf(
  profiles: readonly Profile[],
  { item }: OpenedRow['supply'],
  units: OpenedRow['units'],
): readonly number[] {
  const counts = new Map<Profile, number>();
  for (const { profile } of [...units.values()].flat()) {
    counts.set(profile, (counts.get(profile) ?? 0) + 1);
  }
  return profiles.map((profile) => {
    const width = item.kind === 'board' ? Number(profile.blankWidth ?? 1) : 1;
    return width * (counts.get(profile) ?? 0);
  });
}

/** What the kept offcuts of sticks are worth; those of all that aren't cut yet make the plan's credit. */
export function creditSticks({ problem }: StatedGroup, sticks: readonly TakenStick[]): number {
  const credits = new Map(problem.profiles?.map(({ id, offcutCredit }) => [id, offcutCredit]));
  return sticks.reduce((sum, { profile, supply, stick }) => {
    if (!stick.offcutKept) return sum;
    const most = Math.floor(supply.priceCents / (2 * stick.strips));
    const offcut = Number(stick.offcut.mul(problem.unitsPerInch));
    return sum + offcutCents(offcut, 0, credits.get(profile.name), most);
  }, 0);
}

/** Shares an amount of cents by weights so that the shares sum to it: the largest remainders get the odd cents. */
export function shareCents(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  if (sum <= 0) return weights.map(() => 0);
  const exact = weights.map((weight) => (total * weight) / sum);
  const shares = exact.map((share) => Math.floor(share));
  let left = total - shares.reduce((all, share) => all + share, 0);
  const order = exact
    .map((share, index) => ({ index, rest: share - Math.floor(share) }))
    .sort((one, other) => other.rest - one.rest || one.index - other.index);
  for (const { index } of order) {
    if (left <= 0) break;
    shares[index] = (shares[index] ?? 0) + 1;
    left--;
  }
  return shares;
}

/** Whole cents, halves up; what is below a half by arithmetic alone counts as the half. */
/** What is asked for at the order, in cents: the deposit's percent of price and tax. */
export function depositCents(
  { priceCents, taxCents }: Pick<Totals, 'priceCents' | 'taxCents'>,
  percent: number,
): number {
  return cents(((priceCents + taxCents) * percent) / 100);
}

export function cents(amount: number): number {
  return Math.floor(amount + 0.5 + HALF_CENT_SLACK_CENTS);
}
