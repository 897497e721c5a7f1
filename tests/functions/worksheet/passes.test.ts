import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { answer, call, callWith, column, said } from '../calls.ts';

describe('COVE.PASSES', () => {
  test('counts by hand: 3/4 in takes one of 1/16, 11 up to 23/32, and one of 1/32', () => {
    // From 2/32 to 23/32 are 21/32, in steps of 2/32 at most: 11.
    expect(answer('PASSES', '3/4')).toBe(13);
    expect(answer('PASSES', 0.75, '1/16', '1/16', '1/32')).toBe(13);
  });

  test('takes one pass for what a first pass reaches', () => {
    expect(call('PASSES', column('1/16', 0.05))).toEqual([[1], [1]]);
  });

  test('refuses a step over 1/8 in, and says that too many passes are no answer', () => {
    expect(said(answer('PASSES', 1, '1/16', '3/16'))).toMatch(/^#VALUE! Step is 3\/16 in/u);
    expect(said(answer('PASSES', 1, '1/16', 0.0001))).toMatch(/^#N\/A .*at most 1000/u);
    expect(said(answer('PASSES', 0))).toBe('#VALUE! Depth is 0 in; it must be more than 0.');
  });
});

describe('COVE.PASSHEIGHTS', () => {
  test('spills as many heights as COVE.PASSES counts, rising by no more than the step to the depth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 256 }),
        fc.integer({ min: 1, max: 8 }),
        (parts, step) => {
          const depth = parts / 64;
          const heights = callWith('PASSHEIGHTS', depth, undefined, step / 64).map(([height]) =>
            Number(height),
          );
          expect(heights).toHaveLength(Number(answer('PASSES', depth, undefined, step / 64)));
          expect(heights.at(-1)).toBe(depth);
          heights.forEach((height, at) => {
            const rise = height - (heights[at - 1] ?? 0);
            expect(rise).toBeGreaterThan(0);
            // The first may take 1/16 in, the last leaves 1/32 in at most for itself.
            const most = at === 0 ? 1 / 16 : Math.max(step / 64, 1 / 32);
            expect(rise).toBeLessThanOrEqual(most + 1e-9);
          });
        },
      ),
    );
  });

  test('takes single cells and refuses a range by name', () => {
    const [[refused] = []] = call('PASSHEIGHTS', column('3/4', '1/2'));
    expect(said(refused)).toBe(
      '#VALUE! Depth is 2 × 1 cells; this function takes a single cell there.',
    );
  });
});
