/** Lengths and counts as they are printed: text as the shop reads it, and the number beside it. */
import { MM_PER_INCH, type LengthUnit } from '../../core/units/length-unit.ts';
import { formatInches, formatMillimetres } from '../../core/units/format-length.ts';
import { formatFixed, formatNumber } from '../../core/units/format-number.ts';
import type { ExactInches, LengthReading } from '../../core/units/length.ts';

/** Long lengths are told in feet or metres. */
export const LONG_UNIT: Readonly<Record<LengthUnit, { name: string; holds: number }>> = {
  in: { name: 'ft', holds: 12 },
  mm: { name: 'm', holds: 1000 },
};

const FINEST_FRACTION = 64;
const MM_DECIMALS = 3;
/** Nothing at the saw is set or measured finer than to a tenth of a millimetre. */
const MEASURED_DECIMALS = 1;
const INCH_DECIMALS = 4;

/**
 * A planned length as text that says exactly what is planned: `46 5/8"` or `1184.3 mm`. A length
 * that is no 64th of an inch is given in millimetres where that is exact, else in decimal inches;
 * one that is neither is the nearest 64th (or thousandth of a millimetre) with the word `about`.
 */
export function printExact(length: ExactInches, { unit, decimalSign }: LengthReading): string {
  const isFraction = FINEST_FRACTION % Number(length.d) === 0;
  const isMetric = length.mul(127, 5).mul(10 ** MM_DECIMALS).d === 1n;
  const metric = formatMillimetres(length, MM_DECIMALS, decimalSign);
  if (unit === 'mm') return `${isMetric ? '' : 'about '}${metric}`;
  if (isFraction) return inchText(length, FINEST_FRACTION);
  if (isMetric) return metric;
  if (length.mul(10 ** INCH_DECIMALS).d === 1n) {
    return `${formatNumber(Number(length), INCH_DECIMALS, decimalSign)}"`;
  }
  return `about ${inchText(length, FINEST_FRACTION)}`;
}

/** The same in the unit that isn't the shop's, for a tape that has the other: inches to the nearest 64th. */
export function sayOtherWay(length: ExactInches, { unit, decimalSign }: LengthReading): string {
  if (unit === 'in') return printExact(length, { unit: 'mm', decimalSign });
  const isFraction = FINEST_FRACTION % Number(length.d) === 0;
  return `${isFraction ? '' : 'about '}${inchText(length, FINEST_FRACTION)}`;
}

/** The length of a stick as the yard says it: `12'`, `7' 6"` or `3657.6 mm`. */
export function printStick(length: ExactInches, reading: LengthReading): string {
  const isFeet = reading.unit === 'in' && length.div(12).d === 1n;
  return isFeet ? `${Number(length) / 12}'` : printExact(length, reading);
}

/** A sum of lengths, exact as a planned length is, in feet and inches where it is a foot or more. */
export function printTotal(length: ExactInches, reading: LengthReading): string {
  const isFraction = FINEST_FRACTION % Number(length.d) === 0;
  if (reading.unit === 'mm' || !isFraction) return printExact(length, reading);
  return formatInches(length, { denominator: FINEST_FRACTION, marks: 'feet and inches' });
}

/** The same length as the number beside its text, in the shop's unit. */
export function numberIn(length: number | ExactInches, unit: LengthUnit): number {
  if (typeof length === 'number') return unit === 'mm' ? length * MM_PER_INCH : length;
  return Number(unit === 'mm' ? length.mul(127, 5) : length);
}

/** A computed length in decimals: `0.7188 in` or `18.3 mm`. */
export function printDecimal(inches: number, { unit, decimalSign }: LengthReading): string {
  if (unit === 'mm') return formatMillimetres(inches, MEASURED_DECIMALS, decimalSign);
  return `${formatFixed(inches, INCH_DECIMALS, decimalSign)} in`;
}

/** A size to set or to measure: the nearest 64th with its decimal, or millimetres alone. */
export function printBoth(inches: number, reading: LengthReading): string {
  const { unit, decimalSign } = reading;
  if (unit === 'mm') return formatMillimetres(inches, MEASURED_DECIMALS, decimalSign);
  return `${inchText(inches, FINEST_FRACTION)} (${printDecimal(inches, reading)})`;
}

/** `1 piece`, `2 pieces`. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

function inchText(length: number | ExactInches, denominator: number): string {
  return formatInches(length, { denominator, marks: 'inch mark' });
}
