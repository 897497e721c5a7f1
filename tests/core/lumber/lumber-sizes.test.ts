/** Thickness classes, nominal sizes, and blanks from boards. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { countBlanks } from '../../../src/core/lumber/blanks.ts';
import { findActualSize } from '../../../src/core/lumber/nominal-size.ts';
import {
  findThicknessClass,
  THICKNESS_CLASS_NAMES,
} from '../../../src/core/lumber/thickness-class.ts';

describe('hardwood thickness classes', () => {
  // Three published charts that agree; engineeringtoolbox.com d_1462 is one of them.
  test.each([
    ['4/4', 1, 7 / 8, 13 / 16],
    ['5/4', 1 + 1 / 4, 1 + 1 / 8, 1 + 1 / 16],
    ['6/4', 1 + 1 / 2, 1 + 3 / 8, 1 + 5 / 16],
    ['8/4', 2, 1 + 13 / 16, 1 + 3 / 4],
    ['12/4', 3, 2 + 13 / 16, 2 + 3 / 4],
    ['16/4', 4, 3 + 13 / 16, 3 + 3 / 4],
  ])('%s is %d in rough, %d S1S and %d S2S', (name, rough, surfacedOneSide, surfacedTwoSides) => {
    expect(findThicknessClass(name)).toEqual({
      ok: true,
      value: { name, rough, surfacedOneSide, surfacedTwoSides },
    });
  });

  test('10/4 is 2 1/2 in rough, with no surfaced size that a chart prints', () => {
    expect(findThicknessClass('10/4')).toEqual({ ok: true, value: { name: '10/4', rough: 2.5 } });
  });

  test('every class is sawn to the quarters of its name, and thinner after each surfacing', () => {
    for (const name of THICKNESS_CLASS_NAMES) {
      const outcome = findThicknessClass(name);
      if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
      const { rough, surfacedOneSide: s1s, surfacedTwoSides: s2s } = outcome.value;
      expect(rough).toBe(Number.parseInt(name, 10) / 4);
      if (s1s === undefined || s2s === undefined) continue;
      expect(s1s).toBeLessThan(rough);
      expect(s2s).toBeLessThan(s1s);
    }
  });

  test('is found however it is spaced', () => {
    for (const text of [' 5/4 ', '5 / 4', '5⁄4']) {
      const outcome = findThicknessClass(text);
      expect(outcome.ok && outcome.value.name).toBe('5/4');
    }
  });

  test.each(['', '9/4', '5/8', '4', '5/4 x 6', 'four quarter'])('%j is none', (name) => {
    const outcome = findThicknessClass(name, 'label');
    expect(!outcome.ok && outcome.faults[0]).toMatchObject({
      code: 'lumber.class-unknown',
      argument: 'label',
      given: name,
      details: { allowed: '4/4, 5/4, 6/4, 7/4, 8/4, 10/4, 12/4, 14/4, 16/4' },
    });
  });
});

describe('dry softwood', () => {
  // PS 20, printed at engineeringtoolbox.com d_1270.
  test.each([
    [1, 3 / 4],
    [1.25, 1],
    [1.5, 1.25],
    [2, 1.5],
    [4, 3.5],
  ])('sold as %d in thick is %d', (nominal, actual) => {
    const outcome = findActualSize({ thickness: nominal, width: 4 });
    expect(outcome).toEqual({ ok: true, value: { thickness: actual, width: 3.5 } });
  });

  test.each([
    [2, 1.5],
    [3, 2.5],
    [4, 3.5],
    [5, 4.5],
    [6, 5.5],
    [8, 7.25],
    [10, 9.25],
    [12, 11.25],
  ])('sold as %d in wide is %d', (nominal, actual) => {
    const outcome = findActualSize({ thickness: 1, width: new Fraction(nominal) });
    expect(outcome).toEqual({ ok: true, value: { thickness: 0.75, width: actual } });
  });

  test('in a size that is not sold is refused with those that are, both at once', () => {
    const outcome = findActualSize({ thickness: 1.75, width: 13 });
    expect(!outcome.ok && outcome.faults).toMatchObject([
      {
        code: 'lumber.nominal-unknown',
        argument: 'nominalThickness',
        given: { inches: 1.75 },
        details: { allowed: '3/8, 1/2, 5/8, 3/4, 1, 1 1/4, 1 1/2, 2, 2 1/2, 3, 3 1/2, 4, 4 1/2' },
      },
      {
        code: 'lumber.nominal-unknown',
        argument: 'nominalWidth',
        given: { inches: 13 },
        details: { allowed: '2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16' },
      },
    ]);
    const none = findActualSize({ thickness: NaN, width: 0 });
    expect(!none.ok && none.faults.map((one) => one.code)).toEqual([
      'length.unreadable',
      'length.not-positive',
    ]);
  });
});

describe('blanks from a board', () => {
  const count = (boardWidth: number, blankWidth: number, kerf: number): number => {
    const outcome = countBlanks({ boardWidth, blankWidth, kerf });
    return outcome.ok ? outcome.value : 0;
  };

  // Hand-worked: n blanks need n widths and n - 1 kerfs.
  test.each([
    [9.25, 3, 1 / 8, 3],
    [9.25 - 1 / 64, 3, 1 / 8, 2],
    [9, 3, 0, 3],
    [4.5, 4.5, 1 / 8, 1],
    [10, 4.5, 1 / 8, 2],
    [9.1, 4.5, 0.1, 2],
    [0.7, 0.1, 0.1, 4],
  ])('%d in gives of %d, kerf %d: %d', (board, blank, kerf, blanks) => {
    expect(count(board, blank, kerf)).toBe(blanks);
  });

  test('metric sizes that fit exactly fit: two of 110 mm with a 3 mm kerf from 223 mm', () => {
    const millimetres = (size: number): Fraction => new Fraction(size).mul(5, 127);
    const outcome = countBlanks({
      boardWidth: millimetres(223),
      blankWidth: millimetres(110),
      kerf: millimetres(3),
    });
    expect(outcome).toEqual({ ok: true, value: 2 });
  });

  test('is what ripping one after the other gives', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 24 * 64 }),
        fc.integer({ min: 8, max: 8 * 64 }),
        fc.integer({ min: 0, max: 16 }),
        (board, blank, kerf) => {
          let [left, ripped] = [board, 0];
          for (; left >= blank; ripped += 1) left -= blank + kerf;
          expect(count(board / 64, blank / 64, kerf / 64)).toBe(ripped);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('a board narrower than a blank, and sizes that are none, are faults', () => {
    const narrow = countBlanks({ boardWidth: 4, blankWidth: 4.5, kerf: 0.125 });
    expect(!narrow.ok && narrow.faults[0]!.message).toBe(
      'Board is 4 in wide; a blank needs 4 1/2 in. Use a wider board.',
    );
    const none = countBlanks({ boardWidth: 0, blankWidth: NaN, kerf: -0.125 });
    expect(!none.ok && none.faults.map((one) => one.code)).toEqual([
      'length.not-positive',
      'length.unreadable',
      'length.negative',
    ]);
  });
});
