/** Plans of jobs of which sticks are cut already, and of which the inputs were changed after that. */
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { cutKey, NO_TICKS, type Ticks } from '../../src/planning/cut/cut-already.ts';
import { cutFromPlan } from '../../src/planning/cut/cut-from-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planOf, type Tables } from '../planning/make-job.ts';

/** Every third stick is ticked; of the sticks between them, the first that gives several lengths is begun. */
export function ticksOf(plan: JobPlan): Ticks {
  const sticks = plan.profiles.flatMap((one) => one.sticks);
  const whole = new Set(sticks.filter((_, at) => at % 3 === 0).map(({ id }) => id));
  const begun = sticks.find(({ id, pieces }) => pieces.length > 1 && !whole.has(id));
  const cuts = begun === undefined ? [] : [cutKey(begun.id, 1)];
  return { ...NO_TICKS, sticks: whole, cuts: new Set(cuts) };
}

/**
 * A job is planned, ticked and planned again.
 *
 * @param changed what became of its inputs between
 */
export async function planCut(tables: Tables, changed: Tables = tables): Promise<JobPlan> {
  const earlier = await planOf(tables);
  const plan = await planOf(changed, { cut: cutFromPlan(earlier, ticksOf(earlier)), earlier });
  const wrong = checkJobPlan(plan);
  if (wrong.length > 0) throw new Error(wrong.join('\n'));
  return plan;
}

/** Every piece gets longer by what its ends have more, so that nothing that is cut fits any more. */
export function withLongerEnds(tables: Tables): Tables {
  return { ...tables, shop: `${tables.shop ?? 'Setting,Value'}\nend allowance,1.25` };
}
