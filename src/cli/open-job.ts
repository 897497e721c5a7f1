/** Opens the job that an argument names: a workbook, a folder of CSV files, or a workbook through a pipe. */
import { syntax } from '../core/faults/argument.ts';
import { failed, fault, type Outcome } from '../core/faults/fault.ts';
import { readJobBytes, readJobTables, type JobInput } from '../hosts/file/read-job-input.ts';
import { readKeptInput } from '../hosts/file/read-kept-input.ts';
import { keptInputOf, type KeptInput } from '../hosts/xlsx/kept-input.ts';
import type { ArgumentDefinition } from './command.ts';
import {
  inputKind,
  readStandardInput,
  STANDARD_INPUT,
  STANDARD_INPUT_NAME,
} from './standard-input.ts';

export const INPUT_ARGUMENT: ArgumentDefinition = {
  name: 'INPUT',
  says: 'A workbook as coveledger new makes it, or a folder with runs.csv, profiles.csv, stock.csv and, as you like, walls.csv, trim.csv, openings.csv, shop.csv, work.csv, options.csv, job.csv and hours.csv (where walls.csv and trim.csv say all, runs.csv may be left out); or - for a workbook from the standard input.',
};

export interface OpenedJob {
  /** As faults call it. */
  readonly name: string;
  readonly input: Outcome<JobInput>;
  /** What a workbook holds beside its tables; undefined where it holds none. */
  readonly kept: KeptInput | undefined;
}

/** Faults: those of readJobTables; of the standard input, file.too-large and call.input-no-job too. */
export async function openJob(name: string): Promise<OpenedJob> {
  if (name !== STANDARD_INPUT) {
    return { name, input: await readJobTables(name), kept: await readKeptInput(name) };
  }
  const job = { name: STANDARD_INPUT_NAME, kept: undefined };
  const bytes = await readStandardInput();
  if (!bytes.ok) return { ...job, input: bytes };
  if (inputKind(bytes.value) === 'text') {
    const details = { holds: bytes.value.length === 0 ? 'nothing' : 'a list' };
    return {
      ...job,
      input: failed(fault('call.input-no-job', syntax('INPUT'), STANDARD_INPUT, { details })),
    };
  }
  const input = await readJobBytes(bytes.value, STANDARD_INPUT_NAME);
  return { ...job, input, kept: await keptInputOf(bytes.value, STANDARD_INPUT_NAME) };
}
