import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { computeSectionArea } from '../../../src/core/cove/outline.ts';
import {
  METRIC_GRID_INCHES,
  planEvenLoad,
  planPasses,
  USUAL_PASSES,
} from '../../../src/core/cove/passes.ts';
import { solveSetting } from '../../../src/core/cove/set-up.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const sixteenth = 1 / 16;

describe('even steps', () => {
  // Worked by hand with first and step 1/16 and a last pass of 1/32.
  test.each([
    { depth: 0.75, count: 13, why: '1/16, then 21/32 in 11 steps, then 1/32' },
    { depth: 0.5, count: 9, why: '1/16, then 13/32 in 7 steps, then 1/32' },
    { depth: 3 / 32, count: 2, why: '1/16, then 1/32' },
    { depth: 5 / 64, count: 2, why: '3/64, then 1/32' },
    { depth: 1 / 16, count: 1, why: 'one light pass' },
    { depth: 1 / 64, count: 1, why: 'one light pass' },
  ])('$depth deep takes $count passes: $why', ({ depth, count }) => {
    const { heights } = planPasses(depth);
    expect(heights).toHaveLength(count);
    expect(heights.at(-1)).toBe(depth);
  });

  test('no last pass: 1/2 deep in sixteenths is 8 equal passes', () => {
    const { heights } = planPasses(0.5, { first: sixteenth, step: sixteenth, last: 0 });
    expect(heights).toEqual([1, 2, 3, 4, 5, 6, 7, 8].map((count) => count / 16));
  });

  test('lie on whole and half millimetres in a metric shop, no step over the rule and as many as without', () => {
    // By hand, in millimetres: 13.5 deep in 1.5, 1.5 and 0.5: 11.5 in 8 steps of 1.4375, each brought down.
    const rules = { first: 1.5 / 25.4, step: 1.5 / 25.4, last: 0.5 / 25.4 };
    const onGrid = { ...rules, grid: METRIC_GRID_INCHES };
    const { heights } = planPasses(13.5 / 25.4, onGrid);
    const said = heights.map((height) => Number((height * 25.4).toFixed(6)));
    expect(said).toEqual([1.5, 2.5, 4, 5.5, 7, 8.5, 10, 11.5, 13, 13.5]);
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 60, noNaN: true }), (depth) => {
        const [on, off] = [onGrid, rules].map((one) => planPasses(depth / 25.4, one).heights);
        expect(on).toHaveLength(off!.length);
        expect(on!.at(-1)).toBe(off!.at(-1));
        on!.forEach((height, at) => {
          expect(height - (on![at - 1] ?? 0)).toBeLessThan(1.5 / 25.4 + 1e-8);
          expect(height).toBeGreaterThan(on![at - 1] ?? 0);
        });
      }),
      { numRuns: 100 },
    );
  });

  test('rise to the depth exactly, no step over the rule, in as few passes as that allows', () => {
    const rule = fc.double({ min: 0.01, max: 0.125, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        rule,
        rule,
        fc.double({ min: 0, max: 0.125, noNaN: true }),
        (depth, first, step, last) => {
          const { heights, faults } = planPasses(depth, { first, step, last });
          expect(faults).toEqual([]);
          expect(heights.at(-1)).toBe(depth);
          expect(heights[0]).toBeLessThanOrEqual(first + 1e-9);
          const steps = heights.map((height, index) => height - (heights[index - 1] ?? 0));
          for (const [index, one] of steps.entries()) {
            expect(one).toBeGreaterThan(0);
            if (index > 0) expect(one).toBeLessThanOrEqual(Math.max(step, last) + 1e-8);
          }
          expect(heights.length).toBeLessThanOrEqual(Math.max(0, depth - last - first) / step + 3);
        },
      ),
    );
  });
});

