/** The command plan: a job in, a production workbook out. */
import { paintPng } from '../hosts/file/paint-png.ts';
import { saveFile } from '../hosts/file/save-file.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { planToJson } from '../planning/plan-json.ts';
import { describePlan } from '../sheets/describe-plan.ts';
import type { Fault } from '../core/faults/fault.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { readEffort, SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { planInput } from './plan-input.ts';
import { reportJson, reportRefusal, reportWords } from './report.ts';
import { sayPlan } from './say-plan.ts';
import { sayWorkbook } from './say-workbook.ts';
import { FORCE_OPTION, JSON_OPTION } from './shared-options.ts';
import { checkTarget } from './target-file.ts';

export const PLAN: Command = {
  name: 'plan',
  summary: 'Plans a job: pieces, set-ups, sticks, hours and price, and writes them as a workbook.',
  arguments: [
    {
      name: 'INPUT',
      says: 'A workbook as coveledger new makes it, or a folder with runs.csv, profiles.csv, stock.csv and, as you like, openings.csv and shop.csv.',
    },
  ],
  options: [
    {
      name: '--out',
      value: 'FILE.xlsx',
      says: 'Where the workbook goes. Without it the plan is shown and nothing written.',
    },
    {
      name: '--formulas',
      says: 'Add the set-up numbers as plain formulas too, which answer new sizes in any spreadsheet.',
    },
    FORCE_OPTION,
    SECONDS_OPTION,
    STEPS_OPTION,
    JSON_OPTION,
  ],
  notes: [
    'Everything at fault is listed at once, by sheet and cell or by file and line, and nothing is written then. The input itself is never written over.',
    'With --json: { version, totals, rooms, profiles, pieces, groups, cautions, faults, workbook }, lengths in inches, angles in degrees; at fault { faults, cautions }.',
  ],
  examples: ['job.xlsx --out plan.xlsx', 'job-folder --json'],
  exits: {
    0: 'Planned, and written where asked for.',
    1: "The job can't be made as asked: a cove that this saw can't cut, a piece that no stick gives.",
    2: "The call or the input is wrong, or the workbook can't be written there.",
  },
  run: runPlan,
};

async function runPlan(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const input = argumentAt(call, 0);
  const out = call.values.get('--out');
  const force = call.flags.has('--force');
  const faults: Fault[] = [];
  const effort = readEffort(call, faults);
  if (out !== undefined) {
    faults.push(...(await checkTarget(out, { argument: '--out', force, input })));
  }
  if (faults.length > 0) return reportRefusal(2, { faults, cautions: [] }, json);
  const planned = await planInput(input, { effort, isSilent: json });
  if (planned.plan === undefined) return reportRefusal(planned.exit, planned, json);
  const { plan } = planned;
  const { cautions } = plan;
  let written = 'No workbook is written: give --out FILE.xlsx to have one.';
  if (out !== undefined) {
    const description = describePlan(plan, { keepsFormulas: call.flags.has('--formulas') });
    const saved = await saveFile(out, await writeWorkbook(description, { paint: paintPng }), {
      replace: force,
    });
    if (!saved.ok) return reportRefusal(2, { faults: saved.faults, cautions }, json);
    written = sayWorkbook(out, description);
  }
  if (json) return reportJson(0, { ...planToJson(plan), workbook: out ?? null });
  return reportWords(0, [...sayPlan(plan), written], { faults: [], cautions });
}
