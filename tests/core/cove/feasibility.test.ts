import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { computeCut } from '../../../src/core/cove/cut.ts';
import { checkCove } from '../../../src/core/cove/feasibility.ts';
import { computeScaleEffect } from '../../../src/core/cove/scale-rounding.ts';
import type { SawLimits } from '../../../src/core/cove/saw-limits.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { degrees, radians, toDegrees, toRadians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';

const blade = { diameter: 10, kerf: 0.125 };
const codesOf = (faults: readonly { code: string }[]): string[] => faults.map((one) => one.code);

describe('a cove that cannot be made', () => {
  test.each([
    ['width 0', { width: 0, depth: 0.5, offCenter: 0 }, 'cove.size-missing'],
    ['depth below 0', { width: 3, depth: -1, offCenter: 0 }, 'cove.size-missing'],
    ['width that is no number', { width: Number.NaN, depth: 1, offCenter: 0 }, 'cove.size-missing'],
    ['endless width', { width: Infinity, depth: 1, offCenter: 0 }, 'cove.size-missing'],
    ['off-center below 0', { width: 3, depth: 0.5, offCenter: -0.1 }, 'cove.off-center-negative'],
    [
      'off-center past half',
      { width: 3, depth: 0.5, offCenter: 1.6 },
      'cove.off-center-beyond-half',
    ],
    ['depth of the radius', { width: 3, depth: 5, offCenter: 0 }, 'cove.too-deep-for-blade'],
    ['width of the kerf', { width: 0.125, depth: 0.5, offCenter: 0 }, 'cove.no-wider-than-kerf'],
    ['width over the chord', { width: 5, depth: 0.5, offCenter: 0 }, 'cove.too-wide'],
    ['tilt over the stop', { width: 3, depth: 0.5, offCenter: 0.7 }, 'cove.tilt-beyond-stop'],
    [
      'height over the flange',
      { width: 3, depth: 3.9, offCenter: 0 },
      'cove.blade-cannot-rise-unstated-saw',
    ],
  ])('is refused for its %s', (_, cove, code) => {
    const { faults } = checkCove(cove, blade);
    expect(codesOf(faults)).toContain(code);
    for (const one of faults) expect(one.message).toMatch(/^[^“]*(“(NaN|Infinity)”[^“]*)?\.$/u);
  });

  test('names every reason at once, not the first', () => {
    const { faults } = checkCove(
      { width: 3, depth: 1.1, offCenter: 0.9 },
      blade,
      { greatestHeightUpright: 1, greatestHeightAt45: 0.7, tiltStop: degrees(30) },
      { blankWidth: 3.1, blankThickness: 1.2 },
    );
    expect(codesOf(faults).sort()).toEqual([
      'cove.blade-cannot-rise',
      'cove.flat-too-narrow',
      'cove.flat-too-narrow',
      'cove.tilt-beyond-stop',
      'cove.web-too-thin',
    ]);
  });

  test('too wide: the width, the depth and the blade that it names would do', () => {
    const cove = { width: 4.2, depth: 0.5, offCenter: 0 };
    // A blade sharpened far down, on a saw that took it as a 10 in one.
    const blade = { diameter: 9.125, kerf: 1 / 8 };
    const [only] = checkCove(cove, blade).faults;
    const { widthThatWould, depthThatWould, bladeThatWould } = only!.details as Record<
      string,
      { inches: number }
    >;
    const width = widthThatWould!.inches;
    const depth = depthThatWould!.inches;
    const diameter = bladeThatWould!.inches;
    expect(diameter).toBeLessThanOrEqual(10);
    expect(codesOf(checkCove({ ...cove, width }, blade).faults)).toEqual([]);
    expect(codesOf(checkCove({ ...cove, width: width + 1 / 64 }, blade).faults)).toEqual([
      'cove.too-wide',
    ]);
    expect(codesOf(checkCove({ ...cove, depth }, blade).faults)).toEqual([]);
    expect(codesOf(checkCove({ ...cove, depth: depth - 1 / 64 }, blade).faults)).toEqual([
      'cove.too-wide',
    ]);
    expect(codesOf(checkCove(cove, { ...blade, diameter }).faults)).toEqual([]);
    const smaller = { ...blade, diameter: diameter - 1 / 8 };
    expect(codesOf(checkCove(cove, smaller).faults)).toEqual(['cove.too-wide']);
  });

  test('wider than the blade itself: no depth is offered, nor a blade that no saw takes', () => {
    const cove = { width: 30, depth: 0.5, offCenter: 0 };
    const [only] = checkCove(cove, blade).faults;
    expect(Object.keys(only!.details!).sort()).toEqual(['steepest', 'widthThatWould']);
    expect(only!.message).toMatch(/Lessen the width to \d[^,]* in\.$/u);
  });

  test('a larger blade is named only where the saw is known to take it and lifts it so far', () => {
    const cove = { width: 5, depth: 0.5, offCenter: 0 };
    const detailsOf = (saw: SawLimits) => checkCove(cove, blade, saw).faults[0]?.details ?? {};
    expect(detailsOf({})).not.toHaveProperty('bladeThatWould');
    expect(detailsOf({ heightsMeasuredWith: 16, greatestHeightUpright: 4 })).toHaveProperty(
      'bladeThatWould',
    );
  });

  test('tilt past the stop: the off-center that it names is met at the stop', () => {
    const cove = { width: 3, depth: 0.5, offCenter: 0.7 };
    const { faults, setting } = checkCove(cove, blade);
    expect(toDegrees(setting!.tilt)).toBeGreaterThan(45);
    const { offCenterAtStop } = faults[0]!.details as Record<string, { inches: number }>;
    const atStop = solveSetting({ ...cove, offCenter: offCenterAtStop!.inches }, blade);
    expect(toDegrees(atStop!.tilt)).toBeCloseTo(45, 6);
  });

  test('further off center than any tilt: the off-center that it names is met at the stop', () => {
    const cove = { width: 1.5, depth: 0.09, offCenter: 0.75 };
    const { faults } = checkCove(cove, blade);
    expect(codesOf(faults)).toEqual(['cove.no-tilt-enough']);
    const { inches } = faults[0]!.limit as { inches: number };
    const atLimit = solveSetting({ ...cove, offCenter: inches }, blade);
    expect(toDegrees(atLimit!.tilt)).toBeCloseTo(45, 5);
    expect(checkCove({ ...cove, offCenter: inches * 0.999 }, blade).faults).toEqual([]);
  });

  test('the flats and the web that it names would do', () => {
    const cove = { width: 3.625, depth: 0.875, offCenter: 0.375 };
    const poor = { blankWidth: 3.825, blankThickness: 1, nearFlat: 0.05 };
    const { faults } = checkCove(cove, blade, {}, poor);
    const wider = (
      faults.find((one) => one.code === 'cove.flat-too-narrow')!.details as Record<
        string,
        { inches: number }
      >
    )['widthThatWould']!.inches;
    const thicker = (
      faults.find((one) => one.code === 'cove.web-too-thin')!.details as Record<
        string,
        { inches: number }
      >
    )['thicknessThatWould']!.inches;
    const better = { blankWidth: wider, blankThickness: thicker, nearFlat: 1 / 8 };
    expect(checkCove(cove, blade, {}, better).faults).toEqual([]);
  });

  // By hand: 3 5/8 for the cove, 1/2 as it is by the near rail, 1/8 by the far one.
  test('names a blank that leaves a wide flat as wide as it is', () => {
    const cove = { width: 3.625, depth: 0.875, offCenter: 0.375 };
    const stock = { blankThickness: 2, nearFlat: 1 / 2 };
    const { faults } = checkCove(cove, blade, {}, { ...stock, blankWidth: 4.175 });
    expect(faults.map(({ code, argument, details }) => [code, argument, details])).toEqual([
      ['cove.flat-too-narrow', 'farFlat', { widthThatWould: { inches: 4.25 } }],
    ]);
    expect(checkCove(cove, blade, {}, { ...stock, blankWidth: 4.25 }).faults).toEqual([]);
  });

  test("the saw's rise is interpolated along the slope between upright and 45°", () => {
    // Upright 3 1/8, at 45° 2 1/8 [M, a user's input]: slope heights 3.125 and 3.005.
    const saw = { greatestHeightUpright: 3.125, greatestHeightAt45: 2.125 };
    const halfway = (3.125 + 2.125 * Math.SQRT2) / 2;
    const tilted = { approach: toRadians(degrees(40)), tilt: toRadians(degrees(22.5)) };
    const at = (slope: number) => {
      const height = slope * Math.cos(tilted.tilt);
      const cut = computeCut({ diameter: 14, kerf: 0.125 }, { ...tilted, height });
      return checkCove({ ...cut, depth: height }, { diameter: 14, kerf: 0.125 }, saw).faults;
    };
    expect(codesOf(at(halfway + 0.001))).toEqual(['cove.blade-cannot-rise']);
    expect(at(halfway - 0.001)).toEqual([]);
  });
});

