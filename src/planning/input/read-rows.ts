/** Opens a table: finds its columns by their headings and gives a reader for each row. */
import { sayArgument, type HeadingKey } from '../../core/faults/argument.ts';
import { fault, placeFault } from '../../core/faults/fault.ts';
import { filledCells, holdsNumbers } from './headings/column-contents.ts';
import type { Heading } from './headings/heading.ts';
import { matchHeadings } from './match-headings.ts';
import { spreadMerged } from './merged-cells.ts';
import { columnArgument, tableArgument, whereIs, type RawTable } from './raw-table.ts';
import type { CellReading } from './read-cell.ts';
import { withoutTotals } from './total-rows.ts';
import { headingKey, RowReader, type Findings } from './row-reader.ts';

/** What a row may be called beside what it needs. */
const NAMING: readonly HeadingKey[] = ['run', 'label'];

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
  judgeBareColumns(table, matched.isComplete, findings);
  if (!matched.isComplete) return [];
  const isSilent = (column: number): boolean =>
    silent.has(headingKey(table.headings.cells[column] ?? null));
  const needed = headings.flatMap(({ key, required }) =>
    required === true ? (matched.columns.get(key) ?? []) : [],
  );
  sayHiddenColumns(matched.table, matched.columns, findings);
  const names = NAMING.flatMap((key) => matched.columns.get(key) ?? []);
  const rows = withoutTotals(matched.table, needed, names, findings);
  return spreadMerged(matched.table, rows, headings, matched.columns, findings)
    .filter(({ cells }) => cells.some((cell, column) => cell !== null && !isSilent(column)))
    .map((row) => new RowReader(table, row, matched.columns, reading, findings));
}

/** Columns of ours that hold something out of sight, at the first of them. Others are said to be ignored. */
function sayHiddenColumns(
  table: RawTable,
  columns: ReadonlyMap<HeadingKey, number>,
  { cautions }: Findings,
): void {
  const hidden = [...columns].filter(
    ([, at]) => table.hiddenColumns?.includes(at) === true && filledCells(table, at).length > 0,
  );
  const [first] = hidden;
  if (first === undefined) return;
  const details = { columns: hidden.map(([key]) => sayArgument(key)).join(', ') };
  const one = fault('table.hidden-columns', tableArgument(table.name), hidden.length, { details });
  cautions.push(placeFault(one, whereIs(table, table.headings.line, first[1])));
}

/**
 * Columns that hold something and have no heading. Of merged headings only the first column keeps the
 * text, and a count or the inches beside the feet may stand in the others: so numbers are refused. Texts
 * are refused only while a heading is missing, and else said.
 */
function judgeBareColumns(table: RawTable, isComplete: boolean, findings: Findings): void {
  const { cells, line } = table.headings;
  const width = Math.max(0, ...table.rows.map((row) => row.cells.length));
  for (let column = 0; column < width; column++) {
    const held = filledCells(table, column);
    if (held.length === 0 || headingKey(cells[column] ?? null) !== '') continue;
    const argument = columnArgument(column, table);
    const where = whereIs(table, line, column);
    if (!isComplete || holdsNumbers(held)) {
      findings.faults.push(placeFault(fault('table.heading-merged', argument, null), where));
    } else {
      findings.cautions.push(placeFault(fault('table.heading-none', argument, null), where));
    }
  }
}
