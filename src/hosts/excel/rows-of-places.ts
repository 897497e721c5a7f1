/** The rows of places in Excel, with those that stand right below a table and not in it. */
import type { CellRange } from '../../core/cells/cell-range.ts';
import type { RawRow } from '../../planning/input/raw-table.ts';
import { MOST_TABLE_ROWS } from '../tables/limits.ts';
import { tableRows, type TableRows } from '../tables/table-rows.ts';
import { readRowsOf, type LocatedPlace } from './places.ts';
import type { Area } from './read-areas.ts';

/** Each place's rows that aren't blank, cells from column A on. */
export async function readPlaces(
  context: Excel.RequestContext,
  places: readonly LocatedPlace[],
): Promise<TableRows[]> {
  const read = await readRowsOf(
    context,
    places.map(({ area }) => area),
  );
  const found: TableRows[] = [];
  for (const [index, place] of places.entries()) {
    found.push(await withRowsBelow(context, place, read[index] ?? []));
  }
  return found;
}

/** A table's area ends with one row below it: more are read where that one is filled, which is rare. */
async function withRowsBelow(
  context: Excel.RequestContext,
  { key, area, span }: LocatedPlace,
  rows: readonly RawRow[],
): Promise<TableRows> {
  if (span === undefined) return { rows, below: undefined };
  const found = tableRows(rows, span);
  if (found.below === undefined) return found;
  const { lastRow, tables } = await lookAtSheet(context, area.sheet);
  const others = tables.filter(({ id }) => id !== key.id).map(({ range }) => range);
  const top = area.bottom + 1;
  const bottom = Math.min(lastRow, area.bottom + MOST_TABLE_ROWS);
  const more: Area = { ...area, top, bottom };
  const [below = []] = bottom < top ? [] : await readRowsOf(context, [more]);
  return tableRows([...rows, ...below], span, others);
}

async function lookAtSheet(
  context: Excel.RequestContext,
  id: string,
): Promise<{ lastRow: number; tables: { readonly id: string; readonly range: CellRange }[] }> {
  const sheet = context.workbook.worksheets.getItem(id);
  const used = sheet.getUsedRangeOrNullObject(true).load('rowIndex,rowCount');
  sheet.tables.load('items/id');
  await context.sync();
  const bodies = sheet.tables.items.map((table) =>
    table.getDataBodyRange().load('rowIndex,columnIndex,rowCount,columnCount'),
  );
  await context.sync();
  const tables = sheet.tables.items.flatMap((table, index) => {
    const body = bodies[index];
    if (body === undefined) return [];
    const { rowIndex, columnIndex, rowCount, columnCount } = body;
    // With the row above: its headings.
    const range = {
      top: rowIndex - 1,
      left: columnIndex,
      bottom: rowIndex + rowCount - 1,
      right: columnIndex + columnCount - 1,
    };
    return [{ id: table.id, range }];
  });
  return { lastRow: used.isNullObject ? -1 : used.rowIndex + used.rowCount - 1, tables };
}
