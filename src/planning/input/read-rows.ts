/** Opens a table: finds its columns by their headings and gives a reader for each row. */
import {
  fault,
  placeFault,
  type Caution,
  type Fault,
  type Where,
} from '../../core/faults/fault.ts';
import { sayGiven } from '../../core/units/number.ts';
import { columnLetters } from '../../core/cells/cell-range.ts';
import { whereIs, type RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { headingKey, RowReader, type Findings } from './row-reader.ts';

/** Unknown headings that are named after the first. */
const MOST_SAID = 4;

export interface Heading {
  readonly heading: string;
  readonly required?: boolean;
}

/**
 * A reader a row. Faults: a required heading that is missing, a known heading that stands twice.
 * Headings nobody knows are cautioned once, all together, and ignored; those passed over are ignored
 * without a word, and so are rows with nothing else.
 */
export function readRows(
  table: RawTable,
  headings: readonly Heading[],
  reading: CellReading,
  findings: Findings,
  passedOver: readonly string[] = [],
): RowReader[] {
  const silent = new Set(passedOver.map(headingKey));
  const known = new Set(headings.map(({ heading }) => headingKey(heading)));
  const columns = new Map<string, number>();
  const unknown: { readonly heading: string; readonly where: Where }[] = [];
  for (const [column, cell] of table.headings.cells.entries()) {
    const key = headingKey(cell);
    if (key === '' || silent.has(key)) continue;
    const where = whereIs(table, table.headings.line, column);
    const given = typeof cell === 'object' ? null : sayGiven(cell);
    if (!known.has(key)) {
      unknown.push({ heading: String(given), where });
    } else if (columns.has(key)) {
      findings.faults.push(placeFault(fault('table.heading-twice', table.name, given), where));
    } else {
      columns.set(key, column);
    }
  }
  findings.cautions.push(...cautionOf(table, unknown));
  let complete = true;
  for (const { heading, required } of headings) {
    if (required !== true || columns.has(headingKey(heading))) continue;
    complete = false;
    const where = whereIs(table, table.headings.line, 0);
    findings.faults.push(placeFault(fault('table.heading-missing', heading, table.name), where));
  }
  if (!complete) findings.faults.push(...columnsWithoutHeading(table));
  if (!complete) return [];
  const isSilent = (column: number): boolean =>
    silent.has(headingKey(table.headings.cells[column] ?? null));
  return table.rows
    .filter(({ cells }) => cells.some((cell, column) => cell !== null && !isSilent(column)))
    .map((row) => new RowReader(table, row, columns, reading, findings));
}

/** At the first of them. */
function cautionOf(
  table: RawTable,
  unknown: readonly { readonly heading: string; readonly where: Where }[],
): Caution[] {
  const [first, ...others] = unknown;
  if (first === undefined) return [];
  const said = others.slice(0, MOST_SAID).map(({ heading }) => `, “${heading}”`);
  const more = others.length > MOST_SAID ? ` and ${others.length - MOST_SAID} more` : '';
  const details = { others: said.join('') + more };
  const one = fault('table.heading-unknown', table.name, first.heading, { details });
  return [placeFault(one, first.where)];
}

/** Of merged headings only the first column keeps the text: the others stand without one. */
function columnsWithoutHeading(table: RawTable): Fault[] {
  const { cells, line } = table.headings;
  const filled = new Set(
    table.rows.flatMap((row) => row.cells.flatMap((c, at) => (c === null ? [] : [at]))),
  );
  return [...filled]
    .filter((column) => headingKey(cells[column] ?? null) === '')
    .sort((one, other) => one - other)
    .map((column) => {
      const argument = `Column ${columnLetters(column)} of ${table.name}`;
      return placeFault(
        fault('table.heading-merged', argument, null),
        whereIs(table, line, column),
      );
    });
}
