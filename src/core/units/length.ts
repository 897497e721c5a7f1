/** Reading lengths as people type them, into exact rational inches. */
import Fraction from 'fraction.js';
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../faults/fault.ts';
import { dayInText, fractionsBehind, type Day } from './date-text.ts';
import type { DecimalSign } from './format-number.ts';
import { withoutGroups } from './grouped-digits.ts';
import type { LengthUnit } from './length-unit.ts';
import { checkUnit, isWord, sayGiven, tooManyCharacters } from './number.ts';
import { LONGEST_NUMBER_TEXT, plainText } from './plain-text.ts';
import { statedUnitOf, type LengthMark } from './stated-unit.ts';

/** Inches as an exact rational number: 90 mm is 450/127, not a rounded decimal. */
export type ExactInches = Fraction;

/** How a shop types its lengths, and how they are written for it to read. */
export interface LengthReading {
  /** The unit of a bare number. */
  readonly unit: LengthUnit;
  readonly decimalSign: DecimalSign;
}

/** The same where a list has a unit of its own: any may be that of a bare number. */
export interface BareReading {
  readonly unit: LengthMark;
  readonly decimalSign: DecimalSign;
}

export const INCHES_AND_POINT: LengthReading = { unit: 'in', decimalSign: '.' };

/** Longest length read, in inches (about 25 km): longer is a slip of the keyboard. */
export const LONGEST_INCHES = 1_000_000;

const INCHES_PER: Readonly<Record<LengthMark, Fraction>> = {
  in: new Fraction(1),
  ft: new Fraction(12),
  mm: new Fraction(5, 127),
  cm: new Fraction(50, 127),
  m: new Fraction(5000, 127),
};

// Twenty decimals, since a CSV file holds a calculated length with all of its digits.
const DECIMAL = String.raw`\d{1,15}(?:\.\d{0,20})?|\.\d{1,20}`;
const FRACTION = String.raw`\d{1,4}/\d{1,4}`;
// 3-1/2 and 3 - 1/2, but not 3 -1/2: less a half may be meant.
const JOINED = String.raw`(?:-\s*|\s+-\s+|\s+)`;
const MIXED = String.raw`\d{1,15}${JOINED}${FRACTION}|${FRACTION}|${DECIMAL}`;
const FEET_UNIT = String.raw`'|ft\.?|feet|foot`;
const INCH_UNIT = String.raw`"|in\.?|inch|inches`;
const METRIC = new RegExp(String.raw`^(${MIXED})\s*(mm|cm|m)$`, 'u');
const FEET = new RegExp(
  String.raw`^(${MIXED})\s*(?:${FEET_UNIT})(?:\s*-?\s*(${MIXED})\s*(?:${INCH_UNIT})?)?$`,
  'u',
);
const INCHES = new RegExp(String.raw`^(${MIXED})\s*(${INCH_UNIT})?$`, 'u');

const WHOLE_AND_FRACTION = new RegExp(String.raw`^(?:(\d+)${JOINED})?(\d+)/(\d+)$`, 'u');

/** Why a text of a known form is no length. */
type NoLength = 'zero denominator' | 'inches over a foot';

/**
 * Reads one length: `3.5`, `3 1/2`, `3-1/2"`, `3½`, `7' 4 3/8"`, `7ft 4-3/8 in`, `5 feet 3 and 1/2 inches`,
 * `90 mm`, `2.29 m`, `1,234.5 mm`; a bare number is in `reading.unit`. A leading minus, or brackets round
 * it all, are read (callers refuse what is below 0 by name).
 * @returns exact inches; faults `length.missing`, `length.unreadable`, `length.zero-denominator`,
 * `length.date`, `length.too-long`, `length.inches-over-foot`, `number.too-many-characters`,
 * `number.two-readings`, `number.other-sign`, `number.percent`, `number.other-unit`, each naming
 * `argument` and the text.
 */
export function parseLength(
  given: unknown,
  argument: Argument,
  reading: BareReading = INCHES_AND_POINT,
): Outcome<ExactInches> {
  if (typeof given === 'number') return lengthOfNumber(given, argument, reading.unit);
  if (given instanceof Date && !Number.isNaN(given.getTime())) {
    const [month, day, year] = [given.getMonth() + 1, given.getDate(), given.getFullYear()];
    return failed(dateFault(argument, 'a date', { day, month, year }));
  }
  if (given === null || given === undefined || (typeof given === 'string' && given.trim() === '')) {
    return failed(fault('length.missing', argument, null));
  }
  if (typeof given !== 'string') {
    return failed(fault('length.unreadable', argument, sayGiven(given)));
  }
  const trimmed = given.trim();
  if (trimmed.length > LONGEST_NUMBER_TEXT) return failed(tooManyCharacters(argument, trimmed));
  const plain = normalise(trimmed, reading, argument);
  if (!plain.ok) return plain;
  const bracketed = /^\((.*)\)$/u.exec(plain.value)?.[1];
  const negative = bracketed !== undefined || plain.value.startsWith('-');
  const body = (bracketed ?? (negative ? plain.value.slice(1) : plain.value)).trim();
  const inches = readBody(body, reading.unit);
  if (inches === 'zero denominator') {
    return failed(fault('length.zero-denominator', argument, trimmed));
  }
  if (inches === 'inches over a foot') {
    return failed(fault('length.inches-over-foot', argument, trimmed));
  }
  if (inches === undefined) return failed(whyUnreadable(body, argument, trimmed, reading.unit));
  return bounded(negative ? inches.neg() : inches, trimmed, argument);
}

