/** What a job comes to where a client takes other quantities of its lines, each at the price that was quoted. */
import type { JobPlan, MoreOfOption } from '../job-plan.ts';
import { cents } from '../money.ts';
import { ROUNDING_CENTS } from '../price-job.ts';

export interface PriceOfLines {
  readonly pieces: number;
  /** Of the lines alone. */
  readonly linesCents: number;
  /** Without tax, and the tax on it. */
  readonly priceCents: number;
  readonly taxCents: number;
  readonly toPayCents: number;
}

/**
 * The plan's own prices on other lines: work for the whole job, the minimum charge, delivery and rounding
 * come on them as they came on those quoted, and none of it where no piece is left. The share of material
 * that is taxed is that of the plan. It plans nothing: what the changed job truly costs, a plan of it says.
 *
 * @param lines what is taken: pieces, and what they come to
 * @param options those taken up, each at the price over the job that was quoted for it by itself
 */
export function priceOfLines(
  { job: { shop }, totals }: JobPlan,
  lines: readonly { readonly quantity: number; readonly priceCents: number }[],
  options: readonly MoreOfOption[] = [],
): PriceOfLines {
  const pieces = lines.reduce((sum, { quantity }) => sum + quantity, 0);
  const linesCents = lines.reduce((sum, { priceCents }) => sum + priceCents, 0);
  const asked = (amount: number): number => (pieces === 0 ? 0 : amount);
  const work = linesCents + asked(totals.jobWorkCents);
  const toMinimum = asked(Math.max(0, cents(shop.minimumCharge * 100) - work));
  const exact = work + toMinimum + asked(cents(shop.delivery * 100));
  const step = ROUNDING_CENTS[shop.priceRounding];
  const sum = (of: (more: MoreOfOption) => number): number =>
    options.reduce((all, more) => all + of(more), 0);
  const priceCents = Math.ceil(exact / step) * step + sum((more) => more.priceCents);
  const material =
    totals.linesCents === 0
      ? 0
      : cents(
          (linesCents * totals.taxableCents) / totals.linesCents + sum((more) => more.taxableCents),
        );
  const taxedCents = { all: priceCents, material, none: 0 }[shop.taxOn];
  const taxCents = cents((taxedCents * shop.tax) / 100);
  return { pieces, linesCents, priceCents, taxCents, toPayCents: priceCents + taxCents };
}
