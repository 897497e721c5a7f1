/** Reading lengths as people type them, into exact rational inches. */
import Fraction from 'fraction.js';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import type { DecimalSign } from './format-number.ts';
import type { LengthUnit } from './length-unit.ts';
import { sayGiven } from './number.ts';

/** Inches as an exact rational number: 90 mm is 450/127, not a rounded decimal. */
export type ExactInches = Fraction;

/** How a shop types its lengths, and how they are written for it to read. */
export interface LengthReading {
  /** The unit of a bare number. */
  readonly unit: LengthUnit;
  readonly decimalSign: DecimalSign;
}

export const INCHES_AND_POINT: LengthReading = { unit: 'in', decimalSign: '.' };

/** Longest length read, in inches (about 25 km): longer is a slip of the keyboard. */
export const LONGEST_INCHES = 1_000_000;

const INCHES_PER: Readonly<Record<string, Fraction>> = {
  mm: new Fraction(5, 127),
  cm: new Fraction(50, 127),
  m: new Fraction(5000, 127),
};

const MARKS: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2007\u2009\u202f]/gu, ' '],
  [/[′’‘`´]/gu, "'"],
  [/[″”“]/gu, '"'],
  [/''/gu, '"'],
  [/[‐‑‒–−]/gu, '-'],
  [/⁄/gu, '/'],
];

// Twenty decimals, since a CSV file holds a calculated length with all of its digits.
const DECIMAL = String.raw`\d{1,15}(?:\.\d{0,20})?|\.\d{1,20}`;
const FRACTION = String.raw`\d{1,4}/\d{1,4}`;
const MIXED = String.raw`\d{1,15}(?:\s*-\s*|\s+)${FRACTION}|${FRACTION}|${DECIMAL}`;
const FEET_UNIT = String.raw`'|ft\.?|feet|foot`;
const INCH_UNIT = String.raw`"|in\.?|inch|inches`;
const METRIC = new RegExp(String.raw`^(${MIXED})\s*(mm|cm|m)$`, 'u');
const FEET = new RegExp(
  String.raw`^(${MIXED})\s*(?:${FEET_UNIT})(?:\s*-?\s*(${MIXED})\s*(?:${INCH_UNIT})?)?$`,
  'u',
);
const INCHES = new RegExp(String.raw`^(${MIXED})\s*(${INCH_UNIT})?$`, 'u');

/**
 * Reads one length: `3.5`, `3 1/2`, `3-1/2"`, `3½`, `7' 4 3/8"`, `7ft 4-3/8 in`, `90 mm`, `2.29 m`,
 * `229 cm`; a bare number is in `reading.unit`. A leading minus is read (callers refuse it by name).
 * @returns exact inches; faults `length.missing`, `length.unreadable`, `length.zero-denominator`,
 * `length.date`, `length.too-long`, each naming `argument` and the text.
 */
export function parseLength(
  given: unknown,
  argument: string,
  reading: LengthReading = INCHES_AND_POINT,
): Outcome<ExactInches> {
  if (typeof given === 'number') return fromNumber(given, argument, reading.unit);
  if (given instanceof Date) return failed(fault('length.date', argument, sayGiven(given)));
  if (given === null || given === undefined || (typeof given === 'string' && given.trim() === '')) {
    return failed(fault('length.missing', argument, null));
  }
  if (typeof given !== 'string') {
    return failed(fault('length.unreadable', argument, sayGiven(given)));
  }
  const normal = normalise(given, reading.decimalSign);
  const negative = normal?.startsWith('-') === true;
  const body = (negative ? normal.slice(1) : (normal ?? '')).trim();
  const inches = readBody(body, reading.unit);
  if (inches === 'zero denominator') {
    return failed(fault('length.zero-denominator', argument, given));
  }
  if (inches === undefined) return failed(fault('length.unreadable', argument, given));
  return bounded(negative ? inches.neg() : inches, given, argument);
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

function fromNumber(given: number, argument: string, unit: LengthUnit): Outcome<ExactInches> {
  if (!Number.isFinite(given)) {
    return failed(fault('length.unreadable', argument, String(given)));
  }
  const exact = exactDecimal(given);
  return bounded(unit === 'mm' ? exact.mul(INCHES_PER['mm'] ?? 1) : exact, given, argument);
}

function bounded(inches: Fraction, given: string | number, argument: string): Outcome<ExactInches> {
  return inches.abs().gt(LONGEST_INCHES)
    ? failed(fault('length.too-long', argument, given, { limit: { inches: LONGEST_INCHES } }))
    : ok(inches);
}

/** One spelling for every mark; undefined when the decimal sign is not the shop's. */
function normalise(text: string, decimalSign: DecimalSign): string | undefined {
  let plain = text.replace(/[¼-¾⅐-⅞]/gu, (sign) => ` ${sign.normalize('NFKD')}`);
  for (const [mark, usual] of MARKS) plain = plain.replace(mark, usual);
  plain = plain.trim().toLowerCase();
  if (decimalSign === '.') return plain.includes(',') ? undefined : plain;
  return /\d\.|\.\d/u.test(plain) ? undefined : plain.replace(/,/gu, '.');
}

function readBody(body: string, unit: LengthUnit): Fraction | 'zero denominator' | undefined {
  const metric = METRIC.exec(body);
  if (metric !== null) return scaled(metric[1], INCHES_PER[metric[2] ?? '']);
  const feet = FEET.exec(body);
  if (feet !== null) {
    const whole = scaled(feet[1], new Fraction(12));
    const rest = feet[2] === undefined ? new Fraction(0) : readMixed(feet[2]);
    if (whole instanceof Fraction && rest instanceof Fraction) return whole.add(rest);
    return [whole, rest].includes('zero denominator') ? 'zero denominator' : undefined;
  }
  const inches = INCHES.exec(body);
  if (inches === null) return undefined;
  const bareMillimetres = inches[2] === undefined && unit === 'mm';
  return scaled(inches[1], bareMillimetres ? INCHES_PER['mm'] : new Fraction(1));
}

function scaled(
  text: string | undefined,
  factor: Fraction | undefined,
): Fraction | 'zero denominator' | undefined {
  const value = readMixed(text ?? '');
  return value instanceof Fraction && factor !== undefined ? value.mul(factor) : value;
}

function readMixed(text: string): Fraction | 'zero denominator' | undefined {
  const mixed = /^(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\/(\d+)$/u.exec(text);
  if (mixed === null)
    return new Fraction(text.startsWith('.') ? `0${text}` : text.replace(/\.$/u, ''));
  const over = Number(mixed[2]);
  const under = Number(mixed[3]);
  if (under === 0) return 'zero denominator';
  // 3 9/8 is more likely a slip than a length; 9/8 alone is a length.
  if (mixed[1] !== undefined && over >= under) return undefined;
  return new Fraction(Number(mixed[1] ?? 0)).add(new Fraction(over, under));
}
