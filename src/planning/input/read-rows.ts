/** Opens a table: finds its columns by their headings and gives a reader for each row. */
import { fault, placeFault, type Fault } from '../../core/faults/fault.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { sayGiven } from '../../core/units/number.ts';
import { columnLetters, whereIs, type RawTable } from './raw-table.ts';
import { headingKey, RowReader, type Findings } from './row-reader.ts';

export interface Heading {
  readonly heading: string;
  readonly required?: boolean;
}

/**
 * A reader a row. Faults: a required heading that is missing, a known heading that stands twice.
 * A heading nobody knows is cautioned once and ignored.
 */
export function readRows(
  table: RawTable,
  headings: readonly Heading[],
  reading: LengthReading,
  findings: Findings,
): RowReader[] {
  const known = new Set(headings.map(({ heading }) => headingKey(heading)));
  const columns = new Map<string, number>();
  for (const [column, cell] of table.headings.cells.entries()) {
    const key = headingKey(cell);
    if (key === '') continue;
    const where = whereIs(table, table.headings.line, column);
    const given = typeof cell === 'object' ? null : sayGiven(cell);
    if (!known.has(key)) {
      findings.cautions.push(placeFault(fault('table.heading-unknown', table.name, given), where));
    } else if (columns.has(key)) {
      findings.faults.push(placeFault(fault('table.heading-twice', table.name, given), where));
    } else {
      columns.set(key, column);
    }
  }
  let complete = true;
  for (const { heading, required } of headings) {
    if (required !== true || columns.has(headingKey(heading))) continue;
    complete = false;
    const where = whereIs(table, table.headings.line, 0);
    findings.faults.push(placeFault(fault('table.heading-missing', heading, table.name), where));
  }
  if (!complete) findings.faults.push(...columnsWithoutHeading(table));
  if (!complete) return [];
  return table.rows.map((row) => new RowReader(table, row, columns, reading, findings));
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
