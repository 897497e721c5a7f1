/** Reads the rows under one place's headings. */
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { tableArgument, type RawTable } from '../../planning/input/raw-table.ts';
import type { TablePlace } from '../host.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { sayHiddenRows } from '../tables/hidden-rows.ts';
import { mergedHeadings } from '../tables/merged-headings.ts';
import { tableOf, tooManyRows } from '../tables/raw-rows.ts';
import { placesOf } from './places.ts';
import type { Grid } from './grid.ts';

/**
 * @param name What the table is taken for; faults call it so.
 * @returns The table; or host.gone, table.too-many-rows, table.heading-merged.
 */
export function readTable(grid: Grid, wanted: TablePlace, name: string): Outcome<RawTable> {
  const found = placesOf(grid).find(({ place }) => place.key === wanted.key);
  if (found === undefined)
    return failed(fault('host.gone', tableArgument(name), wanted.table ?? wanted.sheet));
  const { place, sheet, rows } = found;
  const source = { kind: 'sheet', name: sheet.name } as const;
  const isHidden = (row: number): boolean => !sheet.worksheet.getRowVisible(row - 1);
  if (place.table !== undefined) {
    const [headings = { line: 1, cells: [] }, ...below] = rows;
    if (below.length > MOST_TABLE_ROWS) return failed(tooManyRows(name, below.length));
    return ok(sayHiddenRows({ name, source, headings, rows: below }, isHidden));
  }
  const table = tableOf(name, source, rows);
  if (!table.ok) return table;
  const line = table.value.headings.line - 1;
  const hidden = sheet.worksheet
    .getMergeData()
    .filter(({ startRow, endRow }) => startRow <= line && line <= endRow)
    .flatMap(({ startColumn, endColumn }) =>
      Array.from({ length: endColumn - startColumn }, (_, index) => startColumn + 1 + index),
    );
  const faults = mergedHeadings(table.value, hidden);
  return faults.length > 0 ? failed(...faults) : ok(sayHiddenRows(table.value, isHidden));
}
