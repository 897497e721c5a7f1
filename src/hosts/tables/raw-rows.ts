/** From rows as they lie in a sheet or file to a table with its headings: one rule for both. */
import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import {
  tableArgument,
  type RawCell,
  type RawRow,
  type RawTable,
} from '../../planning/input/raw-table.ts';
import { TABLE_HEADINGS } from '../../planning/input/headings/table-headings.ts';
import { headingKey } from '../../planning/input/row-reader.ts';
import { MOST_TABLE_ROWS } from './limits.ts';

/** Whether a row shows nothing but blanks (cells with formats alone hold nothing). */
export function isBlankRow(cells: readonly RawCell[]): boolean {
  return cells.every(isBlankCell);
}

function isBlankCell(cell: RawCell): boolean {
  if (typeof cell === 'string') return cell.trim() === '';
  return cell === null || (typeof cell === 'object' && cell.kind === 'veiled' && cell.text === '');
}

/** Rows above the headings that are looked at: a title, an address, a date. */
const MOST_ABOVE = 20;
/** One such word may stand in any title. */
const LEAST_KNOWN = 2;

/**
 * Which row holds the headings: the first with at least two cells of text, so that a title above is
 * passed over; one further down where that has none of our headings and the other has two. Where no
 * row has two texts, the first.
 *
 * @param rows Rows that aren't blank, in order.
 */
export function headingsAt(rows: readonly RawRow[]): number {
  const first = rows.findIndex((row) => row.cells.filter(isText).length >= 2);
  if (first < 0) return 0;
  if (knownHeadings(rows[first]) > 0) return first;
  const found = rows
    .slice(0, first + MOST_ABOVE)
    .findIndex((row) => knownHeadings(row) >= LEAST_KNOWN);
  return found < 0 ? first : found;
}

function knownHeadings(row: RawRow | undefined): number {
  const texts = (row?.cells ?? []).filter((cell): cell is string => typeof cell === 'string');
  return texts.filter((one) => one.length < LONGEST_HEADING && KNOWN.has(headingKey(one))).length;
}

const LONGEST_HEADING = 60;
const KNOWN = new Set(
  Object.values(TABLE_HEADINGS).flatMap((headings) =>
    headings.flatMap(({ heading, also = [] }) => [heading, ...also].map(headingKey)),
  ),
);

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
  return fault('table.too-many-rows', tableArgument(name), count, {
    limit: MOST_TABLE_ROWS,
    ...details,
  });
}

function isText(cell: RawCell): boolean {
  return typeof cell === 'string' && cell.trim() !== '';
}
