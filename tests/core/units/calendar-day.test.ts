import { describe, expect, test } from '@jest/globals';
import { syntax } from '../../../src/core/faults/argument.ts';
import {
  dayOf,
  daySerial,
  parseDay,
  sayDay,
  sayMoment,
} from '../../../src/core/units/calendar-day.ts';

describe('A day of the calendar', () => {
  test.each(['2026-11-30', '2024-02-29', '1901-01-01', '9999-12-31', '2000-02-29'])(
    'is read as it is written: %s',
    (day) => {
      expect(parseDay(day, 'day')).toMatchObject({ ok: true, value: day });
    },
  );

  test.each([
    '2026-02-30',
    '2025-02-29',
    '1900-01-01',
    '2026-13-01',
    '2026-1-1',
    '30.11.2026',
    '',
    46_082,
  ])('is nothing else, and is never moved to another day: %s', (given) => {
    const read = parseDay(given, syntax('--date'));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.faults[0]?.message).toMatch(/^--date.*such as 2026-11-30\.$/u);
  });

  test('has the number that spreadsheets give it', () => {
    // ECMA-376 part 1, 18.17.4.1: 1 January 1901 is 367, 31 December 9999 is 2,958,465.
    expect(daySerial('1901-01-01')).toBe(367);
    expect(daySerial('9999-12-31')).toBe(2_958_465);
    // By hand: 46,022 (31 December 2025) and 31 + 28 + 1.
    expect(daySerial('2026-03-01')).toBe(46_082);
  });

  test('follows the one before, in its text and in its number, for two hundred years', () => {
    let serial = daySerial('1901-01-01');
    const day = new Date(1901, 0, 1, 12);
    for (; day.getFullYear() < 2101; day.setDate(day.getDate() + 1)) {
      expect(daySerial(dayOf(day))).toBe(serial);
      serial += 1;
    }
  });

  test('is that of the clock at its place, at any hour', () => {
    for (const hour of [0, 9, 23])
      expect(dayOf(new Date(2026, 10, 30, hour, 59))).toBe('2026-11-30');
    expect(sayMoment(new Date(2026, 10, 3, 9, 5))).toBe('3 Nov 2026, 09:05');
    expect(sayDay('2026-03-01')).toBe('1 Mar 2026');
  });
});
