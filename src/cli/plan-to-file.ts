/** What commands that plan and save have in common: the call looked over, the plan made, the file written. */
import type { Fault } from '../core/faults/fault.ts';
import { saveFile } from '../hosts/file/save-file.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { argumentAt, type Call, type Report } from './command.ts';
import { readEffort } from './effort.ts';
import { planInput } from './plan-input.ts';
import { reportRefusal } from './report.ts';
import { checkTarget } from './target-file.ts';

export interface FileToMake {
  /** Of the file: .xlsx, say. */
  readonly ending: string;
  readonly make: (plan: JobPlan) => Promise<Uint8Array>;
}

export type SavedPlan =
  | { readonly plan: JobPlan; readonly out: string; readonly refusal?: never }
  | { readonly plan?: never; readonly refusal: Report };

/**
 * Plans the input of a call that needs --out, and saves there what is made of the plan. Whether the
 * file may be written there is known before anything is planned; at fault, nothing is written.
 */
export async function planToFile(call: Call, { ending, make }: FileToMake): Promise<SavedPlan> {
  const json = call.flags.has('--json');
  const force = call.flags.has('--force');
  const input = argumentAt(call, 0);
  const out = call.values.get('--out') ?? '';
  const faults: Fault[] = [];
  const effort = readEffort(call, faults);
  faults.push(...(await checkTarget(out, { argument: '--out', force, input, ending })));
  if (faults.length > 0) return { refusal: reportRefusal(2, { faults, cautions: [] }, json) };
  const planned = await planInput(input, { effort, isSilent: json });
  if (planned.plan === undefined) {
    return { refusal: reportRefusal(planned.exit, planned, json) };
  }
  const { plan } = planned;
  const saved = await saveFile(out, await make(plan), { replace: force });
  if (saved.ok) return { plan, out };
  const { cautions } = plan;
  return { refusal: reportRefusal(2, { faults: saved.faults, cautions }, json) };
}