/** A number in a unit: what stands in a cell that shows its unit, or is bare in a shop that has one. */
export function lengthOfNumber(
  given: number,
  argument: Argument,
  unit: LengthMark,
): Outcome<ExactInches> {
  if (!Number.isFinite(given)) {
    return failed(fault('length.unreadable', argument, String(given)));
  }
  return bounded(exactDecimal(given).mul(INCHES_PER[unit]), given, argument);
}

/**
 * A double as the decimal that a sheet shows, of 15 significant digits, as an exact rational:
 * 0.1 is a tenth, and a formula's 88.50000000000001 is 88 1/2.
 * @throws RangeError when the value is not finite.
 */
export function exactDecimal(value: number): Fraction {
  if (!Number.isFinite(value)) throw new RangeError('exactDecimal needs a finite number.');
  const [digits = '0', exponent = '0'] = value.toPrecision(15).split('e');
  return new Fraction(digits).mul(new Fraction(10).pow(Number(exponent)));
}

function bounded(
  inches: Fraction,
  given: string | number,
  argument: Argument,
): Outcome<ExactInches> {
  return inches.abs().gt(LONGEST_INCHES)
    ? failed(fault('length.too-long', argument, given, { limit: { inches: LONGEST_INCHES } }))
    : ok(inches);
}

/** One spelling for every mark, a point for the decimals. */
function normalise(
  text: string,
  { unit, decimalSign }: BareReading,
  argument: Argument,
): Outcome<string> {
  const apart = text.replace(/[¼-¾⅐-⅞]/gu, (sign) => ` ${sign.normalize('NFKD')}`);
  const blanks = decimalSign === ',' || unit === 'mm';
  const grouping = { decimalSign, blanks, feet: true };
  const plain = withoutGroups(plainText(apart), grouping, argument, text);
  // 5 feet 3 and 1/2 inches
  return plain.ok ? ok(plain.value.replace(/ (?:and|&) /gu, ' ')) : plain;
}

/** A date, with the fractions that a spreadsheet may have made it of. */
export function dateFault(argument: Argument, given: string, day: Day): Fault {
  const fraction = fractionsBehind(day).join(' or ');
  return fault('length.date', argument, given, { details: { fraction } });
}

/** What stands with the number may say more than that it is no length. */
function whyUnreadable(body: string, argument: Argument, given: string, unit: LengthMark): Fault {
  const day = dayInText(given);
  if (day !== undefined) return dateFault(argument, given, day);
  const [, before = '', after = ''] = /^([^\d.]*)[\d.][\d./ -]*([^\d]*)$/u.exec(body) ?? [];
  const stated = statedUnitOf(`${before}${after}`);
  const digits = body.slice(before.length, body.length - after.length);
  const isNumber = stated !== undefined && readBody(digits.trim(), unit) instanceof Fraction;
  if (!isNumber || stated.kind === 'length' || !isWord(stated))
    return fault('length.unreadable', argument, given);
  return checkUnit(stated, argument, given, {}) ?? fault('length.unreadable', argument, given);
}

function readBody(body: string, unit: LengthMark): Fraction | NoLength | undefined {
  const metric = METRIC.exec(body);
  if (metric !== null) return scaled(metric[1], INCHES_PER[metric[2] as 'mm' | 'cm' | 'm']);
  const feet = FEET.exec(body);
  if (feet !== null) {
    const whole = scaled(feet[1], INCHES_PER.ft);
    const rest = feet[2] === undefined ? new Fraction(0) : readMixed(feet[2]);
    if (!(whole instanceof Fraction)) return whole;
    if (!(rest instanceof Fraction)) return rest;
    // 8.5' 6": nobody can tell whether the feet or the inches are meant.
    if (feet[2] !== undefined && !/^\d+$/u.test(feet[1] ?? '')) return undefined;
    return rest.gte(12) ? 'inches over a foot' : whole.add(rest);
  }
  const inches = INCHES.exec(body);
  if (inches === null) return undefined;
  const isBare = inches[2] === undefined;
  return scaled(inches[1], isBare ? INCHES_PER[unit] : INCHES_PER.in);
}

function scaled(text: string | undefined, factor: Fraction): Fraction | NoLength | undefined {
  const value = readMixed(text ?? '');
  return value instanceof Fraction ? value.mul(factor) : value;
}

function readMixed(text: string): Fraction | NoLength | undefined {
  const mixed = WHOLE_AND_FRACTION.exec(text);
  if (mixed === null)
    return new Fraction(text.startsWith('.') ? `0${text}` : text.replace(/\.$/u, ''));
  const over = Number(mixed[2]);
  const under = Number(mixed[3]);
  if (under === 0) return 'zero denominator';
  // 3 9/8 is more likely a slip than a length; 9/8 alone is a length.
  if (mixed[1] !== undefined && over >= under) return undefined;
  return new Fraction(Number(mixed[1] ?? 0)).add(new Fraction(over, under));
}
