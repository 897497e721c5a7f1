/** What stands in a column of a table, looked at as a whole. */
import { lengthMarkOf, type LengthMark } from '../../../core/units/stated-unit.ts';
import type { RawCell, RawTable } from '../raw-table.ts';

/** The cells of a column that hold anything. */
export function filledCells({ rows }: RawTable, column: number): readonly RawCell[] {
  return rows.flatMap(({ cells }) => {
    const cell = cells[column] ?? null;
    return cell === null || (typeof cell === 'string' && cell.trim() === '') ? [] : [cell];
  });
}

/** Of the first few signs of a text: lengths, counts and money begin so. */
const BEGINS_AS_NUMBER = /^[-+(]? ?\p{Sc}? ?[\d.,¼-¾⅐-⅞]/u;
const FIRST_SIGNS = 5;

/** Whether most of what is filled are numbers: lengths, counts and money as text are too. */
export function holdsNumbers(cells: readonly RawCell[]): boolean {
  const numbers = cells.filter((cell) =>
    typeof cell === 'string'
      ? BEGINS_AS_NUMBER.test(cell.trimStart().slice(0, FIRST_SIGNS))
      : numberOf(cell) !== undefined,
  );
  return numbers.length > 0 && numbers.length * 2 >= cells.length;
}

/** Whether its numbers only count the rows: whole, each larger than the one above. */
export function countsRows(cells: readonly RawCell[]): boolean {
  const numbers = cells.map((cell) => numberOf(cell) ?? Number(cell));
  return (
    numbers.length > 1 &&
    numbers.every((one, at) => Number.isInteger(one) && one > (numbers[at - 1] ?? -1))
  );
}

/** More of one thing than any list asks for. */
const MOST_COUNTED = 10_000;

/** Whether its numbers may count things: all whole, and some of them more than one, but no count of the rows. */
export function mayCountThings(cells: readonly RawCell[]): boolean {
  const numbers = cells.map((cell) => numberOf(cell) ?? wholeIn(cell));
  const isCount = (one: number): boolean =>
    Number.isInteger(one) && one >= 0 && one <= MOST_COUNTED;
  return numbers.every(isCount) && numbers.some((one) => one > 1) && !countsRows(cells);
}

function wholeIn(cell: RawCell): number {
  return typeof cell === 'string' && /^\d{1,6}$/u.test(cell.trim()) ? Number(cell) : NaN;
}

/** The units of length that its cells name. */
export function unitsNamed(cells: readonly RawCell[]): ReadonlySet<LengthMark> {
  return new Set(
    cells.flatMap((cell) => (typeof cell === 'string' ? (lengthMarkOf(cell) ?? []) : [])),
  );
}

/** What a number's cell holds, whatever it shows. */
function numberOf(cell: RawCell): number | undefined {
  if (typeof cell === 'number') return cell;
  if (typeof cell !== 'object' || cell === null) return undefined;
  if (cell.kind === 'shown') return cell.value;
  return cell.kind === 'veiled' ? cell.held : undefined;
}
