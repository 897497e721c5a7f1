/** The price of each option: what the job with it taken up comes to more than the job without it. */
import { sayArgument } from '../../core/faults/argument.ts';
import { fault, ok, placeFault, rewordFault, type Fault } from '../../core/faults/fault.ts';
import { planSticks } from '../../cutting/plan-sticks.ts';
import type { StickAnswer } from '../../cutting/problem/problem.ts';
import type { Job, JobOption } from '../job.ts';
import type { JobPlan, MoreOfOption, PlannedOption } from '../job-plan.ts';
import type { JobPlanning, PlanJobOptions } from '../job-planning.ts';
import { sayOptionCautions, sayOptionFaults } from './say-of-option.ts';

/** Plans one job as it stands. */
type PlanOne = (job: Job, options: PlanJobOptions) => Promise<JobPlanning>;

/**
 * Plans the job, and it again with each option that isn't in it. Sticks that no option changes are planned
 * once: the same problem has the same answer in all of these plans, so that no difference of price comes
 * of the search alone. What is cut stays cut in each; an option that would leave all of a molding over is
 * cautioned and not priced.
 */
export async function planOptions(
  job: Job,
  options: PlanJobOptions,
  planOne: PlanOne,
): Promise<JobPlanning> {
  const base = await planOne(job, options);
  if (job.options.length === 0) return base;
  const answers = new Map<string, StickAnswer>();
  const { planSticks: plan = planSticks, onGroup } = options;
  const planKnown: typeof planSticks = (problem, more) => {
    const known = answers.get(JSON.stringify(problem));
    return known === undefined ? plan(problem, more) : Promise.resolve(ok(known));
  };
  remember(answers, base.plan);
  const faults = [...base.faults];
  const cautions = [...base.cautions];
  const planned: PlannedOption[] = [];
  // Of a job at fault options are planned only for what else is at fault.
  const effort = base.plan === undefined ? asQuick(options) : options;
  for (const option of job.options) {
    if (option.job === undefined) {
      planned.push({ option });
      continue;
    }
    const found = await planOne(option.job, {
      ...effort,
      planSticks: planKnown,
      ...(onGroup === undefined ? {} : { onGroup: nameOption(onGroup, option) }),
    });
    remember(answers, found.plan);
    const forNobody = found.faults.filter(({ code }) => code === 'job.cut-for-nobody');
    if (base.plan !== undefined && forNobody.length > 0) {
      const details = {
        profile: forNobody.map(({ argument }) => sayArgument(argument)).join(', '),
      };
      const cut = fault('job.option-cut', 'option', option.name, { details });
      cautions.push(placeFault(cut, option.where));
      continue;
    }
    faults.push(...sayOptionFaults(option, found.faults, base.faults).map(reword(job)));
    cautions.push(...sayOptionCautions(option, found.cautions, base.cautions).map(reword(job)));
    if (base.plan === undefined || found.plan === undefined) continue;
    planned.push({ option, plan: found.plan, more: moreThan(base.plan, found.plan) });
  }
  if (base.plan === undefined || faults.length > 0) return { faults, cautions };
  return { plan: { ...base.plan, options: planned, cautions }, faults, cautions };
}

function asQuick(options: PlanJobOptions): PlanJobOptions {
  const others = Object.entries(options).filter(([name]) => name !== 'seconds');
  return { ...Object.fromEntries(others), budget: { steps: 0 } };
}

function remember(answers: Map<string, StickAnswer>, plan: JobPlan | undefined): void {
  for (const { problem, answer } of plan?.groups ?? []) {
    const key = JSON.stringify(problem);
    if (!answers.has(key)) answers.set(key, answer);
  }
}

function nameOption(
  onGroup: NonNullable<PlanJobOptions['onGroup']>,
  { name }: JobOption,
): NonNullable<PlanJobOptions['onGroup']> {
  return (done, of, group) => {
    onGroup(done, of, group === '' ? '' : `option ${name}: ${group}`);
  };
}

function reword({ shop }: Job): (one: Fault) => Fault {
  return (one) => rewordFault(one, shop.unit, shop.decimalSign);
}

/** Prices as they are rounded: what the client pays more, whatever minimum, delivery and rounding make of it. */
function moreThan({ totals: base }: JobPlan, { totals }: JobPlan): MoreOfOption {
  return {
    priceCents: totals.priceCents - base.priceCents,
    taxableCents: totals.taxableCents - base.taxableCents,
    taxCents: totals.taxCents - base.taxCents,
    costCents: totals.costCents - base.costCents,
    hours: totals.hours - base.hours,
  };
}
