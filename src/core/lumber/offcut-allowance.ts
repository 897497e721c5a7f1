/** The allowance for offcuts and waste: more than net by so many percent, of net or of what is bought. */

/** What its percent is of. */
export const ALLOWANCE_OF = ['net', 'bought'] as const;
export type AllowanceOf = (typeof ALLOWANCE_OF)[number];

/**
 * What net is times to be bought: 1 + p of net; 1 / (1 - w) of what is bought, of which w is waste.
 * 30 % of what is bought is 142.9 for 100 net (WoodWeb, Calculating Waste from Rough Lumber, 2010) [P].
 *
 * @param percent 0 or more; below 100 where it is of what is bought
 * @throws RangeError where all of what is bought would be waste (a bug of the caller's)
 */
export function allowanceFactor(percent: number, of: AllowanceOf): number {
  if (of === 'net') return 1 + percent / 100;
  if (percent >= 100) throw new RangeError('All of what is bought is waste.');
  return 1 / (1 - percent / 100);
}

/** By how many percent, of the one or the other, so much bought is more than net; net and bought above 0. */
export function allowancePercentOf(net: number, bought: number, of: AllowanceOf): number {
  return of === 'net' ? (bought / net - 1) * 100 : (1 - net / bought) * 100;
}
