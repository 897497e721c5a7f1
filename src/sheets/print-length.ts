/** Lengths, angles and counts as they are printed: text in the shop's unit, and the number beside it. */
import type { LengthUnit } from '../core/faults/quantity.ts';
import { formatInches, formatMillimetres } from '../core/units/format-length.ts';
import type { ExactInches } from '../core/units/length.ts';

const FINEST_FRACTION = 64;
const MM_DECIMALS = 3;

/**
 * A planned length as text that says exactly what is planned: `46 5/8"` or `1184.3 mm`. A length
 * that is no 64th of an inch is given in millimetres where that is exact, else in decimal inches;
 * one that is neither is the nearest 64th (or thousandth of a millimetre) with the word `about`.
 */
export function printExact(length: ExactInches, unit: LengthUnit): string {
  const isFraction = FINEST_FRACTION % Number(length.d) === 0;
  const isMetric = length.mul(127, 5).mul(10 ** MM_DECIMALS).d === 1n;
  if (unit === 'mm') return `${isMetric ? '' : 'about '}${formatMillimetres(length, MM_DECIMALS)}`;
  if (isFraction) return inchText(length, FINEST_FRACTION);
  if (isMetric) return formatMillimetres(length, MM_DECIMALS);
  if (length.mul(10_000).d === 1n) return `${Number(length)}"`;
  return `about ${inchText(length, FINEST_FRACTION)}`;
}

/** The length of a stick as the yard says it: `12'`, `7' 6"` or `3657.6 mm`. */
export function printStick(length: ExactInches, unit: LengthUnit): string {
  const isFeet = unit === 'in' && length.div(12).d === 1n;
  return isFeet ? `${Number(length) / 12}'` : printExact(length, unit);
}

/** A sum of lengths, exact as a planned length is, in feet and inches where it is a foot or more. */
export function printTotal(length: ExactInches, unit: LengthUnit): string {
  const isFraction = FINEST_FRACTION % Number(length.d) === 0;
  if (unit === 'mm' || !isFraction) return printExact(length, unit);
  return formatInches(length, { denominator: FINEST_FRACTION, marks: 'feet and inches' });
}

/** The same length as the number beside its text, in the shop's unit. */
export function numberIn(length: number | ExactInches, unit: LengthUnit): number {
  if (typeof length === 'number') return unit === 'mm' ? length * 25.4 : length;
  return Number(unit === 'mm' ? length.mul(127, 5) : length);
}

/** A computed length in decimals: `0.7188 in` or `18.26 mm`. */
export function printDecimal(inches: number, unit: LengthUnit): string {
  return unit === 'mm' ? formatMillimetres(inches, 2) : `${inches.toFixed(4)} in`;
}

/** A size to set or to measure: the nearest 64th with its decimal, or millimetres alone. */
export function printBoth(inches: number, unit: LengthUnit): string {
  if (unit === 'mm') return formatMillimetres(inches, MM_DECIMALS);
  return `${inchText(inches, FINEST_FRACTION)} (${printDecimal(inches, unit)})`;
}

/** `1 piece`, `2 pieces`. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

function inchText(length: number | ExactInches, denominator: number): string {
  return formatInches(length, { denominator, marks: 'inch mark' });
}
