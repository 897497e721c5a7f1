/** What a cell with a number shows by its number format: the one reading for files, Excel and the grid. */
import { dayOfSerial } from '../../core/units/day-serial.ts';
import type { RawCell } from '../../planning/input/raw-table.ts';
import { statedUnitOf, type StatedUnit } from '../../core/units/stated-unit.ts';
import {
  formatSections,
  LONGEST_FORMAT,
  type FormatPart,
  type FormatSection,
} from './format-sections.ts';

/** As many digits as a sheet shows of a number. */
const DIGITS = 15;
/** Formats that a workbook has at once; what is beyond them is read anew each time. */
const MOST_KEPT = 1000;

type Reading = (value: number) => RawCell;

const kept = new Map<string, Reading>();

/**
 * The cell that a number under a format is: the plain number where nothing else is seen, else what is
 * seen with it, or a date.
 *
 * @param format In English, as Excel gives it.
 */
export function shownCell(value: number, format: string): RawCell {
  if (format === '' || format === 'General' || format === '@') return value;
  const known = kept.get(format);
  if (known !== undefined) return known(value);
  const read = readingOf(format);
  if (kept.size < MOST_KEPT) kept.set(format, read);
  return read(value);
}

function readingOf(format: string): Reading {
  if (format.length > LONGEST_FORMAT) return (held) => ({ kind: 'veiled', held, text: '' });
  const sections = formatSections(format);
  if (sections.some(({ isDate }) => isDate)) {
    return (value) => {
      const day = dayOfSerial(value);
      return day === undefined ? { kind: 'date' } : { kind: 'date', day };
    };
  }
  const looks = sections.map(lookOf);
  return (value) => {
    const look = looks[sectionFor(value, sections)];
    return look === undefined ? { kind: 'veiled', held: value, text: '' } : asShown(value, look);
  };
}

/** Which section a number is shown by; -1 where none is for it. */
function sectionFor(value: number, sections: readonly FormatSection[]): number {
  const forNumbers = sections.slice(0, 3);
  if (forNumbers.every(({ condition }) => condition === undefined)) {
    if (forNumbers.length === 1 || value > 0) return 0;
    return value < 0 || forNumbers.length === 2 ? (value < 0 ? 1 : 0) : 2;
  }
  return forNumbers.findIndex(({ condition }, at) => {
    if (condition !== undefined) return holds(value, condition);
    if (at === forNumbers.length - 1) return true;
    return at === 0 ? value > 0 : value < 0;
  });
}

function holds(value: number, { sign, than }: NonNullable<FormatSection['condition']>): boolean {
  switch (sign) {
    case '<':
      return value < than;
    case '<=':
      return value <= than;
    case '>':
      return value > than;
    case '>=':
      return value >= than;
    case '=':
      return value === than;
    default:
      return value !== than;
  }
}

/** What one section makes of a number. */
interface Look {
  readonly parts: readonly FormatPart[];
  /** It shows no digit of the number. */
  readonly hidesNumber: boolean;
  /** The number seen is the one held times this: 100 for a percent, 1/1000 for each comma at the end. */
  readonly factor: number;
  readonly isScaled: boolean;
  readonly unit?: StatedUnit;
  /** More is seen than a number: a unit, a word, zeros in front, words among the digits. */
  readonly isMore: boolean;
  /** Text stands among the digits, which so each have their place. */
  readonly isFilled: boolean;
}

const isNumber = ({ kind }: FormatPart): boolean => kind === 'digit' || kind === 'general';
const isSign = (part: FormatPart, sign: string): boolean =>
  part.kind === 'sign' && part.sign === sign;

