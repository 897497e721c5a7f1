/** A part of the independent look at a plan: its options, each a plan that stands, and what it costs more. */
import { nameKey } from './job.ts';
import type { JobPlan, PricedOption } from './job-plan.ts';
import { CHECK_SLACK_HOURS } from './tolerance.ts';

/** @param check the look at a plan as a whole */
export function checkOptions(plan: JobPlan, check: (plan: JobPlan) => string[]): string[] {
  const wrong: string[] = [];
  const { options, job } = plan;
  const names = options.map(({ option }) => nameKey(option.name));
  if (new Set(names).size < names.length) wrong.push('An option stands twice.');
  if (options.some(({ option }) => !job.options.includes(option))) {
    wrong.push('An option is not one of the job.');
  }
  if (plan.cut.length === 0 && options.length !== job.options.length)
    wrong.push('An option of the job is not priced.');
  for (const one of options) {
    const { name, job: changed } = one.option;
    if ((one.plan === undefined) !== (changed === undefined)) {
      wrong.push(`Option ${name} is taken up and priced, or neither.`);
    }
    if (one.plan === undefined) continue;
    wrong.push(...check(one.plan).map((said) => `Option ${name}: ${said}`));
    wrong.push(...checkMore(plan, one));
  }
  return wrong;
}

function checkMore(base: JobPlan, { option: { name, job }, plan, more }: PricedOption): string[] {
  const wrong: string[] = [];
  if (plan.job !== job) wrong.push(`Option ${name} is the plan of another job.`);
  if (plan.options.length > 0) wrong.push(`Option ${name} has options itself.`);
  for (const key of ['priceCents', 'taxableCents', 'taxCents', 'costCents'] as const) {
    if (base.totals[key] + more[key] === plan.totals[key]) continue;
    wrong.push(`Option ${name}: ${key} is not what it comes to more.`);
  }
  if (Math.abs(base.totals.hours + more.hours - plan.totals.hours) > CHECK_SLACK_HOURS) {
    wrong.push(`Option ${name}: its hours are not those that it takes more.`);
  }
  return wrong;
}
