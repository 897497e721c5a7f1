/** A ceiling's slope as it is typed, and which slopes a molding may go up. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { checkSlope, parseRiseInTwelve } from '../../../src/core/crown/slope.ts';
import { degrees } from '../../../src/core/units/angle.ts';

const riseOf = (text: string, decimalSign: '.' | ',' = '.'): number | string | undefined => {
  const read = parseRiseInTwelve(text, 'slope', decimalSign);
  return read?.ok === true ? read.value : read?.faults[0]!.code;
};

describe('a slope typed as a rise in 12', () => {
  // Roofers' tables print 4 in 12 as 18.43°, 6 in 12 as 26.57°, 12 in 12 as 45° [C]; arctan of the quotient.
  test.each([
    ['4/12', 18.434948822922],
    [' 4 / 12 ', 18.434948822922],
    ['4 in 12', 18.434948822922],
    ['4in12', 18.434948822922],
    ['4" in 12"', 18.434948822922],
    ['4:12', 18.434948822922],
    ['4⁄12', 18.434948822922],
    ['6/12', 26.565051177078],
    ['12/12', 45],
    ['4 1/2 in 12', 20.556045219583],
    ['4-1/2/12', 20.556045219583],
    ['4½ in 12', 20.556045219583],
    ['4.5/12', 20.556045219583],
    ['0/12', 0],
  ])('%s is %d° from level', (text, angle) => {
    expect(riseOf(text)).toBeCloseTo(angle, 9);
  });

  test('has the decimal sign of the shop', () => {
    expect(riseOf('4,5/12', ',')).toBeCloseTo(20.556045219583, 9);
    expect(riseOf('4,5/12')).toBe('crown.slope-unreadable');
  });

  test.each([
    '1/3',
    '4/10',
    '18 1/2',
    '4 in',
    '1:3',
    '4 mm in 12',
    '/12',
    'in 12',
    '4//12',
    '4/12/3',
  ])('%s could mean two things, and is refused', (text) => {
    expect(riseOf(text)).toBe('crown.slope-unreadable');
  });

  test.each(['18.4', '18,4', '18°', 'steep', ''])(
    '“%s” is of one part: degrees, if anything',
    (text) => {
      expect(riseOf(text)).toBeUndefined();
    },
  );

  test('rises with the rise, and comes to its tangent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 * 16 }), (sixteenths) => {
        const rise = sixteenths / 16;
        const angle = riseOf(`${rise}/12`) as number;
        expect(12 * Math.tan((angle * Math.PI) / 180)).toBeCloseTo(rise, 9);
      }),
    );
  });
});

describe('a slope that a molding goes up', () => {
  test.each([
    [0, undefined],
    [1, undefined],
    [59.99, undefined],
    [1 / 3, 'crown.slope-nearly-level'],
    [60, 'crown.slope-too-steep'],
    [-4, 'crown.slope-too-steep'],
  ])('of %d° is judged: %s', (slope, code) => {
    expect(checkSlope(degrees(slope), 'slope')?.code).toBe(code);
  });

  test('that a fraction came to as a number is said with how to type it', () => {
    expect(checkSlope(degrees(1 / 3), 'slope')!.message).toBe(
      'Slope is 0.33° from level, which nobody would see: a rise such as 4/12, worked out as a number, comes to so little. Write 4 in 12, or its degrees, 18.4; leave Slope blank where the ceiling is level.',
    );
  });
});
