/**
 * A differently built reference: even tilts and even approaches, and nothing but the forward model
 * (cut.ts), which shares nothing with the solver.
 */
import { describe, expect, test } from '@jest/globals';
import type { Blade, Cove } from '../../../src/core/cove/cove.ts';
import { checkCove } from '../../../src/core/cove/feasibility.ts';
import { computeCut } from '../../../src/core/cove/cut.ts';
import { searchSetting } from '../../../src/core/cove/search-setting.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { degrees, radians, toDegrees } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const TILTS = 150;
const APPROACHES = 90;
const QUARTER_TURN = Math.PI / 2;

interface Drawn {
  readonly cove: Cove;
  readonly blade: Blade;
}

/** Everyday coves and extreme ones: tiny depths, thick cutters, nearly as wide as the blade reaches. */
function drawCoves(all: number, seed: number): Drawn[] {
  const next = seededNumbers(seed);
  return Array.from({ length: all }, () => {
    const diameter = 6 + 8 * next();
    const kerf = next() < 0.2 ? (diameter / 4) * next() : 0.03 + 0.25 * next();
    const depth = next() < 0.3 ? 0.005 + 0.2 * next() : 0.05 + (diameter / 2 - 0.1) * next();
    const reach = Math.hypot(2 * Math.sqrt(depth * (diameter - depth)), kerf);
    const width = kerf + (1.03 * reach - kerf) * Math.sqrt(next());
    const offCenter = Math.max(1e-4, (width / 2) * next() ** 2);
    return { cove: { width, depth, offCenter }, blade: { diameter, kerf } };
  });
}

/** The tilt past which the blade's middle plane no longer cuts, or its middle comes up to the table. */
function mostTiltOf({ diameter, kerf }: Blade, height: number): number {
  let most = 0;
  for (let tilt = 0; tilt < QUARTER_TURN - 1e-3; tilt += 1e-4) {
    const slope = (height - (kerf / 2) * Math.sin(tilt)) / Math.cos(tilt);
    if (slope <= 0 || slope >= diameter / 2) break;
    most = tilt;
  }
  return most;
}

/** The least tilt between two even ones at which a cove's off-center is passed, on any approach. */
function tiltByBrute({ cove, blade }: Drawn, most: number): number | undefined {
  const { width, depth: height, offCenter } = cove;
  const missAt = (approach: number, tilt: number): number =>
    computeCut(blade, { approach: radians(approach), tilt: radians(tilt), height }).width - width;
  let before: (number | undefined)[] = [];
  for (let step = 0; step <= TILTS; step++) {
    const tilt = (most * step) / TILTS;
    // By kind: growing with the approach for the first time, falling, growing again.
    const now: (number | undefined)[] = [];
    let [from, missFrom] = [0, missAt(0, tilt)];
    for (let at = 1; at <= APPROACHES; at++) {
      const to = (QUARTER_TURN * at) / APPROACHES;
      const missTo = missAt(to, tilt);
      if (missFrom < 0 !== missTo < 0) {
        let [low, high] = [from, to];
        for (let halving = 0; halving < 30; halving++) {
          const middle = (low + high) / 2;
          if (missAt(middle, tilt) < 0 === missFrom < 0) low = middle;
          else high = middle;
        }
        const kind = missFrom < 0 ? (now[1] === undefined ? 0 : 2) : 1;
        now[kind] = computeCut(blade, {
          approach: radians(low),
          tilt: radians(tilt),
          height,
        }).offCenter;
      }
      [from, missFrom] = [to, missTo];
    }
    for (const kind of [0, 1, 2]) {
      const [last, here] = [before[kind], now[kind]];
      if (last !== undefined && here !== undefined && last < offCenter !== here < offCenter) {
        return tilt;
      }
    }
    before = now;
  }
  return undefined;
}

