/** Drop, projection and back bevels of crown. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { computeBackBevels, computeCrownSize } from '../../../src/core/crown/crown-size.ts';
import type { CrownSize } from '../../../src/core/crown/crown-size.ts';
import { degrees, radians, toDegrees, toRadians } from '../../../src/core/units/angle.ts';

function size(faceWidth: number, springDegrees: number): CrownSize {
  const outcome = computeCrownSize({ faceWidth, spring: toRadians(degrees(springDegrees)) });
  if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
  return outcome.value;
}

describe('drop and projection', () => {
  test('at 45° both are the face over the square root of two', () => {
    // Hand-worked: 3 3/4 / sqrt 2 = 2.651650.
    expect(size(3.75, 45).drop).toBeCloseTo(2.65165, 6);
    expect(size(3.75, 45).projection).toBeCloseTo(2.65165, 6);
  });

  test('at the spring of a 3-4-5 triangle they are 4/5 and 3/5 of the face', () => {
    const spring = (Math.atan2(3, 4) * 180) / Math.PI;
    expect(size(5, spring).drop).toBeCloseTo(4, 12);
    expect(size(5, spring).projection).toBeCloseTo(3, 12);
  });

  test('stock crown 4 5/8 wide does not close at its printed 3 5/8 by 2 5/8', () => {
    // Printed sizes of the common 11/16 × 4 5/8 stock crown, 38° spring.
    const { drop, projection } = size(4.625, 38);
    expect(Math.abs(drop - 3.625)).toBeLessThan(1 / 32);
    expect(projection - 2.625).toBeGreaterThan(3 / 16);
    expect(Math.hypot(3.625, 2.625)).toBeLessThan(4.5);
  });

  test('face, drop and projection make a right triangle with the spring at the wall', () => {
    const [anyFace, anySpring] = [
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      fc.double({ min: 1, max: 89, noNaN: true }),
    ];
    fc.assert(
      fc.property(anyFace, anySpring, (face, spring) => {
        const { drop, projection } = size(face, spring);
        expect(Math.abs(Math.hypot(drop, projection) - face)).toBeLessThan(1e-12);
        expect(Math.abs((Math.atan2(projection, drop) * 180) / Math.PI - spring)).toBeLessThan(
          1e-12,
        );
        expect(size(2 * face, spring).drop).toBe(2 * drop);
      }),
      { numRuns: 300 },
    );
  });

  test.each([0, -4.625])('a face of %d in is a fault', (faceWidth) => {
    const outcome = computeCrownSize({ faceWidth, spring: radians(1) });
    expect(!outcome.ok && outcome.faults.map((one) => one.code)).toEqual(['length.not-positive']);
  });

  test('a face that is no number and a spring out of range are both named', () => {
    const outcome = computeCrownSize({ faceWidth: NaN, spring: toRadians(degrees(90)) });
    expect(!outcome.ok && outcome.faults.map((one) => one.code)).toEqual([
      'length.unreadable',
      'crown.spring-out-of-range',
    ]);
  });
});

describe('the back bevels', () => {
  test.each([
    // [C] common practice, no source: 38/52 and 45/45 crown are named for these two angles.
    [38, 52],
    [45, 45],
  ])('of %d° crown are it and %d°', (wall, ceiling) => {
    const outcome = computeBackBevels({ spring: toRadians(degrees(wall)) });
    if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
    expect(toDegrees(outcome.value.wall)).toBeCloseTo(wall, 12);
    expect(toDegrees(outcome.value.ceiling)).toBeCloseTo(ceiling, 12);
  });

  test('total a right angle, and are the angles from the back to wall and to ceiling', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1.56, noNaN: true }), (spring) => {
        const outcome = computeBackBevels({ spring: radians(spring) });
        if (!outcome.ok) throw new Error(outcome.faults[0]!.message);
        const { wall, ceiling } = outcome.value;
        expect(Math.abs(wall + ceiling - Math.PI / 2)).toBeLessThan(1e-15);
        // From the edge on the wall to the edge on the ceiling, against each of the two.
        const [out, up] = [Math.sin(spring), Math.cos(spring)];
        expect(Math.abs(Math.acos(up) - wall)).toBeLessThan(1e-12);
        expect(Math.abs(Math.acos(out) - ceiling)).toBeLessThan(1e-12);
      }),
      { numRuns: 200 },
    );
  });

  test('have a fault for a spring out of range', () => {
    const outcome = computeBackBevels({ spring: toRadians(degrees(-38)) });
    expect(!outcome.ok && outcome.faults[0]!.message).toBe(
      'Spring is -38°; a spring angle lies between 0° and 90° from the wall.',
    );
  });
});
