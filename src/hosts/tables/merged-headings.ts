/** Headings that are merged: only the first column of a merge has one, so the others' cells would be lost unsaid. */
import { fault, placeFault, type Fault } from '../../core/faults/fault.ts';
import { columnArgument, whereIs, type RawTable } from '../../planning/input/raw-table.ts';

/**
 * A table.heading-merged for each column that holds something under a merge that begins further left.
 *
 * @param hidden Columns, from 0, that merges in the row of the headings hide.
 */
export function mergedHeadings(table: RawTable, hidden: readonly number[]): Fault[] {
  return hidden
    .filter((column) => table.rows.some((row) => (row.cells[column] ?? null) !== null))
    .map((column) => {
      const argument = columnArgument(column, table);
      const where = whereIs(table, table.headings.line, column);
      return placeFault(fault('table.heading-merged', argument, null), where);
    });
}
