/** Where cells of the grid stand that could be a table of the job. */
import type { RawRow } from '../../planning/input/raw-table.ts';
import { parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import type { TablePlace } from '../host.ts';
import { headingsAt } from '../tables/raw-rows.ts';
import { tableRows } from '../tables/table-rows.ts';
import { gridSheets, type GridSheet } from './grid-sheets.ts';
import { rowsOf } from './read-rows.ts';
import type { Grid } from './grid.ts';

/** A place with the rows of it that aren't blank, headings first. */
export interface GridPlace {
  readonly place: TablePlace;
  readonly sheet: GridSheet;
  readonly rows: readonly RawRow[];
  /** All of the sheet's. */
  readonly all: readonly RawRow[];
  /** Of a table proper, as it is kept: rows typed right below it come on top. */
  readonly range?: CellRange;
}

/** Tables proper of the person's sheets first, then their sheets that have none. */
export function placesOf(grid: Grid): GridPlace[] {
  const sheets = gridSheets(grid)
    .filter((sheet) => !sheet.ours)
    .map((sheet) => {
      const rows = rowsOf(grid, sheet);
      return { sheet, rows, tables: tablesOf(sheet, rows) };
    });
  const headed = sheets.flatMap(({ sheet, rows: all, tables }) =>
    tables.map(({ name, range, rows }) =>
      placeOf(sheet, { key: `table/${sheet.id}/${name}`, table: name }, { rows, all, range }),
    ),
  );
  const bare = sheets
    .filter(({ tables }) => tables.length === 0)
    .map(({ sheet, rows: all }) =>
      placeOf(sheet, { key: `sheet/${sheet.id}` }, { rows: all.slice(headingsAt(all)), all }),
    );
  return [...headed, ...bare].flat();
}

function placeOf(
  sheet: GridSheet,
  names: Pick<TablePlace, 'key' | 'table'>,
  read: Pick<GridPlace, 'rows' | 'all' | 'range'>,
): GridPlace[] {
  const [headings, ...below] = read.rows;
  if (headings === undefined) return [];
  const { line, cells } = headings;
  const place = { ...names, sheet: sheet.name, line, headings: cells, rowCount: below.length };
  return [{ place, sheet, ...read }];
}

interface FoundTable {
  readonly name: string;
  readonly range: CellRange;
  readonly rows: readonly RawRow[];
}

/** Those whose headings still stand where they stood. */
function tablesOf({ kept }: GridSheet, rows: readonly RawRow[]): FoundTable[] {
  const tables = (kept?.tables ?? []).flatMap(({ name, range: text }) => {
    const range = parseRange(text);
    return range === null ? [] : [{ name, range }];
  });
  const ranges = tables.map(({ range }) => range);
  return tables.flatMap(({ name, range }) => {
    // A table of the grid grows with what is typed right below it.
    const { rows: found } = tableRows(
      rows,
      { range },
      ranges.filter((one) => one !== range),
    );
    return found[0]?.line === range.top + 1 && areHeadings(found[0], range)
      ? [{ name, range, rows: found }]
      : [];
  });
}

function areHeadings({ cells }: RawRow, { left, right }: CellRange): boolean {
  const texts = Array.from({ length: right - left + 1 }, (_, index) => cells[left + index]);
  const names = texts.map((text) => (typeof text === 'string' ? text.trim().toLowerCase() : ''));
  return names.every((one) => one !== '') && new Set(names).size === names.length;
}
