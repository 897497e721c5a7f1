/** The command runs: all runs of a job in one list, typed and made alike, before anything is planned. */
import { faultsToJson } from '../core/faults/fault-json.ts';
import { failed, ok, type Caution, type Fault, type Outcome } from '../core/faults/fault.ts';
import { readCsvTable } from '../hosts/file/read-csv.ts';
import { writeList } from '../exports/csv-list.ts';
import { RUN_HEADINGS } from '../planning/input/headings/run-headings.ts';
import { readJob } from '../planning/input/read-job.ts';
import { readRuns } from '../planning/input/read-runs.ts';
import { cellsOfRun, isSameRun, readsOtherwise } from '../planning/input/rows-for-runs.ts';
import type { Job, RunEnd } from '../planning/job.ts';
import { listRuns, type ListedRun } from '../planning/list-runs.ts';
import { listPieces } from '../planning/pieces/list-pieces.ts';
import { CUT_AWAYS_TITLE, sayCutAway } from '../sheets/words/say-cut-aways.ts';
import { sayFrom, sayParts, sayRunEnd, sayRunLength } from '../sheets/words/say-runs.ts';
import { argumentAt, type Call, type Command, type Report } from './command.ts';
import { INPUT_ARGUMENT, openJob } from './open-job.ts';
import { reportJson, reportRefusal, reportWords } from './report.ts';
import { JSON_OPTION } from './shared-options.ts';
import { drawTable } from './text-table.ts';

/** Grows when a field changes its meaning or goes; new fields alone don't change it. */
const RUNS_JSON_VERSION = 1;

const COLUMNS = [
  { heading: 'Room' },
  { heading: 'Run' },
  { heading: 'Profile' },
  { heading: 'Length', align: 'right' },
  { heading: 'Qty', align: 'right' },
  { heading: 'Left end' },
  { heading: 'Right end' },
  { heading: 'Openings leave' },
  { heading: 'From' },
] as const;

export const RUNS: Command = {
  name: 'runs',
  summary: 'Lists all runs of a job, those of Runs and those that Walls and Trim make.',
  arguments: [INPUT_ARGUMENT],
  options: [
    {
      name: '--csv',
      says: 'Answer as CSV under the headings of Runs, cautions on the error output.',
    },
    JSON_OPTION,
  ],
  notes: [
    'Ends are as one faces the wall. What stands around openings comes from Openings, and is not listed.',
    'A row of Runs with the room, the wall (under Run) and the profile of a made run stands in its place, at its turn in the order of fitting. So the answer with --csv, saved as runs.csv beside the same walls.csv and trim.csv, plans to the same pieces; take out the rows that Walls and Trim should go on making.',
    'With --json: { version, runs, cautions, faults }, lengths in inches, angles in degrees; at fault { faults, cautions }.',
  ],
  examples: ['job.xlsx', 'job-folder --csv'],
  exits: {
    0: 'Listed.',
    1: "The job can't be made as asked: openings that leave nothing of a run, say.",
    2: 'The call or the input is wrong.',
  },
  run: runRuns,
};

async function runRuns(call: Call): Promise<Report> {
  const json = call.flags.has('--json');
  const { name, input } = await openJob(argumentAt(call, 0));
  if (!input.ok) return reportRefusal(2, { faults: input.faults, cautions: [] }, json);
  const { job, faults, cautions: ofReading } = readJob(input.value.tables, name);
  const read = [...input.value.cautions, ...ofReading];
  if (job === undefined) return reportRefusal(2, { faults, cautions: read }, json);
  const pieces = listPieces(job);
  const cautions = [...read, ...pieces.cautions];
  if (pieces.faults.length > 0) return reportRefusal(1, { faults: pieces.faults, cautions }, json);
  const runs = listRuns(job);
  if (json) {
    const answer = { version: RUNS_JSON_VERSION, runs: runs.map(runToJson) };
    return reportJson(0, { ...answer, cautions: faultsToJson(cautions), faults: [] });
  }
  return call.flags.has('--csv') ? reportCsv(job, cautions) : reportList(job, runs, cautions);
}

function reportList(job: Job, runs: readonly ListedRun[], cautions: readonly Caution[]): Report {
  const { shop } = job;
  const rows = runs.map((listed) => {
    const { run } = listed;
    return [
      run.room,
      run.run,
      run.profile,
      sayRunLength(run, shop),
      String(run.quantity),
      sayRunEnd(run.left, shop.decimalSign),
      sayRunEnd(run.right, shop.decimalSign),
      sayParts(listed, shop),
      sayFrom(listed),
    ];
  });
  const taken = runs.flatMap(({ cut }) => cut?.taken ?? []);
  const openings = taken.map((one) => `  ${sayCutAway(one, shop)}`);
  const below = taken.length === 0 ? [] : [[`${CUT_AWAYS_TITLE}:`, ...openings]];
  return reportWords(0, [drawTable(COLUMNS, rows), ...below], { faults: [], cautions });
}

function reportCsv(job: Job, cautions: readonly Caution[]): Report {
  const written = writeRuns(job);
  if (!written.ok) return reportRefusal(1, { faults: written.faults, cautions }, false);
  const { errors } = reportRefusal(0, { faults: [], cautions }, false);
  return { exit: 0, output: written.value, errors };
}

/** Read back before it is given: a name that no CSV holds safely (`=1+1`) would take nothing over. */
function writeRuns({ runs, shop }: Job): Outcome<string> {
  const rows = runs.map((run) => {
    const cells = cellsOfRun(run, shop);
    return RUN_HEADINGS.map(({ key }) => cells.get(key) ?? null);
  });
  const headings = RUN_HEADINGS.map(({ heading }) => heading);
  const { text } = writeList({ name: 'runs', headings, rows }, shop.decimalSign);
  // A terminal and a pipe take neither a mark at the start nor the line ends of a file.
  const plain = text.replace(/^\uFEFF/u, '').replaceAll('\r\n', '\n');
  const table = readCsvTable(plain, 'runs.csv', 'Runs');
  if (!table.ok) return table;
  const found: { faults: Fault[]; cautions: Caution[] } = { faults: [], cautions: [] };
  const again = readRuns(table.value, shop, found);
  const otherwise = runs.filter((run, at) => {
    const read = again[at];
    return read === undefined || !isSameRun(read, run);
  });
  return otherwise.length + found.faults.length > 0
    ? failed(...found.faults, ...otherwise.map(readsOtherwise))
    : ok(plain);
}

function runToJson({ run, from, cut }: ListedRun) {
  const end = ({ kind, corner }: RunEnd) => ({ end: kind, cornerDeg: corner });
  return {
    room: run.room,
    run: run.run,
    profile: run.profile,
    length: Number(run.length),
    measuredAs: run.measuredAs,
    quantity: run.quantity,
    left: end(run.left),
    right: end(run.right),
    /** Of Runs; null where Walls and Trim alone make it. */
    row: from.row ?? null,
    /** Null where Runs alone has it. */
    madeFrom: from.made ?? null,
    cut:
      cut === undefined
        ? null
        : {
            taken: cut.taken.map(({ opening, taken }) => ({ opening, length: Number(taken) })),
            parts: cut.parts.map(({ length, left, right }) => ({
              length: Number(length),
              left: end(left),
              right: end(right),
            })),
          },
  };
}
