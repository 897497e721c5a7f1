/** Writing lengths the way the trade reads them. */
import { formatNumber, writeMixed, type DecimalSign } from './format-number.ts';
import type { LengthUnit } from './length-unit.ts';
import { exactDecimal, type ExactInches } from './length.ts';

export interface FractionStyle {
  /** Finest fraction: 16 for sixteenths. Any whole number from 1. */
  readonly denominator: number;
  /** `88 3/8`, `88 3/8 in`, `88 3/8"` or `7' 4 3/8"`; `7' 0 3/8"` where no whole inch is over. */
  readonly marks: 'none' | 'in' | 'inch mark' | 'feet and inches';
  readonly rounding?: 'nearest' | 'up' | 'down';
}

/**
 * Writes inches as whole and fraction in lowest terms, rounded to the denominator: 8/8 is the next
 * inch and 12 in the next foot, since the rounding comes first and the splitting after.
 * @throws RangeError when the value is not finite or the denominator not a whole number from 1.
 */
export function formatInches(inches: number | ExactInches, style: FractionStyle): string {
  const { denominator, marks, rounding = 'nearest' } = style;
  if (!Number.isInteger(denominator) || denominator < 1 || !Number.isFinite(Number(inches))) {
    throw new RangeError('formatInches needs a finite length and a whole denominator from 1.');
  }
  const scaled = exact(inches).abs().mul(denominator);
  const down = rounding === 'down' ? scaled.floor() : scaled.ceil();
  const parts = Number(rounding === 'nearest' ? scaled.add(1, 2).floor() : down);
  const sign = Number(inches) < 0 && parts > 0 ? '-' : '';
  const wholeInches = Math.floor(parts / denominator);
  const over = parts % denominator;
  if (marks !== 'feet and inches') {
    const end = marks === 'none' ? '' : marks === 'in' ? ' in' : '"';
    return `${sign}${writeMixed(wholeInches, over, denominator)}${end}`;
  }
  const feet = Math.floor(wholeInches / 12);
  // Beside feet a bare fraction could be taken for one of a foot, so a zero stands before it.
  const none = feet > 0 && wholeInches % 12 === 0 && over > 0 ? '0 ' : '';
  const rest = `${none}${writeMixed(wholeInches % 12, over, denominator)}"`;
  return `${sign}${feet === 0 ? '' : `${feet}' `}${rest}`;
}

/**
 * Writes inches in millimetres with at most so many decimals (0 to 6), trailing zeros dropped.
 * @throws RangeError when the value is not finite or the decimals not a whole number from 0 to 6.
 */
export function formatMillimetres(
  inches: number | ExactInches,
  decimals = 1,
  decimalSign: DecimalSign = '.',
): string {
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 6) {
    throw new RangeError('formatMillimetres needs a whole number of decimals from 0 to 6.');
  }
  const millimetres = exact(inches).mul(127, 5).round(decimals);
  return `${formatNumber(Number(millimetres), decimals, decimalSign)} mm`;
}

/** A length for a person to read, in the shop's unit; `denominator` serves inches only. */
export function formatLength(
  inches: number | ExactInches,
  unit: LengthUnit,
  denominator = 16,
  decimalSign: DecimalSign = '.',
): string {
  return unit === 'mm'
    ? formatMillimetres(inches, 1, decimalSign)
    : formatInches(inches, { denominator, marks: 'inch mark' });
}

// The library's own reading of a double searches for a nearby fraction, slow and inexact for some.
function exact(inches: number | ExactInches): ExactInches {
  return typeof inches === 'number' ? exactDecimal(inches) : inches;
}
