/** The command new: an input workbook to fill in, or the same as a folder of CSV files. */
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import type { LengthUnit } from '../core/units/length-unit.ts';
import { blankLists } from '../exports/blank-lists.ts';
import { systemCode, systemReason } from '../hosts/file/system-reason.ts';
import { isFileThere } from '../hosts/file/read-job-input.ts';
import { saveFile, saveFiles, type FileToSave } from '../hosts/file/save-files.ts';
import { writeWorkbook } from '../hosts/xlsx/write-workbook.ts';
import { JOB_TABLES } from '../planning/input/read-job.ts';
import { describeInput } from '../sheets/describe-input.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { DEMO_FOLDER, readDemoTables } from './demo-job.ts';
import { reportRefusal, reportWords } from './report.ts';
import { sayCall } from './say-call.ts';
import { sayContents, sayWorkbook } from './say-workbook.ts';
import { DATE_OPTION, FORCE_OPTION, QUIET_OPTION, readDay } from './shared-options.ts';
import { checkTargets } from './target-file.ts';

const METRIC_OPTION = {
  name: '--metric',
  says: 'Millimetres, with whole usual values of their own, A4, metres and m³.',
};

export const NEW: Command = {
  name: 'new',
  summary:
    'Makes an input workbook to fill in: runs, walls, trim, openings, profiles, shop, stock, work and hours; or a folder of CSV files.',
  arguments: [
    { name: 'FILE.xlsx', says: 'Where the workbook goes; with --csv, the folder of the files.' },
  ],
  options: [
    { name: '--demo', says: 'Fill it with the demo job, the trim of an invented library.' },
    {
      name: '--csv',
      says: 'Make a folder with runs.csv, walls.csv, trim.csv, openings.csv, profiles.csv, shop.csv, stock.csv, work.csv, options.csv, job.csv and hours.csv instead.',
    },
    {
      name: '--decimal-comma',
      says: 'With --csv: 3,5 for 3 1/2, and semicolons between the cells, as spreadsheets of such countries save them.',
    },
    METRIC_OPTION,
    FORCE_OPTION,
    QUIET_OPTION,
    DATE_OPTION,
  ],
  notes: [
    'Fill it in with any spreadsheet, save it, then: coveledger plan FILE.xlsx --out PLAN.xlsx',
    'What stands under each heading: coveledger help headings',
  ],
  examples: ['job.xlsx', 'job.xlsx --metric', 'demo.xlsx --demo', 'job --csv'],
  exits: {
    0: 'Written.',
    2: "The call is wrong, or a file is there already or can't be written.",
  },
  run: (call) => (call.flags.has('--csv') ? newFolder(call) : newWorkbook(call)),
};

const unitOf = (call: Call): LengthUnit => (call.flags.has(METRIC_OPTION.name) ? 'mm' : 'in');

const refuse = (...faults: readonly Fault[]): Report =>
  reportRefusal(2, { faults, cautions: [] }, false);

/** The demo is a job in inches. */
function excludeDemo({ flags }: Call): Fault[] {
  const { name } = METRIC_OPTION;
  if (!flags.has('--demo') || !flags.has(name)) return [];
  return [fault('call.options-exclude', syntax('--demo'), null, { details: { other: name } })];
}

async function newWorkbook(call: Call): Promise<Report> {
  const path = argumentAt(call, 0);
  const replace = call.flags.has('--force');
  if (call.flags.has('--decimal-comma')) {
    return refuse(
      fault('call.option-alone', syntax('--decimal-comma'), null, { details: { other: '--csv' } }),
    );
  }
  const faults: Fault[] = [];
  const day = readDay(call, faults);
  faults.push(...excludeDemo(call));
  const target = { argument: syntax('FILE.xlsx'), path, ending: '.xlsx' };
  const atTarget = [...faults, ...(await checkTargets([target], { force: replace }))];
  if (atTarget.length > 0) return refuse(...atTarget);
  const demo = call.flags.has('--demo') ? await readDemoTables() : undefined;
  if (demo?.ok === false) return refuse(...demo.faults);
  const description = { ...describeInput(demo?.value, unitOf(call)), day };
  const saved = await saveFile(path, await writeWorkbook(description), { replace });
  if (!saved.ok) return refuse(...saved.faults);
  return report(call, sayWorkbook(path, description));
}

async function newFolder(call: Call): Promise<Report> {
  const folder = argumentAt(call, 0);
  const isDemo = call.flags.has('--demo');
  const sign: DecimalSign = call.flags.has('--decimal-comma') ? ',' : '.';
  const faults: Fault[] = [];
  const exclude = (option: string, other: string): void => {
    faults.push(fault('call.options-exclude', syntax(option), null, { details: { other } }));
  };
  if (isDemo && sign === ',') exclude('--demo', '--decimal-comma');
  faults.push(...excludeDemo(call));
  // No file of the folder bears a day.
  if (call.values.has(DATE_OPTION.name)) exclude(DATE_OPTION.name, '--csv');
  if (faults.length > 0) return refuse(...faults);
  const files = await Promise.all(
    blankLists(sign, unitOf(call)).map(async ({ path, text }): Promise<FileToSave> => {
      // A table that the demo does without is blank.
      const filled = join(DEMO_FOLDER, path);
      const isFilled = isDemo && (await isFileThere(filled));
      const bytes = isFilled ? await readFile(filled) : Buffer.from(text);
      return { path: join(folder, path), bytes };
    }),
  );
  try {
    await mkdir(folder);
  } catch (error) {
    const code = systemCode(error);
    if (code === 'ENOENT') return refuse(fault('file.missing', 'folder', join(folder, '..')));
    if (code !== 'EEXIST') {
      const details = { why: systemReason(error) };
      return refuse(fault('file.not-written', 'folder', folder, { details }));
    }
  }
  const saved = await saveFiles(files, { replace: call.flags.has('--force') });
  if (!saved.ok) return refuse(...saved.faults);
  return report(call, [
    `Written: ${folder}`,
    ...sayContents(
      JOB_TABLES.map(({ name }) => name),
      (name) => `${name.toLowerCase()}.csv`,
    ),
  ]);
}

function report(call: Call, written: readonly string[]): Report {
  const path = argumentAt(call, 0);
  const before = call.flags.has('--demo') ? 'Try it as it is' : 'Fill it in, save it, then';
  const next = `${before}: ${sayCall('plan', path, '--out', 'PLAN.xlsx')}`;
  if (call.flags.has('--quiet')) return { exit: 0, output: '', errors: '' };
  return reportWords(0, [written, next], { faults: [], cautions: [] });
}
