/** Runs an example through the reader and the planner that a job, or a call, goes through. */
import { fault, type Fault, type FaultCode } from '../../core/faults/fault.ts';
import { readCsvTable } from '../../hosts/file/read-csv.ts';
import { planJob } from '../../planning/plan-job.ts';
import { readJob } from '../../planning/input/read-job.ts';
import type { Job } from '../../planning/job.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import { COMMANDS } from '../commands.ts';
import { readCall } from '../read-call.ts';
import type { Example, Tables } from './example.ts';
import { SOUND_JOB, TABLE_NAMES, type TableName } from './sound-job.ts';

/** What an example comes to: the fault of its code as given, and whether it stands once it is mended. */
export interface Raised {
  readonly fault: Fault | undefined;
  readonly standsMended: () => Promise<boolean>;
}

export async function raise(code: FaultCode, example: Example): Promise<Raised> {
  const ofCode = (found: readonly Fault[]): Fault | undefined =>
    found.find((one) => one.code === code);
  if (example.kind === 'told') {
    const { argument, given, limit, details = {} } = example;
    const made = fault(code, argument, given, {
      details,
      ...(limit === undefined ? {} : { limit }),
    });
    return { fault: made, standsMended: () => Promise.resolve(false) };
  }
  if (example.kind === 'call') {
    const stands = (): boolean => ofCode(readAlone(example.mended)) !== undefined;
    return {
      fault: ofCode(readAlone(example.given)),
      standsMended: () => Promise.resolve(stands()),
    };
  }
  const tables = (text: string): Tables => ({
    ...SOUND_JOB,
    ...example.beside,
    [example.table]: text,
  });
  const read = readTables(tables(example.given));
  const atReading = ofCode(read.found);
  const mended = readTables(tables(example.mended));
  const isMended = (found: readonly Fault[]): boolean => ofCode(found) === undefined;
  // What reading tells needs no plan.
  if (atReading !== undefined) {
    return { fault: atReading, standsMended: () => Promise.resolve(!isMended(mended.found)) };
  }
  return {
    fault: ofCode(await plan(read)),
    standsMended: async () => !isMended(mended.found) || !isMended(await plan(mended)),
  };
}

/** The message of its code, as whoever typed the example reads it. */
export async function messageOf(code: FaultCode, example: Example): Promise<string> {
  const { fault: raised } = await raise(code, example);
  if (raised === undefined) throw new RangeError(`The example of ${code} does not raise it.`);
  return raised.message;
}

/** Reads a call without running it. */
function readAlone([name, ...rest]: readonly string[]): readonly Fault[] {
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) throw new RangeError(`No command ${name ?? ''}.`);
  return readCall(command, rest).faults;
}

interface JobRead {
  readonly job: Job | undefined;
  readonly found: readonly Fault[];
}

function readTables(tables: Tables): JobRead {
  const read = (Object.keys(tables) as TableName[]).map((table) =>
    readCsvTable(tables[table] ?? '', `${table}.csv`, TABLE_NAMES[table]),
  );
  const unread = read.flatMap((one) => (one.ok ? [] : one.faults));
  if (unread.length > 0) return { job: undefined, found: unread };
  const raw = read.flatMap((one): RawTable[] => (one.ok ? [one.value] : []));
  const { job, faults, cautions } = readJob(raw, 'the job');
  return { job, found: [...faults, ...cautions] };
}

async function plan({ job }: JobRead): Promise<readonly Fault[]> {
  if (job === undefined) return [];
  const { faults, cautions } = await planJob(job, { budget: { steps: 0 } });
  return [...faults, ...cautions];
}
