/** A described sheet as a grid: each cell's style, also of blank and merged ones, and rectangles of like cells. */
import { soundRange, type CellRange } from '../../core/cells/cell-range.ts';
import type { SheetDescription } from '../../sheets/grammar/description.ts';
import type { StyleName } from '../../sheets/grammar/styles.ts';

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/** The cells that a sheet's rows and columns describe. */
export function gridSize(sheet: SheetDescription): GridSize {
  const widest = sheet.rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  return { rows: sheet.rows.length, columns: Math.max(widest, sheet.columns.length) };
}

/** Styles by row and column; cells that a merge hides take its first cell's. */
export function styleGrid(sheet: SheetDescription): (StyleName | null)[][] {
  const { columns } = gridSize(sheet);
  const grid = sheet.rows.map(({ cells }) =>
    Array.from({ length: columns }, (_, column): StyleName | null => {
      const cell = cells[column] ?? null;
      if (cell !== null) return cell.style ?? 'plain';
      return sheet.columns[column]?.style ?? null;
    }),
  );
  for (const { top, left, bottom, right } of (sheet.merges ?? []).map(soundRange)) {
    const first = sheet.rows[top]?.cells[left]?.style ?? 'plain';
    for (const row of grid.slice(top, bottom + 1)) {
      for (let column = left; column <= Math.min(right, columns - 1); column++) row[column] = first;
    }
  }
  return grid;
}

/**
 * Covers the cells of each key with rectangles: runs along a row, joined with like runs below them.
 *
 * @param mostRows The highest that a rectangle may be, in rows.
 */
export function rectanglesOf<Key>(
  grid: readonly (readonly (Key | null)[])[],
  mostRows = Infinity,
): Map<Key, CellRange[]> {
  const found = new Map<Key, CellRange[]>();
  let open = new Map<string, { key: Key; range: CellRange }>();
  const close = (one: { key: Key; range: CellRange }): void => {
    const ranges = found.get(one.key) ?? [];
    ranges.push(one.range);
    found.set(one.key, ranges);
  };
  grid.forEach((cells, row) => {
    const next = new Map<string, { key: Key; range: CellRange }>();
    for (const { key, left, right } of runsOf(cells)) {
      const place = `${left},${right}`;
      const above = open.get(place);
      const joins = above?.key === key && row - above.range.top < mostRows;
      const top = joins ? above.range.top : row;
      if (joins) open.delete(place);
      next.set(place, { key, range: { top, left, bottom: row, right } });
    }
    open.forEach(close);
    open = next;
  });
  open.forEach(close);
  return found;
}

function runsOf<Key>(
  cells: readonly (Key | null)[],
): { readonly key: Key; readonly left: number; readonly right: number }[] {
  const runs: { key: Key; left: number; right: number }[] = [];
  cells.forEach((key, column) => {
    if (key === null) return;
    const last = runs.at(-1);
    if (last?.key === key && last.right === column - 1) last.right = column;
    else runs.push({ key, left: column, right: column });
  });
  return runs;
}
