/** A number that nobody knows yet, said as three: the least that is likely, the likeliest, and the most. */
import { own } from '../faults/argument.ts';
import { fault, type Fault } from '../faults/fault.ts';

export interface Triangular {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * The value below which a share of all outcomes lies, where their density rises in a straight line from
 * low to likely and falls in one to high. It grows with the share, and with each of the three.
 *
 * Derived: between low a and likely m the part below x is (x - a)² / ((b - a)(m - a)), b being high; from
 * likely on the part above x is (b - x)² / ((b - a)(b - m)).
 * @param share from 0 to 1.
 */
export function computeTriangular({ low, likely, high }: Triangular, share: number): number {
  const wide = high - low;
  if (wide === 0) return low;
  return share * wide <= likely - low
    ? low + Math.sqrt(share * wide * (likely - low))
    : high - Math.sqrt((1 - share) * wide * (high - likely));
}

/** What is wrong with three numbers that somebody gave for a rate or a waste: not from 0, or not in order. */
export function checkTriangular(name: string, { low, likely, high }: Triangular): readonly Fault[] {
  const all = [low, likely, high];
  const unsound = all.find((one) => !(one >= 0 && one < Infinity));
  if (unsound !== undefined) {
    const said = Number.isFinite(unsound) ? unsound : String(unsound);
    return [fault('bid.range-unsound', own(name), said)];
  }
  if (low <= likely && likely <= high) return [];
  const details = { low, high };
  return [fault('bid.range-out-of-order', own(name), likely, { details })];
}
