/** The command export: a planned job for other programs, as files in one zip. */
import { exportPlan } from '../exports/export-plan.ts';
import { writeZip } from '../hosts/zip/write-zip.ts';
import type { Call, Command, Report } from './command.ts';
import { SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { INPUT_ARGUMENT } from './plan-input.ts';
import { planToFile } from './plan-to-file.ts';
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
    'The plan is made anew: give --steps to plan, client and export for the same plan in all three.',
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
  let paths: readonly string[] = [];
  const saved = await planToFile(call, {
    ending: '.zip',
    make: (plan) => {
      const files = exportPlan(plan);
      paths = files.map(({ path }) => path);
      return Promise.resolve(writeZip(files));
    },
  });
  if (saved.plan === undefined) return saved.refusal;
  const { plan, out } = saved;
  const { cautions } = plan;
  return reportWords(0, [...sayPlan(plan), sayFiles(out, paths)], { faults: [], cautions });
}

function sayFiles(out: string, paths: readonly string[]): string {
  const count = (ending: string): number => paths.filter((path) => path.endsWith(ending)).length;
  return [
    `Written: ${out}`,
    `  drawings  ${count('.svg')} as SVG`,
    `  outlines  ${count('.dxf')} as DXF, at full size`,
    `  lists     ${count('.csv')} as CSV`,
  ].join('\n');
}
