/** The command rates: jobs with Hours in, minutes of work learned from them out. */
import { realpath } from 'node:fs/promises';
import { own, syntax } from '../core/faults/argument.ts';
import { faultsToJson } from '../core/faults/fault-json.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Caution,
  type Fault,
  type Outcome,
  type Where,
} from '../core/faults/fault.ts';
import { writeList } from '../exports/csv-list.ts';
import { readCsvTable } from '../hosts/file/read-csv.ts';
import { WORK_HEADINGS } from '../planning/input/headings/work-headings.ts';
import { readWork } from '../planning/input/read-work.ts';
import { sameName, type Job } from '../planning/job.ts';
import type { JobPlan } from '../planning/job-plan.ts';
import { settingOf } from '../planning/shop.ts';
import { homeOfRate } from '../planning/work/home-of-rate.ts';
import { learnedToJson } from '../planning/work/learned-json.ts';
import { cellsOfLearned } from '../planning/work/learned-rows.ts';
import {
  learnFromHours,
  type LearnedFromHours,
  type WorkLearned,
} from '../planning/work/learn-from-hours.ts';
import type { Call, Command, Report } from './command.ts';
import { readEffort, SECONDS_OPTION, STEPS_OPTION } from './effort.ts';
import { planInput } from './plan-input.ts';
import { takesKept } from './plan-to-files.ts';
import { reportJson, reportRefusal, reportWords } from './report.ts';
import { sayRates } from './say-rates.ts';
import { JSON_OPTION } from './shared-options.ts';
import { checkInputOnce, STANDARD_INPUT } from './standard-input.ts';

const MINUTES_PER_HOUR = 60;

export const RATES: Command = {
  name: 'rates',
  summary: 'Shows what the hours that jobs took say of the minutes under Work. Changes nothing.',
  arguments: [
    {
      name: 'JOB',
      says: 'A job with the sheet Hours (hours.csv): an input or a written workbook, or a folder, as plan takes it. Of several the last one has the rates until now.',
      repeats: true,
    },
  ],
  options: [
    {
      name: '--csv',
      says: 'Answer as CSV under the headings of Work, cautions on the error output.',
    },
    SECONDS_OPTION,
    STEPS_OPTION,
    JSON_OPTION,
  ],
  notes: [
    'Each kind of work’s hours stand against how much of it its job’s plan has. The rates that fit them best, and lie nearest to those until now, are shown: one odd job changes little, more jobs of one kind more. Hours are taken to be off by 15 %, or a quarter hour where that is more; usual minutes by half, a shop’s own by a quarter (common practice).',
    'Where a workbook carries a plan of its inputs, it is that very plan; with --seconds or --steps, and else, the job is planned.',
    'Nobody takes a rate over but you: it is said in which cell it goes, or take the rows of --csv into Work. What is a setting of Shop is no row of --csv.',
    'With --json: { version, jobs, rates, hours, cautions, faults }, minutes for one; at fault { faults, cautions }.',
  ],
  examples: ['done.xlsx', 'spring.xlsx summer.xlsx autumn.xlsx', 'job-folder --csv'],
  exits: {
    0: 'Learned.',
    1: "One of the jobs can't be made as asked.",
    2: 'The call or an input is wrong, or no job has hours.',
  },
  run: runRates,
};

interface NamedPlan {
  readonly name: string;
  readonly plan: JobPlan;
}

async function runRates(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const names = call.arguments;
  const faults: Fault[] = [];
  const effort = readEffort(call, faults);
  const once = checkInputOnce(names, 'rates');
  if (!once.ok) faults.push(...once.faults);
  faults.push(...(await jobsTwice(names)));
  if (faults.length > 0) return reportRefusal(2, { faults, cautions: [] }, json);
  const jobs: NamedPlan[] = [];
  for (const name of names) {
    const planned = await planInput(name, { effort, isSilent: true }, takesKept(call));
    if (planned.plan === undefined) {
      const { exit, faults: found, cautions } = planned;
      const isOne = names.length === 1 || json;
      const at = (one: Fault): Fault => (isOne ? one : inJob(one, name));
      return reportRefusal(exit, { faults: found.map(at), cautions: cautions.map(at) }, json);
    }
    jobs.push({ name, plan: planned.plan });
  }
  const present = jobs.at(-1)?.plan.job;
  if (present === undefined || jobs.every(({ plan }) => plan.job.hours.length === 0)) {
    const none = fault('rates.no-hours', 'sheet.Hours', null);
    return reportRefusal(2, { faults: [none], cautions: [] }, json);
  }
  const learned = learnFromHours(jobs.map(({ plan }) => plan));
  const cautions = jobs.flatMap(({ name, plan }) =>
    plan.cautions
      .filter(isOfHours)
      .map((one) => (jobs.length === 1 || json ? one : inJob(one, name))),
  );
  if (json) {
    const answer = learnedToJson(learned, names, present);
    return reportJson(0, { ...answer, cautions: faultsToJson(cautions), faults: [] });
  }
  if (call.flags.has('--csv')) return reportCsv(learned, present, cautions);
  return reportWords(0, sayRates(learned, names, present), { faults: [], cautions });
}

