import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { evenPart, fewestParts, spliceParts } from '../../../src/cutting/problem/splice-parts.ts';

const splices = fc
  .record({
    overlap: fc.integer({ min: 0, max: 50 }),
    beyond: fc.integer({ min: 1, max: 500 }),
    more: fc.integer({ min: 1, max: 5000 }),
    least: fc.integer({ min: 0, max: 300 }),
  })
  .map(({ overlap, beyond, more, least }) => ({
    overlap,
    longest: overlap + beyond,
    length: overlap + beyond + more,
    least,
  }));

describe('the parts of a spliced piece', () => {
  test('are whole sticks and a rest', () => {
    // Worked by hand: a run of 30 ft from 16 ft sticks, 1 in of overlap: 361 in = 192 + 169.
    expect(spliceParts(360, 192, 1, 24)).toEqual([192, 169]);
    expect(spliceParts(480, 192, 1, 24)).toEqual([192, 192, 98]);
  });

  test('share the last two evenly where the rest would be a mere patch', () => {
    // 200 in from 192 in sticks, 1 in of overlap: 192 and 9 would do, 101 and 100 are cut instead.
    expect(spliceParts(200, 192, 1, 24)).toEqual([101, 100]);
    expect(spliceParts(200, 192, 1, 9)).toEqual([192, 9]);
  });

  test('sum to the piece and an overlap a joint, fit, and are no shorter than need be', () => {
    fc.assert(
      fc.property(splices, ({ length, longest, overlap, least }) => {
        const parts = spliceParts(length, longest, overlap, least);
        const sum = parts.reduce((total, part) => total + part, 0);
        expect(sum).toBe(length + (parts.length - 1) * overlap);
        expect(Math.max(...parts)).toBeLessThanOrEqual(longest);
        expect(Math.min(...parts)).toBeGreaterThan(overlap);
        expect(Math.min(...parts)).toBeGreaterThanOrEqual(Math.min(least, Math.floor(longest / 2)));
      }),
    );
  });

  test('are as few as can be: one part fewer could not reach', () => {
    fc.assert(
      fc.property(splices, ({ length, longest, overlap }) => {
        const count = fewestParts(length, longest, overlap);
        const reach = (parts: number): number => parts * longest - (parts - 1) * overlap;
        expect(reach(count)).toBeGreaterThanOrEqual(length);
        expect(reach(count - 1)).toBeLessThan(length);
        expect(fewestParts(length, evenPart(length, longest, overlap), overlap)).toBe(count);
      }),
    );
  });
});
