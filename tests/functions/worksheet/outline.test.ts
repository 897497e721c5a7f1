import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { call, callWith, column, said } from '../calls.ts';

const numbers = (rows: readonly (readonly unknown[])[]): number[][] =>
  rows.map((row) => row.map(Number));

describe('COVE.OUTLINE', () => {
  test('gives 64 points, or as many as are asked for, from edge to edge', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 200 }), (count) => {
        const points = numbers(
          callWith('OUTLINE', '3 5/8', '7/8', '3/8', undefined, undefined, count),
        );
        expect(points).toHaveLength(count);
        expect(points[0]).toEqual([0, 0]);
        expect(points.at(-1)?.[0]).toBeCloseTo(3.625, 9);
        expect(points.at(-1)?.[1]).toBe(0);
        expect(Math.max(...points.map(([, deep]) => deep ?? 0))).toBeCloseTo(0.875, 12);
      }),
    );
    expect(callWith('OUTLINE', 3, '3/4')).toHaveLength(64);
  });

  test('gives no point twice, whether the kerf leaves a flat or the sides meet in one point', () => {
    const sizes = fc.constantFrom(
      ['3 5/8', '7/8', '3/8', 10, '1/8'],
      [3, '5/8', 0, 10, '1/8'],
      [3, '5/8', 0, 10, 0],
      [4, '3/4', '1/16', 10, '1/8'],
    );
    fc.assert(
      fc.property(sizes, fc.integer({ min: 4, max: 60 }), (given, count) => {
        const points = numbers(callWith('OUTLINE', ...given, count));
        expect(points).toHaveLength(count);
        points.slice(1).forEach(([across = 0, deep = 0], at) => {
          const [before = 0, deepBefore = 0] = points[at] ?? [];
          expect(Math.hypot(across - before, deep - deepBefore)).toBeGreaterThan(1e-6);
        });
        const top = Math.max(...points.map(([, deep]) => deep ?? 0));
        const deepest = points.filter(([, deep = 0]) => deep > top - 1e-12);
        expect(deepest.length).toBeLessThanOrEqual(2);
      }),
    );
  });

  test('of a blade without thickness, upright, lies on an ellipse by hand', () => {
    // A circle of radius 5 seen at the approach: across / sin a is the chord's own distance.
    const [[approach] = []] = callWith('SETUP', 3, '3/4', 0, 10, '0');
    const sine = Math.sin((Number(approach) * Math.PI) / 180);
    for (const [across = 0, deep = 0] of numbers(callWith('OUTLINE', 3, '3/4', 0, 10, '0'))) {
      expect(Math.hypot((across - 1.5) / sine, deep + 4.25)).toBeCloseTo(5, 9);
    }
  });

  test('refuses a range, a fraction of a point and too few of them by name', () => {
    const [[range] = []] = call('OUTLINE', column(3, 4), [['3/4']]);
    expect(said(range)).toContain('#VALUE! Width is 2 × 1 cells');
    const points = (count: unknown): string =>
      said(callWith('OUTLINE', 3, '3/4', 0, 10, '1/8', count)[0]?.[0]);
    expect(points(3)).toBe('#VALUE! Points is 3; at least 4 is needed.');
    expect(points(2001)).toBe('#VALUE! Points is 2001; at most 2000 is allowed.');
    expect(points(4.5)).toBe('#VALUE! Points is 4.5; it must be a whole number.');
  });

  test('is one error cell where the cove can’t be made', () => {
    const results = callWith('OUTLINE', 9, '3/4');
    expect(results.map((row) => row.map(said))).toEqual([[expect.stringMatching(/^#N\/A Width/u)]]);
  });
});
