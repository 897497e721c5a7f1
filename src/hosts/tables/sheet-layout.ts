/** How a sheet lies beside what its cells hold: rows and columns out of sight, and cells that are merged. */
import type { CellRange } from '../../core/cells/cell-range.ts';
import {
  failed,
  fault,
  ok,
  placeFault,
  type Fault,
  type Outcome,
} from '../../core/faults/fault.ts';
import {
  columnArgument,
  tableArgument,
  whereIs,
  type RawTable,
} from '../../planning/input/raw-table.ts';

export interface SheetLayout {
  /** Of a row's line, from 1: hidden by hand, or by a filter. */
  readonly isHiddenRow: (line: number) => boolean;
  /** Of a column, from 0. */
  readonly isHiddenColumn: (column: number) => boolean;
  readonly merges: readonly CellRange[];
}

/**
 * The table with what a person should know of its rows, and with what decides how it is read.
 *
 * @returns The table; or table.heading-merged for each column that holds something under a merge of
 *   headings that begins further left: only the first has a heading, so its cells would be lost unsaid.
 */
export function withLayout(table: RawTable, layout: SheetLayout): Outcome<RawTable> {
  const { isHiddenRow, isHiddenColumn, merges } = layout;
  const faults = mergedHeadings(table, merges);
  if (faults.length > 0) return failed(...faults);
  const { line } = table.headings;
  const below = merges.filter(({ bottom }) => bottom >= line);
  const hiddenColumns = table.headings.cells.flatMap((_, at) => (isHiddenColumn(at) ? [at] : []));
  return ok({
    ...sayHiddenRows(table, isHiddenRow),
    ...(below.length === 0 ? {} : { merges: below }),
    ...(hiddenColumns.length === 0 ? {} : { hiddenColumns }),
  });
}

function mergedHeadings(table: RawTable, merges: readonly CellRange[]): Fault[] {
  const row = table.headings.line - 1;
  return merges
    .filter(({ top, bottom }) => top <= row && row <= bottom)
    .flatMap(({ left, right }) =>
      Array.from({ length: right - left }, (_, index) => left + 1 + index),
    )
    .filter((column) => table.rows.some(({ cells }) => (cells[column] ?? null) !== null))
    .map((column) => {
      const argument = columnArgument(column, table);
      const where = whereIs(table, table.headings.line, column);
      return placeFault(fault('table.heading-merged', argument, null), where);
    });
}

function sayHiddenRows(table: RawTable, isHidden: SheetLayout['isHiddenRow']): RawTable {
  const hidden = table.rows.filter(({ line }) => isHidden(line));
  const [first] = hidden;
  if (first === undefined) return table;
  const one = fault('table.hidden-rows', tableArgument(table.name), hidden.length);
  const place = placeFault(one, whereIs(table, first.line, 0));
  return { ...table, cautions: [...(table.cautions ?? []), place] };
}
