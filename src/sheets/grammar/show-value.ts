/** What a cell shows of its value, by the number formats of our styles (ECMA-376 part 1, 18.8.31). */
import { dayOfSerial, sayDay } from '../../core/units/calendar-day.ts';
import {
  formatNumber,
  groupThousands,
  writeMixed,
  type DecimalSign,
} from '../../core/units/format-number.ts';
import type { CellValue } from './description.ts';

/** Without a format of its own, a number's decimals. */
const MOST_DECIMALS = 6;
/** Spreadsheets hold so many digits of a number. */
const DIGITS_HELD = 15;
/** `??` is a denominator of two digits. */
const LARGEST_UNDER = 99;

/**
 * @param format Of a style of `STYLES`; absent, as the number is.
 * @throws RangeError for a format that none of our styles has
 */
export function showValue(
  value: CellValue | null,
  format: string | undefined,
  decimalSign: DecimalSign,
): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return value;
  if (format === undefined || format === '@') {
    return formatNumber(value, MOST_DECIMALS, decimalSign);
  }
  if (format === 'd mmm yyyy') return sayDay(dayOfSerial(value));
  const [positive = '', negative, zero = positive] = format.split(';');
  if (value === 0) return showNumber(0, zero, decimalSign);
  if (value > 0) return showNumber(value, positive, decimalSign);
  return negative === undefined
    ? `-${showNumber(-value, positive, decimalSign)}`
    : showNumber(-value, negative, decimalSign);
}

/** Words in quotes or a sign, then digits, then words; `_)` is room for a bracket. */
const SECTION = /^(?<before>(?:"[^"]*"|[+-])*)(?<digits>[#0?,./ ]*)(?<after>(?:"[^"]*"|_\))*)$/u;

function showNumber(size: number, section: string, decimalSign: DecimalSign): string {
  const { before = '', digits = '', after = '' } = SECTION.exec(section)?.groups ?? {};
  if (section !== before + digits + after) {
    throw new RangeError(`No style of ours has the format ${section}.`);
  }
  const words = (text: string): string => text.replaceAll('_)', '').replaceAll('"', '');
  const shown = digits.includes('/') ? showFraction(size) : showDigits(size, digits, decimalSign);
  return `${words(before)}${shown}${words(after)}`;
}

function showDigits(size: number, digits: string, decimalSign: DecimalSign): string {
  if (digits === '') return '';
  const [, decimals = ''] = digits.split('.');
  const least = decimals.replaceAll('#', '').length;
  // Half goes up as it is written in decimals, not as a machine holds it: 2.005 is 2.01.
  const power = 10 ** decimals.length;
  const rounded = Math.round(Number((size * power).toPrecision(DIGITS_HELD))) / power;
  const fixed = rounded.toFixed(decimals.length);
  const [whole = '', over = ''] = fixed.split('.');
  let end = over.length;
  while (end > least && over[end - 1] === '0') end -= 1;
  const grouped = digits.includes(',') ? groupThousands(whole, decimalSign) : whole;
  return end === 0 ? grouped : `${grouped}${decimalSign}${over.slice(0, end)}`;
}

/** `46 5/8`: the nearest of all denominators, the smallest of those as near. */
function showFraction(size: number): string {
  let [best, near] = [1, Infinity];
  for (let under = 1; under <= LARGEST_UNDER; under++) {
    const off = Math.abs(size - Math.round(size * under) / under);
    if (off < near - 1e-12) [best, near] = [under, off];
  }
  const over = Math.round(size * best);
  const whole = Math.floor(over / best);
  return writeMixed(whole, over - whole * best, best);
}
