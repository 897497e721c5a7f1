/**
 * Formulas that name a table's columns, said with cells instead: a grid without tables proper can't work
 * out Runs[Length] (ECMA-376 part 1, 18.17.2.5: structure references).
 */
import { absoluteRange, quoteSheet, type CellRange } from '../../core/cells/cell-range.ts';
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

/** Where a formula stands: rows from 0. */
export interface FormulaPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface WithoutTables {
  readonly formula: string;
  /** It named more than a row, so that rows below the table were to be in it. */
  readonly namedColumns: boolean;
}

/**
 * What is no table's, or said in a way that has no cells, stays as it is.
 *
 * @param at Nowhere for a name's formula, which has no row of its own.
 */
export function withoutTables(
  formula: string,
  tables: KnownTables,
  at?: FormulaPlace,
): WithoutTables {
  if (tables.size === 0) return { formula, namedColumns: false };
  const parts = formulaParts(formula);
  const own = at === undefined ? undefined : ownTable(tables, at);
  let namedColumns = false;
  const said = (table: KnownTable, brackets: string): string | null => {
    const cells = cellsOf(table, brackets, at);
    if (cells?.isRow === false) namedColumns = true;
    return cells?.text ?? null;
  };
  const texts = parts.map(({ kind, text, name }, index) => {
    const before = parts[index - 1];
    if (before?.kind === 'table') {
      // A table's brackets go with its name.
      const owner = tables.get(nameKey(before.name));
      return owner === undefined || cellsOf(owner, text, at) === null ? text : '';
    }
    if (kind === 'other' && text.startsWith('[') && own !== undefined) {
      // Another workbook's sheet has its book in brackets.
      return parts[index + 1]?.kind === 'other' || parts[index + 1] === undefined
        ? (said(own, text) ?? text)
        : text;
    }
    const table = tables.get(nameKey(name));
    if (table === undefined) return text;
    if (kind === 'table') return said(table, parts[index + 1]?.text ?? '') ?? text;
    return kind === 'name' ? (said(table, '[]') ?? text) : text;
  });
  return { formula: texts.join(''), namedColumns };
}

/** In a table's own cells its name may be left out. */
function ownTable(
  tables: KnownTables,
  { sheet, row, column }: FormulaPlace,
): KnownTable | undefined {
  return [...tables.values()].find(
    ({ sheet: on, range }) =>
      on === sheet &&
      row >= range.top &&
      row <= range.bottom &&
      column >= range.left &&
      column <= range.right,
  );
}

const THIS_ROW = '#this row';

/** Null where the brackets say something else than which rows and columns. */
function cellsOf(
  { sheet, range, columns, hasTotals }: KnownTable,
  brackets: string,
  at: FormulaPlace | undefined,
): { readonly text: string; readonly isRow: boolean } | null {
  // As people type it, [@Length] and [@[Length]] are [[#This Row],[Length]]; files have the long form.
  const whole = brackets.slice(1, -1).trim();
  const short = whole.startsWith('@') ? whole.slice(1).trim() : null;
  const column = short?.startsWith('[') === true || short === '' ? short : `[${short ?? ''}]`;
  const inside = short === null ? whole : `[#This Row]${column === '' ? '' : `,${column}`}`;
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
  const special = specials[0] ?? '#Data';
  const rows = rowsOf(special, range, hasTotals, at?.row ?? -1);
  if (rows === null) return null;
  const [first = 0, last = places.length === 0 ? columns.length - 1 : first] = places;
  const cells = {
    ...rows,
    left: range.left + Math.min(first, last),
    right: range.left + Math.max(first, last),
  };
  const isRow = special.toLowerCase() === THIS_ROW;
  const text = absoluteRange(sheet, cells);
  if (!isRow) return { text, isRow };
  // Filled down it reads the row that it comes to.
  const sliding = text.replace(/\$(?=\d)/gu, '');
  return { text: at?.sheet === sheet ? afterSheet(sliding, sheet) : sliding, isRow };
}

function afterSheet(reference: string, sheet: string): string {
  return reference.slice(quoteSheet(sheet).length + 1);
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
    case THIS_ROW:
      return row > top && row <= last ? { top: row, bottom: row } : null;
    case '#data':
      return { top: top + 1, bottom: last };
    default:
      return null;
  }
}
