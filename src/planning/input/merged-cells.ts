/**
 * Cells of a table that are merged: what stands in the first is seen in all of them, and held by the first
 * alone. A room merged down is meant for each of its rows. Of a quantity or a length nobody can tell
 * whether it is of all the rows together or of each, and what is merged across can't be two things at
 * once: those are refused.
 */
import { rangeName, type CellRange } from '../../core/cells/cell-range.ts';
import type { HeadingKey } from '../../core/faults/argument.ts';
import { fault, placeFault } from '../../core/faults/fault.ts';
import type { Heading, Holds } from './headings/heading.ts';
import { whereIs, type RawCell, type RawRow, type RawTable } from './raw-table.ts';
import type { Findings } from './row-reader.ts';

/** What is the same for each row when it is seen beside all of them. */
const MEANT_FOR_EACH: ReadonlySet<Holds> = new Set(['name', 'word', 'yes or no', 'day', 'note']);

/** A merge that lies on a column of ours. */
interface Merged {
  readonly range: CellRange;
  readonly key: HeadingKey;
  /** From 0. */
  readonly column: number;
  readonly holds: Holds;
  /** What is seen in it; null where that is nothing. */
  readonly seen: RawCell;
  /** The table's rows that it covers, by their line. */
  readonly lines: readonly number[];
}

/**
 * The rows with what is seen in their merged cells. Content that a merge hides is never read.
 *
 * @param rows Of the table, those that are read.
 * @param columns The column, from 0, of each heading of ours.
 */
export function spreadMerged(
  table: RawTable,
  rows: readonly RawRow[],
  headings: readonly Heading[],
  columns: ReadonlyMap<HeadingKey, number>,
  findings: Findings,
): readonly RawRow[] {
  const merges = table.merges ?? [];
  if (merges.length === 0) return rows;
  const above = [table.headings, ...table.rows].map((row) => [row.line, row] as const);
  const known: Known = { all: new Map(above), read: new Set(rows.map(({ line }) => line)) };
  const all = headings.flatMap(({ key, holds }) => {
    const column = columns.get(key);
    if (column === undefined) return [];
    return merges.flatMap((range) => mergedAt(known, range, { key, column, holds }) ?? []);
  });
  const taken = all.filter((one) => !refuse(table, one, findings));
  sayTaken(table, taken, findings);
  const cells = new Map(rows.map(({ line, cells: held }) => [line, [...held]]));
  for (const { lines, column, seen } of taken) {
    for (const line of lines) {
      const row = cells.get(line) ?? [];
      // Cells between the last that holds something and this one.
      while (row.length < column) row.push(null);
      row[column] = seen;
    }
  }
  return rows.map((row) => ({ ...row, cells: cells.get(row.line) ?? row.cells }));
}

/** Rows of the table by their line, headings among them; and the lines of those that are read. */
interface Known {
  readonly all: ReadonlyMap<number, RawRow>;
  readonly read: ReadonlySet<number>;
}

function mergedAt(
  { all, read }: Known,
  range: CellRange,
  one: Pick<Merged, 'key' | 'column' | 'holds'>,
): Merged | undefined {
  const { top, left, bottom, right } = range;
  if (one.column < left || one.column > right) return undefined;
  const lines: number[] = [];
  for (let line = top + 1; line <= bottom + 1; line++) if (read.has(line)) lines.push(line);
  if (lines.length === 0) return undefined;
  const cell = all.get(top + 1)?.cells[left] ?? null;
  const isBlank = typeof cell === 'string' && cell.trim() === '';
  return { range, ...one, seen: isBlank ? null : cell, lines };
}

/** Whether it can't be told what is meant; then it is among the faults. */
function refuse(table: RawTable, one: Merged, { faults }: Findings): boolean {
  const { range, key, column, holds, seen, lines } = one;
  if (seen === null) return false;
  const isHeading = range.top < table.headings.line;
  const isHeld = column === range.left && !isHeading;
  const isAcross = !isHeld && column > range.left;
  const isOfEach = isHeld && (lines.length === 1 || MEANT_FOR_EACH.has(holds));
  if (isOfEach) return false;
  const code = isAcross ? 'table.merged-across' : 'table.merged-down';
  const given = typeof seen === 'object' ? ('text' in seen ? seen.text : null) : seen;
  const details = { range: rangeName(range), heading: isHeading };
  const found = fault(code, key, given, { limit: lines.length, details });
  faults.push(placeFault(found, whereIs(table, range.top + 1, range.left)));
  return true;
}

/** Once a column, at the first of them. */
function sayTaken(table: RawTable, taken: readonly Merged[], { cautions }: Findings): void {
  const down = taken.filter(({ seen, lines }) => seen !== null && lines.length > 1);
  for (const key of new Set(down.map((one) => one.key))) {
    const own = down.filter((one) => one.key === key);
    const [first] = own;
    if (first === undefined) continue;
    const { range } = first;
    const details = { range: rangeName(range), rows: first.lines.length };
    const one = fault('table.merged-taken', key, own.length, { details });
    cautions.push(placeFault(one, whereIs(table, range.top + 1, range.left)));
  }
}