describe('cautions', () => {
  test('tell of a steep approach, a thin kerf and an undercut', () => {
    const steep = checkCove({ width: 4.2, depth: 0.5, offCenter: 0 }, blade);
    expect(codesOf(steep.cautions)).toEqual(['cove.steep-approach']);
    const thin = checkCove({ width: 3, depth: 0.5, offCenter: 0 }, { diameter: 10, kerf: 3 / 32 });
    expect(codesOf(thin.cautions)).toEqual(['cove.thin-kerf']);
    const deep = checkCove({ width: 2, depth: 1.5, offCenter: 0.9 }, { diameter: 8, kerf: 0.125 });
    expect(codesOf(deep.cautions)).toContain('cove.undercut');
  });
});

describe('whatever is asked', () => {
  const any = fc.oneof(
    fc.double({ min: -2, max: 12 }),
    fc.constantFrom(0, Number.NaN, Infinity, -0),
  );

  test('the answer is a sound setting or a fault, never NaN', () => {
    fc.assert(
      fc.property(any, any, any, any, any, (width, depth, offCenter, diameter, kerf) => {
        const { setting, faults } = checkCove({ width, depth, offCenter }, { diameter, kerf });
        expect(setting !== undefined || faults.length > 0).toBe(true);
        if (setting !== undefined) {
          const cut = computeCut({ diameter, kerf }, setting);
          expect(Math.abs(cut.width - width) + Math.abs(cut.offCenter - offCenter)).toBeLessThan(
            1e-8,
          );
        }
        for (const one of faults) expect(one.message).toMatch(/\.$/u);
      }),
      { numRuns: count(400) },
    );
  });
});

