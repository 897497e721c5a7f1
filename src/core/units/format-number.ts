/** Plain numbers for a person to read, in the decimal sign of the shop. */
import { writeDecimal, type DecimalSign } from '../faults/quantity.ts';

export { groupThousands } from '../faults/quantity.ts';

/** With just so many decimals: `2.50`, `2,50`. */
export function formatFixed(value: number, decimals: number, decimalSign: DecimalSign): string {
  return writeDecimal(value.toFixed(decimals), decimalSign);
}

/** With at most so many decimals, trailing zeros dropped: `2.5`, `2,5`. */
export function formatNumber(value: number, decimals: number, decimalSign: DecimalSign): string {
  return writeDecimal(String(Number(value.toFixed(decimals))), decimalSign);
}
