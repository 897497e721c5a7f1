import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { answer, call, column, one, said } from '../calls.ts';

describe('COVE.INCHES', () => {
  test('reads lengths as people write them', () => {
    const texts = column(3.5, '3 1/2', '3-1/2"', '7\' 4 3/8"', '90 mm', '2.29 m', '229 cm', '-1/2');
    const inches = call('INCHES', texts).map(([cell]) => Number(cell));
    const wanted = [3.5, 3.5, 3.5, 88.375, 90 / 25.4, 2290 / 25.4, 2290 / 25.4, -0.5];
    inches.forEach((value, at) => expect(value).toBeCloseTo(wanted[at] ?? Number.NaN, 12));
  });

  test('refuses what is no length, by name, in its own cell', () => {
    const cells = call('INCHES', column('long', '', '1/0', true, Number.NaN)).map(([cell]) =>
      said(cell),
    );
    expect(cells).toEqual([
      expect.stringContaining('#VALUE! Length: “long” is not a length'),
      'no error: ',
      expect.stringContaining('#VALUE! Length: “1/0” divides by zero.'),
      expect.stringContaining('#VALUE! Length: “TRUE” is not a length'),
      expect.stringContaining('#VALUE! Length: “NaN” is not a length'),
    ]);
  });
});

describe('COVE.INCHTEXT', () => {
  test('writes inches and a fraction in lowest terms, rounded to the nearest', () => {
    expect(answer('INCHTEXT', 3.5)).toBe('3 1/2"');
    expect(answer('INCHTEXT', '90 mm')).toBe('3 9/16"');
    expect(answer('INCHTEXT', 3.54, 32)).toBe('3 17/32"');
    expect(call('INCHTEXT', column(0.99, -0.5, 0), one(''))).toEqual([['1"'], ['-1/2"'], ['0"']]);
    expect(call('INCHTEXT', one(1 / 3), [[1, 3, 8]])).toEqual([['0"', '1/3"', '3/8"']]);
  });

  test('is read back by COVE.INCHES to within half of its finest fraction', () => {
    const length = fc.double({ min: -10_000, max: 10_000, noNaN: true });
    fc.assert(
      fc.property(length, fc.integer({ min: 1, max: 128 }), (inches, denominator) => {
        const back = answer('INCHES', answer('INCHTEXT', inches, denominator));
        expect(Math.abs(Number(back) - inches)).toBeLessThanOrEqual(0.5 / denominator + 1e-9);
      }),
    );
  });

  test('refuses a denominator that is no whole number from 1 to 128', () => {
    expect(said(answer('INCHTEXT', 1, '0'))).toBe(
      '#VALUE! Denominator is 0; at least 1 is needed.',
    );
    expect(said(answer('INCHTEXT', 1, 129))).toContain('at most 128');
    expect(said(answer('INCHTEXT', 1, 2.5))).toContain('whole number');
  });
});
