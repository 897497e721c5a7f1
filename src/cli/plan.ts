/** The command plan: a job in, a production workbook out. */
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { planToJson } from '../planning/plan-json.ts';
import type { Call, Command, Report } from './command.ts';
import { clientFile, exportFile, shopFile, shopViewFile } from './files-of-plan.ts';
import { INPUT_ARGUMENT } from './open-job.ts';
import { planToFiles } from './plan-to-files.ts';
import { reportJson, type Paragraph } from './report.ts';
import { sayPlan } from './say-plan.ts';
import { madeToJson, sayStamp } from '../sheets/stamp.ts';
import { FORCE_OPTION, JSON_OPTION, outOption, PLANNING_OPTIONS } from './shared-options.ts';
import { reportPlan } from './terse-report.ts';

export const PLAN: Command = {
  name: 'plan',
  summary: 'Plans a job: pieces, set-ups, sticks, hours and price, and writes them as a workbook.',
  arguments: [INPUT_ARGUMENT],
  options: [
    outOption(
      'FILE.xlsx',
      'Where the workbook goes. Without it the plan is shown and nothing written.',
    ),
    {
      name: '--client',
      value: 'FILE.xlsx',
      says: "Write the client's copy of this same plan, a workbook by itself.",
    },
    {
      name: '--export',
      value: 'FILE.zip',
      says: 'Save its drawings (SVG), outlines (DXF) and lists (CSV) too, all in one zip.',
    },
    {
      name: '--shop-view',
      value: 'FILE.html',
      says: 'Write a page for the phone at the saw too: each cove, each stick, to tap off.',
    },
    {
      name: '--formulas',
      says: 'Add the set-up numbers as plain formulas too, which answer new sizes in any spreadsheet.',
    },
    FORCE_OPTION,
    ...PLANNING_OPTIONS,
    JSON_OPTION,
  ],
  notes: [
    'The workbook carries its plan, unseen: client and export take it from there, at the same price. Sticks that are ticked as cut on the sheets of an input workbook stay as they are, and only the rest is planned.',
    'Everything at fault is listed at once, by sheet and cell or by file and line, and nothing is written then. The input itself is never written over.',
    'With --json: { version, totals, range, prices, rooms, profiles, pieces, cutAways, groups, options, cautions, faults, made, workbook, client, exported, shopView }, lengths in inches, angles in degrees; at fault { faults, cautions }. made: { inputs, mark, date, version, seconds or steps }; mark is what the sheets bear.',
  ],
  examples: [
    'job.xlsx --out plan.xlsx',
    'job.xlsx --out plan.xlsx --client for-client.xlsx --export files.zip',
    'job.xlsx --out plan.xlsx --shop-view saw.html',
    'job-folder --json',
  ],
  exits: {
    0: 'Planned, and written where asked for.',
    1: "The job can't be made as asked: a cove that this saw can't cut, a piece that no stick gives.",
    2: "The call or the input is wrong, or the workbook can't be written there.",
  },
  run: runPlan,
};

async function runPlan(call: Call): Promise<Report> {
  const files = [
    shopFile('--out', call.flags.has('--formulas')),
    clientFile('--client'),
    exportFile('--export'),
    shopViewFile('--shop-view'),
  ];
  const { plan, stamp, refusal } = await planToFiles(call, files, false, checkFormulas(call));
  if (plan === undefined) return refusal;
  const pathOf = (option: string): string | null => call.values.get(option) ?? null;
  if (call.flags.has('--json')) {
    const [workbook, client, exported, shopView] = [
      '--out',
      '--client',
      '--export',
      '--shop-view',
    ].map(pathOf);
    return reportJson(0, {
      ...planToJson(plan),
      made: madeToJson(stamp),
      workbook,
      client,
      exported,
      shopView,
    });
  }
  const written = files.flatMap((file): Paragraph[] => {
    const path = pathOf(file.option);
    return path === null ? [] : [file.say(plan, path, stamp)];
  });
  if (written.length === 0) {
    written.push('No workbook is written: give --out FILE.xlsx to have one.');
  }
  const made = sayStamp(stamp, plan.job.shop.decimalSign);
  return reportPlan(call, [...sayPlan(plan), made, ...written], plan.cautions);
}

/** They stand in the workbook alone. */
function checkFormulas({ flags, values }: Call): Fault[] {
  if (!flags.has('--formulas') || values.has('--out')) return [];
  return [fault('call.option-alone', syntax('--formulas'), null, { details: { other: '--out' } })];
}
