/** The rows of a table proper: those in it, and those that were typed right below it. */
import { fault, placeFault } from '../../core/faults/fault.ts';
import { rangesOverlap, type CellRange } from '../../core/cells/cell-range.ts';
import {
  tableArgument,
  whereIs,
  type RawRow,
  type RawTable,
} from '../../planning/input/raw-table.ts';
import { isBlankRow } from './raw-rows.ts';

/** Where a table proper stands, its headings in the first row of `range`. */
export interface TableSpan {
  /** Without its totals row. */
  readonly range: CellRange;
  /** Whether the row right below `range` is the table's own row of totals. */
  readonly hasTotals?: boolean;
}

export interface TableRows {
  /** In order, headings first; in each the table's own columns alone, still from column A on. */
  readonly rows: readonly RawRow[];
  /** The line of the first that stands below the table and not in it, and how many do. */
  readonly below: { readonly line: number; readonly count: number } | undefined;
}

/**
 * A program that doesn't let tables grow leaves what is typed right below one outside of it, where it
 * would be lost: it is read with the table's rows, up to the first blank row or the next table.
 *
 * @param rows Of the sheet, those that aren't blank, in order.
 * @param others Ranges of the sheet's other tables.
 */
export function tableRows(
  rows: readonly RawRow[],
  { range, hasTotals = false }: TableSpan,
  others: readonly CellRange[] = [],
): TableRows {
  const { top, left, right } = range;
  const bottom = range.bottom + (hasTotals ? 1 : 0);
  const found: RawRow[] = [];
  let last = bottom;
  for (const { line, cells } of rows) {
    const row = line - 1;
    if (row < top || (row > range.bottom && row <= bottom)) continue;
    const own = cells.map((cell, column) => (column >= left && column <= right ? cell : null));
    if (isBlankRow(own)) continue;
    if (row > bottom) {
      const isNext = others.some((one) =>
        rangesOverlap(one, { left, right, top: row, bottom: row }),
      );
      if (row > last + 1 || isNext) break;
      last = row;
    }
    found.push({ line, cells: own.slice(0, own.findLastIndex((cell) => cell !== null) + 1) });
  }
  const count = last - bottom;
  return { rows: found, below: count === 0 ? undefined : { line: bottom + 2, count } };
}

/** Said where the program's own table leaves them out: its formulas and filters do so too. */
export function sayRowsBelow(
  table: RawTable,
  tableName: string,
  { below }: Pick<TableRows, 'below'>,
  left: number,
): RawTable {
  if (below === undefined) return table;
  const one = fault('table.rows-below', tableArgument(table.name), below.count, {
    details: { table: tableName },
  });
  const place = placeFault(one, whereIs(table, below.line, left));
  return { ...table, cautions: [...(table.cautions ?? []), place] };
}
