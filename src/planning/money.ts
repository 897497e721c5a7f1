/** Money in whole cents, rounded once, at the line. */
import type { CutStick, Hours, Money, StockUse } from './job-plan.ts';
import { hoursOf } from './job-plan.ts';
import type { Shop } from './shop.ts';

/**
 * One profile's lines. Kept offcuts are worth the shop's share of what their length cost; overhead
 * comes on lumber and labor; the margin is a share of the price: price = cost / (1 - margin).
 */
export function priceProfile(
  stockUse: readonly StockUse[],
  sticks: readonly CutStick[],
  hours: Hours,
  shop: Shop,
): Money {
  const priceOf = new Map(stockUse.map((use) => [use.item, use.priceCents]));
  const lumberCents = stockUse.reduce((sum, use) => sum + use.costCents, 0);
  let credit = 0;
  for (const { item, offcut, offcutKept, length, strips } of sticks) {
    if (!offcutKept) continue;
    const perInch = (priceOf.get(item) ?? 0) / strips / Number(length);
    credit += perInch * Number(offcut) * (shop.offcutCredit / 100);
  }
  // Whole blanks left of a board are offcuts too; all blanks of a row cost alike.
  for (const { item, unusedBlanks, priceCents } of stockUse) {
    const strips = sticks.find((stick) => stick.item === item)?.strips ?? 1;
    if (item.length.lt(shop.keepOffcutsOver)) continue;
    credit += ((unusedBlanks * priceCents) / strips) * (shop.offcutCredit / 100);
  }
  const offcutCreditCents = Math.min(lumberCents, cents(credit));
  const laborCents = cents(hoursOf(hours) * shop.hourlyRate * 100);
  const base = lumberCents - offcutCreditCents + laborCents;
  const overheadCents = cents((base * shop.overhead) / 100);
  const costCents = base + overheadCents;
  const priceCents = cents(costCents / (1 - shop.margin / 100));
  return { lumberCents, offcutCreditCents, laborCents, overheadCents, costCents, priceCents };
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

/** Halves up; a hair below a half, from arithmetic, counts as the half. */
export function cents(amount: number): number {
  return Math.floor(amount + 0.5 + 1e-7);
}
