import { describe, expect, test } from '@jest/globals';
import { checkCove } from '../../../src/core/cove/feasibility.ts';
import { computeCut } from '../../../src/core/cove/cut.ts';
import { computeSectionArea } from '../../../src/core/cove/outline.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { degrees, radians, toDegrees, toRadians } from '../../../src/core/units/angle.ts';

const upright = (approachDeg: number, height: number) => ({
  approach: toRadians(degrees(approachDeg)),
  tilt: radians(0),
  height,
});

describe('circular segments, cut by a thin blade straight across', () => {
  // Machinery's Handbook, 31st ed., p. 79 (the first is printed truncated) and p. 50, ex. 3-4.
  test.each([
    { radius: 60, height: 8, chord: 59.86, within: 0.01, where: 'p. 79' },
    { radius: 25 / 3, height: 6, chord: 16, within: 1e-12, where: 'p. 79' },
    { radius: 12, height: 2, chord: 13.27, within: 0.005, where: 'p. 50, ex. 3-4' },
  ])('radius $radius, height $height has the printed chord $chord ($where)', (row) => {
    const cut = computeCut({ diameter: 2 * row.radius, kerf: 0 }, upright(90, row.height));
    expect(Math.abs(cut.width - row.chord)).toBeLessThanOrEqual(row.within);
  });

  test('radius 12, height 2 has the printed area 18.01 (p. 50, ex. 3-4)', () => {
    const area = computeSectionArea({ diameter: 24, kerf: 0 }, upright(90, 2));
    expect(Math.abs(area - 18.01)).toBeLessThanOrEqual(0.005);
  });
});

describe('coves in print', () => {
  // "Making Cove Profiles on a Table Saw", instructables.com: b = 2.179449, F = 1.582373 and with
  // them the set-up triangle's legs 2bF + kw and 2bw - kF; the angle follows from the legs.
  test('blade 10, kerf 1/8, 3 wide, 1/2 deep: the printed triangle gives 41.827° from the blade', () => {
    const [b, f, half, kerf] = [2.179449, 1.582373, 1.5, 0.125];
    const printed = toDegrees(
      radians(Math.atan2(2 * b * half - kerf * f, 2 * b * f + kerf * half)),
    );
    const setting = solveSetting({ width: 3, depth: 0.5, offCenter: 0 }, { diameter: 10, kerf });
    expect(Math.abs(toDegrees(setting!.approach) - printed)).toBeLessThan(2e-5);
  });

  // Popular Woodworking 163 (Aug 2007), p. 27.
  test('27° from the blade, blade up 1/2 in: about a 2 in cove with a 10 in blade', () => {
    const cut = computeCut({ diameter: 10, kerf: 0 }, upright(27, 0.5));
    expect(Math.abs(cut.width - 2)).toBeLessThan(1 / 32);
  });

  // Blade size: Woodworker's Journal 16-6 (1992) p. 39. The widths are regression values of ours.
  test.each([
    { diameter: 10, width: 1.9789 },
    { diameter: 9.875, width: 1.9658 },
    { diameter: 8.25, width: 1.7874 },
    { diameter: 12, width: 2.1773 },
  ])('at 27° and 1/2 deep a $diameter in blade cuts $width in', ({ diameter, width }) => {
    expect(computeCut({ diameter, kerf: 0 }, upright(27, 0.5)).width).toBeCloseTo(width, 4);
  });

  // Common practice, no source [C]: fence 61° from the front edge, which is 29° from the blade line,
  // tilt 38°, both read to the whole degree. The exact answers are 59.2 and 37.8 for a blade without
  // thickness, 60.3 and 39.35 for one of 1/8.
  test('3 wide, 3/4 deep, 1/2 off center: the trade setting is met within 2° and 1 1/2°', () => {
    for (const kerf of [0, 0.125]) {
      const setting = solveSetting(
        { width: 3, depth: 0.75, offCenter: 0.5 },
        { diameter: 10, kerf },
      );
      expect(Math.abs(90 - toDegrees(setting!.approach) - 61)).toBeLessThan(2);
      expect(Math.abs(toDegrees(setting!.tilt) - 38)).toBeLessThan(1.5);
    }
  });

  test('set to 61° from the front edge and 38° the blade cuts near 3 wide and 1/2 off center', () => {
    const cut = computeCut(
      { diameter: 10, kerf: 0.125 },
      { approach: toRadians(degrees(90 - 61)), tilt: toRadians(degrees(38)), height: 0.75 },
    );
    expect(Math.abs(cut.width - 3)).toBeLessThan(1 / 8);
    expect(Math.abs(cut.offCenter - 0.5)).toBeLessThan(1 / 16);
  });

  // woodcraft.com cove article: narrow deep coves are elliptical, wide shallow ones near a true arc.
  test('a narrow deep cove strays further from a circle than a wide shallow one', () => {
    const strays = (width: number, depth: number): number => {
      const blade = { diameter: 10, kerf: 0 };
      const setting = solveSetting({ width, depth, offCenter: 0 }, blade)!;
      const radius = (width * width) / 4 / (2 * depth) + depth / 2;
      const circle = radius * radius * Math.acos(1 - depth / radius);
      const segment = circle - (radius - depth) * (width / 2);
      return Math.abs(computeSectionArea(blade, setting) / segment - 1);
    };
    expect(strays(2, 1)).toBeGreaterThan(10 * strays(4, 0.5));
  });
});

