import { describe, expect, test } from '@jest/globals';
import type { Blade, Cove, Setting } from '../../../src/core/cove/cove.ts';
import { computeCut } from '../../../src/core/cove/cut.ts';
import { computeOutline } from '../../../src/core/cove/outline.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import {
  computeSensitivities,
  moveCause,
  turnOfMissedMark,
  type Cause,
} from '../../../src/core/exact/sensitivity.ts';
import { judgeTrial, type TrialAnswer } from '../../../src/core/exact/trial-cut.ts';
import { computeWindow } from '../../../src/core/exact/window.ts';
import { outlineOf, placeBlade } from '../../../src/core/match/outline-of.ts';
import { degrees, radians, toDegrees, toRadians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const BLADE: Blade = { diameter: 10, kerf: 1 / 8 };

function settingFor(cove: Cove, blade = BLADE): Setting {
  const setting = solveSetting(cove, blade);
  if (setting === undefined) throw new RangeError('no such cove');
  return setting;
}

const next = seededNumbers(51_007);

/** Coves that a 10 in saw cuts within its usual limits; every third of them centered. */
function drawCove(index: number): Cove {
  for (;;) {
    const width = 1.5 + 3 * next();
    const depth = 0.35 + 0.6 * next();
    const offCenter = index % 3 === 0 ? 0 : (width / 5) * (0.2 + 0.8 * next());
    const cove = { width, depth, offCenter };
    const setting = solveSetting(cove, BLADE);
    if (setting === undefined) continue;
    if (toDegrees(setting.approach) < 60 && toDegrees(setting.tilt) < 42) return cove;
  }
}

describe('How much a little more of each thing changes the cove', () => {
  test('is what was derived for 3 by 3/4 centered', () => {
    // [D] by a second program: .038 for half a degree, .027 for 1/64, -.020 for 9 7/8, -.026 for 3/32.
    const setting = settingFor({ width: 3, depth: 0.75, offCenter: 0 });
    const widths = new Map(
      computeSensitivities(setting, BLADE).map(({ cause, change }) => [cause, change.width]),
    );
    const expected: [Cause, number][] = [
      ['approach', 0.038],
      ['height', 0.027],
      ['blade diameter', -0.02],
      ['kerf', -0.026],
    ];
    for (const [cause, width] of expected) {
      // The derived values were printed to a thousandth.
      expect(Math.abs((widths.get(cause) ?? 0) - width)).toBeLessThan(0.0006);
    }
  });

  test('is what was derived for a setting of 30.16 and 37.10', () => {
    // [D] as above; the setting, not the sizes, since those go by the deepest line.
    const setting = {
      approach: toRadians(degrees(30.16)),
      tilt: toRadians(degrees(37.1)),
      height: 0.75,
    };
    const changes = new Map(
      computeSensitivities(setting, BLADE).map((one) => [one.cause, one.change]),
    );
    expect(changes.get('approach')?.width).toBeCloseTo(0.042, 3);
    expect(changes.get('tilt')?.width).toBeCloseTo(0.009, 3);
    expect(changes.get('tilt')?.offCenter).toBeCloseTo(0.009, 3);
    expect(changes.get('height')?.width).toBeCloseTo(0.028, 3);
    expect(changes.get('height')?.depth).toBeCloseTo(0.016, 3);
    expect(changes.get('blade diameter')?.width).toBeCloseTo(-0.02, 3);
    expect(changes.get('kerf')?.width).toBeCloseTo(-0.016, 3);
  });

  test('a rail mark missed by 1/32 over a table of 27 in turns the rail by .07 degree at most', () => {
    // [D]: the turn of a line that crosses the blade line, largest where it runs along it.
    const along = { approach: toRadians(degrees(0.1)), tilt: radians(0), height: 0.5 };
    expect(turnOfMissedMark(along, 27, 1 / 32)).toBeCloseTo(0.0663, 4);
    const approach = toRadians(degrees(35));
    const moved = Math.atan(Math.tan(approach) + 1 / 32 / 27) - approach;
    const turned = turnOfMissedMark({ ...along, approach }, 27, 1 / 32);
    expect(turned).toBeCloseTo(toDegrees(radians(moved)), 4);
  });
});

describe('The window of a set-up', () => {
  const COVES = Array.from({ length: count(60) }, (_, index) => drawCove(index));
  const TOLERANCE = 1 / 64;

  test('keeps the outline within the tolerance at each of its corners, to second order', () => {
    for (const cove of COVES) {
      const setting = settingFor(cove);
      const { approach, tilt, height } = computeWindow(setting, BLADE, TOLERANCE);
      const outline = computeOutline(BLADE, setting, 60);
      const { near, far } = computeCut(BLADE, setting);
      let worst = 0;
      for (const a of [-1, 1]) {
        for (const b of [-1, 1]) {
          for (const h of [-1, 1]) {
            const leaning = setting.tilt + b * toRadians(tilt);
            const corner = {
              approach: radians(setting.approach + a * toRadians(approach)),
              tilt: radians(Math.abs(leaning)),
              height: setting.height + h * height,
            };
            const mirrored = leaning < 0;
            const cut = computeCut(BLADE, corner);
            const middle = ((mirrored ? -1 : 1) * (cut.near + cut.far)) / 2;
            const shift = (near + far) / 2 - middle;
            const off = outlineOf(BLADE, placeBlade(corner, BLADE, { mirrored, shift }));
            worst = Math.max(worst, ...outline.map((point) => Math.abs(off(point).distance)));
          }
        }
      }
      expect(worst).toBeLessThan(1.15 * TOLERANCE);
      expect(worst).toBeGreaterThan(0.6 * TOLERANCE);
      expect(Math.min(approach, tilt, height)).toBeGreaterThan(0);
    }
  });

  test('grows with the tolerance and has room for a scale read to a fifth of a degree', () => {
    const setting = settingFor({ width: 3.25, depth: 0.625, offCenter: 0.375 });
    const fine = computeWindow(setting, BLADE, 1 / 128);
    const coarse = computeWindow(setting, BLADE, 1 / 32);
    expect(coarse.approach).toBeGreaterThan(fine.approach);
    expect(computeWindow(setting, BLADE).approach).toBeGreaterThan(0.1);
  });
});

describe('A measured trial cut', () => {
  const judged = (...given: Parameters<typeof judgeTrial>): TrialAnswer => {
    const answer = judgeTrial(...given);
    if (!answer.ok) throw new Error(answer.faults.map(({ message }) => message).join(' '));
    return answer.value;
  };
  const sizesOf = (setting: Setting, blade = BLADE): Cove => {
    const { width, depth, offCenter } = computeCut(blade, setting);
    return { width, depth, offCenter };
  };

  test('of a set-up whose scales were off leads back to what was aimed at', () => {
    for (let index = 0; index < count(10_000, 500); index++) {
      const cove = drawCove(index);
      const aimed = settingFor(cove);
      // What the scales add without showing it.
      const [a, h] = [toRadians(degrees(4 * next() - 2)), (next() - 0.5) / 16];
      const b = cove.offCenter === 0 ? 0 : toRadians(degrees(3 * next() - 1));
      const cut = {
        approach: radians(aimed.approach + a),
        tilt: radians(Math.max(0, aimed.tilt + b)),
        height: aimed.height + h,
      };
      const { moves, next: read } = judged(cove, BLADE, sizesOf(cut));
      expect(moves.approach).toBeCloseTo(0 - toDegrees(radians(a)), 5);
      expect(moves.tilt).toBeCloseTo(toDegrees(radians(aimed.tilt - cut.tilt)), 5);
      expect(moves.height).toBeCloseTo(-h, 7);
      // Set so, scales that still add as much cut what was wanted.
      const again = sizesOf({
        approach: radians(read.approach + a),
        tilt: radians(read.tilt + cut.tilt - aimed.tilt),
        height: read.height + h,
      });
      expect(again.width).toBeCloseTo(cove.width, 6);
      expect(again.offCenter).toBeCloseTo(cove.offCenter, 6);
    }
  });

  test.each([
    ['approach', 1.2],
    ['tilt', 2],
    ['height', 3 / 64],
    ['blade diameter', -3 / 4],
  ] as const)('tells what alone was wrong: %s by %d', (cause, by) => {
    const cove = { width: 3.25, depth: 0.75, offCenter: 0.5 };
    const aimed = settingFor(cove);
    const moved = moveCause(aimed, BLADE, cause, by);
    const { likely, isRight } = judged(cove, BLADE, sizesOf(moved.setting, moved.blade));
    expect(likely[0]).toMatchObject({ cause, by: expect.closeTo(by, 2) });
    expect(isRight).toBe(false);
  });

  test('that is right to what it was measured to needs no move', () => {
    const cove = { width: 3.25, depth: 0.75, offCenter: 0.5 };
    expect(judged(cove, BLADE, { ...cove, width: 3.26 }).isRight).toBe(true);
    const { sure } = judged(cove, BLADE, cove);
    expect(sure.approach).toBeGreaterThan(0.05);
    expect(sure.approach).toBeLessThan(1);
    expect(sure.height).toBeCloseTo(1 / 64, 6);
  });

  test('whose deep side is the near one leans to the other side', () => {
    const cove = { width: 3.25, depth: 0.75, offCenter: 0 };
    const { cut, next: read } = judged(cove, BLADE, { width: 3.25, depth: 0.75, offCenter: -0.05 });
    expect(cut.tilt).toBeLessThan(0);
    expect(read.tilt).toBeGreaterThan(0);
  });

  test.each([
    ['another cove', { width: 2, depth: 0.75, offCenter: 0.5 }, 'trial.another-cove'],
    ['no cove of this blade', { width: 9, depth: 0.5, offCenter: 0 }, 'trial.not-this-blade'],
    ['no size at all', { width: 0, depth: 0.5, offCenter: 0 }, 'cove.size-missing'],
  ])('of %s is refused in words', (_, measured, code) => {
    const answer = judgeTrial({ width: 3.25, depth: 0.75, offCenter: 0.5 }, BLADE, measured);
    expect(answer.ok ? [] : answer.faults.map((one) => one.code)).toContain(code);
  });
});
