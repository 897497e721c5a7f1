import { expect, test } from '@jest/globals';
import fc from 'fast-check';

import { rangesOverlap, type CellRange } from '../../../src/core/cells/cell-range.ts';
import { overlappingPairs } from '../../../src/sheets/grammar/check/overlapping-pairs.ts';

const place = fc.nat({ max: 12 });
const anyRange = fc.option(
  fc.tuple(place, place, place, place).map(([one, other, left, right]): CellRange => ({
    top: Math.min(one, other),
    bottom: Math.max(one, other),
    left: Math.min(left, right),
    right: Math.max(left, right),
  })),
);
const anyList = fc.array(anyRange, { maxLength: 12 });

/** Every range against every other. */
function eachPair(
  ones: readonly (CellRange | null)[],
  others: readonly (CellRange | null)[],
): number[][] {
  return ones.flatMap((one, at) =>
    others.flatMap((other, to) => {
      if (one === null || other === null || (ones === others && to <= at)) return [];
      return rangesOverlap(one, other) ? [[at, to]] : [];
    }),
  );
}

test('Ranges of one list, and of two, overlap as each held against each other says', () => {
  fc.assert(
    fc.property(anyList, anyList, (ones, others) => {
      expect(overlappingPairs(ones, ones)).toEqual(eachPair(ones, ones));
      expect(overlappingPairs(ones, others)).toEqual(eachPair(ones, others));
    }),
    { numRuns: 500 },
  );
});

test('Twenty thousand ranges are held against each other in the time of a blink', () => {
  const ranges = Array.from({ length: 20_000 }, (_, row) => ({
    top: row,
    bottom: row,
    left: 0,
    right: 3,
  }));
  const start = performance.now();
  expect(overlappingPairs(ranges, ranges)).toEqual([]);
  // Each against each other are 200 million pairs: seconds.
  expect(performance.now() - start).toBeLessThan(1_000);
});