describe('regression values of our own, reproduced by two independent programs', () => {
  // Those of 3 by 3/4, off 1/2, are the check value's [C].
  test.each([
    [10, 0, 3, 1, 0, 30.0, 0],
    [10, 0, 3, 0.5, 0, 43.492, 0],
    [10, 0.125, 3, 0.5, 0, 41.827, 0],
    [10, 0, 3, 0.75, 0, 34.715, 0],
    [10, 0.125, 3, 0.75, 0, 33.345, 0],
    [10, 0, 3, 0.75, 0.5, 30.78, 37.81],
    [10, 0.125, 3, 0.75, 0.5, 29.686, 39.354],
    [10, 0.125, 4, 0.75, 0.5, 41.216, 42.228],
    [10, 0.125, 2, 0.5, 0.25, 24.146, 32.085],
    [10, 0.125, 2.5, 0.625, 0.125, 29.314, 16.875],
    [10, 0.125, 5, 1.25, 0.75, 42.012, 39.941],
    [10, 0.125, 2, 0.5, 0.05, 25.743, 8.249],
    [10, 0.125, 3, 0.75, 0.02, 33.389, 2.388],
    [10, 0.125, 5, 1.5, 0, 43.427, 0],
  ])(
    'blade %d, kerf %d, %d wide, %d deep, %d off center: approach %d°, tilt %d°',
    (diameter, kerf, width, depth, offCenter, approach, tilt) => {
      const { setting, faults } = checkCove({ width, depth, offCenter }, { diameter, kerf });
      expect(faults).toEqual([]);
      expect(toDegrees(setting!.approach)).toBeCloseTo(approach, 3);
      expect(toDegrees(setting!.tilt)).toBeCloseTo(tilt, 3);
    },
  );

  test.each([
    // The check value again [C], and one of everyday size.
    [10, 0.09375, 3, 0.75, 0.5, 30.314, 37.286],
    [10, 0.125, 3, 0.75, 0.5, 30.161, 37.1],
    [10, 0.125, 2, 0.5, 0.25, 24.681, 27.506],
  ])(
    "to the blade's middle: blade %d, kerf %d, %d wide, %d deep, %d off: approach %d°, tilt %d°",
    (diameter, kerf, width, depth, offCenter, approach, tilt) => {
      const cove = { width, depth, offCenter, offCenterTo: 'blade middle' } as const;
      const { setting, faults } = checkCove(cove, { diameter, kerf });
      expect(faults).toEqual([]);
      expect(toDegrees(setting!.approach)).toBeCloseTo(approach, 3);
      expect(toDegrees(setting!.tilt)).toBeCloseTo(tilt, 3);
    },
  );
});
