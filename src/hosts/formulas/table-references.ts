/**
 * Formulas that name a table's columns, said with cells instead: a grid without tables proper can't work
 * out Runs[Length] (ECMA-376 part 1, 18.17.2.5: structure references).
 */
import { absoluteRange, type CellRange } from '../../sheets/cell-range.ts';
import { formulaParts, nameKey } from './formula-parts.ts';

export interface KnownTable {
  readonly sheet: string;
  /** Headings and totals too. */
  readonly range: CellRange;
  readonly columns: readonly string[];
  readonly hasTotals: boolean;
}

/** Tables by their names as formulas find them. */
export type KnownTables = ReadonlyMap<string, KnownTable>;

/** What is no table's, or said in a way that has no cells, stays as it is. */
export function withoutTables(formula: string, tables: KnownTables, row: number): string {
  if (tables.size === 0) return formula;
  const parts = formulaParts(formula);
  return parts
    .map(({ kind, text, name }, index) => {
      const before = parts[index - 1];
      const owner = before?.kind === 'table' ? tables.get(nameKey(before.name)) : undefined;
      // A table's brackets go with its name.
      if (owner !== undefined) return cellsOf(owner, text, row) === null ? text : '';
      const table = tables.get(nameKey(name));
      if (table === undefined) return text;
      if (kind === 'table') return cellsOf(table, parts[index + 1]?.text ?? '', row) ?? text;
      return kind === 'name' ? (cellsOf(table, '[]', row) ?? text) : text;
    })
    .join('');
}

/** Null where the brackets say something else than which rows and columns. */
function cellsOf(
  { sheet, range, columns, hasTotals }: KnownTable,
  brackets: string,
  row: number,
): string | null {
  const inside = brackets.slice(1, -1).trim();
  const items = inside.startsWith('[')
    ? inside.split(/\]\s*[,:]\s*\[/u).map((item) => item.replace(/^\[|\]$/gu, ''))
    : inside === ''
      ? []
      : [inside];
  const specials = items.filter((item) => item.startsWith('#'));
  const places = items
    .filter((item) => !item.startsWith('#'))
    .map((item) =>
      columns.findIndex((one) => nameKey(one) === nameKey(item.replace(/'(.)/gu, '$1'))),
    );
  if (places.includes(-1) || places.length > 2 || specials.length > 1) return null;
  const rows = rowsOf(specials[0] ?? '#Data', range, hasTotals, row);
  if (rows === null) return null;
  const [first = 0, last = places.length === 0 ? columns.length - 1 : first] = places;
  const cells = {
    ...rows,
    left: range.left + Math.min(first, last),
    right: range.left + Math.max(first, last),
  };
  return absoluteRange(sheet, cells);
}

function rowsOf(
  special: string,
  { top, bottom }: CellRange,
  hasTotals: boolean,
  row: number,
): Pick<CellRange, 'top' | 'bottom'> | null {
  const last = hasTotals ? bottom - 1 : bottom;
  switch (special.toLowerCase()) {
    case '#all':
      return { top, bottom };
    case '#headers':
      return { top, bottom: top };
    case '#totals':
      return hasTotals ? { top: bottom, bottom } : null;
    case '#this row':
      return row > top && row <= last ? { top: row, bottom: row } : null;
    case '#data':
      return { top: top + 1, bottom: last };
    default:
      return null;
  }
}
