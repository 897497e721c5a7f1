/** What stands in a column of a table, looked at as a whole. */
import { unitOfHeading, type HeadingUnit } from './unit-of-heading.ts';
import type { RawCell, RawTable } from '../raw-table.ts';

/** The cells of a column that hold anything. */
export function filledCells({ rows }: RawTable, column: number): readonly RawCell[] {
  return rows.flatMap(({ cells }) => {
    const cell = cells[column] ?? null;
    return cell === null || (typeof cell === 'string' && cell.trim() === '') ? [] : [cell];
  });
}

const BEGINS_AS_NUMBER = /^\s*[-+(]?\s*\p{Sc}?\s*[\d.,¼-¾⅐-⅞]/u;

/** Whether most of what is filled are numbers: lengths, counts and money as text are too. */
export function holdsNumbers(cells: readonly RawCell[]): boolean {
  const numbers = cells.filter(
    (cell) => typeof cell === 'number' || (typeof cell === 'string' && BEGINS_AS_NUMBER.test(cell)),
  );
  return numbers.length > 0 && numbers.length * 2 >= cells.length;
}

/** Whether its numbers only count the rows: whole, each larger than the one above. */
export function countsRows(cells: readonly RawCell[]): boolean {
  const numbers = cells.map(Number);
  return (
    numbers.length > 1 &&
    numbers.every((one, at) => Number.isInteger(one) && one > (numbers[at - 1] ?? -1))
  );
}

/** The units of length that its cells name. */
export function unitsNamed(cells: readonly RawCell[]): ReadonlySet<HeadingUnit> {
  const units = cells.flatMap((cell) =>
    typeof cell === 'string' && !/\d/u.test(cell) ? (unitOfHeading(cell) ?? []) : [],
  );
  return new Set(units);
}
