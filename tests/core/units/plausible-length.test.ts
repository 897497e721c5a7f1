import { describe, expect, test } from '@jest/globals';
import {
  askAboutLength,
  checkShopSize,
  isBareNumber,
  isDateNumber,
  LONGEST_RUN_INCHES,
} from '../../../src/core/units/plausible-length.ts';

const codeOf = (given: unknown, inches: number, most?: number): string | undefined =>
  askAboutLength('length', given, inches, most)?.code;

describe('a bare number', () => {
  test.each([45708, '45708', ' 3 1/2 ', '3½', '1.250,5'])('is %s', (given) => {
    expect(isBareNumber(given)).toBe(true);
  });

  test.each(['45708 in', '3 1/2"', "7' 4", '90mm', '3″', null, true])('is not %s', (given) => {
    expect(isBareNumber(given)).toBe(false);
  });
});

describe('the number of a date', () => {
  test.each([
    [36_525, false],
    [36_526, true],
    [54_788, true],
    [54_789, false],
    ['46085', true],
    ['46085 in', false],
    [46_085.5, false],
  ])('%s: %s', (given, isDate) => {
    expect(isDateNumber(given)).toBe(isDate);
  });

  // 39,448 for 1 January 2008 [M]; the others by counting days from it [D].
  test.each([
    [36_526, '2000-01-01', '1/1'],
    [39_448, '2008-01-01', '1-1/8'],
    [46_085, '2026-03-04', '3/4'],
    [54_788, '2049-12-31', '12/31'],
  ])('%s is said as %s, and as %s', (days, date, fraction) => {
    expect(askAboutLength('length', days, days)).toMatchObject({
      code: 'length.date-number',
      details: { date, fraction },
    });
  });
});

describe('a length that no house has', () => {
  test('is asked about from a hair over 200 feet, unless its unit stands with it', () => {
    expect(codeOf(2400, LONGEST_RUN_INCHES)).toBeUndefined();
    expect(codeOf(2400.5, 2400.5)).toBe('length.asked-about');
    expect(codeOf("201'", 2412)).toBeUndefined();
    expect(codeOf('45708 in', 45_708)).toBeUndefined();
    expect(codeOf('61000', 61_000 / 25.4)).toBe('length.asked-about');
  });

  test('is asked about by its own measure: a thickness, a width', () => {
    expect(codeOf(19, 19, 12)).toBe('length.asked-about');
    expect(codeOf('19 in', 19, 12)).toBeUndefined();
  });

  test('is refused with its unit too where nobody can be asked', () => {
    expect(checkShopSize('thickness', '19 in', 19, 12)?.code).toBe('length.beyond-shop');
    expect(checkShopSize('thickness', 46_085, 46_085, 12)?.code).toBe('length.date-number');
    expect(checkShopSize('thickness', 12, 12, 12)).toBeUndefined();
  });
});
