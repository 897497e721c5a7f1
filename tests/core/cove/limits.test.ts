/** Limits of wood and saw, each against a reference that shares nothing with what it checks. */
import { describe, expect, test } from '@jest/globals';
import { computeCut } from '../../../src/core/cove/cut.ts';
import type { Blade, Cove } from '../../../src/core/cove/cove.ts';
import { checkCove } from '../../../src/core/cove/feasibility.ts';
import { computeRise, type SawLimits } from '../../../src/core/cove/saw-limits.ts';
import { degrees, radians, toRadians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';
import { seeDisc, type Seen } from './sampled-disc.ts';

const BLADE = { diameter: 10, kerf: 0.125 };
/** A 10 in saw, from memory [M]. */
const SAW = { greatestHeightUpright: 3.125, greatestHeightAt45: 2.125 };
/** What a rim of 360 points lies inside of its circle, and what its faces' chords miss between them. */
const SAMPLED = 2e-3;
const codesOf = (faults: readonly { code: string }[]): string[] => faults.map((one) => one.code);

/** Where the seen rims cross the table, furthest to either side, by straight lines from point to point. */
function faceOf(points: readonly Seen[], around: number): { near: number; far: number } {
  let [near, far] = [Infinity, -Infinity];
  points.forEach((one, at) => {
    const next = at % around === around - 1 ? points[at + 1 - around]! : points[at + 1]!;
    if (one.level < 0 === next.level < 0) return;
    const share = one.level / (one.level - next.level);
    const across = one.across + share * (next.across - one.across);
    near = Math.min(near, across);
    far = Math.max(far, across);
  });
  return { near, far };
}

describe('an undercut', () => {
  test('leaves the least flat of wood in every cove of a grid that is called feasible', () => {
    const around = 360;
    let drawn = 0;
    const wrong: unknown[] = [];
    const found = { feasible: 0, eats: 0, meets: 0 };
    for (let width = 1; width <= 6; width += 1 / 4) {
      for (let depth = 1 / 4; depth <= 3; depth += 1 / 8) {
        for (let offCenter = 0; offCenter <= width / 2; offCenter += 1 / 8) {
          drawn += 1;
          // Of the grid each fifth in an everyday run.
          if (drawn % 5 >= count(5, 1)) continue;
          const cove = { width, depth, offCenter };
          const stock = { blankWidth: width + 1 / 4, blankThickness: depth + 1 / 4 };
          const { setting, faults } = checkCove(cove, BLADE, SAW, stock);
          const codes = codesOf(faults);
          if (setting === undefined || codes.some((code) => !code.startsWith('cove.undercut'))) {
            continue;
          }
          const seen = seeDisc({ ...BLADE, ...setting }, around);
          let furthest = -Infinity;
          // The faces' rims alone: between them the disc is straight and reaches no further.
          for (const { across, level } of seen) {
            if (level >= 0 && across > furthest) furthest = across;
          }
          const wood = faceOf(seen, around).near - 1 / 8 + stock.blankWidth - furthest;
          if (faults.length === 0) {
            found.feasible += 1;
            if (wood < 1 / 8 - SAMPLED) wrong.push([cove, wood]);
          } else {
            found[codes[0] === 'cove.undercut-meets-rail' ? 'meets' : 'eats'] += 1;
            if (wood > 1 / 8 + SAMPLED) wrong.push([cove, wood]);
            const { widthThatWould } = faults[0]!.details as Record<string, { inches: number }>;
            const wider = { ...stock, blankWidth: widthThatWould!.inches };
            if (checkCove(cove, BLADE, SAW, wider).faults.length > 0) wrong.push([cove, wider]);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
    // Hundreds of each kind at least: the grid is no empty one.
    expect(found.feasible).toBeGreaterThan(count(1500, 300));
    expect(found.eats).toBeGreaterThan(count(500, 100));
    expect(found.meets).toBeGreaterThan(count(400, 80));
  });

  test('is never on the near side', () => {
    const next = seededNumbers(77);
    for (let drawn = 0; drawn < count(2000); drawn++) {
      const disc = {
        diameter: 7 + 5 * next(),
        kerf: 0.25 * next(),
        approach: 0.1 + 1.2 * next(),
        tilt: 0.8 * next(),
        height: 0.2 + 2 * next(),
      };
      const seen = seeDisc(disc, 360);
      const within = seen.filter(({ level }) => level >= 0).map(({ across }) => across);
      const table = seen.filter(({ level }) => Math.abs(level) < 0.05).map(({ across }) => across);
      expect(Math.min(...within)).toBeGreaterThan(Math.min(...table) - 1e-9);
    }
  });

  // By hand: flats of 1/4 each, the wall .5656 past the face: .5656 + .125 = .6906, to 64ths 45/64; twice
  // that, since the cove sits midway, and 3 1/2: 4 29/32. With a near flat of 1/4 given: 4 29/64.
  test('names the blank that would do, the near flat as it is given', () => {
    const cove = { width: 3.5, depth: 2.25, offCenter: 1.75 };
    const judge = (stock: { blankWidth: number; nearFlat?: number }) =>
      checkCove(cove, BLADE, SAW, { ...stock, blankThickness: 3 });
    const [only] = judge({ blankWidth: 4, nearFlat: 1 / 4 }).faults;
    expect(only!.code).toBe('cove.undercut-meets-rail');
    expect(only!.message).toMatch(/come out of the blank's edge and meet the far rail/u);
    const { widthThatWould } = only!.details as Record<string, { inches: number }>;
    expect(judge({ blankWidth: widthThatWould!.inches, nearFlat: 1 / 4 }).faults).toEqual([]);
    const less = widthThatWould!.inches - 1 / 32;
    expect(codesOf(judge({ blankWidth: less, nearFlat: 1 / 4 }).faults)).toEqual([
      'cove.undercut-eats-flat',
    ]);
  });

  test('is told without a board by the far flat that it needs', () => {
    const { faults, cautions } = checkCove({ width: 2, depth: 1, offCenter: 0.75 }, BLADE);
    expect(faults).toEqual([]);
    expect(cautions[0]!.message).toMatch(/It needs a far flat of at least .* 1\/8 in that stays/u);
  });
});

describe('a cove a hair off center', () => {
  test('is judged as the centered one, unless it lies at a limit', () => {
    const next = seededNumbers(4_711);
    let compared = 0;
    let tooWide = 0;
    for (let drawn = 0; drawn < count(2000); drawn++) {
      const blade = { diameter: 7 + 5 * next(), kerf: 0.25 * next() };
      const cove = { width: 0.3 + 8 * next(), depth: 0.1 + 3.2 * next(), offCenter: 0 };
      const hair = 1e-6 * 10 ** (4 * next());
      const judge = (more: Partial<Cove>): string =>
        codesOf(checkCove({ ...cove, ...more }, blade).faults).join(' ');
      const centered = judge({});
      const around = [0.98, 1.02].flatMap((share) => [
        judge({ width: cove.width * share }),
        judge({ depth: cove.depth * share }),
      ]);
      if (around.some((one) => one !== centered)) continue;
      compared += 1;
      if (centered === 'cove.too-wide') tooWide += 1;
      expect([cove, blade, hair, judge({ offCenter: hair })]).toEqual([
        cove,
        blade,
        hair,
        centered,
      ]);
    }
    expect(compared).toBeGreaterThan(count(2000) / 2);
    expect(tooWide).toBeGreaterThan(20);
  });

  test.each([0, 1e-6, 0.001, 0.02])('that is too wide is so at %d too', (offCenter) => {
    const { faults } = checkCove({ width: 6.2, depth: 1, offCenter }, BLADE);
    expect(codesOf(faults)).toEqual(['cove.too-wide']);
    const { inches } = faults[0]!.limit as { inches: number };
    // By hand: chord 2 sqrt(1 · 9) = 6, 6 sin 75° + cos 75° / 8 = 5.8279.
    expect(Math.abs(inches - 5.8279)).toBeLessThan(0.006);
  });
});

describe('how high a blade rises', () => {
  const at = (tilt: number, diameter: number, saw: SawLimits): number =>
    computeRise(toRadians(degrees(tilt)), { diameter, kerf: 0.125 } satisfies Blade, saw).most;

  test('is half its diameter less 1 7/8 where the saw does not say', () => {
    expect(at(0, 10, {})).toBe(3.125);
    expect(at(45, 10, {})).toBe(3.125);
    expect(at(0, 8, {})).toBe(2.125);
    expect(at(0, 3, {})).toBe(0);
    const [only] = checkCove({ width: 3, depth: 3.75, offCenter: 0 }, BLADE).faults;
    expect(only!.message).toMatch(/isn't given, so 3 1\/8 in is assumed.*Measure your saw/u);
    expect(checkCove({ width: 3, depth: 3.125, offCenter: 0 }, BLADE).faults).toEqual([]);
  });

  // By hand: the arbor of a saw that shows 3 1/8 of a 10 in blade lies 1 7/8 below the table. A 9 in
  // blade shows 4 1/2 - 1 7/8 = 2 5/8. At 45°, 2 1/8 of height are 3.00520 of slope: 2.50520 are left,
  // a height of 1.77145, which is 2 1/8 less 1/2 · cos 45°.
  test('is half as much less with a smaller blade than the heights were measured with', () => {
    const saw = { ...SAW, heightsMeasuredWith: 10 };
    expect(at(0, 9, saw)).toBeCloseTo(2.625, 12);
    expect(at(45, 9, saw) * Math.SQRT1_2).toBeCloseTo(1.77145, 5);
    expect(at(45, 9, saw) * Math.SQRT1_2).toBeCloseTo(2.125 - 0.5 * Math.SQRT1_2, 12);
    expect(at(0, 9, SAW)).toBe(3.125);
    expect(at(0, 10.25, saw)).toBeCloseTo(3.25, 12);
  });
});

test('an approach past the steepest is refused, by the saw that says so', () => {
  const cove = { width: 5.7, depth: 1, offCenter: 0 };
  expect(checkCove(cove, BLADE).faults).toEqual([]);
  expect(codesOf(checkCove(cove, BLADE).cautions)).toEqual(['cove.steep-approach']);
  const saw = { steepestApproach: degrees(65) };
  const { faults, cautions } = checkCove(cove, BLADE, saw);
  expect(codesOf(faults)).toEqual(['cove.too-wide']);
  expect(faults[0]!.message).toMatch(/up to 65° from the blade line/u);
  expect(cautions).toEqual([]);
  const { inches } = faults[0]!.limit as { inches: number };
  const setting = { approach: toRadians(degrees(65)), tilt: radians(0), height: 1 };
  expect(inches).toBeCloseTo(computeCut(BLADE, setting).width, 9);
});
