/** The command export: a planned job for other programs, as files in one zip. */
import { faultsToJson } from '../core/faults/fault-json.ts';
import type { Call, Command, Report } from './command.ts';
import { exportFile } from './files-of-plan.ts';
import { INPUT_ARGUMENT } from './open-job.ts';
import { planToFiles, takesKept } from './plan-to-files.ts';
import { reportJson } from './report.ts';
import { sayPlan } from './say-plan.ts';
import { madeToJson, sayStamp } from '../sheets/stamp.ts';
import { FORCE_OPTION, JSON_OPTION, outOption, PLANNING_OPTIONS } from './shared-options.ts';
import { reportPlan } from './terse-report.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const EXPORT_JSON_VERSION = 1;

export const EXPORT: Command = {
  name: 'export',
  summary:
    'Plans a job and saves it for other programs: drawings as SVG, outlines as DXF, lists as CSV.',
  arguments: [INPUT_ARGUMENT],
  options: [
    { ...outOption('FILE.zip', 'Where the files go, all in one zip.'), needed: true },
    FORCE_OPTION,
    ...PLANNING_OPTIONS,
    JSON_OPTION,
  ],
  notes: [
    "Drawings are as large as they are printed; outlines are at full size, in the shop's unit. Lists follow the shop's decimal sign; labels.csv has a row for each piece still to cut and each offcut to keep.",
    'With --json: { version, exported, files, cautions, faults }, files by their paths in the zip; at fault { faults, cautions }.',
    'Where INPUT carries a plan of its inputs (the workbook that plan --out wrote, or one saved from the page after planning), it is of that very plan. With --seconds or --steps, and else, the job is planned.',
  ],
  examples: ['job.xlsx --out job-files.zip'],
  exits: {
    0: 'Planned and saved.',
    1: "The job can't be made as asked.",
    2: "The call or the input is wrong, or the file can't be written there.",
  },
  run: runExport,
};

async function runExport(call: Call): Promise<Report> {
  const file = exportFile('--out');
  const { plan, stamp, refusal } = await planToFiles(call, [file], takesKept(call));
  if (plan === undefined) return refusal;
  const out = call.values.get('--out') ?? '';
  const { cautions } = plan;
  if (call.flags.has('--json')) {
    const files = file.paths();
    const made = madeToJson(stamp);
    return reportJson(0, {
      version: EXPORT_JSON_VERSION,
      made,
      exported: out,
      files,
      cautions: faultsToJson(cautions),
      faults: [],
    });
  }
  const made = sayStamp(stamp, plan.job.shop.decimalSign);
  return reportPlan(call, [...sayPlan(plan), made, file.say(plan, out, stamp)], cautions);
}
