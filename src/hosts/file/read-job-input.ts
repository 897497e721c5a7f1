/** Reads a job's tables from a path: a folder of CSV files, or an .xlsx workbook. */
import { readdir, readFile, stat } from 'node:fs/promises';
import { extname, join } from 'node:path';

import { own } from '../../core/faults/argument.ts';
import {
  failed,
  fault,
  ok,
  type Caution,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { findTables } from '../../planning/input/find-tables.ts';
import { isGone } from '../../planning/input/match-tables.ts';
import { tableArgument, type RawTable } from '../../planning/input/raw-table.ts';
import { BY_NAME_ALONE, isNeeded, JOB_TABLES } from '../../planning/input/read-job.ts';
import { sameName } from '../../planning/job.ts';
import { CHOICE_NOTES } from '../../planning/input/table-choices.ts';
import { largerThanRead } from '../tables/limits.ts';
import { together } from '../tables/raw-rows.ts';
import { readCsvTable } from './read-csv.ts';
import { tellsOfTables } from '../xlsx/kept-properties.ts';
import { openFileHost } from '../xlsx/open-file-host.ts';
import { readWorkbook } from '../xlsx/read-workbook.ts';
import { systemCode, systemReason } from './system-reason.ts';

/** A table that is looked for: sheet Runs of a workbook, or runs.csv of a folder. */
export interface WantedTable {
  readonly name: string;
  readonly required: boolean;
}

/** An .xls or .ods is opened too: what it is gets said, or it turns out to be an .xlsx after all. */
export const WORKBOOK_ENDINGS: ReadonlySet<string> = new Set(['.xlsx', '.xlsm', '.xls', '.ods']);
/** Workbooks that aren't read: their own programs save them as .xlsx. */
const OTHER_WORKBOOKS = new Set(['.fods', '.ots', '.numbers', '.xlsb', '.gnumeric', '.wk4']);

export interface JobInput {
  readonly tables: readonly RawTable[];
  /** What was passed over in finding them. */
  readonly cautions: readonly Caution[];
}

/**
 * Reads a job's tables: of a workbook by what is kept with it of the person's own tables, as the pane
 * reads it, else the sheets named for them; where one isn't named so, be it needed or not, by its headings.
 *
 * @param path A folder with runs.csv and the like, or an .xlsx workbook.
 * @returns The tables found; or every fault at once: those of readJobInput and of findTables.
 */
export async function readJobTables(path: string): Promise<Outcome<JobInput>> {
  const bytes = isWorkbook(path) ? await readBytes(path, 'an .xlsx workbook') : failed();
  if (bytes.ok) return readJobBytes(bytes.value, path);
  const named = await readJobInput(path, JOB_TABLES);
  return named.ok ? ok({ tables: named.value, cautions: [] }) : named;
}

/** The same of a workbook's bytes. @param name what faults call it */
export async function readJobBytes(bytes: Uint8Array, name: string): Promise<Outcome<JobInput>> {
  if (tellsOfTables(bytes)) return readFound(bytes, name);
  const named = await readNamed(bytes, name, JOB_TABLES);
  const isSettled = named.ok
    ? SETTLED.every(({ name }) => named.value.some((table) => sameName(table.name, name)))
    : named.faults.some(({ code }) => code !== 'table.missing');
  if (!isSettled) return readFound(bytes, name);
  return named.ok ? ok({ tables: named.value, cautions: [] }) : named;
}

/** With these found by their names, no headings are looked at. */
const SETTLED = JOB_TABLES.filter(({ name }) => !BY_NAME_ALONE.has(name));

async function readFound(bytes: Uint8Array, path: string): Promise<Outcome<JobInput>> {
  const opened = await openFileHost({ name: path, bytes });
  if (!opened.ok) return opened;
  const host = opened.value;
  const surveyed = await host.survey();
  const notes = await host.recall(CHOICE_NOTES);
  if (!surveyed.ok) return surveyed;
  if (!notes.ok) return notes;
  const { places } = surveyed.value;
  const found = await findTables({
    places,
    notes: notes.value,
    read: (place, name) => host.readTable(place, name),
  });
  const unfound = found.matches.flatMap((match) => {
    if (match.alike.length > 0) return fault('table.twice', tableArgument(match.name), path);
    const isMissing = match.required && match.place === undefined && !isGone(match);
    return isMissing ? fault('table.missing', tableArgument(match.name), path) : [];
  });
  const faults = [...unfound, ...found.faults];
  return faults.length > 0 ? failed(...faults) : ok(found);
}

/**
 * Reads the wanted tables; names match without regard to case.
 *
 * @param path A folder with runs.csv and the like, or an .xlsx workbook with sheets of those names.
 * @returns The tables found; or every fault at once: what is missing, unreadable, too large or of
 *   another kind, and what readWorkbook and readCsvTable find.
 */
export async function readJobInput(
  path: string,
  wanted: readonly WantedTable[],
): Promise<Outcome<RawTable[]>> {
  let entries: readonly string[] | null;
  try {
    entries = (await stat(path)).isDirectory() ? await readdir(path) : null;
  } catch (error) {
    return failed(readFault(path, error));
  }
  if (entries !== null) return readFolder(path, entries, wanted);
  const other = otherWorkbook(path);
  if (other !== null) return failed(other);
  if (!isWorkbook(path)) {
    return failed(fault('file.not-folder-or-workbook', 'input', path));
  }
  const bytes = await readBytes(path, 'an .xlsx workbook');
  return bytes.ok ? readNamed(bytes.value, path, wanted) : bytes;
}

function readNamed(
  bytes: Uint8Array,
  fileName: string,
  wanted: readonly WantedTable[],
): Promise<Outcome<RawTable[]>> {
  const names = wanted.map((table) => table.name);
  const required = wanted.filter((table) => table.required).map((table) => table.name);
  return readWorkbook(bytes, fileName, names, required);
}

function isWorkbook(path: string): boolean {
  return WORKBOOK_ENDINGS.has(extname(path).toLowerCase());
}

async function readFolder(
  folder: string,
  entries: readonly string[],
  wanted: readonly WantedTable[],
): Promise<Outcome<RawTable[]>> {
  const isThere = (name: string): boolean =>
    entries.some((entry) => entry.toLowerCase() === `${name.toLowerCase()}.csv`);
  const found = await Promise.all(
    wanted.map(async (table): Promise<Outcome<RawTable> | null> => {
      const { name } = table;
      const fileName = `${name.toLowerCase()}.csv`;
      const [file, ...others] = entries.filter((entry) => entry.toLowerCase() === fileName);
      if (file === undefined) {
        if (!isNeeded(table, isThere)) return null;
        return failed(
          fault('table.missing', tableArgument(name), folder, { details: { file: fileName } }),
        );
      }
      if (others.length > 0) return failed(fault('table.twice', tableArgument(name), folder));
      const bytes = await readBytes(join(folder, file), `a file ${fileName}`);
      return bytes.ok ? readCsvTable(bytes.value, file, name) : bytes;
    }),
  );
  return together(found.filter((one) => one !== null));
}

/**
 * Reads a file of at most 50 MB.
 *
 * @param wanted What stands there in a folder's place, for the fault.
 * @returns The bytes; or one fault: file.missing, file.is-folder, file.other-workbook, file.too-large,
 *   file.unreadable.
 */
export async function readBytes(path: string, wanted: string): Promise<Outcome<Uint8Array>> {
  try {
    const about = await stat(path);
    if (about.isDirectory()) {
      return failed(fault('file.is-folder', 'file', path, { details: { wanted } }));
    }
    const unread = otherWorkbook(path) ?? largerThanRead(own(path), about.size);
    return unread === null ? ok(await readFile(path)) : failed(unread);
  } catch (error) {
    return failed(readFault(path, error));
  }
}

function otherWorkbook(path: string): Fault | null {
  const isOther = OTHER_WORKBOOKS.has(extname(path).toLowerCase());
  return isOther ? fault('file.other-workbook', 'file', path) : null;
}

export async function isFileThere(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isFile();
  } catch {
    return false;
  }
}

function readFault(path: string, error: unknown): Fault {
  if (systemCode(error) === 'ENOENT') return fault('file.missing', 'file', path);
  return fault('file.unreadable', 'file', path, { details: { why: systemReason(error) } });
}