/** Under two names too. */
async function jobsTwice(names: readonly string[]): Promise<Fault[]> {
  const paths: string[] = [];
  for (const name of names) {
    // What isn't there has its fault from whoever reads it.
    paths.push(name === STANDARD_INPUT ? name : await realpath(name).catch(() => name));
  }
  return names.flatMap((name, at) => {
    const isAgain = name !== STANDARD_INPUT && paths.indexOf(paths[at] ?? '') < at;
    return isAgain ? [fault('call.job-twice', syntax('JOB'), name)] : [];
  });
}

function isOfHours({ code, where, argument }: Caution): boolean {
  const place = where === undefined ? '' : 'sheet' in where ? where.sheet : where.file;
  const isThere = sameName(place.replace(/\.csv$/iu, ''), 'Hours');
  return code === 'plan.kept-used' || isThere || argument === 'sheet.Hours';
}

/** Cells of several jobs are called alike: so the job's name goes before them. */
function inJob(one: Fault, name: string): Fault {
  const { where } = one;
  if (where === undefined) return { ...one, message: `${name}: ${one.message}` };
  const placed: Where =
    'sheet' in where
      ? { ...where, sheet: `${name}: ${where.sheet}` }
      : { ...where, file: `${name}: ${where.file}` };
  return placeFault(one, placed);
}

function reportCsv(
  { works }: LearnedFromHours,
  present: Job,
  cautions: readonly Caution[],
): Report {
  const onShop = works.flatMap(({ row, rate }) => {
    const home = homeOfRate(present, row, rate.rate * MINUTES_PER_HOUR);
    if (home.kind !== 'setting') return [];
    const details = { value: home.value };
    const { name } = settingOf(home.setting);
    return [placeFault(fault('rates.on-shop', own(row.work), name, { details }), home.where)];
  });
  const rows = works.filter(
    ({ row, rate }) => homeOfRate(present, row, rate.rate * MINUTES_PER_HOUR).kind !== 'setting',
  );
  const all = [...cautions, ...onShop];
  const written = writeRows(rows, present);
  if (!written.ok) return reportRefusal(1, { faults: written.faults, cautions: all }, false);
  const { errors } = reportRefusal(0, { faults: [], cautions: all }, false);
  return { exit: 0, output: written.value, errors };
}

/** Read back before it is given: a name that no CSV holds safely (`=1+1`) would take nothing over. */
function writeRows(works: readonly WorkLearned[], { shop, profiles }: Job): Outcome<string> {
  const cells = works.map(cellsOfLearned);
  const rows = cells.map((row) => WORK_HEADINGS.map(({ key }) => row.get(key) ?? null));
  const headings = WORK_HEADINGS.map(({ heading }) => heading);
  const { text } = writeList({ name: 'work', headings, rows }, shop.decimalSign);
  // A terminal and a pipe take neither a mark at the start nor the line ends of a file.
  const plain = text.replace(/^\uFEFF/u, '').replaceAll('\r\n', '\n');
  if (rows.length === 0) return ok(plain);
  const table = readCsvTable(plain, 'work.csv', 'Work');
  if (!table.ok) return table;
  const found: { faults: Fault[]; cautions: Caution[] } = { faults: [], cautions: [] };
  // Whether Shop says otherwise is another matter: what it has a row for is not among these.
  const facts = { shop, shopCells: {}, left: [], profiles };
  const again = readWork(table.value, facts, shop, found);
  const otherwise = works.filter(({ row }, at) => {
    // A row that says what is usual anyway is read as the usual one.
    const minutes = cells[at]?.get('minutes');
    return !again.some((read) => sameName(read.work, row.work) && read.minutes === minutes);
  });
  return otherwise.length + found.faults.length > 0
    ? failed(
        ...found.faults,
        ...otherwise.map(({ row }) => fault('rates.reads-otherwise', 'workDone', row.work)),
      )
    : ok(plain);
}
