import type { OffcutCredit, StickSupply } from './problem.ts';

/**
 * What an offcut is worth in whole cents: 0 where it is too short to be kept.
 *
 * @param offcut its length, in the planner's units, 0 or more
 * @param keepOffcutsOver kept from this length on, in the same units
 * @param capCents what a strip of its supply is credited at most, see `creditCap`
 */
export function offcutCents(
  offcut: number,
  keepOffcutsOver: number,
  credit: OffcutCredit | undefined,
  capCents: number,
): number {
  if (credit === undefined || offcut <= 0 || offcut < keepOffcutsOver) return 0;
  return Math.min(credit.mostCents, capCents, Math.floor(credit.centsPerUnit * offcut));
}

/**
 * The most that an offcut of one strip is credited, in cents: half of what the strip costs, a board's
 * price shared alike among the strips of its rip; or sticks would be opened for their offcuts.
 *
 * @param rip the place among the supply's rips; of no account where there are none
 */
export function creditCap(
  { priceCents, stripWorthCents, strips, rips }: StickSupply,
  rip: number,
): number {
  if (stripWorthCents !== undefined) return Math.floor(stripWorthCents / 2);
  const all = rips?.[rip]?.reduce((sum, { count }) => sum + count, 0) ?? strips;
  return Math.floor(priceCents / (2 * Math.max(1, all)));
}
