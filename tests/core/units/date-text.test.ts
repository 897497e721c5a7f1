/** Dates that were lengths, and the fractions behind them. */
import { describe, expect, test } from '@jest/globals';

import { dayInText, dayOfIso, fractionsBehind } from '../../../src/core/units/date-text.ts';
import { dayOfSerial, serialOf } from '../../../src/core/units/day-serial.ts';
import { parseLength } from '../../../src/core/units/length.ts';

describe('a date as text', () => {
  test.each([
    // 3/4 typed where the month goes first, and as spreadsheets then show or save it.
    ['4-Mar', '3/4'],
    ['04-Mar', '3/4'],
    ['4 March', '3/4'],
    ['4. März', undefined],
    ['Mar-4', '3/4'],
    ['March 4, 2026', '3/4'],
    ['2026-03-04', '3/4'],
    ['2026-03-04 00:00:00', '3/4'],
    ['03/04/2026', '3/4'],
    ['3/4/26', '3/4'],
    // 3/4 typed where the day goes first.
    ['3-Apr', '3/4'],
    ['03.04.2026', '3/4'],
    ['3. Apr 26', '3/4'],
    ['15-Jan', '1/15'],
    ['16-Jan', '1/16'],
    ['13/1/2026', '1/13'],
    // 5/32 typed: a month and a year.
    ['May-32', '5/32 or 1/5'],
    ['1-May-32', '5/32 or 1/5'],
    // 3-1/2 typed: a whole date.
    ['2002-03-01', '3-1/2 or 1/3'],
    ['01.03.2008', '1-3/8 or 3-1/8 or 1/3'],
    ['3 Mar', '3/3'],
  ])('%s may have been %s', (text, fractions) => {
    const day = dayInText(text);
    expect(day === undefined ? undefined : fractionsBehind(day).join(' or ')).toBe(fractions);
  });

  test.each([
    '3/4',
    '3-4',
    '3 3/4',
    '1.5',
    '2026',
    '40-Mar',
    '2026-13-40',
    'Margate',
    '3-1/2',
    '1-3-2',
  ])('%s is no date', (text) => {
    expect(dayInText(text)).toBeUndefined();
  });

  test('is refused as a length, with the fraction that it may have been', () => {
    for (const text of ['4-Mar', '2026-03-04', '03/04/2026', '3/4/2026', '3-Jan', '4 Mar']) {
      const outcome = parseLength(text, 'length');
      expect([text, !outcome.ok && outcome.faults[0]?.code]).toEqual([text, 'length.date']);
    }
    const outcome = parseLength('4-Mar', 'length');
    expect(!outcome.ok && outcome.faults[0]?.message).toBe(
      'Length: “4-Mar” is a date; it may have been 3/4 before a spreadsheet changed it. Format the cell as text and type the length again, with a 0 before a bare fraction (0 3/4).',
    );
  });
});

test('every fraction of a tape is among those behind the day that a spreadsheet makes of it', () => {
  const year = 2026;
  for (const under of [2, 4, 8, 16]) {
    for (let over = 1; over < under; over++) {
      const typed = `${over}/${under}`;
      const made = [
        ...(over <= 12 ? [{ month: over, day: under, year }] : []),
        ...(under <= 12 ? [{ month: under, day: over, year }] : []),
      ];
      for (const day of made) expect(fractionsBehind(day)).toContain(typed);
    }
  }
  for (const under of [32, 64]) {
    for (let over = 1; over <= 12; over++) {
      const day = { month: over, day: 1, year: 1900 + under };
      expect(fractionsBehind(day)).toContain(`${over}/${under}`);
    }
  }
});

test('days and their numbers go both ways', () => {
  expect(dayOfSerial(1)).toBe('1900-01-01');
  expect(dayOfSerial(59)).toBe('1900-02-28');
  expect(dayOfSerial(60)).toBeUndefined();
  expect(dayOfSerial(61)).toBe('1900-03-01');
  expect(dayOfSerial(0.5)).toBeUndefined();
  expect(dayOfSerial(Number.NaN)).toBeUndefined();
  expect(dayOfSerial(1e9)).toBeUndefined();
  for (const serial of [1, 59, 61, 36_526, 46_085, 46_085.25]) {
    const day = dayOfSerial(serial)!;
    expect(serialOf(new Date(`${day}T00:00:00Z`))).toBe(Math.floor(serial));
  }
  expect(dayOfIso('2026-03-04')).toEqual({ year: 2026, month: 3, day: 4 });
});