function lookOf({ parts, currency }: FormatSection): Look {
  const [first, last] = [parts.findIndex(isNumber), parts.findLastIndex(isNumber)];
  const percents = parts.filter((one) => isSign(one, '%')).length;
  const commas = scalingCommas(parts);
  const among = wordsOf(parts.slice(Math.max(first, 0), Math.max(last, 0)));
  const isMasked = !/^[\s'’.,/]*$/u.test(among);
  const outside = wordsOf(parts.filter((_, at) => at < first || at > last));
  const unit = isMasked
    ? ({ kind: 'other', text: among.trim() } as const)
    : unitOf(outside, percents, currency);
  return {
    parts,
    hidesNumber: first < 0,
    factor: 100 ** percents / 1000 ** commas,
    isScaled: commas > 0 || percents > 1,
    ...(unit === undefined ? {} : { unit }),
    isMore: unit !== undefined || leadingZeros(parts) > 1,
    isFilled: among !== '',
  };
}

/** Of the words around the number; a sign, or the brackets of what is below 0, is the number's own. */
function unitOf(
  words: string,
  percents: number,
  currency: string | undefined,
): StatedUnit | undefined {
  const own = words.replace(/[()]/gu, '').trim().replace(/^[-+]/u, '').replace(/[-+]$/u, '').trim();
  const named = statedUnitOf(percents > 0 ? `${own}%` : own);
  const isMoney = named?.kind === 'other' && own === currency?.trim();
  return isMoney ? { kind: 'money', currency: own } : named;
}

function wordsOf(parts: readonly FormatPart[]): string {
  return parts.map((one) => (one.kind === 'text' ? one.text : '')).join('');
}

/** Commas after the last digit before the point, or after all: each leaves three digits out. */
function scalingCommas(parts: readonly FormatPart[]): number {
  let count = 0;
  let waiting = 0;
  let hasDigit = false;
  for (const part of parts) {
    if (isNumber(part)) {
      hasDigit = true;
      waiting = 0;
    } else if (isSign(part, ',') && hasDigit) waiting += 1;
    else if (isSign(part, '.')) {
      count += waiting;
      waiting = 0;
    }
  }
  return count + waiting;
}

/** Zeros that stand for digits before the point. */
function leadingZeros(parts: readonly FormatPart[]): number {
  if (parts.some((one) => isSign(one, '/') || isSign(one, 'E'))) return 0;
  return wholeDigits(parts).filter((one) => one.kind === 'digit' && one.sign === '0').length;
}

function wholeDigits(parts: readonly FormatPart[]): readonly FormatPart[] {
  const point = parts.findIndex((one) => isSign(one, '.'));
  return parts.slice(0, point < 0 ? undefined : point).filter(({ kind }) => kind === 'digit');
}

function asShown(held: number, look: Look): RawCell {
  const value = Number((held * look.factor).toPrecision(DIGITS));
  // Words alone (yes, none) are what a text cell says; a number can't be told by them.
  if (look.hidesNumber || look.isScaled) return { kind: 'veiled', held, text: textOf(value, look) };
  if (!look.isMore) return held;
  const unit = look.unit === undefined ? {} : { unit: look.unit };
  return { kind: 'shown', value, text: textOf(value, look), ...unit };
}

/** All that is seen: the digits in their places, zeros in front, the words around them. */
function textOf(value: number, { parts, hidesNumber, isFilled }: Look): string {
  if (hidesNumber) return wordsOf(parts).trim();
  const [whole = '0', decimals = ''] = plainDigits(Math.abs(value)).split('.');
  const tail = decimals === '' ? '' : `.${decimals}`;
  let left = whole.padStart(leadingZeros(parts), '0');
  let places = wholeDigits(parts).length;
  let seen = '';
  for (const part of parts) {
    if (part.kind === 'text') seen += part.text;
    else if (isSign(part, '%')) seen += '%';
    else if (isFilled && isSign(part, '.')) seen += tail;
    else if (isNumber(part) && !isFilled) {
      seen += left === '' ? '' : left + tail;
      left = '';
    } else if (part.kind === 'digit' && places > 0) {
      const taken = Math.max(0, left.length - places + 1);
      seen += left.slice(0, taken);
      left = left.slice(taken);
      places -= 1;
    }
  }
  const sign = value < 0 && !/[-(]/u.test(seen) ? '-' : '';
  return `${sign}${seen.trim()}`;
}

/** Without an exponent. */
function plainDigits(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(value < 1 ? 20 : 0) : text;
}
