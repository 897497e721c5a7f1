/** Reads the tables that are looked for out of an .xlsx file's bytes. */
import { readXlsx, type Cell, type CellValue, type Sheet, type Workbook } from 'hucre/xlsx';

import { failed, fault, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { columnLetters } from '../../planning/input/raw-table.ts';
import type { RawCell, RawRow, RawTable } from '../../planning/input/raw-table.ts';
import { fileKind } from '../tables/file-kind.ts';
import {
  LARGEST_SMALL_PART_MB,
  LARGEST_UNPACKED_MB,
  largerThanRead,
  MOST_TABLE_COLUMNS,
} from '../tables/limits.ts';
import { isBlankRow, tableOf, together, tooManyRows } from '../tables/raw-rows.ts';
import { unpackedParts } from './unpacked-size.ts';

/** Everything a sheet can have below its columns that are looked at. */
const LOOKED_AT = `A1:${columnLetters(MOST_TABLE_COLUMNS - 1)}1048576`;

/**
 * Reads tables from the sheets of their names (case and spaces don't matter).
 *
 * @param bytes The .xlsx file, at most 50 MB.
 * @param fileName What faults call it.
 * @param tableNames The sheets looked for.
 * @param required Those of them that must be there.
 * @returns The tables found, in the order of `tableNames`; or the faults: file.too-large,
 *   file.protected, file.old-workbook, file.not-workbook; or for all tables together table.missing,
 *   table.twice, table.too-many-rows.
 */
export async function readWorkbook(
  bytes: Uint8Array,
  fileName: string,
  tableNames: readonly string[],
  required: readonly string[] = [],
): Promise<Outcome<RawTable[]>> {
  const refused = refuse(bytes, fileName);
  if (refused !== null) return failed(refused);
  const keys = new Set(tableNames.map(sheetKey));
  let workbook: Workbook;
  try {
    workbook = await readXlsx(bytes, {
      sheets: ({ name }) => keys.has(sheetKey(name)),
      range: LOOKED_AT,
    });
  } catch (error) {
    return failed(openFault(error, fileName));
  }
  const found = tableNames.map((name) => {
    const outcome = tableFrom(workbook, name, fileName);
    const missing = outcome === null && required.includes(name);
    return missing ? failed(fault('table.missing', name, fileName)) : outcome;
  });
  return together(found.filter((one) => one !== null));
}

/** What can be told before anything is unpacked. */
function refuse(bytes: Uint8Array, fileName: string): Fault | null {
  const tooLarge = largerThanRead(fileName, bytes.length);
  if (tooLarge !== null) return tooLarge;
  const kind = fileKind(bytes);
  if (kind === 'encrypted-office') return fault('file.protected', 'workbook', fileName);
  if (kind === 'old-office') return fault('file.old-workbook', 'workbook', fileName);
  const parts = kind === 'zip' ? unpackedParts(bytes) : null;
  if (parts === null) return fault('file.not-workbook', 'workbook', fileName);
  const total = parts.reduce((sum, part) => sum + part.bytes, 0);
  // Sheets are read as they stream by; other XML is built up in memory, many times its size.
  const small = parts.filter(({ name }) => /(?<!worksheets\/[^/]*)\.(xml|rels)$/i.test(name));
  const largest = Math.max(0, ...small.map((part) => part.bytes));
  return (
    largerThanRead(`${fileName}, unpacked,`, total, LARGEST_UNPACKED_MB) ??
    largerThanRead(`A part of ${fileName}, unpacked,`, largest, LARGEST_SMALL_PART_MB)
  );
}

/** The reader refuses a sheet whose used area is vast, even if nearly all of it is blank. */
function openFault(error: unknown, fileName: string): Fault {
  const message = error instanceof Error ? error.message : '';
  const vast = /^Sheet "(.*)" spans (\d+) rows/.exec(message);
  if (vast !== null) return tooManyRows(vast[1] ?? fileName, Number(vast[2]));
  return fault('file.not-workbook', 'workbook', fileName);
}

function tableFrom(workbook: Workbook, name: string, fileName: string): Outcome<RawTable> | null {
  const [sheet, ...others] = workbook.sheets.filter((one) => sheetKey(one.name) === sheetKey(name));
  if (sheet === undefined) return null;
  if (others.length > 0) return failed(fault('table.twice', name, fileName));
  return tableOf(name, { kind: 'sheet', name: sheet.name }, rowsOf(sheet));
}

function sheetKey(name: string): string {
  return name.replace(/\s/gu, '').toLowerCase();
}

function rowsOf(sheet: Sheet): RawRow[] {
  const detailed = new Set(Array.from(sheet.cells?.keys() ?? [], (key) => Number.parseInt(key)));
  const rows: RawRow[] = [];
  sheet.rows.forEach((values, r) => {
    // A sheet with formats to its end has a million of these.
    if (!detailed.has(r) && values.every((value) => value === null)) return;
    const cells = values.map((value, c) => rawCell(value, sheet.cells?.get(`${r},${c}`)));
    if (isBlankRow(cells)) return;
    rows.push({ line: r + 1, cells: cells.slice(0, cells.findLastIndex((c) => c !== null) + 1) });
  });
  return rows;
}

/** `details` is there for errors, formulas and rich text alone. */
function rawCell(value: CellValue, details: Cell | undefined): RawCell {
  if (details?.type === 'error') return { kind: 'error', text: String(value) };
  if (details?.formula !== undefined && value === null) return { kind: 'uncalculated' };
  if (value instanceof Date) return { kind: 'date' };
  return value === '' ? null : value;
}
