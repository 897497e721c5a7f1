/** Opens the list that an argument names: a CSV file, a sheet of a workbook, or the standard input. */
import { extname } from 'node:path';
import { syntax, sayArgument } from '../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../core/faults/fault.ts';
import { readCsvTable } from '../hosts/file/read-csv.ts';
import { isFileThere, readBytes, WORKBOOK_ENDINGS } from '../hosts/file/read-job-input.ts';
import { largerThanRead, LARGEST_FILE_MB } from '../hosts/tables/limits.ts';
import { readOneSheet } from '../hosts/xlsx/read-workbook.ts';
import type { RawTable } from '../planning/input/raw-table.ts';

/** As an argument, and as faults call it. */
export const STANDARD_INPUT = '-';
const STANDARD_INPUT_NAME = sayArgument('standardInput');
const BYTES_PER_MB = 1_000_000;
/** A sheet's name may stand behind a workbook's: job.xlsx#Pieces. */
const WITH_SHEET = /^(.*\.xls[xm]?)#(.+)$/isu;

/** What an argument that names a list says in help. */
export const LIST_FORMS =
  'CSV; or .xlsx, its first sheet, or the one named behind it (FILE.xlsx#Sheet); or - for CSV from the standard input.';

/** Faults: those of readBytes, readCsvTable and readOneSheet. */
export async function openList(name: string): Promise<Outcome<RawTable>> {
  if (name === STANDARD_INPUT) {
    const bytes = await readStandardInput();
    return bytes.ok ? readCsvTable(bytes.value, STANDARD_INPUT_NAME, STANDARD_INPUT_NAME) : bytes;
  }
  const [, workbook = '', sheet] = WITH_SHEET.exec(name) ?? [];
  const isSheet = sheet !== undefined && !(await isFileThere(name));
  const path = isSheet ? workbook : name;
  const isWorkbook = WORKBOOK_ENDINGS.has(extname(path).toLowerCase());
  const bytes = await readBytes(path, isWorkbook ? 'an .xlsx workbook' : 'a CSV file');
  if (!bytes.ok) return bytes;
  if (!isWorkbook) return readCsvTable(bytes.value, path, path);
  return readOneSheet(bytes.value, path, isSheet ? sheet : undefined);
}

/** Stops at the most that is read of any file. */
async function readStandardInput(): Promise<Outcome<Uint8Array>> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of process.stdin) {
    const bytes = Buffer.from(part as Uint8Array);
    parts.push(bytes);
    length += bytes.length;
    if (length > LARGEST_FILE_MB * BYTES_PER_MB) break;
  }
  const tooLarge = largerThanRead('standardInput', length);
  return tooLarge === null ? ok(Buffer.concat(parts)) : failed(tooLarge);
}

/** The standard input is read once. */
export function checkInputOnce(names: readonly string[], command: string): Outcome<void> {
  const count = names.filter((name) => name === STANDARD_INPUT).length;
  return count < 2
    ? ok(undefined)
    : failed(fault('call.input-twice', syntax(command), STANDARD_INPUT));
}
