/** Where the cells of a place lie that could be a table of the job. */
import { MOST_SHEET_ROWS } from '../../core/cells/cell-range.ts';
import type { RawRow } from '../../planning/input/raw-table.ts';
import { MOST_TABLE_COLUMNS } from '../tables/limits.ts';
import { headingsAt } from '../tables/raw-rows.ts';
import type { TableSpan } from '../tables/table-rows.ts';
import type { TablePlace } from '../host.ts';
import { rawRows } from './raw-cells.ts';
import { readAreas, type Area, type AreaCells } from './read-areas.ts';

/** A table proper, or a sheet's used cells; ids, since names may change. */
export type PlaceKey =
  { readonly kind: 'table'; readonly id: string } | { readonly kind: 'sheet'; readonly id: string };

export interface LocatedPlace {
  readonly key: PlaceKey;
  /** Of a table with one row more below it. */
  readonly area: Area;
  /** Of a table. */
  readonly span?: TableSpan;
}

const CELLS = ['values', 'valueTypes', 'numberFormat'] as const;
const INDEXES = 'rowIndex,columnIndex,rowCount,columnCount';

export function placeKey({ kind, id }: PlaceKey): string {
  return `${kind}/${id}`;
}

/** Null where the text is no key of ours. */
export function parsePlaceKey(text: string): PlaceKey | null {
  const [, kind, id] = /^(table|sheet)\/(.+)$/u.exec(text) ?? [];
  if (id === undefined) return null;
  return kind === 'table' ? { kind, id } : { kind: 'sheet', id };
}

/**
 * Finds the cells of places in one request; those with none are left out. Columns beyond the most
 * that are looked at are cut off.
 *
 * @param places Each with the id of the sheet that it stands on.
 */
export async function locatePlaces(
  context: Excel.RequestContext,
  places: readonly { readonly key: PlaceKey; readonly sheet: string }[],
): Promise<LocatedPlace[]> {
  const asked = places.map(({ key, sheet }) => {
    if (key.kind === 'sheet') {
      const used = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true);
      return { key, sheet, first: used.load(INDEXES), last: used };
    }
    const table = context.workbook.tables.getItem(key.id).load('showTotals');
    const first = table.getHeaderRowRange().load(INDEXES);
    return { key, sheet, table, first, last: table.getDataBodyRange().load(INDEXES) };
  });
  await context.sync();
  return asked.flatMap(({ key, sheet, table, first, last }): LocatedPlace[] => {
    if (first.isNullObject) return [];
    const [top, left] = [first.rowIndex, first.columnIndex];
    const bottom = last.rowIndex + last.rowCount - 1;
    const right = Math.min(left + first.columnCount, MOST_TABLE_COLUMNS) - 1;
    if (right < left) return [];
    const range = { top, left, bottom, right };
    if (table === undefined) return [{ key, area: { sheet, ...range } }];
    const hasTotals = table.showTotals;
    const below = Math.min(bottom + (hasTotals ? 2 : 1), MOST_SHEET_ROWS - 1);
    return [{ key, area: { sheet, ...range, bottom: below }, span: { range, hasTotals } }];
  });
}

/** The rows of each area that aren't blank, cells from column A on. */
export async function readRowsOf(
  context: Excel.RequestContext,
  areas: readonly Area[],
): Promise<RawRow[][]> {
  const read = await readAreas(context, areas, CELLS);
  return areas.map((area, index) => {
    const cells: AreaCells | undefined = read[index];
    return cells === undefined ? [] : rawRows({ ...area, ...cells });
  });
}

/** What a place is said to be, from its rows; undefined where it has none. */
export function tablePlaceOf(
  { key }: LocatedPlace,
  names: { readonly sheet: string; readonly table?: string },
  rows: readonly RawRow[],
  more: number,
): TablePlace | undefined {
  const at = key.kind === 'table' ? 0 : headingsAt(rows);
  const headings = rows[at];
  if (headings === undefined) return undefined;
  return {
    key: placeKey(key),
    ...names,
    line: headings.line,
    headings: headings.cells,
    rowCount: rows.length - at - 1 + more,
  };
}
