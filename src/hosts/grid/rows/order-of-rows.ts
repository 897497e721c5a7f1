/** In which order rows stand when they are sorted by a column. */
import { parseLength, type BareReading } from '../../../core/units/length.ts';

/** What the column holds in a row. */
export type SortedCell = number | string | boolean | null;

const WORDS = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/**
 * Lengths go by what they measure, numbers by their size, words by the alphabet with the numbers in them
 * by their size: R1-2 before R1-12. Numbers come before words, blanks last in either direction; equals
 * stay as they stood.
 *
 * @param reading How a bare number is read where the column holds lengths.
 * @returns Indexes of `cells`, in their new order.
 */
export function orderOfRows(
  cells: readonly SortedCell[],
  isDescending: boolean,
  reading: BareReading,
): number[] {
  const filled = cells.filter((cell) => !isBlank(cell));
  const lengths = new Map(filled.map((cell) => [cell, inchesOf(cell, reading)]));
  const areLengths = [...lengths.values()].every((inches) => inches !== undefined);
  const keys = cells.map((cell) => (areLengths && !isBlank(cell) ? lengths.get(cell) : cell));
  const turn = isDescending ? -1 : 1;
  return cells
    .map((_, index) => index)
    .sort((one, other) => {
      const [a, b] = [keys[one] ?? null, keys[other] ?? null];
      if (isBlank(a) || isBlank(b)) return Number(isBlank(a)) - Number(isBlank(b));
      return turn * compare(a, b);
    });
}

function compare(one: SortedCell, other: SortedCell): number {
  if (typeof one === 'number' && typeof other === 'number') return one - other;
  if (typeof one === 'number') return -1;
  if (typeof other === 'number') return 1;
  return WORDS.compare(String(one), String(other));
}

function isBlank(cell: SortedCell): boolean {
  return cell === null || (typeof cell === 'string' && cell.trim() === '');
}

function inchesOf(cell: SortedCell, reading: BareReading): number | undefined {
  if (typeof cell === 'boolean') return undefined;
  const read = parseLength(cell, 'aLength', reading);
  return read.ok ? read.value.valueOf() : undefined;
}
