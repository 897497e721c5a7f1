import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Blade, Cove, Setting } from '../../../src/core/cove/cove.ts';
import { computeCut, edgesAt } from '../../../src/core/cove/cut.ts';
import { computeOutline } from '../../../src/core/cove/outline.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { radians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Settings that lean, from hardly to far, of blades from thin to as thick as a dado. */
const leaning = fc
  .record({
    diameter: number(6, 14),
    kerf: fc.oneof(number(0.02, 0.25), number(0.25, 0.8)),
    approach: number(0.1, 1.4),
    tilt: fc.oneof(number(1e-6, 0.1), number(0.1, 0.9)),
    share: number(0.03, 0.6),
  })
  .map(({ diameter, kerf, approach, tilt, share }): { blade: Blade; setting: Setting } => {
    const slope = (share * diameter) / 2;
    const height = slope * Math.cos(tilt) + (kerf / 2) * Math.sin(tilt);
    const setting = { approach: radians(approach), tilt: radians(tilt), height };
    return { blade: { diameter, kerf }, setting };
  });

describe('the deepest line on the wood', () => {
  test('is what the rule says: the middle less min(1, e / kerf) of half the kerf, foreshortened', () => {
    fc.assert(
      fc.property(leaning, ({ blade, setting }) => {
        const { offCenter, bladeMiddle } = computeCut(blade, setting);
        const toCorner = (blade.kerf / 2) * Math.cos(setting.tilt) * Math.cos(setting.approach);
        const share = Math.min(1, offCenter / blade.kerf);
        expect(offCenter).toBeCloseTo(bladeMiddle - share * toCorner, 12);
      }),
      { numRuns: count(1000) },
    );
  });

  test('is the lowest point of the outline from one kerf off center on', () => {
    fc.assert(
      fc.property(leaning, ({ blade, setting }) => {
        const cut = computeCut(blade, setting);
        const outline = computeOutline(blade, setting);
        const lowest = outline.reduce((one, other) => (other.depth > one.depth ? other : one));
        expect(lowest.depth).toBeCloseTo(setting.height, 12);
        expect(lowest.u).toBeCloseTo(cut.deepestPoint, 6);
        if (cut.offCenter >= blade.kerf) expect(cut.deepestLine).toBeCloseTo(lowest.u, 6);
      }),
      { numRuns: count(500) },
    );
  });

  // The flat falls from the corner to the blade's middle by half the kerf times the sine of the tilt.
  test('lies on the flat that the kerf leaves, never higher than its share of the way to the middle', () => {
    fc.assert(
      fc.property(leaning, ({ blade, setting }) => {
        const cut = computeCut(blade, setting);
        expect(cut.deepestLine).toBeGreaterThanOrEqual(cut.deepestPoint - 1e-12);
        expect(cut.deepestLine).toBeLessThanOrEqual(cut.middleLine + 1e-12);
        const share = Math.min(1, cut.offCenter / blade.kerf);
        const fall = (1 - share) * (blade.kerf / 2) * Math.sin(setting.tilt);
        const { near, far } = edgesAt(blade, setting, setting.height - fall - 1e-9);
        expect(cut.deepestLine).toBeGreaterThan(near - 1e-6);
        expect(cut.deepestLine).toBeLessThan(far + 1e-6);
      }),
      { numRuns: count(1000) },
    );
  });

  test('of an upright blade is the middle of its flat', () => {
    const blade = { diameter: 10, kerf: 0.125 };
    const cut = computeCut(blade, { approach: radians(0.6), tilt: radians(0), height: 0.7 });
    for (const line of ['deepestLine', 'middleLine', 'deepestPoint', 'offCenter'] as const) {
      expect(cut[line]).toBeCloseTo(0, 12);
    }
  });

  const SIZES: readonly (readonly [string, Pick<Cove, 'width' | 'depth'>, number])[] = [
    ['an everyday cove', { width: 3.625, depth: 0.875 }, 0.125],
    ['a small one', { width: 1.25, depth: 0.3125 }, 0.125],
    ['a wide one of a thin blade', { width: 5, depth: 1.25 }, 0.09375],
    ['one of a dado', { width: 3, depth: 0.75 }, 0.25],
  ];
  test.each(SIZES)(
    'goes over evenly from upright to three kerfs: no jump of an angle on %s',
    (_, sizes, kerf) => {
      const blade = { diameter: 10, kerf };
      const steps = 600;
      const settings = Array.from({ length: steps + 1 }, (__, step) => {
        const offCenter = (3 * kerf * step) / steps;
        return solveSetting({ ...sizes, offCenter }, blade)!;
      });
      const tilts = settings.map(({ tilt }) => tilt);
      const rises = tilts.slice(1).map((tilt, at) => tilt - tilts[at]!);
      const mean = tilts.at(-1)! / steps;
      // It grows throughout, and never by more than 1 3/4 of the mean: the slope at upright is m's
      // by e, 1 + (cos a) / 2, against 1 past one kerf; the arctangent bends the rest.
      for (const rise of rises) {
        expect(rise).toBeGreaterThan(0);
        expect(rise).toBeLessThan(1.75 * mean);
      }
      const approaches = settings.map(({ approach }) => approach);
      const turns = approaches.slice(1).map((one, at) => Math.abs(one - approaches[at]!));
      expect(Math.max(...turns)).toBeLessThan(2 * mean);
      // From one side of one kerf to the other.
      const at = (offCenter: number): Setting => solveSetting({ ...sizes, offCenter }, blade)!;
      const [below, above] = [at(kerf * (1 - 1e-9)), at(kerf * (1 + 1e-9))];
      expect(above.tilt - below.tilt).toBeGreaterThan(0);
      expect(above.tilt - below.tilt).toBeLessThan(1e-8);
      // And from nothing to a hair.
      const [none, hair] = [at(0), at(1e-9)];
      expect(hair.tilt).toBeLessThan(1e-8);
      expect(Math.abs(hair.approach - none.approach)).toBeLessThan(1e-8);
    },
  );
});

describe('an off-center to the blade\u2019s middle', () => {
  test('is met by the middle, and leaves the deepest line short by up to half a kerf', () => {
    fc.assert(
      fc.property(number(2, 4), number(0.4, 1), number(0.01, 0.35), (width, depth, offCenter) => {
        const blade = { diameter: 10, kerf: 0.125 };
        const sizes = { width, depth, offCenter };
        const asked = solveSetting({ ...sizes, offCenterTo: 'blade middle' }, blade)!;
        const cut = computeCut(blade, asked);
        expect(cut.width).toBeCloseTo(width, 9);
        expect(cut.bladeMiddle).toBeCloseTo(offCenter, 9);
        expect(cut.offCenter).toBeLessThan(offCenter);
        expect(cut.offCenter).toBeGreaterThan(offCenter - blade.kerf / 2);
        expect(asked.tilt).toBeLessThan(solveSetting(sizes, blade)!.tilt);
      }),
      { numRuns: count(300) },
    );
  });

  test('is the deepest line itself where the blade has no thickness', () => {
    const cove = { width: 3.625, depth: 0.875, offCenter: 0.375 };
    const blade = { diameter: 10, kerf: 0 };
    const one = solveSetting(cove, blade)!;
    const other = solveSetting({ ...cove, offCenterTo: 'blade middle' }, blade)!;
    expect(other.tilt).toBeCloseTo(one.tilt, 12);
    const { offCenter, bladeMiddle } = computeCut(blade, one);
    expect(offCenter).toBe(bladeMiddle);
  });
});
