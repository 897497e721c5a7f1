/** The demo job that comes with the program. */
import { fileURLToPath } from 'node:url';
import type { Outcome } from '../core/faults/fault.ts';
import { readJobInput } from '../hosts/file/read-job-input.ts';
import { JOB_TABLES } from '../planning/input/read-job.ts';
import type { RawTable } from '../planning/input/raw-table.ts';

export const DEMO_FOLDER = fileURLToPath(new URL('../../assets/demo', import.meta.url));

export async function readDemoTables(): Promise<Outcome<RawTable[]>> {
  return readJobInput(DEMO_FOLDER, JOB_TABLES);
}
