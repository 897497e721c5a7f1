/** The first rows of a person's own table, as they will be read by the columns chosen so far. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { filledCells } from '../../planning/input/headings/column-contents.ts';
import { TABLE_HEADINGS } from '../../planning/input/headings/table-headings.ts';
import { mapColumns, type ColumnMap } from '../../planning/input/map-columns.ts';
import type { RawTable } from '../../planning/input/raw-table.ts';
import type { JobTableName } from '../../planning/input/read-job.ts';
import { readRows } from '../../planning/input/read-rows.ts';
import type { Findings, RowReader } from '../../planning/input/row-reader.ts';
import type { Shop } from '../../planning/shop.ts';
import { printExact } from '../../sheets/words/print-length.ts';

const ROWS_SHOWN = 3;
/** What stands for a cell that can't be read. */
const UNREAD = '?';

export interface PreviewRow {
  /** As it is read, by our heading; blank cells are left out. */
  readonly cells: readonly { readonly heading: string; readonly text: string }[];
  /** Why cells of the row can't be read. */
  readonly messages: readonly string[];
}

export function previewRows(
  raw: RawTable,
  name: JobTableName,
  columns: ColumnMap,
  shop: Shop,
): readonly PreviewRow[] {
  // What is needed and not chosen yet is asked for elsewhere.
  const headings = TABLE_HEADINGS[name]
    .filter(({ heading }) => columns[heading] !== undefined)
    .map((one) => ({ ...one, required: false }));
  const findings: Findings = { faults: [], cautions: [] };
  const mapped = mapColumns({ ...raw, rows: raw.rows.slice(0, ROWS_SHOWN) }, name, columns);
  return readRows(mapped, headings, shop, findings).map((row) => {
    const before = findings.faults.length;
    const cells = headings.flatMap(({ key, heading, holds }) => {
      const text = row.isBlank(key) ? '' : sayCell(row, key, holds === 'length', shop);
      return text === '' ? [] : [{ heading, text }];
    });
    return { cells, messages: findings.faults.slice(before).map(({ message }) => message) };
  });
}

function sayCell(row: RowReader, key: HeadingKey, isLength: boolean, shop: Shop): string {
  if (!isLength) return row.text(key);
  const length = row.length(key, true);
  return length === undefined ? UNREAD : printExact(length, shop);
}

/** Filled columns of theirs that stand for nothing yet, and those that are said not to be used. */
export function leftOverColumns(raw: RawTable, columns: ColumnMap): readonly string[] {
  const taken = new Set(Object.values(columns));
  const names = raw.headings.cells.flatMap((cell, at) => {
    const isFilled = typeof cell === 'string' && filledCells(raw, at).length > 0;
    return isFilled && !taken.has(cell) ? [cell] : [];
  });
  return [...new Set(names)];
}
