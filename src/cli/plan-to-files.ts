/** What commands that plan and save have in common: the call looked over, one plan made, its files written. */
import { resolve } from 'node:path';
import { fault, type Fault } from '../core/faults/fault.ts';
import { saveFile } from '../hosts/file/save-file.ts';
import type { PlanToKeep } from '../planning/kept/keep-plan.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { argumentAt, type Call, type Report } from './command.ts';
import { readEffort } from './effort.ts';
import { planInput } from './plan-input.ts';
import { reportRefusal } from './report.ts';
import { checkTarget } from './target-file.ts';

export interface FileOfPlan {
  /** The option that names it: --out. */
  readonly option: string;
  /** Of the file: .xlsx, say. */
  readonly ending: string;
  /** @param from the plan with its inputs, as it is kept */
  readonly make: (plan: JobPlan, from: PlanToKeep) => Promise<Uint8Array>;
}

export type SavedPlan =
  | { readonly plan: JobPlan; readonly refusal?: never }
  | { readonly plan?: never; readonly refusal: Report };

/**
 * Plans the input of a call, and saves what is made of the plan under those of the options that are
 * given. Whether the files may be written there is known before anything is planned, and all are made
 * before the first is saved. The plan that a workbook carries is used where `usesKept` says so. Faults: file.same, and what checkTarget and saveFile find.
 */
export async function planToFiles(
  call: Call,
  files: readonly FileOfPlan[],
  usesKept = false,
): Promise<SavedPlan> {
  const json = call.flags.has('--json');
  const force = call.flags.has('--force');
  const input = argumentAt(call, 0);
  const faults: Fault[] = [];
  const effort = readEffort(call, faults);
  const wanted = files.flatMap((file) => {
    const path = call.values.get(file.option);
    return path === undefined ? [] : [{ ...file, path }];
  });
  for (const { option, ending, path } of wanted) {
    faults.push(...(await checkTarget(path, { argument: option, force, input, ending })));
  }
  faults.push(...sameFiles(wanted));
  if (faults.length > 0) return { refusal: reportRefusal(2, { faults, cautions: [] }, json) };
  const planned = await planInput(input, { effort, isSilent: json }, usesKept);
  if (planned.plan === undefined) return { refusal: reportRefusal(planned.exit, planned, json) };
  const { plan, from } = planned;
  const { cautions } = plan;
  const made: { readonly path: string; readonly bytes: Uint8Array }[] = [];
  for (const { path, make } of wanted) made.push({ path, bytes: await make(plan, from) });
  for (const { path, bytes } of made) {
    const saved = await saveFile(path, bytes, { replace: force });
    if (!saved.ok) faults.push(...saved.faults);
  }
  return faults.length === 0 ? { plan } : { refusal: reportRefusal(2, { faults, cautions }, json) };
}

/** Whoever says how long to plan wants a new plan. */
export function takesKept({ values }: Call): boolean {
  return !values.has('--seconds') && !values.has('--steps');
}

function sameFiles(wanted: readonly { readonly option: string; readonly path: string }[]): Fault[] {
  return wanted.flatMap(({ option, path }, index) => {
    const first = wanted.slice(0, index).find((one) => resolve(one.path) === resolve(path));
    return first === undefined
      ? []
      : [fault('file.same', option, path, { details: { other: first.option } })];
  });
}
