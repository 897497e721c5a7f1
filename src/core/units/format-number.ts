/** Numbers for a person to read, in the decimal sign of the shop. Knows no faults: they write with it. */
import Fraction from 'fraction.js';

export type DecimalSign = '.' | ',';

/** A number's own text, in the sign of who reads it. */
export function writeDecimal(digits: string, decimalSign: DecimalSign): string {
  return digits.replace('.', decimalSign);
}

/** Whole digits in threes, parted by the sign that is not the decimal one: `1,000`, `1.000`. */
export function groupThousands(digits: string, decimalSign: DecimalSign): string {
  return digits.replace(/\B(?=(?:\d{3})+$)/gu, decimalSign === '.' ? ',' : '.');
}

/** With just so many decimals: `2.50`, `2,50`. */
export function formatFixed(value: number, decimals: number, decimalSign: DecimalSign): string {
  return writeDecimal(value.toFixed(decimals), decimalSign);
}

/** With at most so many decimals, trailing zeros dropped: `2.5`, `2,5`. */
export function formatNumber(value: number, decimals: number, decimalSign: DecimalSign): string {
  return writeDecimal(String(Number(value.toFixed(decimals))), decimalSign);
}

/** A whole number and a fraction in lowest terms, from counts of 0 or more: `3 1/2`, `3`, `1/2`, `0`. */
export function writeMixed(whole: number, over: number, under: number): string {
  if (over === 0) return String(whole);
  const fraction = new Fraction(over, under);
  const text = `${fraction.n}/${fraction.d}`;
  return whole === 0 ? text : `${whole} ${text}`;
}
