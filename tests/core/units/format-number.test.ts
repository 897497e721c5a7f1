import { describe, expect, test } from '@jest/globals';
import {
  formatFixed,
  formatNumber,
  groupThousands,
} from '../../../src/core/units/format-number.ts';

describe('A number to be read', () => {
  test('has the sign of the shop, and as many decimals as are asked for', () => {
    expect(formatFixed(2.5, 2, '.')).toBe('2.50');
    expect(formatFixed(2.5, 2, ',')).toBe('2,50');
    expect(formatFixed(-0.25, 1, ',')).toBe('-0,3');
    expect(formatNumber(2.5, 2, '.')).toBe('2.5');
    expect(formatNumber(2.504, 2, ',')).toBe('2,5');
    expect(formatNumber(3, 4, ',')).toBe('3');
  });

  test('is parted in threes by the other sign', () => {
    expect(groupThousands('1234567', '.')).toBe('1,234,567');
    expect(groupThousands('1234567', ',')).toBe('1.234.567');
    expect(groupThousands('999', ',')).toBe('999');
  });
});