describe("the saw's scales", () => {
  test('a setting on a mark of the scale is cut as drawn', () => {
    const setting = {
      approach: toRadians(degrees(31.5)),
      tilt: toRadians(degrees(12)),
      height: 0.6,
    };
    const effect = computeScaleEffect(blade, setting);
    expect(effect.widthChange).toBeCloseTo(0, 9);
    expect(effect.offCenterChange).toBeCloseTo(0, 9);
  });

  test('rounding to the whole degree takes the nearest mark and says what it cuts', () => {
    const setting = solveSetting({ width: 3.625, depth: 0.875, offCenter: 0.375 }, blade)!;
    const scale = { approach: degrees(1), tilt: degrees(1) };
    const effect = computeScaleEffect(blade, setting, scale);
    expect(toDegrees(effect.rounded.approach)).toBeCloseTo(36, 9);
    expect(toDegrees(effect.rounded.tilt)).toBeCloseTo(30, 9);
    // To first order the change is what the half degrees say of what the marks leave over.
    const turned = toDegrees(setting.approach) - 36;
    const leaned = toDegrees(setting.tilt) - 30;
    const { approach, tilt } = effect.perHalfDegree;
    const guess = -(turned * approach.width + leaned * tilt.width) / 0.5;
    expect(Math.abs(effect.widthChange - guess)).toBeLessThan(0.02 * Math.abs(guess));
  });

  test('an approach below half a step does not round to a rip cut', () => {
    const setting = { approach: toRadians(degrees(0.1)), tilt: radians(0), height: 0.5 };
    expect(toDegrees(computeScaleEffect(blade, setting).rounded.approach)).toBeCloseTo(0.5, 9);
  });
});
