/** From an input's path to a checked plan, or to every fault on the way. */
import type { Caution, Fault } from '../core/faults/fault.ts';
import { readJobTables } from '../hosts/file/read-job-input.ts';
import { checkJobPlan } from '../planning/check-job-plan.ts';
import { fingerprint } from '../planning/input/fingerprint.ts';
import { readJob } from '../planning/input/read-job.ts';
import { judgeJob } from '../planning/judge-job.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { planJob } from '../planning/plan-job.ts';
import { sayMoney } from '../core/units/say-money.ts';
import type { ArgumentDefinition } from './command.ts';
import { planWithin, type Planning } from './plan-within.ts';

export const INPUT_ARGUMENT: ArgumentDefinition = {
  name: 'INPUT',
  says: 'A workbook as coveledger new makes it, or a folder with runs.csv, profiles.csv, stock.csv and, as you like, openings.csv and shop.csv.',
};

export type InputPlanning =
  | {
      readonly plan: JobPlan;
      /** Of the tables that it was read from. */
      readonly fingerprint: string;
    }
  | {
      readonly plan?: never;
      /** 2 where the input is at fault, 1 where the job it asks for can't be made. */
      readonly exit: 1 | 2;
      readonly faults: readonly Fault[];
      readonly cautions: readonly Caution[];
    };

/** The plan carries the cautions of its reading too. */
export async function planInput(path: string, planning: Planning): Promise<InputPlanning> {
  const input = await readJobTables(path);
  if (!input.ok) return { exit: 2, faults: input.faults, cautions: [] };
  const read = readJob(input.value.tables, path);
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
  const planned = await planWithin(
    { ...planning, sayMoney: say },
    ({ planSticks, options, onGroup }) => planJob(job, { ...options, planSticks, onGroup }),
  );
  const cautions = [...readCautions, ...planned.cautions];
  if (planned.plan === undefined) return { exit: 1, faults: planned.faults, cautions };
  const wrong = checkJobPlan(planned.plan);
  if (wrong.length > 0) throw new RangeError(`The plan is wrong: ${wrong.slice(0, 3).join(' ')}`);
  return { plan: { ...planned.plan, cautions }, fingerprint: fingerprint(input.value.tables) };
}
