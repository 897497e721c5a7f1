/** What comes on the price of the moldings, in the words of every sheet and screen. */
import type { Totals } from '../../planning/job-plan.ts';

export const PRICE_LINES = {
  jobWork: 'Work for the whole job',
  toMinimum: 'Up to the minimum charge',
  delivery: 'Delivery',
  rounding: 'Rounding',
  /** On the client's sheet alone: elsewhere they are planned anew. */
  options: 'Options taken up',
} as const;

export type PriceLine = keyof typeof PRICE_LINES;

/** Those that come to something, in the order in which they come on. */
export function listPriceLines(
  totals: Totals,
): { readonly line: PriceLine; readonly cents: number }[] {
  const all = [
    { line: 'jobWork', cents: totals.jobWorkCents },
    { line: 'toMinimum', cents: totals.toMinimumCents },
    { line: 'delivery', cents: totals.deliveryCents },
    { line: 'rounding', cents: totals.roundingCents },
  ] as const;
  return all.filter(({ cents }) => cents > 0);
}
