/** The command compare: two jobs in, what differs between their plans out. */
import { syntax } from '../core/faults/argument.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { saveFile } from '../hosts/file/save-files.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { comparePlans, ticksOf } from '../planning/compare/compare-plans.ts';
import { comparisonToJson } from '../planning/compare/comparison-json.ts';
import { cutFromPlan } from '../planning/cut/cut-from-plan.ts';
import { describeChanges } from '../sheets/changes/changes-sheet.ts';
import { madeToJson, sayStamp, type Stamp } from '../sheets/stamp.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { compareCopy, copyOfCall } from './compare-copy.ts';
import { readEffort } from './effort.ts';
import { planInput, type InputPlanning } from './plan-input.ts';
import { takesKept } from './plan-to-files.ts';
import { reportJson } from './report.ts';
import { sayComparison } from './say-comparison.ts';
import { sayWorkbook } from './say-workbook.ts';
import {
  FORCE_OPTION,
  JSON_OPTION,
  outOption,
  PLANNING_OPTIONS,
  readDay,
} from './shared-options.ts';
import { checkInputOnce, STANDARD_INPUT } from './standard-input.ts';
import { checkTargets } from './target-file.ts';
import { onOneLine } from './terminal.ts';
import { refusePlan, reportPlan } from './terse-report.ts';

export const COMPARE: Command = {
  name: 'compare',
  summary:
    'Compares a job before and after it was changed: runs, moldings, hours and money, for a change order.',
  arguments: [
    { name: 'OLD', says: 'The job before: an input or a written workbook, as plan takes it.' },
    { name: 'NEW', says: "The job after; or the client's copy of OLD that came back." },
  ],
  options: [
    outOption('FILE.xlsx', 'Where a workbook with the sheet Changes goes.'),
    FORCE_OPTION,
    ...PLANNING_OPTIONS,
    JSON_OPTION,
  ],
  notes: [
    'A run is known by its room, its name and its profile: under another name it is gone and added. Where a workbook carries a plan of its inputs, it is that very plan, as quoted; with --seconds or --steps, and else, the job is planned.',
    'What is ticked as cut on the sheets of OLD stays cut: NEW is planned around it, unless its own sheets tell what is cut.',
    "A client's copy is known by its headings and its number. It is held against the plan of that number which the workbook carries; of an input without it, the job is planned anew, which is said. Told are other quantities and the rows that they come from, the total by our prices, the line to sign, and at its cell whatever else is not as handed over. No price is taken over from it, and no row of the job is changed.",
    "With --json: { version, currency, added, gone, changed, same, lines, profiles, totals, cut, open, cautions, faults, made, workbook }, lengths in inches, cautions of NEW; at fault { faults, cautions }. A difference is after less before. Of a client's copy: { version, currency, copy, cautions, faults, made, workbook }.",
  ],
  examples: [
    'quoted.xlsx changed.xlsx',
    'shop.xlsx client-back.xlsx',
    'old-folder new-folder --out changes.xlsx',
  ],
  exits: {
    0: 'Compared, and written where asked for.',
    1: "One of the jobs can't be made as asked.",
    2: "The call or an input is wrong, or the workbook can't be written there.",
  },
  run: runCompare,
};

async function runCompare(call: Call): Promise<Report> {
  const [old, now] = [argumentAt(call, 0), argumentAt(call, 1)];
  const out = call.values.get('--out');
  const faults: Fault[] = [];
  const [effort, made] = [readEffort(call, faults), readDay(call, faults)];
  const once = checkInputOnce([old, now], 'compare');
  if (!once.ok) faults.push(...once.faults);
  const target = { argument: syntax('--out'), ending: '.xlsx' };
  const inputs = [old, now].filter((name) => name !== STANDARD_INPUT);
  const rules = { force: call.flags.has('--force'), inputs };
  if (out !== undefined) faults.push(...(await checkTargets([{ ...target, path: out }], rules)));
  if (faults.length > 0) return refusePlan(call, 2, { faults, cautions: [] });

  const isSilent = call.flags.has('--json') || call.flags.has('--quiet');
  const planning = { effort, isSilent };
  const copy = await copyOfCall([old, now]);
  if (copy !== undefined && !('copy' in copy)) {
    return refusePlan(call, 2, { faults: copy, cautions: [] });
  }
  if (copy !== undefined) {
    return compareCopy(call, copy, { planning, made, out, force: rules.force });
  }
  const before = await planInput(old, planning, takesKept(call));
  const cut = before.plan === undefined ? [] : cutFromPlan(before.plan, ticksOf(before.plan));
  // A plan that was kept before anything was cut knows nothing of it.
  const usesKept = takesKept(call) && cut.length === 0;
  const carried =
    before.plan === undefined || cut.length === 0 ? undefined : { cut, earlier: before.plan };
  const after = await planInput(now, planning, usesKept, carried);
  if (before.plan === undefined || after.plan === undefined) {
    return refuseBoth(call, [
      [old, before],
      [now, after],
    ]);
  }
  const { shop } = after.plan.job;
  const otherCurrency = before.plan.job.shop.currency;
  if (shop.currency !== otherCurrency) {
    const details = { before: otherCurrency };
    const other = fault('plan.other-currency', syntax('NEW'), shop.currency, { details });
    return refusePlan(call, 2, { faults: [other], cautions: [] });
  }
  const comparison = comparePlans(before.plan, after.plan);
  const stamps = [before, after].map((one): Stamp => ({ effort, ...made, ...one.from }));
  const [was, is] = [old, now].map((name, at) => {
    const stamp = stamps[at];
    return stamp === undefined ? name : `${name}. ${sayStamp(stamp, shop.decimalSign)}`;
  });
  const plans = { before: was ?? old, after: is ?? now };
  const description = describeChanges(comparison, plans, after.plan.job, made.moment ?? made.day);
  if (out !== undefined) {
    const saved = await saveFile(out, await writeWorkbook(description), { replace: rules.force });
    if (!saved.ok) return refusePlan(call, 2, { faults: saved.faults, cautions: [] });
  }
  const { cautions } = after.plan;
  if (call.flags.has('--json')) {
    const [ofOld, ofNew] = stamps.map(madeToJson);
    return reportJson(0, {
      ...comparisonToJson(comparison, shop.currency),
      cautions: faultsToJson(cautions),
      faults: [],
      made: { before: ofOld, after: ofNew },
      workbook: out ?? null,
    });
  }
  const written =
    out === undefined
      ? ['No workbook is written: give --out FILE.xlsx to have the sheet Changes.']
      : [sayWorkbook(out, description)];
  return reportPlan(call, [...sayComparison(comparison, plans, after.plan), ...written], cautions);
}

/** Each input's own faults, under its name: cells of two workbooks are called alike. */
function refuseBoth(
  call: Call,
  planned: readonly (readonly [name: string, planning: InputPlanning])[],
): Report {
  const refused = planned.flatMap(([name, one]) =>
    one.plan === undefined ? [{ name, ...one }] : [],
  );
  const exit = refused.some((one) => one.exit === 2) ? 2 : 1;
  if (call.flags.has('--json')) {
    const faults = refused.flatMap((one) => one.faults);
    const cautions = refused.flatMap((one) => one.cautions);
    return refusePlan(call, exit, { faults, cautions });
  }
  const errors = refused.map((one) => {
    const { errors: said } = refusePlan(call, one.exit, one);
    return `${onOneLine(one.name)}:\n${said}`;
  });
  return { exit, output: '', errors: errors.join('\n') };
}
