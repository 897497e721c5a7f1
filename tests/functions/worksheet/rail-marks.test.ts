import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Results } from '../../../src/functions/cell.ts';
import { answer, callWith, isError, said } from '../calls.ts';

const SIZES = ['3 5/8', '7/8', '3/8', '4 1/2', '16 1/2', '10 1/2'] as const;
const marks = (results: Results): number[][] =>
  results.slice(1).map((row) => row.slice(1).map(Number));

describe('COVE.RAILMARKS', () => {
  test('is a small table with its headings, which say the feed', () => {
    const table = callWith('RAILMARKS', ...SIZES);
    expect(table.map(([first]) => first)).toEqual(['Fed left to right', 'Near rail', 'Far rail']);
    expect(table[0]?.slice(1)).toEqual([
      'Front edge, inches right of blade line',
      'Back edge, inches right of blade line',
    ]);
  });

  test('sets the rails the blank’s width apart, both at the approach angle to the blade line', () => {
    const approach = (Number(answer('APPROACH', '3 5/8', '7/8', '3/8')) * Math.PI) / 180;
    const [near = [], far = []] = marks(callWith('RAILMARKS', ...SIZES));
    for (const [front = 0, back = 0] of [near, far]) {
      expect(back - front).toBeCloseTo(27 * Math.tan(approach), 9);
    }
    // Square across the rails their distance is that along the front edge times the cosine.
    expect(Math.abs((near[0] ?? 0) - (far[0] ?? 0)) * Math.cos(approach)).toBeCloseTo(4.5, 9);
  });

  test('of an upright blade straddle the middle of the blade, by hand', () => {
    const approach = (Number(answer('APPROACH', 3, '1/2')) * Math.PI) / 180;
    const [near = [], far = []] = marks(callWith('RAILMARKS', 3, '1/2', 0, 5, 16, 10));
    expect(((near[0] ?? 0) + (far[0] ?? 0)) / 2).toBeCloseTo(-16 * Math.tan(approach), 9);
    expect(((near[1] ?? 0) + (far[1] ?? 0)) / 2).toBeCloseTo(10 * Math.tan(approach), 9);
  });

  test('are mirrored for a blade that tilts right', () => {
    const left = marks(callWith('RAILMARKS', ...SIZES, 'left'));
    const right = callWith('RAILMARKS', ...SIZES, 'Right');
    expect(right[0]?.[0]).toBe('Fed right to left');
    marks(right).forEach((row, at) => {
      row.forEach((mark, edge) => expect(mark).toBeCloseTo(-(left[at]?.[edge] ?? 0), 12));
    });
  });

  test('move with the near flat and keep their distance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 48 }), (sixtyFourths) => {
        const flat = sixtyFourths / 64;
        const [near = [], far = []] = marks(callWith('RAILMARKS', ...SIZES, 'left', flat));
        const [middleNear = [], middleFar = []] = marks(
          callWith('RAILMARKS', ...SIZES, 'left', 0.4375),
        );
        const moved = (near[0] ?? 0) - (middleNear[0] ?? 0);
        expect(Math.sign(moved)).toBe(Math.sign(flat - 0.4375));
        expect((far[0] ?? 0) - (middleFar[0] ?? 0)).toBeCloseTo(moved, 9);
      }),
    );
  });

  test('past the widest table give that mark’s cell an error, and the others their numbers', () => {
    // At about 68 degrees from the blade the front marks lie some 40 in to the left.
    const table = callWith('RAILMARKS', 5, '3/4', 0, 6, 16, 10);
    const errors = table.flat().filter(isError);
    const numbers = table.flat().filter((cell) => typeof cell === 'number');
    expect(errors.length).toBeGreaterThan(0);
    expect(numbers.length).toBe(4 - errors.length);
    expect(numbers.length).toBeGreaterThan(0);
    for (const { code, message } of errors) {
      expect(code).toBe('#N/A');
      expect(message).toMatch(/^(?:Near|Far) rail, (?:front|back) edge would lie .* ends 36 in/u);
    }
  });

  test('refuse flats that are too narrow, a word that is no side, and sizes left out, by name', () => {
    const first = (results: Results): string => said(results[0]?.[0]);
    expect(first(callWith('RAILMARKS', '3 5/8', '7/8', '3/8', '3 3/4', 16, 10))).toContain(
      '#N/A Near flat',
    );
    expect(first(callWith('RAILMARKS', ...SIZES, 'up'))).toContain('#VALUE! Tilt side: “up”');
    const none = first(callWith('RAILMARKS'));
    for (const name of [
      'Width',
      'Depth',
      'Off-center',
      'Blank width',
      'Table front',
      'Table back',
    ]) {
      expect(none).toContain(`${name} is empty.`);
    }
  });
});
