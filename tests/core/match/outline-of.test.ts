import { describe, expect, test } from '@jest/globals';
import type { Blade, Setting } from '../../../src/core/cove/cove.ts';
import { computeOutline } from '../../../src/core/cove/outline.ts';
import { outlineOf, placeBlade, type PlacedBlade } from '../../../src/core/match/outline-of.ts';
import { degrees, toRadians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const next = seededNumbers(30_041);

interface Drawn {
  readonly blade: Blade;
  readonly setting: Setting;
  readonly placed: PlacedBlade;
  readonly mirrored: boolean;
}

function drawn(index: number): Drawn {
  const blade = { diameter: 7 + 7 * next(), kerf: index % 5 === 0 ? 0 : 0.05 + 0.2 * next() };
  const setting = {
    approach: toRadians(degrees(8 + 75 * next())),
    tilt: toRadians(degrees(index % 4 === 0 ? 0 : 45 * next())),
    height: blade.diameter * (0.03 + 0.2 * next()),
  };
  const mirrored = index % 2 === 1;
  return { blade, setting, mirrored, placed: placeBlade(setting, blade, { mirrored, shift: 0.7 }) };
}

const CASES = Array.from({ length: count(400) }, (_, index) => drawn(index));

describe('How far a point lies off an outline', () => {
  test('the points of the outline itself lie on it, of either hand', () => {
    const worst = CASES.map(({ blade, setting, placed, mirrored }) => {
      const off = outlineOf(blade, placed);
      return Math.max(
        ...computeOutline(blade, setting, 40).map(({ u, depth }) =>
          Math.abs(off({ u: (mirrored ? -u : u) + 0.7, depth }).distance),
        ),
      );
    });
    expect(Math.max(...worst)).toBeLessThan(1e-9);
  });

  test('a point near it lies as far off as the nearest of many points of the outline', () => {
    for (const { blade, setting, placed, mirrored } of CASES.slice(0, 12)) {
      const outline = computeOutline(blade, setting, 4000);
      const off = outlineOf(blade, placed);
      for (const at of [0.2, 0.4, 0.5, 0.6, 0.8]) {
        const on = outline[Math.floor(at * outline.length)];
        if (on === undefined) continue;
        const [u, depth] = [on.u + 0.011, on.depth * 0.97];
        const nearest = Math.min(...outline.map((p) => Math.hypot(p.u - u, p.depth - depth)));
        const { distance } = off({ u: (mirrored ? -u : u) + 0.7, depth });
        expect(Math.abs(distance)).toBeCloseTo(nearest, 3);
      }
    }
  });

  test('its slopes are those of small changes of each of the four numbers', () => {
    const step = 1e-6;
    for (const { blade, placed } of CASES) {
      const numbers = [placed.approach, placed.lean, placed.slopeHeight, placed.shift];
      const at = (changed: readonly number[]): number => {
        const [approach = 0, lean = 0, slopeHeight = 0, shift = 0] = changed;
        return outlineOf(blade, { approach, lean, slopeHeight, shift })(point).distance;
      };
      const point = { u: placed.shift + 0.4 * next() - 0.2, depth: 0.8 * placed.slopeHeight };
      const { slopes } = outlineOf(blade, placed)(point);
      slopes.forEach((slope, which) => {
        const moved = (by: number): number =>
          at(numbers.map((number, index) => (index === which ? number + by : number)));
        expect((moved(step) - moved(-step)) / (2 * step)).toBeCloseTo(slope, 4);
      });
    }
  });
});
