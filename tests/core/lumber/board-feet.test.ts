/** Board feet by the plain rule, against published examples. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { sayArgument } from '../../../src/core/faults/argument.ts';
import {
  computeBoardFeet,
  toBoardFeet,
  toCubicMetres,
} from '../../../src/core/lumber/board-feet.ts';
import type { BoardSize } from '../../../src/core/lumber/board-feet.ts';

function feet(thickness: number, width: number, length: number): Fraction {
  const outcome = computeBoardFeet({ thickness, width, length });
  if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
  return outcome.value;
}
const rounded = (value: Fraction, decimals: number): number => Number(value.round(decimals));

describe('the plain rule', () => {
  // Published worked examples of lumber yards and textbooks; lengths in feet.
  test.each([
    [2, 10, 16, 3, 26.667],
    [3, 12, 16, 0, 48],
    [3, 8, 10, 0, 20],
    [1, 12, 12, 0, 12],
    [2, 6, 12, 0, 12],
    [2, 8, 6, 0, 8],
  ])('%d × %d × %d ft is, to %d decimals, %d bf', (thickness, width, long, decimals, printed) => {
    expect(rounded(feet(thickness, width, long * 12), decimals)).toBe(printed);
  });

  // ICS Building Construction, v. 4, § 67.
  test.each([
    [3, 10, 1063.91, 2659.78],
    [2, 10, 979.5, 1632.5],
    [6, 12, 8.75, 52.5],
  ])('%d × %d, %d lineal feet, is %d bf', (thickness, width, long, printed) => {
    const inches = new Fraction(String(long)).mul(12);
    const outcome = computeBoardFeet({ thickness, width, length: inches });
    expect(outcome.ok && rounded(outcome.value, 2)).toBe(printed);
  });

  test('450 lineal feet of 3/4 in trim from 4 3/4 blanks is 178.1 bf, counted as 1 in thick', () => {
    // WoodWeb, "Figuring Rough Stock": the case; the arithmetic is ours: 450 · 4.75 / 12 = 178.125.
    expect(feet(0.75, 4.75, 450 * 12).toFraction()).toBe('1425/8');
  });

  test('thickness under 1 in counts as 1 in, and 5/4 as it is', () => {
    // Navy Engineering Aid manual, 6-3.
    expect(feet(0.75, 12, 12).equals(1)).toBe(true);
    expect(feet(0.25, 12, 12).equals(1)).toBe(true);
    expect(feet(1.25, 12, 12).equals(1.25)).toBe(true);
  });

  test('is exact: a 2 × 10 of 16 ft has 80/3', () => {
    expect(feet(2, 10, 192).toFraction()).toBe('80/3');
  });

  test('agrees with whole sixteenths counted out, and halves with the length', () => {
    const sixteenths = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(sixteenths, sixteenths, sixteenths, (thick, wide, long) => {
        const counted = BigInt(Math.max(thick, 16)) * BigInt(wide) * BigInt(long);
        const board = feet(thick / 16, wide / 16, long / 16);
        expect(board.equals(new Fraction(counted, 16n ** 3n * 144n))).toBe(true);
        expect(feet(thick / 16, wide / 16, long / 8).equals(board.mul(2))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a board without a size', () => {
  const codes = (board: BoardSize): readonly string[] => {
    const outcome = computeBoardFeet(board);
    return outcome.ok
      ? []
      : outcome.faults.map((one) => `${sayArgument(one.argument)}: ${one.code}`);
  };
  test('is refused with every size at fault named', () => {
    expect(codes({ thickness: 0, width: new Fraction(-3), length: NaN })).toEqual([
      'Thickness: length.not-positive',
      'Width: length.not-positive',
      'Length: length.unreadable',
    ]);
    expect(codes({ thickness: 1, width: Infinity, length: 96 })).toEqual([
      'Width: length.unreadable',
    ]);
  });
});

describe('cubic metres', () => {
  test('a board foot is 0.002359737216 m³ exactly', () => {
    // 12 · 12 · 1 in at 0.0254 m to the inch (1959): 144 · 0.0254³.
    expect(toCubicMetres(new Fraction(1)).equals(new Fraction('0.002359737216'))).toBe(true);
  });

  test('a cubic metre is 423.776 bf', () => {
    // Printed in lumber conversion tables.
    expect(rounded(toBoardFeet(new Fraction(1)), 3)).toBe(423.776);
  });

  test('there and back is the same exact measure', () => {
    fc.assert(
      fc.property(fc.nat({ max: 1e9 }), fc.integer({ min: 1, max: 1e6 }), (over, under) => {
        const boardFeet = new Fraction(over, under);
        expect(toBoardFeet(toCubicMetres(boardFeet)).equals(boardFeet)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
