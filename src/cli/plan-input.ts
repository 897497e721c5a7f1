/** From an input's path to a checked plan, or to every fault on the way. */
import { basename } from 'node:path';
import { own } from '../core/faults/argument.ts';
import { fault, type Caution, type Fault } from '../core/faults/fault.ts';
import { checkJobPlan } from '../planning/check-job-plan.ts';
import type { CutAlready } from '../planning/cut/cut-already.ts';
import { fingerprint } from '../planning/input/fingerprint.ts';
import { readJob } from '../planning/input/read-job.ts';
import { withHours, withHoursOf } from '../planning/kept/hours-since.ts';
import { judgeJob } from '../planning/judge-job.ts';
import type { PlanToKeep } from '../planning/kept/keep-plan.ts';
import { cutOf, keptPlanOf, readKeptPlans } from './kept-plan.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { planJob } from '../planning/plan-job.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { openJob } from './open-job.ts';
import { planWithin, type Planning } from './plan-within.ts';

/** The plan with its inputs; how long was looked for it, where it was kept. */
type PlanMade = Omit<PlanToKeep, 'day' | 'effort'> & Partial<Pick<PlanToKeep, 'effort'>>;

/** Sticks that are cut already, and the plan that they were cut by. */
export interface CutBefore {
  readonly cut: readonly CutAlready[];
  readonly earlier?: JobPlan;
}

const NOTHING_CUT: CutBefore = { cut: [] };

export type InputPlanning =
  | { readonly plan: JobPlan; readonly from: PlanMade }
  | {
      readonly plan?: never;
      /** 2 where the input is at fault, 1 where the job it asks for can't be made. */
      readonly exit: 1 | 2;
      readonly faults: readonly Fault[];
      readonly cautions: readonly Caution[];
    };

/**
 * The plan carries the cautions of its reading too. What is ticked as cut on sheets of the workbook stays.
 *
 * @param usesKept whether the plan that a workbook carries is used, where it is of these inputs, or where
 *   the workbook has no inputs
 * @param carried what was cut by an earlier plan of the job, where the input itself tells of nothing
 */
export async function planInput(
  path: string,
  planning: Planning,
  usesKept = false,
  carried: CutBefore = NOTHING_CUT,
): Promise<InputPlanning> {
  const { name, input, kept: sheets } = await openJob(path);
  const keptPlans = sheets === undefined ? undefined : await readKeptPlans(sheets);
  const hasNoInputs = !input.ok && input.faults.every(({ code }) => code === 'table.missing');
  if (usesKept && keptPlans !== undefined && (input.ok || hasNoInputs)) {
    const kept = keptPlanOf(keptPlans, input.ok ? fingerprint(input.value.tables) : undefined);
    if (kept !== undefined) {
      const said = fault('plan.kept-used', own(basename(name)), null);
      const tables = input.ok ? withHours(kept.tables, input.value.tables) : kept.tables;
      const read = readJob(tables, name);
      if (read.job === undefined) return { exit: 2, faults: read.faults, cautions: read.cautions };
      const plan = withHoursOf(kept.plan, read.job);
      const cautions = [said, ...read.cautions, ...plan.cautions];
      return { plan: { ...plan, cautions }, from: { ...kept, plan, tables } };
    }
  }
  if (!input.ok) return { exit: 2, faults: input.faults, cautions: [] };
  const read = readJob(input.value.tables, name);
  const readCautions = [...input.value.cautions, ...read.cautions];
  if (read.job === undefined) {
    // What can't be made is told along with what can't be read, so that it isn't met one by one.
    const { faults, cautions } = judgeJob(read);
    const all = { faults: [...read.faults, ...faults], cautions: [...readCautions, ...cautions] };
    return { exit: 2, ...all };
  }
  const { job } = read;
  const { currency, decimalSign } = job.shop;
  const say = (cents: number): string => sayMoney(cents, currency, decimalSign);
  const ticked = keptPlans === undefined ? { cut: [], cautions: [] } : cutOf(keptPlans);
  const { cautions: ofTicks, ...ofSheets } = ticked;
  const cut = ofSheets.cut.length === 0 ? carried : ofSheets;
  const planned = await planWithin(
    { ...planning, sayMoney: say },
    ({ planSticks, options, onGroup }) => planJob(job, { ...options, ...cut, planSticks, onGroup }),
  );
  const cautions = [
    ...(keptPlans?.cautions ?? []),
    ...ofTicks,
    ...readCautions,
    ...planned.cautions,
  ];
  if (planned.plan === undefined) return { exit: 1, faults: planned.faults, cautions };
  const wrong = checkJobPlan(planned.plan);
  if (wrong.length > 0) throw new RangeError(`The plan is wrong: ${wrong.slice(0, 3).join(' ')}`);
  const { tables } = input.value;
  const from = { plan: planned.plan, fingerprint: fingerprint(tables), tables };
  return { plan: { ...planned.plan, cautions }, from };
}
