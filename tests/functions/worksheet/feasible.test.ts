import { describe, expect, test } from '@jest/globals';
import { answer, call, column, said } from '../calls.ts';

describe('COVE.FEASIBLE', () => {
  test('is TRUE for an everyday cove and FALSE for one wider than the blade can cut', () => {
    expect(answer('FEASIBLE', 3, '3/4')).toBe(true);
    expect(answer('FEASIBLE', 9, '3/4')).toBe(false);
  });

  test('looks at the stock where it is given: a web of 1/4 in, flats of 1/8 in', () => {
    // Least web: woodcentral.com archive; least flats: woodcraft.com.
    expect(answer('FEASIBLE', 3, '3/4', 0, 10, '1/8', 1)).toBe(true);
    expect(answer('FEASIBLE', 3, '3/4', 0, 10, '1/8', '15/16')).toBe(false);
    expect(answer('FEASIBLE', 3, '3/4', 0, 10, '1/8', undefined, '3 1/4')).toBe(true);
    expect(answer('FEASIBLE', 3, '3/4', 0, 10, '1/8', undefined, '3 3/16')).toBe(false);
  });

  test('is #VALUE! for bad input, never FALSE', () => {
    for (const given of [
      ['x', '3/4'],
      [3, 0],
      [3, '3/4', -1],
      [3, '3/4', 0, 10, 4],
    ]) {
      expect(said(answer('FEASIBLE', ...given))).toMatch(/^#VALUE! /u);
    }
  });

  test('is TRUE exactly where COVE.APPROACH has an answer', () => {
    const widths = column(1, 3, 6, 7, 9);
    const depths = [[0.25, 0.75, 1.5, 4]];
    const feasible = call('FEASIBLE', widths, depths).flat();
    const angles = call('APPROACH', widths, depths).flat();
    expect(feasible).toEqual(angles.map((angle) => typeof angle === 'number'));
    expect(new Set(feasible)).toEqual(new Set([true, false]));
  });
});
