/** What commands that plan and save have in common: the call looked over, one plan made, its files written. */
import { syntax } from '../core/faults/argument.ts';
import type { Fault } from '../core/faults/fault.ts';
import { saveFiles, type FileToSave } from '../hosts/file/save-files.ts';
import type { PlanToKeep } from '../planning/kept/keep-plan.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import type { Stamp } from '../sheets/stamp.ts';
import { argumentAt, type Call, type Report } from './command.ts';
import { readEffort } from './effort.ts';
import { planInput } from './plan-input.ts';
import { readDay } from './shared-options.ts';
import { STANDARD_INPUT } from './standard-input.ts';
import { refusePlan } from './terse-report.ts';
import { checkTargets } from './target-file.ts';

export interface FileOfPlan {
  /** The option that names it: --out. */
  readonly option: string;
  /** Of the file: .xlsx, say. */
  readonly ending: string;
  /** @param from the plan with its inputs and its making, as it is kept and stamped */
  readonly make: (plan: JobPlan, from: PlanToKeep) => Promise<Uint8Array>;
}

export type SavedPlan =
  | { readonly plan: JobPlan; readonly stamp: Stamp; readonly refusal?: never }
  | { readonly plan?: never; readonly stamp?: never; readonly refusal: Report };

/**
 * Plans the input of a call, and saves what is made of the plan under those of the options that are
 * given. Whether the files may be written there is known before anything is planned, and all are made
 * before the first is saved, all or none. The plan that a workbook carries is used where `usesKept` says
 * so. Faults: `ofCall`, found before, and what checkTargets and saveFiles find.
 */
export async function planToFiles(
  call: Call,
  files: readonly FileOfPlan[],
  usesKept = false,
  ofCall: readonly Fault[] = [],
): Promise<SavedPlan> {
  const json = call.flags.has('--json');
  const force = call.flags.has('--force');
  const input = argumentAt(call, 0);
  const faults = [...ofCall];
  const effort = readEffort(call, faults);
  const made = readDay(call, faults);
  const wanted = files.flatMap((file) => {
    const path = call.values.get(file.option);
    return path === undefined ? [] : [{ ...file, path }];
  });
  const targets = wanted.map(({ option, ...one }) => ({ ...one, argument: syntax(option) }));
  faults.push(
    ...(await checkTargets(targets, { force, inputs: input === STANDARD_INPUT ? [] : [input] })),
  );
  if (faults.length > 0) return { refusal: refusePlan(call, 2, { faults, cautions: [] }) };
  const planned = await planInput(
    input,
    { effort, isSilent: json || call.flags.has('--quiet') },
    usesKept,
  );
  if (planned.plan === undefined) return { refusal: refusePlan(call, planned.exit, planned) };
  const { plan } = planned;
  // A plan that was kept says itself how long was looked for it; what is made of it now is of today.
  const from: PlanToKeep & Stamp = { effort, ...planned.from, ...made };
  const { cautions } = plan;
  const bytes: FileToSave[] = [];
  for (const { path, make } of wanted) bytes.push({ path, bytes: await make(plan, from) });
  const saved = await saveFiles(bytes, { replace: force });
  if (saved.ok) return { plan, stamp: from };
  return { refusal: refusePlan(call, 2, { faults: saved.faults, cautions }) };
}

/** Whoever says how long to plan wants a new plan. */
export function takesKept({ values }: Call): boolean {
  return !values.has('--seconds') && !values.has('--steps');
}