describe('the first pass', () => {
  // By hand: a last pass that may take more than the whole depth leaves the first pass its own.
  test.each([
    { depth: 0.1087, first: 1 / 32, last: 0.1136, heights: [1 / 32, 0.1087] },
    { depth: 0.1087, first: 1 / 32, last: 0.1086, heights: [1 / 32, 0.1087] },
    { depth: 0.0625, first: 0.05, last: 0.0625, heights: [0.03125, 0.0625] },
    { depth: 0.125, first: 1 / 16, last: 1 / 8, heights: [1 / 16, 1 / 8] },
  ])('of $first stands before a last pass of $last: $depth deep', ({ heights, ...given }) => {
    const { depth, first, last } = given;
    expect(planPasses(depth, { first, step: sixteenth, last }).heights).toEqual(heights);
  });

  test('is never swallowed, no step is over its limit, the last height is the depth', () => {
    const next = seededNumbers(20_260);
    const between = (least: number, most: number): number => least + (most - least) * next();
    for (let drawn = 0; drawn < count(20_000, 2_000); drawn++) {
      const first = between(0.005, 0.125);
      const step = between(0.005, 0.125);
      const last = next() < 0.2 ? 0 : between(0, 0.125);
      const depth = next() < 0.5 ? between(0.001, 0.3) : between(0.001, 4);
      const { heights, faults } = planPasses(depth, { first, step, last });
      if (faults.length > 0) continue;
      expect(heights[0]).toBeLessThanOrEqual(first + 1e-9);
      expect(heights.at(-1)).toBe(depth);
      heights.slice(1).forEach((height, at) => {
        const bite = height - heights[at]!;
        expect(bite).toBeGreaterThan(0);
        const isLast = at === heights.length - 2 && last > 1e-9;
        expect(bite).toBeLessThanOrEqual((isLast ? last : step) + 2e-9);
      });
    }
  });
});

describe('refusals', () => {
  test.each([
    [{ ...USUAL_PASSES, step: 0.13 }, 'cove.step-too-high', 'step'],
    [{ ...USUAL_PASSES, first: 0.2 }, 'cove.step-too-high', 'firstPass'],
    [{ ...USUAL_PASSES, last: 0.2 }, 'cove.step-too-high', 'lastPass'],
    [{ ...USUAL_PASSES, step: 0 }, 'length.not-positive', 'step'],
    [{ ...USUAL_PASSES, first: Number.NaN }, 'length.not-positive', 'firstPass'],
    [{ ...USUAL_PASSES, last: -0.01 }, 'length.negative', 'lastPass'],
    [{ ...USUAL_PASSES, step: 0.0001 }, 'cove.too-many-passes', 'step'],
  ])('%j is %s (%s)', (rules, code, argument) => {
    const plan = planPasses(0.75, rules);
    expect(plan.heights).toEqual([]);
    expect(plan.faults.map((one) => [one.code, one.argument])).toEqual([[code, argument]]);
  });

  test('a step over 1/16 is cautioned', () => {
    const plan = planPasses(0.75, { ...USUAL_PASSES, step: 0.1 });
    expect(plan.cautions.map((one) => one.code)).toEqual(['cove.step-high']);
    expect(plan.heights.length).toBeGreaterThan(1);
  });
});

describe('even load', () => {
  const blade = { diameter: 10, kerf: 0.125 };
  test.each([0, 0.5])(
    'takes the same area in every pass between first and last (off-center %d)',
    (offCenter) => {
      const setting = solveSetting({ width: 3, depth: 0.75, offCenter }, blade)!;
      const { heights } = planEvenLoad(blade, setting, USUAL_PASSES);
      const areas = heights.map((height) => computeSectionArea(blade, { ...setting, height }));
      const shares = areas.slice(1, -1).map((area, index) => area - areas[index]!);
      for (const share of shares) expect(share / shares[0]!).toBeCloseTo(1, 6);
      const steps = heights.slice(1).map((height, index) => height - heights[index]!);
      for (const step of steps) expect(step).toBeLessThanOrEqual(sixteenth + 1e-9);
      expect(heights.at(-1)).toBe(0.75);
      expect(heights.length).toBeGreaterThan(planPasses(0.75).heights.length);
    },
  );
});
