/** The command new: an input workbook to fill in. */
import type { Fault } from '../core/faults/fault.ts';
import { saveFile } from '../hosts/file/save-files.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { describeInput } from '../sheets/describe-input.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { readDemoTables } from './demo-job.ts';
import { reportRefusal, reportWords } from './report.ts';
import { sayCall } from './say-call.ts';
import { sayWorkbook } from './say-workbook.ts';
import { DATE_OPTION, FORCE_OPTION, readDay } from './shared-options.ts';
import { checkTargets } from './target-file.ts';

export const NEW: Command = {
  name: 'new',
  summary: 'Makes an input workbook to fill in: runs, openings, profiles, shop and stock.',
  arguments: [{ name: 'FILE.xlsx', says: 'Where the workbook goes.' }],
  options: [
    { name: '--demo', says: 'Fill it with the demo job, the trim of an invented library.' },
    FORCE_OPTION,
    DATE_OPTION,
  ],
  notes: [
    'Fill it in with any spreadsheet, save it, then: coveledger plan FILE.xlsx --out PLAN.xlsx',
  ],
  examples: ['job.xlsx', 'demo.xlsx --demo'],
  exits: {
    0: 'Written.',
    2: "The call is wrong, or the file is there already or can't be written.",
  },
  run: runNew,
};

async function runNew(call: Call): Promise<Report> {
  const path = argumentAt(call, 0);
  const force = call.flags.has('--force');
  const refuse = (faults: Parameters<typeof reportRefusal>[1]['faults']): Report =>
    reportRefusal(2, { faults, cautions: [] }, false);
  const faults: Fault[] = [];
  const day = readDay(call, faults);
  const target = { argument: 'FILE.xlsx', path, ending: '.xlsx' };
  const atTarget = [...faults, ...(await checkTargets([target], { force }))];
  if (atTarget.length > 0) return refuse(atTarget);
  const demo = call.flags.has('--demo') ? await readDemoTables() : undefined;
  if (demo?.ok === false) return refuse(demo.faults);
  const description = { ...describeInput(demo?.value), day };
  const saved = await saveFile(path, await writeWorkbook(description), { replace: force });
  if (!saved.ok) return refuse(saved.faults);
  const before = demo === undefined ? 'Fill it in, save it, then' : 'Try it as it is';
  const next = `${before}: ${sayCall('plan', path, '--out', 'PLAN.xlsx')}`;
  const paragraphs = [sayWorkbook(path, description), next];
  return reportWords(0, paragraphs, { faults: [], cautions: [] });
}
