import { entryAt } from '../entry-at.ts';
import type { Column } from './column.ts';

/** Columns as a sparse matrix, column by column, as HiGHS takes it. */
export function columnMatrix(columns: readonly Column[], rowCount: number) {
  const starts = new Int32Array(columns.length + 1);
  columns.forEach(({ rows }, at) => (starts[at + 1] = entryAt(starts, at) + rows.length));
  const size = entryAt(starts, columns.length);
  const indices = new Int32Array(size);
  const values = new Float64Array(size);
  columns.forEach((column, at) => {
    indices.set(column.rows, starts[at]);
    values.set(column.values, starts[at]);
  });
  const format = 'csc' as const;
  return { format, numRows: rowCount, numCols: columns.length, starts, indices, values };
}
