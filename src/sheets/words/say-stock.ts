/** Lumber and sticks in the words of the yard. */
import type { LengthReading } from '../../core/units/length.ts';
import type { StockItem } from '../../planning/job.ts';
import { printExact, printStick } from './print-length.ts';

/** `board 6/4, 9 1/2" wide, 14'` or `stick, 12'`. */
export function sayStock(item: StockItem, reading: LengthReading): string {
  const kind = item.thicknessClass === '' ? item.kind : `${item.kind} ${item.thicknessClass}`;
  const wide = item.width === undefined ? [] : [`${printExact(item.width, reading)} wide`];
  return [kind, ...wide, printStick(item.length, reading)].join(', ');
}
