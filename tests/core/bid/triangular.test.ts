/** A number said as three: by hand, by its area, and how it grows. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  checkTriangular,
  computeTriangular,
  type Triangular,
} from '../../../src/core/bid/triangular.ts';

const anyTriangle = fc
  .tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 100, noNaN: true })))
  .map((three): Triangular => {
    const [low, likely, high] = three.toSorted((one, other) => one - other);
    return { low: low!, likely: likely!, high: high! };
  });

describe('a triangular number', () => {
  test('of 1, 2, 4 is 1.548 at 10 % and 3.225 at 90 %', () => {
    // By hand: 1 + sqrt(.1 · 3 · 1), 4 - sqrt(.1 · 3 · 2) [D]
    expect(computeTriangular({ low: 1, likely: 2, high: 4 }, 0.1)).toBeCloseTo(1.548, 3);
    expect(computeTriangular({ low: 1, likely: 2, high: 4 }, 0.9)).toBeCloseTo(3.225, 3);
  });

  test('takes back the share of the area below it', () => {
    fc.assert(
      fc.property(anyTriangle, fc.double({ min: 0, max: 1, noNaN: true }), (three, share) => {
        const { low, likely, high } = three;
        fc.pre(high - low > 1e-3);
        const x = computeTriangular(three, share);
        // The area below x in steps of the density, by the middle of each.
        const steps = 4000;
        const wide = (x - low) / steps;
        let area = 0;
        for (let step = 0; step < steps; step++) {
          const at = low + (step + 0.5) * wide;
          const rise = at < likely ? (at - low) / (likely - low) : (high - at) / (high - likely);
          area += ((rise * 2) / (high - low)) * wide;
        }
        expect(area).toBeCloseTo(share, 3);
      }),
    );
  });

  test('grows with the share and with each of the three', () => {
    const more = fc.double({ min: 0, max: 20, noNaN: true });
    const shares = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyTriangle, shares, shares, more, more, more, (three, one, other, a, b, c) => {
        const [less, greater] = [Math.min(one, other), Math.max(one, other)];
        expect(computeTriangular(three, less)).toBeLessThanOrEqual(
          computeTriangular(three, greater) + 1e-9,
        );
        const [low, likely] = [three.low + a, Math.max(three.likely + b, three.low + a)];
        const raised = { low, likely, high: Math.max(three.high + c, likely) };
        expect(computeTriangular(raised, one)).toBeGreaterThanOrEqual(
          computeTriangular(three, one) - 1e-9,
        );
      }),
    );
  });

  test.each([
    [{ low: 2, likely: 1, high: 3 }, 'bid.range-out-of-order'],
    [{ low: 1, likely: 4, high: 3 }, 'bid.range-out-of-order'],
    [{ low: -1, likely: 1, high: 3 }, 'bid.range-unsound'],
    [{ low: 1, likely: NaN, high: 3 }, 'bid.range-unsound'],
    [{ low: 1, likely: 2, high: Infinity }, 'bid.range-unsound'],
  ])('of %j is refused as %s', (three, code) => {
    expect(checkTriangular('Smoothing', three).map((one) => one.code)).toEqual([code]);
  });

  test('out of order says all three, under its own name', () => {
    const [only] = checkTriangular('Smoothing', { low: 2, likely: 1, high: 3 });
    expect(only!.message).toBe(
      'Smoothing: likely is 1, but low is 2 and high is 3. Likely lies between the two, or is one of them.',
    );
  });
});
