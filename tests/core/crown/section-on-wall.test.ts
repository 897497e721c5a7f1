/** A molding's section as it stands on the wall: areas by triangles, and a rigid motion of the blank. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { placeOnWall, type BlankPoint } from '../../../src/core/crown/section-on-wall.ts';
import { degrees, toRadians } from '../../../src/core/units/angle.ts';
import type { ProfilePoint } from '../../../src/core/crown/raked-profile.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const springs = number(20, 70).map((angle) => toRadians(degrees(angle)));
const anyBlank = fc.record({ width: number(2, 8), thickness: number(0.4, 4) });

/** A shallow cove of a few points, well away from the bevels of the back. */
function coveOf({ width, thickness }: { width: number; thickness: number }): BlankPoint[] {
  const deep = Math.min(0.05 * width, thickness / 4);
  return [0.4, 0.45, 0.5, 0.6].map((share) => ({
    along: share * width,
    deep: share === 0.4 || share === 0.6 ? 0 : deep,
  }));
}

function areaOf(points: readonly ProfilePoint[]): number {
  return (
    points.reduce((sum, { out, up }, at) => {
      const next = points[(at + 1) % points.length]!;
      return sum + out * next.up - next.out * up;
    }, 0) / 2
  );
}
const apart = (one: ProfilePoint, other: ProfilePoint): number =>
  Math.hypot(one.out - other.out, one.up - other.up);

describe('a crown cove on its wall', () => {
  test('of spring 45°, by hand: 4 wide, 1 thick', () => {
    const { around } = placeOnWall([], { width: 4, thickness: 1 }, toRadians(degrees(45)));
    const root = Math.SQRT1_2;
    // Face from wall to ceiling; the back, 1 deep, from 1 in off the ceiling edge to 1 in off the wall edge.
    [
      [0, 0],
      [4 * root, 4 * root],
      [2 * root, 4 * root],
      [0, 2 * root],
    ].forEach(([out, up], at) => {
      expect(around[at]!.out).toBeCloseTo(out!, 12);
      expect(around[at]!.up).toBeCloseTo(up!, 12);
    });
    expect(around).toHaveLength(4);
  });

  test('lies between wall and ceiling, and loses two triangles of its back', () => {
    fc.assert(
      fc.property(anyBlank, springs, (blank, spring) => {
        const { width, thickness } = blank;
        const { around } = placeOnWall(coveOf(blank), blank, spring);
        const top = width * Math.cos(spring);
        for (const { out, up } of around) {
          expect(out).toBeGreaterThan(-1e-9);
          expect(up).toBeLessThan(top + 1e-9);
        }
        const tangent = Math.tan(spring);
        const whole = width * Math.sin(spring) * Math.cos(spring);
        // All of the triangle between face, wall and ceiling, or what the back leaves of it.
        const beyond = Math.max(0, whole - thickness);
        const wood = (width * whole) / 2 - (beyond ** 2 * (tangent + 1 / tangent)) / 2;
        const cove = areaOf(coveOf(blank).map(({ along, deep }) => ({ out: along, up: deep })));
        expect(areaOf(around)).toBeCloseTo(wood - Math.abs(cove), 9);
      }),
    );
  });

  test('is the blank moved and turned: all distances stay', () => {
    fc.assert(
      fc.property(anyBlank, fc.option(springs, { nil: undefined }), (blank, spring) => {
        const points = coveOf(blank);
        const { cove } = placeOnWall(points, blank, spring);
        points.forEach((one, at) => {
          points.forEach((other, to) => {
            const flat = Math.hypot(one.along - other.along, one.deep - other.deep);
            expect(apart(cove[at]!, cove[to]!)).toBeCloseTo(flat, 9);
          });
        });
      }),
    );
  });
});

test('a molding without a spring stands with its back on the wall, the lower edge down', () => {
  const { around } = placeOnWall([{ along: 1, deep: 0.25 }], { width: 3, thickness: 1 }, undefined);
  expect(around).toEqual([
    { out: 1, up: 0 },
    { out: 0.75, up: 1 },
    { out: 1, up: 3 },
    { out: 0, up: 3 },
    { out: 0, up: 0 },
  ]);
});
