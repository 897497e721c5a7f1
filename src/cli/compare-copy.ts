/** A client's copy that came back, against the plan that it is of. */
import { own } from '../core/faults/argument.ts';
import { fault, type Caution, type Fault } from '../core/faults/fault.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import type { CalendarDay } from '../core/units/calendar-day.ts';
import { sayMoney } from '../core/units/say-money.ts';
import { readCopyFile } from '../hosts/file/read-copy-file.ts';
import { saveFile } from '../hosts/file/save-files.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { fingerprint } from '../planning/input/fingerprint.ts';
import { readJob } from '../planning/input/read-job.ts';
import type { PlanToKeep } from '../planning/kept/keep-plan.ts';
import { describeCopyChanges } from '../sheets/changes/copy-changes.ts';
import { copyToJson } from '../sheets/client/copy-json.ts';
import type { CopyFile } from '../sheets/client/copy-sheet.ts';
import { sayNumbered } from '../sheets/words/say-copy.ts';
import { readCopyOf } from '../sheets/client/read-copy-of.ts';
import { madeToJson, markOf, sayStamp, type Stamp } from '../sheets/stamp.ts';
import type { Call, Report } from './command.ts';
import { readKeptPlans } from './kept-plan.ts';
import { openJob } from './open-job.ts';
import { planInput } from './plan-input.ts';
import type { Planning } from './plan-within.ts';
import { takesKept } from './plan-to-files.ts';
import { reportJson } from './report.ts';
import { sayCopy } from './say-copy.ts';
import { sayWorkbook } from './say-workbook.ts';
import { STANDARD_INPUT } from './standard-input.ts';
import { refusePlan, reportPlan } from './terse-report.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const COPY_JSON_VERSION = 1;

/** A file of the call that is a client's copy, by its name, and the other one. */
export interface CopyOfCall {
  readonly copy: CopyFile;
  readonly name: string;
  readonly plan: string;
}

/**
 * Which of two inputs is a client's copy; what comes through a pipe is taken for none.
 *
 * @returns undefined where neither is; faults: copy.two
 */
export async function copyOfCall(
  names: readonly [string, string],
): Promise<CopyOfCall | readonly Fault[] | undefined> {
  const [one, other] = await Promise.all(
    names.map(async (name) => (name === STANDARD_INPUT ? undefined : readCopyFile(name))),
  );
  const [first, second] = names;
  if (one !== undefined && other !== undefined) {
    return [fault('copy.two', own(first), second)];
  }
  if (other !== undefined) return { copy: other, name: second, plan: first };
  return one === undefined ? undefined : { copy: one, name: first, plan: second };
}

/** When and where it is written, and how long is looked for a plan where none is kept. */
export interface CopyComparing {
  readonly planning: Planning;
  readonly made: Pick<Stamp, 'day' | 'moment'>;
  readonly out: string | undefined;
  readonly force: boolean;
}

export async function compareCopy(
  call: Call,
  { copy, name, plan: path }: CopyOfCall,
  { planning, made, out, force }: CopyComparing,
): Promise<Report> {
  if (copy.number === undefined) {
    const none = fault('copy.no-number', own(name), null);
    return refusePlan(call, 2, { faults: [none], cautions: [] });
  }
  const wanted = { ...copy, number: copy.number, name };
  const found = await plansOfNumber(call, wanted, path, { planning, day: made.day });
  if ('refusal' in found) return found.refusal;
  const { plans, cautions: ofPlan } = found;
  const read = readCopyOf(plans, copy, name);
  if (!read.ok) return refusePlan(call, 2, { faults: read.faults, cautions: ofPlan });
  const { from, returned } = read.value;
  const { shop } = from.plan.job;
  const stamp: Stamp = { ...made, ...from };
  const files = {
    before: `${path}. ${sayStamp(stamp, shop.decimalSign)}`,
    after: `${name}, ${sayNumbered(copy.number, copy.day)}.`,
  };
  const day = made.moment ?? made.day;
  const description = describeCopyChanges(returned, files, from.plan.job, day);
  if (out !== undefined) {
    const saved = await saveFile(out, await writeWorkbook(description), { replace: force });
    if (!saved.ok) return refusePlan(call, 2, { faults: saved.faults, cautions: [] });
  }
  const cautions = [...ofPlan, ...returned.findings];
  if (call.flags.has('--json')) {
    return reportJson(0, {
      version: COPY_JSON_VERSION,
      currency: shop.currency,
      copy: copyToJson(copy, returned),
      cautions: faultsToJson(cautions),
      faults: [],
      made: madeToJson(stamp),
      workbook: out ?? null,
    });
  }
  const written =
    out === undefined
      ? ['No workbook is written: give --out FILE.xlsx to have the sheet Changes.']
      : [sayWorkbook(out, description)];
  const words = sayCopy(returned, files, shop, (cents) =>
    sayMoney(cents, shop.currency, shop.decimalSign),
  );
  return reportPlan(call, [...words, ...written], cautions);
}

type PlansFound =
  | { readonly plans: readonly PlanToKeep[]; readonly cautions: readonly Caution[] }
  | { readonly refusal: Report };

/** The plans of the copy's number: those that are kept, else the inputs planned anew. */
async function plansOfNumber(
  call: Call,
  copy: CopyFile & { readonly number: string; readonly name: string },
  path: string,
  { planning, day }: { readonly planning: Planning; readonly day: CalendarDay },
): Promise<PlansFound> {
  const { input, kept: sheets } = await openJob(path);
  const kept = sheets === undefined ? undefined : await readKeptPlans(sheets);
  const known = [kept?.last, kept?.written].filter((one) => one !== undefined);
  const ofNumber = known.filter((one) => markOf(one) === copy.number);
  if (takesKept(call) && ofNumber.length > 0) return { plans: ofNumber, cautions: [] };
  const inputs = input.ok ? fingerprint(input.value.tables) : undefined;
  const isOfInputs = inputs !== undefined && markOf({ fingerprint: inputs }) === copy.number;
  const other = otherPlan(known, inputs, input.ok ? input.value.tables : []);
  if (!isOfInputs && other !== undefined) {
    const given = sayNumbered(copy.number, copy.day);
    const limit = sayNumbered(markOf(other), other.day);
    const faults = [fault('copy.other-plan', own(copy.name), given, { limit })];
    return { refusal: refusePlan(call, 2, { faults, cautions: kept?.cautions ?? [] }) };
  }
  const planned = await planInput(path, planning);
  if (planned.plan === undefined) {
    const cautions = [...(kept?.cautions ?? []), ...planned.cautions];
    return { refusal: refusePlan(call, planned.exit, { faults: planned.faults, cautions }) };
  }
  const from = { ...planned.from, plan: planned.plan, day, effort: planning.effort };
  const anew = fault('copy.planned-anew', own(path), null);
  return { plans: [from], cautions: [anew, ...planned.plan.cautions] };
}

/** Of which plan the other file is: the last that is kept, or that of its inputs. */
function otherPlan(
  known: readonly PlanToKeep[],
  inputs: string | undefined,
  tables: Parameters<typeof readJob>[0],
): { readonly fingerprint: string; readonly day: CalendarDay | undefined } | undefined {
  const [last] = known;
  if (last !== undefined) {
    const day = last.plan.job.titleBlock.date ?? last.day;
    return { fingerprint: last.fingerprint, day };
  }
  if (inputs === undefined) return undefined;
  return { fingerprint: inputs, day: readJob(tables, 'job').job?.titleBlock.date };
}