describe('the set-up of any cove', () => {
  test('is found wherever a grid of all settings finds one, and cuts what was asked for', () => {
    let [made, refused] = [0, 0];
    for (const drawn of drawCoves(count(3000, 300), 1309)) {
      const { cove, blade } = drawn;
      const setting = solveSetting(cove, blade);
      if (setting === undefined) {
        refused++;
        const brute = tiltByBrute(drawn, mostTiltOf(blade, cove.depth));
        expect([drawn, brute]).toEqual([drawn, undefined]);
        continue;
      }
      made++;
      const cut = computeCut(blade, setting);
      expect(Math.abs(cut.width - cove.width)).toBeLessThan(1e-9);
      expect(Math.abs(cut.offCenter - cove.offCenter)).toBeLessThan(1e-9);
      expect(setting.approach).toBeGreaterThan(0);
      expect(setting.approach).toBeLessThanOrEqual(QUARTER_TURN);
    }
    expect(made).toBeGreaterThan(refused);
    expect(refused).toBeGreaterThan(20);
  });

  test('is at most as far leaned as the stop wherever a grid up to the stop finds one', () => {
    let refused = 0;
    for (const drawn of drawCoves(count(1500, 150), 77)) {
      const { cove, blade } = drawn;
      const { setting, faults } = checkCove(cove, blade, { tiltStop: degrees(45) });
      const fault = faults.find(({ code }) =>
        ['cove.no-tilt-enough', 'cove.tilt-beyond-stop', 'cove.corner-alone'].includes(code),
      );
      if (fault === undefined) {
        if (setting !== undefined) expect(toDegrees(setting.tilt)).toBeLessThan(45 + 1e-5);
        continue;
      }
      refused++;
      const most = Math.min(Math.PI / 4, mostTiltOf(blade, cove.depth));
      expect([drawn, tiltByBrute(drawn, most)]).toEqual([drawn, undefined]);
    }
    expect(refused).toBeGreaterThan(10);
  });

  test('is found where the larger of two approaches alone cuts it, nearly straight across', () => {
    const blade = { diameter: 12.542, kerf: 1.835 };
    const cove = { width: 12.672, depth: 5.538, offCenter: 0.635 };
    const setting = solveSetting(cove, blade)!;
    const cut = computeCut(blade, setting);
    expect(cut.width).toBeCloseTo(cove.width, 9);
    expect(cut.offCenter).toBeCloseTo(cove.offCenter, 9);
    expect(searchSetting(cove, blade)!.tilt).toBeCloseTo(setting.tilt, 6);
    const middle = solveSetting({ ...cove, offCenterTo: 'blade middle' }, blade)!;
    expect(toDegrees(middle.approach)).toBeCloseTo(79.85, 2);
    expect(toDegrees(middle.tilt)).toBeCloseTo(35.11, 1);
  });

  test('is found where the off-center peaks just before its two approaches meet', () => {
    // Both fold into one near 1.8 degrees of tilt; the larger one alone comes so far off center.
    const blade = { diameter: 13.187, kerf: 2.062 };
    const cove = { width: 3.326, depth: 0.1653, offCenter: 0.1008 };
    const setting = solveSetting(cove, blade)!;
    const cut = computeCut(blade, setting);
    expect(cut.width).toBeCloseTo(cove.width, 9);
    expect(cut.offCenter).toBeCloseTo(cove.offCenter, 9);
    expect(toDegrees(setting.approach)).toBeGreaterThan(55);
  });

  test('of a tiny cove under a thick blade is refused as a corner\u2019s cut, with what would do', () => {
    const blade = { diameter: 9.875, kerf: 0.25 };
    const cove = { width: 0.3904, depth: 0.0171, offCenter: 0.1091 };
    const { setting, faults } = checkCove(cove, blade);
    expect(setting).toBeUndefined();
    expect(faults.map(({ code }) => code)).toEqual(['cove.corner-alone']);
    // The tilt from which on the blade's middle is out of the wood: sin b = 2 h / t, by hand.
    const tilt = (Math.asin((2 * 0.0171) / 0.25) * 180) / Math.PI;
    const [{ limit, details } = {}] = faults;
    const named = (details as { tiltStop: { degrees: number } }).tiltStop.degrees;
    expect(named).toBeCloseTo(tilt, 4);
    const { inches } = limit as { inches: number };
    expect(inches).toBeLessThan(cove.offCenter);
    const nearer = { ...cove, offCenter: inches * 0.999 };
    expect(checkCove(nearer, blade).faults).toEqual([]);
  });
});
