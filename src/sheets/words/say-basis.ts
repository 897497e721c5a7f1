/** What the price goes by, and what it would be by the other, in the words of the command line and the pane. */
import { formatFixed } from '../../core/units/format-number.ts';
import { sayMoney } from '../../core/units/say-money.ts';
import type { JobPlan } from '../../planning/job-plan.ts';
import { planOverAllowance, totalsBy } from '../../planning/price-bases.ts';
import type { PriceBasis } from '../../planning/settings/money-settings.ts';

const BY: Readonly<Record<PriceBasis, string>> = {
  plan: 'the lumber that this plan opens',
  allowance: 'net and the offcut allowance',
};
const OTHER: Readonly<Record<PriceBasis, PriceBasis>> = { plan: 'allowance', allowance: 'plan' };

/** `by net and the offcut allowance $812.40: the plan comes to $31.20 (4 %) more`. */
export function sayOtherBasis(plan: JobPlan): string {
  const { shop } = plan.job;
  const other = OTHER[shop.priceBasis];
  const [byPlan, byAllowance] = [
    totalsBy(plan, 'plan').priceCents,
    totalsBy(plan, 'allowance').priceCents,
  ];
  const money = (cents: number): string => sayMoney(cents, shop.currency, shop.decimalSign);
  const more = byPlan - byAllowance;
  const percent = planOverAllowance(byPlan, byAllowance);
  const share =
    percent === undefined ? '' : ` (${formatFixed(Math.abs(percent), 0, shop.decimalSign)} %)`;
  const differs =
    more === 0
      ? 'both come to the same'
      : `the plan comes to ${money(Math.abs(more))}${share} ${more > 0 ? 'more' : 'less'}`;
  const price = { plan: byPlan, allowance: byAllowance }[other];
  return `by ${BY[other]} ${money(price)}: ${differs}`;
}

/** `The price goes by the lumber that this plan opens; by net and the offcut allowance …`. */
export function sayBasis(plan: JobPlan): string {
  return `The price goes by ${BY[plan.job.shop.priceBasis]}; ${sayOtherBasis(plan)}.`;
}
