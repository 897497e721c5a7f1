/** Opens the list that an argument names: a CSV file, a sheet of a workbook, or the standard input. */
import { extname } from 'node:path';
import type { Outcome } from '../core/faults/fault.ts';
import { readCsvTable } from '../hosts/file/read-csv.ts';
import { isFileThere, readBytes, WORKBOOK_ENDINGS } from '../hosts/file/read-job-input.ts';
import { readOneSheet } from '../hosts/xlsx/read-workbook.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import {
  inputKind,
  readStandardInput,
  STANDARD_INPUT,
  STANDARD_INPUT_NAME,
} from './standard-input.ts';

/** A sheet's name may stand behind a workbook's: job.xlsx#Pieces. */
const WITH_SHEET = /^(.*\.xls[xm]?)#(.+)$/isu;

/** What an argument that names a list says in help. */
export const LIST_FORMS =
  'CSV; or .xlsx, its first sheet, or the one named behind it (FILE.xlsx#Sheet); or - for either from the standard input.';

export interface OpenedList extends RawTable {
  /** Of a workbook whose sheet wasn't named, all there are. */
  readonly sheets?: readonly string[];
}

/** Faults: those of readBytes, readCsvTable and readOneSheet. */
export async function openList(name: string): Promise<Outcome<OpenedList>> {
  if (name === STANDARD_INPUT) {
    const bytes = await readStandardInput();
    if (!bytes.ok) return bytes;
    if (inputKind(bytes.value) === 'workbook')
      return readOneSheet(bytes.value, STANDARD_INPUT_NAME);
    return readCsvTable(bytes.value, STANDARD_INPUT_NAME, STANDARD_INPUT_NAME);
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
