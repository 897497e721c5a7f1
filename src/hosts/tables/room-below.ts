/** Where rows go that are put under those of a table: never over anything that stands there. */
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import { own } from '../../core/faults/argument.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import type { RawRow } from '../../planning/input/raw-table.ts';
import { isTotal } from '../../planning/input/total-rows.ts';
import { MOST_TABLE_ROWS } from './limits.ts';
import { tooManyRows } from './raw-rows.ts';

/** One row to be put in: texts by their column from A on; null leaves a cell as it is. */
export type NewRow = readonly (string | null)[];

export interface RoomAsked {
  /** What the table is called, and its sheet, for faults. */
  readonly name: string;
  readonly sheet: string;
  /** Of the table, those that aren't blank, headings first. */
  readonly rows: readonly RawRow[];
  /** Of its whole sheet, those that aren't blank. */
  readonly all: readonly RawRow[];
  /** The table's columns, from 0. */
  readonly left: number;
  readonly right: number;
  /** Its last row, from 0, filled or not; absent for the used cells of a sheet. */
  readonly bottom?: number;
  /** Whether the program moves down what stands below a table that grows. */
  readonly makesRoom?: boolean;
}

/**
 * The rows right after the last that is filled; one of totals stays last.
 *
 * @returns Line, from 1, of the first of `count` rows; or host.no-room, table.too-many-rows.
 */
export function roomBelow(asked: RoomAsked, count: number): Outcome<number> {
  const { name, rows, all, left, right, bottom, makesRoom = false } = asked;
  const [headings, ...filled] = rows;
  const isOfTotals = (row: RawRow): boolean => row.cells.some(isTotal);
  const last = filled.findLast((row) => !isOfTotals(row)) ?? headings;
  if (last === undefined) throw new RangeError(`${name} has no headings.`);
  if (filled.length + count > MOST_TABLE_ROWS) {
    return failed(tooManyRows(name, filled.length + count));
  }
  const first = last.line + 1;
  const end = first + count - 1;
  const grows = bottom !== undefined && end - 1 > bottom;
  // What stands right below a table that has grown would be taken for a row of it.
  const until = makesRoom && grows ? bottom + 1 : end + (grows ? 1 : 0);
  for (const { line, cells } of all) {
    if (line < first || line > until) continue;
    const at = cells.findIndex(
      (cell, column) => cell !== null && column >= left && column <= right,
    );
    if (at >= 0) return failed(noRoom(asked, line - 1, at, count));
  }
  return ok(first);
}

/** @param row From 0, as the column is. */
export function noRoom(
  { name, sheet }: Pick<RoomAsked, 'name' | 'sheet'>,
  row: number,
  column: number,
  count: number,
): Fault {
  const cell = cellName(row, column);
  const one = fault('host.no-room', own(name), count, { details: { cell: `${sheet}!${cell}` } });
  return placeFault(one, { sheet, cell });
}
