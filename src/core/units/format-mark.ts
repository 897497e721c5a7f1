/** What is read off a tape and off a saw's scales, written alike on drawings, sheets and screens. */
import { formatInches } from './format-length.ts';
import { formatNumber, type DecimalSign } from './format-number.ts';
import type { LengthUnit } from './length-unit.ts';

const FINEST_MARK = 32;
/** 25.4 mm to the inch, in halves. */
const HALF_MILLIMETRES_PER_INCH = 50.8;

/** A computed length to the nearest 1/32 in or half a millimetre: what a tape is marked to. */
export function formatMark(
  inches: number,
  unit: LengthUnit,
  decimalSign: DecimalSign = '.',
): string {
  if (unit === 'mm') {
    const halves = Math.round(inches * HALF_MILLIMETRES_PER_INCH);
    return `${formatNumber(halves / 2, 1, decimalSign)} mm`;
  }
  return formatInches(inches, { denominator: FINEST_MARK, marks: 'inch mark' });
}

/** Degrees with at most two decimals: `45°`, `30.16°`. */
export function formatDegrees(degrees: number, decimalSign: DecimalSign = '.'): string {
  return `${formatNumber(degrees, 2, decimalSign)}°`;
}
