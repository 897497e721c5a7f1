/** The command export: a planned job for other programs, as files in one zip. */
import type { Fault } from '../core/faults/fault.ts';
import { exportPlan } from '../exports/export-plan.ts';
import { saveFile } from '../hosts/file/save-file.ts';
import { writeZip } from '../hosts/zip/write-zip.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { readEffort, SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { INPUT_ARGUMENT, planInput } from './plan-input.ts';
import { reportRefusal, reportWords } from './report.ts';
import { sayPlan } from './say-plan.ts';
import { FORCE_OPTION } from './shared-options.ts';
import { checkTarget } from './target-file.ts';

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
  const input = argumentAt(call, 0);
  const out = call.values.get('--out') ?? '';
  const force = call.flags.has('--force');
  const faults: Fault[] = [];
  const effort = readEffort(call, faults);
  const target = { argument: '--out', force, input, ending: '.zip' };
  faults.push(...(await checkTarget(out, target)));
  if (faults.length > 0) return reportRefusal(2, { faults, cautions: [] }, false);
  const planned = await planInput(input, { effort, isSilent: false });
  if (planned.plan === undefined) return reportRefusal(planned.exit, planned, false);
  const { cautions } = planned.plan;
  const files = exportPlan(planned.plan);
  const saved = await saveFile(out, writeZip(files), { replace: force });
  if (!saved.ok) return reportRefusal(2, { faults: saved.faults, cautions }, false);
  const paragraphs = [
    ...sayPlan(planned.plan),
    sayFiles(
      out,
      files.map(({ path }) => path),
    ),
  ];
  return reportWords(0, paragraphs, { faults: [], cautions });
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
