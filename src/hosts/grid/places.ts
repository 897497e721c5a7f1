/** Where cells of the grid stand that could be a table of the job. */
import type { RawRow } from '../../planning/input/raw-table.ts';
import { parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import type { TablePlace } from '../host.ts';
import { headingsAt } from '../tables/raw-rows.ts';
import { gridSheets, type GridSheet } from './grid-sheets.ts';
import { rowsOf } from './read-rows.ts';
import type { Grid } from './grid.ts';

/** A place with the rows of it that aren't blank, headings first. */
export interface GridPlace {
  readonly place: TablePlace;
  readonly sheet: GridSheet;
  readonly rows: readonly RawRow[];
}

/** Tables proper of the person's sheets first, then their sheets that have none. */
export function placesOf(grid: Grid): GridPlace[] {
  const sheets = gridSheets(grid)
    .filter((sheet) => !sheet.ours)
    .map((sheet) => {
      const rows = rowsOf(grid, sheet);
      return { sheet, rows, tables: tablesOf(sheet, rows) };
    });
  const headed = sheets.flatMap(({ sheet, tables }) =>
    tables.map(({ name, rows }) =>
      placeOf(sheet, { key: `table/${sheet.id}/${name}`, table: name }, rows),
    ),
  );
  const bare = sheets
    .filter(({ tables }) => tables.length === 0)
    .map(({ sheet, rows }) =>
      placeOf(sheet, { key: `sheet/${sheet.id}` }, rows.slice(headingsAt(rows))),
    );
  return [...headed, ...bare].flat();
}

function placeOf(
  sheet: GridSheet,
  names: Pick<TablePlace, 'key' | 'table'>,
  rows: readonly RawRow[],
): GridPlace[] {
  const [headings, ...below] = rows;
  if (headings === undefined) return [];
  const { line, cells } = headings;
  const place = { ...names, sheet: sheet.name, line, headings: cells, rowCount: below.length };
  return [{ place, sheet, rows }];
}

interface FoundTable {
  readonly name: string;
  readonly rows: readonly RawRow[];
}

/** Those whose headings still stand where they stood. */
function tablesOf({ kept }: GridSheet, rows: readonly RawRow[]): FoundTable[] {
  return (kept?.tables ?? []).flatMap(({ name, range: text }) => {
    const range = parseRange(text);
    if (range === null) return [];
    const found = rowsWithin(rows, range);
    return found[0]?.line === range.top + 1 && areHeadings(found[0], range)
      ? [{ name, rows: found }]
      : [];
  });
}

function areHeadings({ cells }: RawRow, { left, right }: CellRange): boolean {
  const texts = Array.from({ length: right - left + 1 }, (_, index) => cells[left + index]);
  const names = texts.map((text) => (typeof text === 'string' ? text.trim().toLowerCase() : ''));
  return names.every((one) => one !== '') && new Set(names).size === names.length;
}

/** Rows of the range, and those typed on right below it; in them its columns alone, from A on. */
function rowsWithin(rows: readonly RawRow[], { top, left, bottom, right }: CellRange): RawRow[] {
  const found: RawRow[] = [];
  let last = bottom + 1;
  for (const { line, cells } of rows) {
    if (line - 1 < top) continue;
    const own = cells.map((cell, column) => (column >= left && column <= right ? cell : null));
    const filled = own.findLastIndex((cell) => cell !== null);
    if (filled < 0) continue;
    if (line > last) {
      if (line > last + 1) break;
      last = line;
    }
    found.push({ line, cells: own.slice(0, filled + 1) });
  }
  return found;
}
