import { describe, expect, test } from '@jest/globals';
import Fraction from 'fraction.js';
import { USUAL_BLADE } from '../../../src/core/cove/cove.ts';
import {
  bladeOf,
  COVE_SIZES,
  coveOf,
  isComplete,
  readSizes,
  type SizeKey,
} from '../../../src/core/cove/cove-sizes.ts';

const ALL = Object.keys(COVE_SIZES) as SizeKey[];
const GIVEN: Partial<Record<SizeKey, Fraction>> = {
  width: new Fraction(450, 127),
  depth: new Fraction(3, 4),
  blankWidth: new Fraction(9, 2),
  blankThickness: new Fraction(5, 4),
};

describe('The sizes of a cove', () => {
  test('are all read, in order, though one of the first is at fault', () => {
    const asked: string[] = [];
    const sizes = readSizes(ALL, ({ label }, key) => {
      asked.push(label);
      return key === 'width' ? undefined : GIVEN[key];
    });
    expect(asked).toEqual(ALL.map((key) => COVE_SIZES[key].label));
    expect(isComplete(sizes)).toBe(false);
  });

  test('are complete without off-center, near flat and blade, and stay exact', () => {
    const sizes = readSizes(ALL, (_, key) => GIVEN[key]);
    expect(isComplete(sizes)).toBe(true);
    expect(sizes.width?.toFraction()).toBe('450/127');
    expect(sizes.nearFlat).toBeUndefined();
    expect(bladeOf(sizes)).toEqual(USUAL_BLADE);
    if (isComplete(sizes))
      expect(coveOf(sizes)).toEqual({ width: 450 / 127, depth: 0.75, offCenter: 0 });
  });

  test('ask for each one that nothing stands in for', () => {
    for (const key of ['width', 'depth', 'blankWidth', 'blankThickness'] as const) {
      const sizes = readSizes(ALL, (_, one) => (one === key ? undefined : GIVEN[one]));
      expect(isComplete(sizes)).toBe(false);
    }
  });

  test('keep what is given in place of what a blank stands for', () => {
    const zero = readSizes(['kerf', 'bladeDiameter'], () => new Fraction(0));
    expect(bladeOf(zero)).toEqual({ diameter: 0, kerf: 0 });
  });
});
