/** Days of the calendar as text, `2026-11-30`: nothing here reads a clock. */
import type { Argument } from '../faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { isoOfNamedDay } from './date-text.ts';
import { sayGiven } from './number.ts';

const MS_PER_DAY = 86_400_000;
/** From here on spreadsheets count days without the leap day that 1900 never had. */
const FIRST_YEAR = 1901;
const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** A day of the calendar as year, month and day: `2026-11-30`. */
export type CalendarDay = string;

/**
 * A day as 2026-11-30, or with its month by name: 30 Nov 2026.
 *
 * @returns faults: day.unreadable for what is written otherwise, and for days that no calendar has
 */
export function parseDay(given: unknown, argument: Argument): Outcome<CalendarDay> {
  const typed = typeof given === 'string' ? given.trim() : '';
  const text = isoOfNamedDay(typed) ?? typed;
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/u.exec(text) ?? [];
  const found = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  const isReal = year !== undefined && Number(year) >= FIRST_YEAR && isoDay(found) === text;
  return isReal ? ok(text) : failed(fault('day.unreadable', argument, sayGiven(given)));
}

/** The day on the calendar of whoever's clock it is: what `new Date()` gives, say. */
export function dayOf(moment: Date): CalendarDay {
  return isoDay(new Date(Date.UTC(moment.getFullYear(), moment.getMonth(), moment.getDate())));
}

/** `30 Nov 2026`: in no country is it read for another day. */
export function sayDay(day: CalendarDay): string {
  const [year = '', month = '', date = ''] = day.split('-');
  return `${Number(date)} ${MONTHS[Number(month) - 1] ?? ''} ${year}`;
}

/** `30 Nov 2026, 09:12` by the clock of whoever reads it. */
export function sayMoment(moment: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${sayDay(dayOf(moment))}, ${two(moment.getHours())}:${two(moment.getMinutes())}`;
}

/** Days as workbooks count them: 1 January 1901 is 367 (ECMA-376 part 1, 18.17.4.1). */
export function daySerial(day: CalendarDay): number {
  return (Date.parse(`${day}T00:00:00Z`) - Date.UTC(1899, 11, 30)) / MS_PER_DAY;
}

/** The day of such a count; a part of a day is left out. */
export function dayOfSerial(serial: number): CalendarDay {
  return isoDay(new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * MS_PER_DAY));
}

function isoDay(date: Date): string {
  return Number.isNaN(date.getTime()) ? '' : date.toISOString().slice(0, 10);
}
