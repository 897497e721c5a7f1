/** The plan that a workbook carries: used as it is, or for what is ticked on its sheets. */
import { fault, type Caution } from '../core/faults/fault.ts';
import { VERSION } from '../core/version.ts';
import type { KeptInput } from '../hosts/xlsx/kept-input.ts';
import type { CutAlready } from '../planning/cut/cut-already.ts';
import { cutFromPlan, markCut } from '../planning/cut/cut-from-plan.ts';
import type { PlanToKeep } from '../planning/kept/keep-plan.ts';
import { readKeptPlan } from '../planning/kept/read-kept-plan.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { readTicks } from '../sheets/read-ticks.ts';

/** A workbook's plans, each as far as it can be read, and why not. */
export interface KeptPlans {
  readonly last?: PlanToKeep;
  readonly written?: PlanToKeep;
  readonly sheets: KeptInput;
  readonly cautions: readonly Caution[];
}

export async function readKeptPlans(sheets: KeptInput): Promise<KeptPlans> {
  const cautions: Caution[] = [];
  const read = async (text: string | undefined): Promise<PlanToKeep | undefined> => {
    if (text === undefined) return undefined;
    const kept = await readKeptPlan(text, VERSION);
    if (kept.ok) return kept.value;
    cautions.push(...kept.faults);
    return undefined;
  };
  const last = await read(sheets.texts.plan);
  const written = await read(sheets.texts['written-plan']);
  return {
    ...(last === undefined ? {} : { last }),
    ...(written === undefined ? {} : { written }),
    sheets,
    cautions,
  };
}

/** What is ticked as cut on the workbook's sheets, by the plan that they were written from. */
export function cutOf({ written, sheets }: KeptPlans): {
  readonly cut: readonly CutAlready[];
  readonly earlier?: JobPlan;
  readonly cautions: readonly Caution[];
} {
  if (written === undefined) return { cut: [], cautions: [] };
  const ticks = readTicks(written.plan, sheets);
  if (ticks === undefined) {
    return { cut: [], cautions: [fault('plan.ticks-lost', 'sheet.Cutting', null)] };
  }
  const cut = cutFromPlan(written.plan, ticks);
  return cut.length === 0 ? { cut, cautions: [] } : { cut, earlier: written.plan, cautions: [] };
}

/** Whether the sheets are of this very plan, so that a tick on them is one in it. */
function haveSameSticks(one: JobPlan, other: JobPlan): boolean {
  const sticksOf = ({ profiles }: JobPlan): string =>
    JSON.stringify(
      profiles.map(({ sticks }) =>
        sticks.map(({ id, unit, strip, pieces }) => [
          ...[id, unit, strip],
          pieces.map(({ id: piece, part }) => [piece, part]),
        ]),
      ),
    );
  return sticksOf(one) === sticksOf(other);
}

/**
 * The plan of these inputs that a workbook carries, the last one first; its sheets' ticks are marked in it
 * where they are of it.
 */
export function keptPlanOf(
  { last, written, sheets }: KeptPlans,
  fingerprint: string | undefined,
): PlanToKeep | undefined {
  const isOf = (one: PlanToKeep | undefined): one is PlanToKeep =>
    one !== undefined && (fingerprint === undefined || one.fingerprint === fingerprint);
  if (isOf(last) && !(isOf(written) && haveSameSticks(last.plan, written.plan))) return last;
  if (!isOf(written)) return undefined;
  const ticks = readTicks(written.plan, sheets);
  return ticks === undefined ? written : { ...written, plan: markCut(written.plan, ticks) };
}
