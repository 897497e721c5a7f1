/** What commands that plan and save have in common: the call looked over, one plan made, its files written. */
import { resolve } from 'node:path';
import { fault, type Fault } from '../core/faults/fault.ts';
import { saveFile } from '../hosts/file/save-file.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import type { Stamp } from '../sheets/stamp.ts';
import { argumentAt, type Call, type Report } from './command.ts';
import { readEffort } from './effort.ts';
import { planInput } from './plan-input.ts';
import { reportRefusal } from './report.ts';
import { readDay } from './shared-options.ts';
import { checkTarget } from './target-file.ts';

export interface FileOfPlan {
  /** The option that names it: --out. */
  readonly option: string;
  /** Of the file: .xlsx, say. */
  readonly ending: string;
  readonly make: (plan: JobPlan, stamp: Stamp) => Promise<Uint8Array>;
}

export type SavedPlan =
  | { readonly plan: JobPlan; readonly stamp: Stamp; readonly refusal?: never }
  | { readonly plan?: never; readonly stamp?: never; readonly refusal: Report };

/**
 * Plans the input of a call, and saves what is made of the plan under those of the options that are
 * given. Whether the files may be written there is known before anything is planned, and all are made
 * before the first is saved. Faults: file.same, and what checkTarget and saveFile find.
 */
export async function planToFiles(call: Call, files: readonly FileOfPlan[]): Promise<SavedPlan> {
  const json = call.flags.has('--json');
  const force = call.flags.has('--force');
  const input = argumentAt(call, 0);
  const faults: Fault[] = [];
  const effort = readEffort(call, faults);
  const day = readDay(call, faults);
  const wanted = files.flatMap((file) => {
    const path = call.values.get(file.option);
    return path === undefined ? [] : [{ ...file, path }];
  });
  for (const { option, ending, path } of wanted) {
    faults.push(...(await checkTarget(path, { argument: option, force, input, ending })));
  }
  faults.push(...sameFiles(wanted));
  if (faults.length > 0) return { refusal: reportRefusal(2, { faults, cautions: [] }, json) };
  const planned = await planInput(input, { effort, isSilent: json });
  if (planned.plan === undefined) return { refusal: reportRefusal(planned.exit, planned, json) };
  const { plan, fingerprint } = planned;
  const stamp: Stamp = { fingerprint, day, effort };
  const { cautions } = plan;
  const made: { readonly path: string; readonly bytes: Uint8Array }[] = [];
  for (const { path, make } of wanted) made.push({ path, bytes: await make(plan, stamp) });
  for (const { path, bytes } of made) {
    const saved = await saveFile(path, bytes, { replace: force });
    if (!saved.ok) faults.push(...saved.faults);
  }
  return faults.length === 0
    ? { plan, stamp }
    : { refusal: reportRefusal(2, { faults, cautions }, json) };
}

function sameFiles(wanted: readonly { readonly option: string; readonly path: string }[]): Fault[] {
  return wanted.flatMap(({ option, path }, index) => {
    const first = wanted.slice(0, index).find((one) => resolve(one.path) === resolve(path));
    return first === undefined
      ? []
      : [fault('file.same', option, path, { details: { other: first.option } })];
  });
}
