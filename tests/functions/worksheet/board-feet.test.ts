import { describe, expect, test } from '@jest/globals';
import { answer, call, column, one, said } from '../calls.ts';

describe('COVE.BOARDFEET', () => {
  test.each([
    // Published examples: 2×10×16', 3×12×16', 3×8×10', 1×12×12', 2×8×72 in.
    [2, 10, "16'", 26.667],
    [3, 12, "16'", 48],
    [3, 8, "10'", 20],
    [1, 12, "12'", 12],
    [2, 8, 72, 8],
  ])('%s × %s × %s is %s', (thickness, width, length, boardFeet) => {
    expect(answer('BOARDFEET', thickness, width, length)).toBeCloseTo(boardFeet, 3);
  });

  test('counts what is thinner than an inch as an inch', () => {
    expect(answer('BOARDFEET', '3/4', 6, "8'")).toBe(4);
  });

  test('multiplies by the quantity, and a column goes with single cells', () => {
    expect(call('BOARDFEET', one(1), one(6), column("8'", "10'"), column(10, ''))).toEqual([
      [40],
      [5],
    ]);
    expect(answer('BOARDFEET', 1, 6, "8'", 0)).toBe(0);
  });

  test('takes metric sizes: a metre of 25.4 × 304.8 mm is 1000 / 304.8', () => {
    expect(answer('BOARDFEET', '25.4 mm', '304.8 mm', '1 m')).toBeCloseTo(1000 / 304.8, 12);
  });

  test('refuses a thickness or a width that no shop has, and knows the number of a date', () => {
    // 46,085 is 4 March 2026: a spreadsheet makes it of 3/4.
    expect(said(answer('BOARDFEET', 46085, 6, 96))).toMatch(
      /^#VALUE! Thickness: 46,085 is what a spreadsheet stores for the date 2026-03-04, .* of 3\/4\./u,
    );
    expect(said(answer('BOARDFEET', 19, 90, 96))).toBe(
      "#VALUE! Thickness is 19 in; no shop's is more than 12 in. Check the unit: bare numbers are inches. " +
        "Width is 90 in; no shop's is more than 60 in. Check the unit: bare numbers are inches.",
    );
    expect(said(answer('BOARDFEET', '400 mm', 6, 96))).toContain("no shop's is more than 12 in");
    expect(answer('BOARDFEET', 12, 60, 144)).toBe(720);
  });

  test('refuses sizes and quantities by name', () => {
    expect(said(answer('BOARDFEET', 0, 6, 96))).toContain('#VALUE! Thickness is 0 in');
    expect(said(answer('BOARDFEET', 1, 6, 96, 1.5))).toBe(
      '#VALUE! Quantity is 1.5; it must be a whole number.',
    );
    expect(said(answer('BOARDFEET', 1, 6, 96, -1))).toBe(
      '#VALUE! Quantity is -1; at least 0 is needed.',
    );
  });
});
