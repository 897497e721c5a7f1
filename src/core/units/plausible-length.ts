/**
 * Lengths that can be read and are hardly meant: the number of a date that a spreadsheet made of a
 * fraction, or one in another unit. Whoever means it writes the unit with it.
 */
import { dayOfIso, fractionsBehind } from './date-text.ts';
import { dayOfSerial } from './day-serial.ts';
import type { Argument } from '../faults/argument.ts';
import { fault, type Fault } from '../faults/fault.ts';
import { MM_PER_INCH, type LengthUnit } from './length-unit.ts';
import type { LengthMark } from './stated-unit.ts';
import { LIMIT_SLACK_INCHES } from './tolerance.ts';

/** No wall, run or stick is longer: 200 ft. Common practice [C]. */
export const LONGEST_RUN_INCHES = 2400;
/** No board, blank or cove in a shop is wider. Common practice [C]. */
export const WIDEST_INCHES = 60;
/** No lumber in a shop is thicker, and no cove deeper. Common practice [C]. */
export const THICKEST_INCHES = 12;

/** Spreadsheets count days from the end of 1899: these are 2000 to 2049. */
const FIRST_DATE_NUMBER = 36_526;
const LAST_DATE_NUMBER = 54_788;

/** Whether a cell says no unit: a number, or a text of digits and fraction signs alone. */
export function isBareNumber(given: unknown): boolean {
  return typeof given === 'number' || (typeof given === 'string' && !HAS_UNIT.test(given));
}
const HAS_UNIT = /[\p{L}'"′″’”‘“`´]/u;

/** Whether a cell holds what a spreadsheet stores for a date of our years: a whole number, without a unit. */
export function isDateNumber(given: unknown): boolean {
  if (!isBareNumber(given)) return false;
  const text = String(given).trim();
  const value = /^\d{5}$/u.test(text) ? Number(text) : Number.NaN;
  return value >= FIRST_DATE_NUMBER && value <= LAST_DATE_NUMBER;
}

/**
 * The fault of a bare number that a person is asked about; undefined for any other, and where the
 * unit stands with it.
 *
 * @param given as it stands in the cell
 * @param inches what it was read as
 * @param most what no shop or house has more of
 */
export function askAboutLength(
  argument: Argument,
  given: unknown,
  inches: number,
  most: number = LONGEST_RUN_INCHES,
): Fault | undefined {
  if (!isBareNumber(given)) return undefined;
  if (isDateNumber(given)) return dateNumber(argument, Number(given));
  if (inches <= most + LIMIT_SLACK_INCHES) return undefined;
  return fault('length.asked-about', argument, { inches }, { limit: { inches: most } });
}

/** The fault of a date's number, and of a size that no shop has, with its unit or without. */
export function checkShopSize(
  argument: Argument,
  given: unknown,
  inches: number,
  most = Infinity,
): Fault | undefined {
  if (isDateNumber(given)) return dateNumber(argument, Number(given));
  if (inches <= most + LIMIT_SLACK_INCHES) return undefined;
  return fault('length.beyond-shop', argument, { inches }, { limit: { inches: most } });
}

function dateNumber(argument: Argument, days: number): Fault {
  const date = dayOfSerial(days) ?? '';
  const fraction = fractionsBehind(dayOfIso(date)).join(' or ');
  return fault('length.date-number', argument, days, { details: { date, fraction } });
}

/** Sticks, boards and walls are up to so many feet or metres long, as they are typed. Common practice [C]. */
const MOST_LONG_UNITS = 24;
/** A door's size as carpenters write it: 2/8 is 2' 8". Common practice [C]. */
const FEET_AND_INCHES = /^(\d)\/(\d|10|11)$/u;

/** A number without a unit, and what it was read as. */
interface Bare {
  /** As it stands in the cell. */
  readonly given: unknown;
  readonly inches: number;
  readonly unit: LengthUnit;
}

/**
 * The fault of a bare number that is far too small for what it measures: 16 under a stick's length is
 * hardly 16 inches, and 2.4 under a wall's no 2.4 mm.
 *
 * @param most numbers below are asked about
 */
export function askAboutShort(
  argument: Argument,
  bare: Bare,
  most = MOST_LONG_UNITS,
): Fault | undefined {
  if (!isShort(bare, most)) return undefined;
  const given = String(bare.given).trim();
  const [, feet, inches] = FEET_AND_INCHES.exec(given) ?? [];
  const long = `${given} ${bare.unit === 'in' ? 'ft' : 'm'}`;
  const meant = feet === undefined ? long : `${feet}' ${inches ?? ''}"`;
  return fault('length.asked-short', argument, { inches: bare.inches }, { details: { meant } });
}

/** Whether a bare number would be usual in feet or metres. */
export function isShort({ inches, unit }: Bare, most = MOST_LONG_UNITS): boolean {
  return (unit === 'in' ? inches : inches * MM_PER_INCH) <= most + LIMIT_SLACK_INCHES;
}

/** Of millimetres, up to 99.999: 2.540 mm is the thickness of a veneer, and 2540 mm a wall. */
const THOUSANDS_OF_MM = /^(\d{1,2})[.,](\d{3})\s*(mm)?$/iu;
const GROUP = /^(\d{1,3})[.,](\d{3})(?!\d)/u;

/**
 * The fault of a length in millimetres whose decimals look like a group of thousands, where it is of a thing
 * that is never so short.
 *
 * @param unit of a bare number
 */
export function askAboutThousands(
  argument: Argument,
  given: unknown,
  unit: LengthMark,
): Fault | undefined {
  const found = typeof given === 'string' ? THOUSANDS_OF_MM.exec(given.trim()) : null;
  if (found === null || (found[3] === undefined && unit !== 'mm')) return undefined;
  return twoReadings(argument, String(given).trim(), found);
}

/** The same of a count: 1.000 may be one, written with decimals, or a thousand. */
export function askAboutGroup(argument: Argument, given: unknown): Fault | undefined {
  const found = typeof given === 'string' ? GROUP.exec(given.trim()) : null;
  return found === null ? undefined : twoReadings(argument, String(given).trim(), found);
}

function twoReadings(
  argument: Argument,
  given: string,
  [all, whole, rest]: RegExpExecArray,
): Fault {
  const details = { one: `${whole ?? ''}${rest ?? ''}`, other: all };
  return fault('number.two-readings', argument, given, { details });
}
