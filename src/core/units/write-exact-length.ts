/** Lengths written for a cell that is read again. */
import { formatInches, formatMillimetres } from './format-length.ts';
import { writeDecimal } from './format-number.ts';
import type { ExactInches, LengthReading } from './length.ts';

const FINEST_FRACTION = 64;
const MM_DECIMALS = 6;
const INCH_DECIMALS = 12;

/**
 * A length as text that is read as exactly itself, with its unit, whatever bare numbers beside it are:
 * `46 5/8"`, `1184.3 mm`, `12.3"`, or `3 1/3"` where it is no decimal of either.
 */
export function writeExactLength(
  length: ExactInches,
  { unit, decimalSign }: LengthReading,
): string {
  const metric = decimalsOf(length.mul(127, 5)) <= MM_DECIMALS;
  const millimetres = (): string => formatMillimetres(length, MM_DECIMALS, decimalSign);
  if (unit === 'mm' && metric) return millimetres();
  const under = Number(length.d);
  if (FINEST_FRACTION % under !== 0) {
    const decimals = decimalsOf(length);
    if (decimals <= INCH_DECIMALS)
      return `${writeDecimal(length.toString(decimals), decimalSign)}"`;
    if (metric) return millimetres();
  }
  return formatInches(length, { denominator: under, marks: 'inch mark' });
}

/** How many decimals it has; Infinity where they don't end, or not soon. */
function decimalsOf(value: ExactInches): number {
  for (let decimals = 0; decimals <= INCH_DECIMALS; decimals++) {
    if (value.mul(10 ** decimals).d === 1n) return decimals;
  }
  return Infinity;
}
