/** The price of a whole job, from those of its profiles, and the tax on it. */
import type { JobWork, ProfilePlan, Totals } from './job-plan.ts';
import { cents } from './money.ts';
import type { Shop } from './shop.ts';

export type JobPrice = Pick<
  Totals,
  | 'linesCents'
  | 'jobWorkCents'
  | 'toMinimumCents'
  | 'deliveryCents'
  | 'roundingCents'
  | 'priceCents'
  | 'taxableCents'
  | 'taxCents'
>;

/** To how many cents a price is rounded up. */
export const ROUNDING_CENTS: Readonly<Record<Shop['priceRounding'], number>> = {
  cent: 1,
  dollar: 100,
  '5': 500,
};

/**
 * The moldings and the work for the whole job, brought up to the minimum charge; delivery; and what rounds both up. Of a job of which
 * nothing is left to make, nothing is charged. Rounding up keeps the price above the minimum and the margin
 * whole. Tax on material is on what lumber less credit, with its markup, makes of the price: divided by
 * 1 - margin; delivery, minimum and rounding have none of it.
 */
export function priceJob(
  profiles: readonly Pick<ProfilePlan, 'money'>[],
  jobWork: JobWork,
  shop: Shop,
): JobPrice {
  const sum = (value: (plan: Pick<ProfilePlan, 'money'>) => number): number =>
    profiles.reduce((all, plan) => all + value(plan), 0);
  const linesCents = sum(({ money }) => money.priceCents);
  const isCharged = profiles.length > 0;
  const least = isCharged ? cents(shop.minimumCharge * 100) : 0;
  const jobWorkCents = jobWork.money?.priceCents ?? 0;
  const toMinimumCents = Math.max(0, least - linesCents - jobWorkCents);
  const deliveryCents = isCharged ? cents(shop.delivery * 100) : 0;
  const exact = linesCents + jobWorkCents + toMinimumCents + deliveryCents;
  const step = ROUNDING_CENTS[shop.priceRounding];
  const priceCents = Math.ceil(exact / step) * step;
  const material = sum(({ money }) => money.lumberCents - money.offcutCreditCents);
  const taxableCents = {
    all: priceCents,
    material: cents((material * (1 + shop.materialMarkup / 100)) / (1 - shop.margin / 100)),
    none: 0,
  }[shop.taxOn];
  return {
    linesCents,
    jobWorkCents,
    toMinimumCents,
    deliveryCents,
    roundingCents: priceCents - exact,
    priceCents,
    taxableCents,
    taxCents: cents((taxableCents * shop.tax) / 100),
  };
}
