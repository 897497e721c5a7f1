/** Reads one table out of a CSV file. */
import type { Outcome } from '../../core/faults/fault.ts';
import type { RawRow, RawTable } from '../../planning/input/raw-table.ts';
import { readRecords } from '../csv/csv-records.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { isBlankRow, tableOf } from '../tables/raw-rows.ts';

/**
 * Reads a table from CSV (see readRecords).
 *
 * @param content Text, or the file's bytes, at most 50 MB.
 * @param fileName What faults and places call it.
 * @param tableName The table that it is.
 * @returns The table; or one fault: file.too-large, file.not-text, file.not-csv,
 *   table.too-many-rows.
 */
export function readCsvTable(
  content: string | Uint8Array,
  fileName: string,
  tableName: string,
): Outcome<RawTable> {
  const rows: RawRow[] = [];
  // Far more than a table may have are counted alone.
  let more = 0;
  const read = readRecords(content, fileName, (cells, line) => {
    if (isBlankRow(cells)) return;
    if (rows.length > 2 * MOST_TABLE_ROWS) more += 1;
    else rows.push({ line, cells });
  });
  if (!read.ok) return read;
  return tableOf(tableName, { kind: 'file', name: fileName }, rows, more);
}
