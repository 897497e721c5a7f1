import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import type { Blade, Setting } from '../../../src/core/cove/cove.ts';
import { edgesOf } from '../../../src/core/cove/cut.ts';
import { computeLeastRadius } from '../../../src/core/cove/least-radius.ts';
import { computeOutline, type OutlinePoint } from '../../../src/core/cove/outline.ts';
import { degrees, radians, toRadians } from '../../../src/core/units/angle.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Blades from thin to thick that stand between a little and nearly all of their radius up. */
const anySetting = fc
  .record({
    diameter: number(5, 14),
    kerfShare: fc.oneof(fc.constant(0), number(0.002, 0.03)),
    approach: number(0.05, 1.55),
    tilt: fc.oneof(fc.constant(0), number(0.01, 1)),
    slopeShare: number(0.02, 0.95),
  })
  .map((drawn): { blade: Blade; setting: Setting } => {
    const kerf = drawn.kerfShare * drawn.diameter;
    const slope = drawn.slopeShare * (drawn.diameter / 2);
    const height = slope * Math.cos(drawn.tilt) + (kerf / 2) * Math.sin(drawn.tilt);
    const setting = { approach: radians(drawn.approach), tilt: radians(drawn.tilt), height };
    return { blade: { diameter: drawn.diameter, kerf }, setting };
  });

/** Radius of the circle through three points: the product of the sides over four times the area. */
function circleThrough(one: OutlinePoint, two: OutlinePoint, three: OutlinePoint): number {
  const side = (from: OutlinePoint, to: OutlinePoint): number =>
    Math.hypot(to.u - from.u, to.depth - from.depth);
  const doubleArea = Math.abs(
    (two.u - one.u) * (three.depth - one.depth) - (three.u - one.u) * (two.depth - one.depth),
  );
  return (side(one, two) * side(two, three) * side(three, one)) / (2 * doubleArea);
}

/** The least of the circles through neighbors, all round the outline. */
function leastCircle(blade: Blade, setting: Setting, steps: number): number {
  const points = computeOutline(blade, setting, steps);
  let least = Infinity;
  for (let at = 1; at + 1 < points.length; at++) {
    const [before, here, after] = [points[at - 1]!, points[at]!, points[at + 1]!];
    const gap = Math.hypot(after.u - before.u, after.depth - before.depth);
    // Where the near and the far side meet in one point no circle runs through them.
    if (gap > 1e-9 && here.depth < setting.height && after.depth !== before.depth) {
      least = Math.min(least, circleThrough(before, here, after));
    }
  }
  return least;
}

describe('The least radius along a cove', () => {
  test('of an upright blade is R sin² a, whatever its kerf', () => {
    // By hand: the circle of radius R, seen along the feed, is an ellipse with half axes R sin a and
    // R; at the end of its longer axis it bends with (R sin a)² / R.
    const setting = { approach: toRadians(degrees(30)), tilt: radians(0), height: 1 };
    expect(computeLeastRadius({ diameter: 10, kerf: 0 }, setting)).toBeCloseTo(1.25, 12);
    expect(computeLeastRadius({ diameter: 10, kerf: 1 / 8 }, setting)).toBeCloseTo(1.25, 12);
    const across = { ...setting, approach: toRadians(degrees(90)) };
    expect(computeLeastRadius({ diameter: 10, kerf: 0 }, across)).toBeCloseTo(5, 12);
  });

  test('is the least of the circles through any three neighbors of the outline', () => {
    fc.assert(
      fc.property(anySetting, ({ blade, setting }) => {
        const found = computeLeastRadius(blade, setting);
        const circles = leastCircle(blade, setting, 4096);
        expect(Math.abs(circles / found - 1)).toBeLessThan(5e-3);
      }),
      { numRuns: 120 },
    );
  });

  test('lies at an end of the outline where the ellipse is sharpest below the table', () => {
    // A thin blade leaning steeply: sharper below than anywhere it cuts.
    const blade = { diameter: 10, kerf: 0 };
    const setting = { approach: radians(0.9), tilt: radians(0.9), height: 0.4 };
    const theta = Math.acos(1 - 0.4 / Math.cos(0.9) / 5);
    const bend = (at: number): number =>
      (Math.cos(at) * Math.sin(0.9) - Math.sin(at) * Math.sin(0.9) * Math.cos(0.9)) ** 2 +
      (Math.sin(at) * Math.cos(0.9)) ** 2;
    const radiusAt = (at: number): number =>
      (5 * bend(at) ** 1.5) / (Math.sin(0.9) * Math.cos(0.9));
    expect(radiusAt(theta + 0.01)).toBeLessThan(radiusAt(theta));
    expect(computeLeastRadius(blade, setting)).toBeCloseTo(radiusAt(theta), 9);
  });

  test('grows with the blade and all it cuts', () => {
    fc.assert(
      fc.property(anySetting, number(0.1, 30), ({ blade, setting }, k) => {
        const scaled = computeLeastRadius(
          { diameter: k * blade.diameter, kerf: k * blade.kerf },
          { ...setting, height: k * setting.height },
        );
        expect(scaled / k / computeLeastRadius(blade, setting)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('never grows as the blade rises', () => {
    fc.assert(
      fc.property(anySetting, number(0.3, 1), ({ blade, setting }, share) => {
        const least = (blade.kerf / 2) * Math.sin(setting.tilt);
        const lower = { ...setting, height: least + (setting.height - least) * share };
        const [risen, before] = [setting, lower].map((one) => computeLeastRadius(blade, one));
        expect(risen).toBeLessThanOrEqual(before! * (1 + 1e-9));
      }),
    );
  });

  test('lets a disc of that radius lie inside the cove wherever it touches', () => {
    fc.assert(
      fc.property(anySetting, number(0.02, 0.98), ({ blade, setting }, share) => {
        const radius = computeLeastRadius(blade, setting);
        const edges = edgesOf(blade, setting);
        const level = setting.height * share;
        const step = setting.height * 1e-5;
        const [under, over] = [edges(level - step).far, edges(level + step).far];
        const length = Math.hypot(over - under, 2 * step);
        // From the far edge at that level inward, square to the outline.
        const middle = {
          u: edges(level).far - (radius * 2 * step) / length,
          depth: level + (radius * (over - under)) / length,
        };
        for (const point of computeOutline(blade, setting, 128)) {
          const away = Math.hypot(point.u - middle.u, point.depth - middle.depth);
          expect(away).toBeGreaterThan(radius * (1 - 1e-4));
        }
      }),
      { numRuns: 200 },
    );
  });
});
