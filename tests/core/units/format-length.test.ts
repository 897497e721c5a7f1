/** Writing lengths back: never 8/8, and what is written reads back exactly. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import {
  formatInches,
  formatLength,
  formatMillimetres,
  type FractionStyle,
} from '../../../src/core/units/format-length.ts';
import { parseLength } from '../../../src/core/units/length.ts';

const MARKS: readonly FractionStyle['marks'][] = ['none', 'in', 'inch mark', 'feet and inches'];
const ROUNDINGS = ['nearest', 'up', 'down'] as const;

describe('inches as whole and fraction', () => {
  // Hand-worked.
  test.each([
    [88.375, 16, 'none', '88 3/8'],
    [88.375, 16, 'in', '88 3/8 in'],
    [88.375, 16, 'inch mark', '88 3/8"'],
    [88.375, 16, 'feet and inches', '7\' 4 3/8"'],
    [0, 16, 'none', '0'],
    [0, 16, 'feet and inches', '0"'],
    [0.5, 16, 'none', '1/2'],
    [84, 16, 'feet and inches', '7\' 0"'],
    [84.5, 16, 'feet and inches', '7\' 0 1/2"'],
    [1116.4375, 16, 'feet and inches', '93\' 0 7/16"'],
    [-12.25, 16, 'feet and inches', '-1\' 0 1/4"'],
    [7 / 16, 16, 'feet and inches', '7/16"'],
    [-88.375, 8, 'feet and inches', '-7\' 4 3/8"'],
    [-0.01, 16, 'none', '0'],
    [2 + 31 / 32, 16, 'none', '3'],
    [2 + 127 / 128, 8, 'inch mark', '3"'],
    [11 + 63 / 64, 8, 'feet and inches', '1\' 0"'],
    [2.5, 1, 'none', '3'],
    [2.1, 10, 'none', '2 1/10'],
    [123456.015625, 64, 'none', '123456 1/64'],
  ] as const)('%d in to 1/%d with marks %s is %s', (inches, denominator, marks, text) => {
    expect(formatInches(inches, { denominator, marks })).toBe(text);
  });

  test('a length between two marks goes to the nearest, or up, or down, as asked', () => {
    const third = new Fraction(10, 3);
    const write = (rounding: FractionStyle['rounding'] & string): string =>
      formatInches(third, { denominator: 8, marks: 'none', rounding });
    expect(ROUNDINGS.map(write)).toEqual(['3 3/8', '3 3/8', '3 1/4']);
  });

  test('a tiny number is written at once and as nothing', () => {
    expect(formatInches(1e-9, { denominator: 64, marks: 'none' })).toBe('0');
    expect(formatInches(1e-9, { denominator: 64, marks: 'none', rounding: 'up' })).toBe('1/64');
  });

  test.each([
    [NaN, 16],
    [Infinity, 16],
    [1, 0],
    [1, -8],
    [1, 2.5],
    [1, NaN],
  ])('%d in to 1/%d is a bug of the caller', (inches, denominator) => {
    expect(() => formatInches(inches, { denominator, marks: 'none' })).toThrow(RangeError);
  });
});

const anyExact = fc
  .tuple(fc.integer({ min: -900_000, max: 900_000 }), fc.integer({ min: 1, max: 4096 }))
  .map(([over, under]) => new Fraction(over, under));
const anyStyle = fc.record({
  denominator: fc.integer({ min: 1, max: 256 }),
  marks: fc.constantFrom(...MARKS),
  rounding: fc.constantFrom(...ROUNDINGS),
});

describe('for every length, denominator, mark and rounding', () => {
  test('no fraction of one or more, nor one that reduces, nor 12 in beside feet, is written', () => {
    fc.assert(
      fc.property(anyExact, anyStyle, (inches, style) => {
        const text = formatInches(inches, style);
        const fraction = /(\d+)\/(\d+)/u.exec(text);
        if (fraction !== null) {
          const [over, under] = [Number(fraction[1]), Number(fraction[2])];
          expect(over).toBeGreaterThan(0);
          expect(over).toBeLessThan(under);
          expect(new Fraction(over, under).d).toBe(BigInt(under));
          expect(style.denominator % under).toBe(0);
        }
        // A fraction beside feet has its inches before it, be they 0.
        expect(text).not.toMatch(/' \d+\//u);
        const besideFeet = /' (\d+)[ "]/u.exec(text);
        if (besideFeet !== null) expect(Number(besideFeet[1])).toBeLessThan(12);
        expect(text).not.toMatch(/NaN|Infinity|^-0|-"/u);
      }),
      { numRuns: 2000 },
    );
  });

  test('what is written lies within the rounding asked for', () => {
    fc.assert(
      fc.property(anyExact, anyStyle, (inches, style) => {
        const read = parseLength(formatInches(inches, style), 'length');
        if (!read.ok) throw new Error(read.faults[0]!.message);
        const further = read.value.abs().sub(inches.abs()).mul(style.denominator);
        const [least, most] = { nearest: [-0.5, 0.5], up: [0, 1], down: [-1, 0] }[style.rounding];
        expect(further.gte(least!) && further.lte(most!)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  test('a length on the denominator is written and read back exactly, whatever the mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.constantFrom(1, 2, 4, 8, 10, 16, 32, 64, 100, 128),
        (parts, denominator) => {
          const exact = new Fraction(parts, denominator);
          for (const marks of MARKS) {
            const read = parseLength(formatInches(exact, { denominator, marks }), 'length');
            expect(read.ok && read.value.equals(exact)).toBe(true);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  test('a double on the denominator is written as its exact rational is', () => {
    fc.assert(
      fc.property(fc.integer({ min: -6_400_000, max: 6_400_000 }), (parts) => {
        const style = { denominator: 64, marks: 'none' } as const;
        expect(formatInches(parts / 64, style)).toBe(formatInches(new Fraction(parts, 64), style));
      }),
      { numRuns: 500 },
    );
  });
});

describe('every way of typing a length reads back to the same exact value', () => {
  const typed = (feet: number, inches: number, eighths: number): readonly string[] => {
    const sign = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'][eighths]!;
    const all = feet * 12 + inches;
    const metric = (perInch: Fraction): string =>
      new Fraction(all * 8 + eighths, 8).mul(perInch).toString();
    return [
      `${all + eighths / 8}`,
      `${all} ${eighths}/8`,
      `${all}-${eighths}/8"`,
      `${all}${sign}`,
      `${feet}' ${inches} ${eighths}/8"`,
      `${feet}'-${inches}${sign}"`,
      `${feet}ft ${inches}-${eighths}/8 in`,
      `${metric(new Fraction(254, 10))} mm`,
      `${metric(new Fraction(254, 100))} cm`,
      `${metric(new Fraction(254, 10_000))}m`,
    ];
  };
  test('feet, inches and eighths', () => {
    const [feet, inches] = [fc.nat({ max: 60 }), fc.nat({ max: 11 })];
    fc.assert(
      fc.property(feet, inches, fc.nat({ max: 7 }), (ft, inch, eighths) => {
        const exact = new Fraction(ft * 96 + inch * 8 + eighths, 8).toFraction();
        for (const text of typed(ft, inch, eighths)) {
          const read = parseLength(text, 'length');
          expect([text, read.ok && read.value.toFraction()]).toEqual([text, exact]);
          const comma = parseLength(text.replace('.', ','), 'length', {
            unit: 'in',
            decimalSign: ',',
          });
          expect([text, comma.ok && comma.value.toFraction()]).toEqual([text, exact]);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('millimetres', () => {
  // 25.4 mm to the inch exactly: international yard and pound agreement, 1959.
  test.each([
    [new Fraction(450, 127), 1, '90 mm'],
    [new Fraction(450, 127), 6, '90 mm'],
    [1, 1, '25.4 mm'],
    [3.5, 1, '88.9 mm'],
    [0.1, 2, '2.54 mm'],
    [1 / 16, 1, '1.6 mm'],
    [1 / 16, 4, '1.5875 mm'],
    [0, 1, '0 mm'],
    [-1, 1, '-25.4 mm'],
    [-1e-9, 1, '0 mm'],
  ])('%s in to %d decimals is %s', (inches, decimals, text) => {
    expect(formatMillimetres(inches, decimals)).toBe(text);
  });

  test('whole and tenth millimetres are written and read back exactly', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -300_000, max: 300_000 }),
        fc.constantFrom('.' as const, ',' as const),
        (tenths, decimalSign) => {
          const exact = new Fraction(tenths, 10).mul(5, 127);
          const said = formatMillimetres(exact, 1, decimalSign);
          const read = parseLength(said, 'length', { unit: 'in', decimalSign });
          expect(read.ok && read.value.equals(exact)).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  test.each([1.5, -1, 7, NaN])('%d decimals are a bug of the caller', (decimals) => {
    expect(() => formatMillimetres(1, decimals)).toThrow(RangeError);
  });

  test('a length that is not finite is a bug of the caller', () => {
    expect(() => formatMillimetres(NaN)).toThrow(RangeError);
  });
});

test('a length is written in the unit of the shop', () => {
  expect(formatLength(88.375, 'in')).toBe('88 3/8"');
  expect(formatLength(88.40625, 'in', 32)).toBe('88 13/32"');
  expect(formatLength(new Fraction(450, 127), 'mm')).toBe('90 mm');
  expect(formatLength(1, 'mm', 16, ',')).toBe('25,4 mm');
});
