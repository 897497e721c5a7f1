/**
 * What a trace of 100 points with a spread of 1/64 in can tell at best (Cramér-Rao: the inverse of the slopes'
 * products), with the face line known and unknown. [D]: the spreads with a known face line were derived by
 * hand for these coves from the same model, with another program. The first of them is common practice [C].
 */
import { expect, test } from '@jest/globals';
import { computeOutline } from '../../../src/core/cove/outline.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { invertSymmetric } from '../../../src/core/match/least-squares.ts';
import { outlineOf, placeBlade } from '../../../src/core/match/outline-of.ts';

const BLADE = { diameter: 10, kerf: 1 / 8 };

/** Standard deviations of approach and tilt in degrees, and of the slope height in inches. */
function bestSpreads(
  [width, depth, offCenter]: readonly [number, number, number],
  face: 'known' | 'turned' | 'at any level',
): { approach: number; tilt: number; height: number } {
  const setting = solveSetting({ width, depth, offCenter }, BLADE);
  if (setting === undefined) throw new RangeError('no such cove');
  const fine = computeOutline(BLADE, setting, 3000);
  const lengths = fine.map((point, at) => {
    const before = fine[at - 1] ?? point;
    return Math.hypot(point.u - before.u, point.depth - before.depth);
  });
  const all = lengths.reduce((sum, length) => sum + length, 0);
  const off = outlineOf(BLADE, placeBlade(setting, BLADE));
  // Each point counts by the stretch that it stands for, so that the sum is that of 100 even ones.
  const rows = fine.map((point, at) => {
    const { slopes, direction } = off(point);
    const turned = point.u * Math.sin(direction) - point.depth * Math.cos(direction);
    const more = { known: [], turned: [turned], 'at any level': [Math.sin(direction)] }[face];
    return { weight: (100 * (lengths[at] ?? 0)) / all, slopes: [...slopes, ...more] };
  });
  const size = rows[0]?.slopes.length ?? 0;
  const normal = Array.from({ length: size }, (_, at) =>
    Array.from({ length: size }, (__, to) =>
      rows.reduce(
        (sum, { weight, slopes }) => sum + weight * (slopes[at] ?? 0) * (slopes[to] ?? 0),
        0,
      ),
    ),
  );
  const inverse = invertSymmetric(normal);
  const spread = (at: number): number => Math.sqrt(inverse?.[at]?.[at] ?? Infinity) / 64;
  const degrees = 180 / Math.PI;
  return { approach: spread(0) * degrees, tilt: spread(1) * degrees, height: spread(2) };
}

test.each([
  // A size of common practice [C].
  [[3, 0.75, 0.5], 0.18, 0.67],
  [[3, 0.75, 0.1], 0.16, 1.28],
  [[2, 0.5, 0.25], 0.2, 1.2],
  [[4, 0.5, 0.25], 1.05, 1.99],
] as const)(
  'with the face line known, %p tells its approach to %d and its tilt to %d',
  (cove, a, b) => {
    const { approach, tilt } = bestSpreads(cove, 'known');
    expect(approach / a).toBeGreaterThan(0.75);
    expect(approach / a).toBeLessThan(1.25);
    expect(tilt / b).toBeGreaterThan(0.75);
    expect(tilt / b).toBeLessThan(1.25);
  },
);

test('a trace that may be turned tells no tilt, and one of unknown level no height', () => {
  for (const cove of [
    // A size of common practice [C].
    [3, 0.75, 0.5],
    [2, 0.5, 0.25],
    [4, 0.5, 0.25],
  ] as const) {
    const turned = bestSpreads(cove, 'turned');
    const level = bestSpreads(cove, 'at any level');
    expect(turned.tilt).toBeGreaterThan(1000);
    expect(level.height).toBeGreaterThan(1000);
  }
});
