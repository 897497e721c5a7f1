import { describe, expect, test } from '@jest/globals';
import { formatDegrees, formatMark } from '../../../src/core/units/format-mark.ts';

describe('A mark on a tape', () => {
  test.each([
    // Worked by hand: 4.094 · 32 = 131.0, which is 4 3/32; 0.51 · 32 = 16.3, which is 1/2.
    [4.094, 'in', '4 3/32"'],
    [0.51, 'in', '1/2"'],
    [-0.51, 'in', '-1/2"'],
    [0.001, 'in', '0"'],
    // 4.094 · 25.4 = 103.99, which is 104; 1.01 · 25.4 = 25.65, which is 25.5.
    [4.094, 'mm', '104 mm'],
    [1.01, 'mm', '25.5 mm'],
  ] as const)('of %d in is said in %s as %s', (inches, unit, said) => {
    expect(formatMark(inches, unit)).toBe(said);
  });
});

test('A mark and degrees have the decimal sign of the shop', () => {
  expect(formatMark(1.01, 'mm', ',')).toBe('25,5 mm');
  expect(formatMark(0.51, 'in', ',')).toBe('1/2"');
  expect(formatDegrees(30.161, ',')).toBe('30,16°');
});

test('Degrees have two decimals at most, and none that are 0', () => {
  expect([30.161, 45, 37.1, 0].map((degrees) => formatDegrees(degrees))).toEqual([
    '30.16°',
    '45°',
    '37.1°',
    '0°',
  ]);
});
