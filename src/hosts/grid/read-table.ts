/** Reads the rows under one place's headings. */
import { failed, fault, type Outcome } from '../../core/faults/fault.ts';
import { tableArgument, type RawTable } from '../../planning/input/raw-table.ts';
import type { TablePlace } from '../host.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { tableOf, tooManyRows } from '../tables/raw-rows.ts';
import { withLayout, type SheetLayout } from '../tables/sheet-layout.ts';
import type { GridSheet } from './grid-sheets.ts';
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
  const layout = layoutOf(sheet);
  if (place.table !== undefined) {
    const [headings = { line: 1, cells: [] }, ...below] = rows;
    if (below.length > MOST_TABLE_ROWS) return failed(tooManyRows(name, below.length));
    return withLayout({ name, source, headings, rows: below }, layout);
  }
  const table = tableOf(name, source, rows);
  return table.ok ? withLayout(table.value, layout) : table;
}

function layoutOf({ worksheet }: GridSheet): SheetLayout {
  return {
    isHiddenRow: (line) => !worksheet.getRowVisible(line - 1),
    isHiddenColumn: (column) => !worksheet.getColVisible(column),
    merges: worksheet.getMergeData().map(({ startRow, startColumn, endRow, endColumn }) => ({
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    })),
  };
}
