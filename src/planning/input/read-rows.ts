/** Opens a table: finds its columns by their headings and gives a reader for each row. */
import { fault, placeFault, type Fault } from '../../core/faults/fault.ts';
import type { Heading } from './headings/heading.ts';
import { matchHeadings } from './match-headings.ts';
import { columnArgument, whereIs, type RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { withoutTotals } from './total-rows.ts';
import { headingKey, RowReader, type Findings } from './row-reader.ts';

/**
 * A reader a row; none where a needed column is missing. What is wrong with the headings is found as
 * `matchHeadings` says. Those passed over are ignored without a word, and so are rows with nothing else.
 */
export function readRows(
  table: RawTable,
  headings: readonly Heading[],
  reading: CellReading,
  findings: Findings,
  passedOver: readonly string[] = [],
): RowReader[] {
  const silent = new Set(passedOver.map(headingKey));
  const matched = matchHeadings(table, headings, reading, findings, silent);
  if (!matched.isComplete) {
    findings.faults.push(...columnsWithoutHeading(table));
    return [];
  }
  const isSilent = (column: number): boolean =>
    silent.has(headingKey(table.headings.cells[column] ?? null));
  const needed = headings.flatMap(({ key, required }) =>
    required === true ? (matched.columns.get(key) ?? []) : [],
  );
  return withoutTotals(matched.table, needed, findings)
    .filter(({ cells }) => cells.some((cell, column) => cell !== null && !isSilent(column)))
    .map((row) => new RowReader(table, row, matched.columns, reading, findings));
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
      const argument = columnArgument(column, table);
      return placeFault(
        fault('table.heading-merged', argument, null),
        whereIs(table, line, column),
      );
    });
}
