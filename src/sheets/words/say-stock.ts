/** Lumber and sticks in the words of the yard. */
import { formatNumber } from '../../core/units/format-number.ts';
import type { LengthReading } from '../../core/units/length.ts';
import { countToBuy } from '../../planning/grade-yield.ts';
import type { StockItem } from '../../planning/job.ts';
import { printExact, printStick } from './print-length.ts';

const YIELD_DECIMALS = 2;

/**
 * `board 6/4 FAS, 9 1/2" wide, 14'` or `stick, 12'`; of a board with defects the part that is meant:
 * `board 4/4, 8" wide, 50" clear, from 0" to 50" of 12'`.
 */
export function sayStock(item: StockItem, reading: LengthReading): string {
  const { kind, thicknessClass, grade = '', width, length, stretch } = item;
  const what = [kind, thicknessClass, grade].filter((word) => word !== '').join(' ');
  const wide = width === undefined ? [] : [`${printExact(width, reading)} wide`];
  const long =
    stretch === undefined
      ? [printStick(length, reading)]
      : [
          `${printExact(length, reading)} clear`,
          `from ${printExact(stretch.from, reading)} to ${printExact(stretch.to, reading)} of ${printStick(stretch.boardLength, reading)}`,
        ];
  return [what, ...wide, ...long].join(', ');
}

/** `; order 10, of which 80 % can be used` for so many that the plan counts on; nothing where boards come clear. */
export function sayToOrder(
  item: StockItem,
  clear: number,
  { decimalSign }: Pick<LengthReading, 'decimalSign'>,
): string {
  const { yieldPercent } = item;
  if (yieldPercent === undefined || clear === 0) return '';
  const percent = formatNumber(yieldPercent, YIELD_DECIMALS, decimalSign);
  return `; order ${countToBuy(item, clear)}, of which ${percent} % can be used`;
}
