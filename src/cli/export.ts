/** The command export: a planned job for other programs, as files in one zip. */
import type { Call, Command, Report } from './command.ts';
import { SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { exportFile } from './files-of-plan.ts';
import { INPUT_ARGUMENT } from './plan-input.ts';
import { planToFiles, takesKept } from './plan-to-files.ts';
import { reportWords } from './report.ts';
import { sayPlan } from './say-plan.ts';
import { FORCE_OPTION } from './shared-options.ts';

export const EXPORT: Command = {
  name: 'export',
  summary:
    'Plans a job and saves it for other programs: drawings as SVG, outlines as DXF, lists as CSV.',
  arguments: [INPUT_ARGUMENT],
  options: [
    {
      name: '--out',
      value: 'FILE.zip',
      says: 'Where the files go, all in one zip.',
      needed: true,
    },
    FORCE_OPTION,
    SECONDS_OPTION,
    STEPS_OPTION,
  ],
  notes: [
    "Drawings are as large as they are printed; outlines are at full size, in the shop's unit. Lists follow the shop's decimal sign.",
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
  const { plan, refusal } = await planToFiles(call, [file], takesKept(call));
  if (plan === undefined) return refusal;
  const written = file.say(plan, call.values.get('--out') ?? '');
  return reportWords(0, [...sayPlan(plan), written], { faults: [], cautions: plan.cautions });
}
