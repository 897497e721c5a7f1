/** Reads one table out of a CSV file. */
import type { Outcome } from '../../core/faults/fault.ts';
import type { RawRow, RawTable } from '../../planning/input/raw-table.ts';
import { readRecords } from '../csv/csv-records.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { isBlankRow, tableOf } from '../tables/raw-rows.ts';

/** Far more than a table may have, titles above its headings and all. */
const MOST_ROWS_READ = 2 * MOST_TABLE_ROWS;

/**
 * Reads a table from CSV (see readRecords).
 *
 * @param content Text, or the file's bytes, at most 50 MB.
 * @param fileName What faults and places call it.
 * @param tableName The table that it is.
 * @returns The table; or one fault: file.too-large, file.not-text, file.not-csv,
 *   file.too-many-lines, table.too-many-rows.
 */
export function readCsvTable(
  content: string | Uint8Array,
  fileName: string,
  tableName: string,
): Outcome<RawTable> {
  const rows: RawRow[] = [];
  let isCutOff = false;
  const read = readRecords(content, fileName, (cells, line) => {
    if (isBlankRow(cells)) return 'go on';
    isCutOff = rows.length === MOST_ROWS_READ;
    if (!isCutOff) rows.push({ line, cells });
    return isCutOff ? 'stop' : 'go on';
  });
  if (!read.ok) return read;
  return tableOf(tableName, { kind: 'file', name: fileName }, rows, isCutOff);
}
