/** Lengths and angles as drawings letter them. */
import { toDegrees, type Radians } from '../core/units/angle.ts';
import { formatInches, formatMillimetres } from '../core/units/format-length.ts';
import { formatDegrees, formatMark } from '../core/units/format-mark.ts';
import type { LengthReading } from '../core/units/length.ts';
import type { DecimalSign } from '../core/units/format-number.ts';
import { SOLVED_NOISE_INCHES } from './tolerance.ts';

const FINEST_FRACTION = 64;

/** A size: `3 1/2"`, with `≈` before it where it is the nearest 64th of an inch only; or `76.2 mm`. */
export function sayLength(inches: number, { unit, decimalSign }: LengthReading): string {
  if (unit === 'mm') return formatMillimetres(inches, 1, decimalSign);
  const parts = inches * FINEST_FRACTION;
  const nearest = Math.round(parts);
  const isExact = Math.abs(parts - nearest) < SOLVED_NOISE_INCHES * FINEST_FRACTION;
  if (nearest === 0 && !isExact) return `under 1/${FINEST_FRACTION}"`;
  const said = formatInches(inches, { denominator: FINEST_FRACTION, marks: 'inch mark' });
  return isExact ? said : `≈ ${said}`;
}

/** A mark for a tape, without its side. */
export function sayMark(inches: number, { unit, decimalSign }: LengthReading): string {
  return formatMark(Math.abs(inches), unit, decimalSign);
}

/** Whether `sayMark` says that a mark lies right on the line it is measured from. */
export function marksNothing(inches: number, reading: LengthReading): boolean {
  return /^0\D*$/u.test(sayMark(inches, reading));
}

/** An angle as the saw's scales are read. */
export function sayAngle(angle: Radians, decimalSign: DecimalSign): string {
  return formatDegrees(toDegrees(angle), decimalSign);
}
