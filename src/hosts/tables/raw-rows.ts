/** From rows as they lie in a sheet or file to a table with its headings: one rule for both. */
import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import type { RawCell, RawRow, RawTable } from '../../planning/input/raw-table.ts';
import { MOST_TABLE_ROWS } from './limits.ts';

/** Whether a row shows nothing but blanks (cells with formats alone hold nothing). */
export function isBlankRow(cells: readonly RawCell[]): boolean {
  return cells.every(isBlankCell);
}

function isBlankCell(cell: RawCell): boolean {
  if (typeof cell === 'string') return cell.trim() === '';
  return cell === null || (typeof cell === 'object' && cell.kind === 'veiled' && cell.text === '');
}

/**
 * Which row holds the headings: the first with at least two cells of text, so that a title above is
 * passed over; where no row has two, the first.
 *
 * @param rows Rows that aren't blank, in order.
 */
export function headingsAt(rows: readonly RawRow[]): number {
  return Math.max(
    rows.findIndex((row) => row.cells.filter(isText).length >= 2),
    0,
  );
}

/**
 * The rows below the headings (see `headingsAt`); rows above them are left out.
 *
 * @param rows Rows that aren't blank, in order.
 * @param isCutOff Whether there are more rows that were not read.
 * @returns The table; its headings have no cells where there are no rows at all.
 */
export function tableOf(
  name: string,
  source: RawTable['source'],
  rows: readonly RawRow[],
  isCutOff = false,
): Outcome<RawTable> {
  const at = headingsAt(rows);
  const headings = rows[at] ?? { line: 1, cells: [] };
  const below = rows.slice(at + 1);
  const count = below.length;
  if (count > MOST_TABLE_ROWS) return failed(tooManyRows(name, count, isCutOff));
  return ok({ name, source, headings, rows: below });
}

/** All tables, or every fault of those that could not be read. */
export function together(outcomes: readonly Outcome<RawTable>[]): Outcome<RawTable[]> {
  const faults = outcomes.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return failed(...faults);
  return ok(outcomes.flatMap((one) => (one.ok ? [one.value] : [])));
}

export function tooManyRows(name: string, count: number, orMore = false): Fault {
  const details = orMore ? { details: { orMore: 'more than ' } } : {};
  return fault('table.too-many-rows', name, count, { limit: MOST_TABLE_ROWS, ...details });
}

function isText(cell: RawCell): boolean {
  return typeof cell === 'string' && cell.trim() !== '';
}
