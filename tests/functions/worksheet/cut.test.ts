import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { callWith, call, column, isError, one, said } from '../calls.ts';

describe('COVE.CUT', () => {
  test('makes about a 2 in cove at 27 degrees to the blade and 1/2 in up, as printed', () => {
    // Popular Woodworking 163 (Aug 2007), p. 27, a 10 in blade.
    const [[width, offCenter] = []] = callWith('CUT', 27, 0, '1/2');
    expect(Math.abs(Number(width) - 2)).toBeLessThan(0.1);
    expect(offCenter).toBeCloseTo(0, 12);
  });

  test('makes the trade’s example within 1/8 in of its width and 1/16 in of its off-center', () => {
    // Set to 61 from the front edge (29 from the blade) and 38 from upright [C].
    const [[width, offCenter] = []] = callWith('CUT', 29, 38, '3/4');
    expect(Math.abs(Number(width) - 3)).toBeLessThan(1 / 8);
    expect(Math.abs(Number(offCenter) - 1 / 2)).toBeLessThan(1 / 16);
  });

  test('straight across the blade cuts its own circle: chord, arc and segment', () => {
    // Machinery's Handbook, 31st ed., p. 50: radius 12, depth 2: chord 13.27, arc 14.06, area 18.01.
    const [[width, , arc, area, undercut] = []] = callWith('CUT', 90, 0, 2, 24, 0);
    expect(width).toBeCloseTo(13.27, 2);
    expect(arc).toBeCloseTo(14.06, 2);
    expect(area).toBeCloseTo(18.01, 1);
    expect(undercut).toBe(0);
  });

  test('gives the deepest line and, up to half the kerf further off, where the blade’s middle tops out', () => {
    const [row = []] = callWith('CUT', 36, 30, '7/8');
    const [, deepest = NaN, , , , middle = NaN, words] = row;
    // By hand: from one kerf off center on half the kerf, foreshortened by tilt and approach.
    const cosine = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
    expect(Number(deepest)).toBeGreaterThan(1 / 8);
    expect(Number(middle) - Number(deepest)).toBeCloseTo((cosine(30) * cosine(36)) / 16, 12);
    expect(words).toBe('');
    const [[, thin, , , , same] = []] = callWith('CUT', 36, 30, '7/8', 10, '0');
    expect(same).toBe(thin);
    const [[, upright, , , , level] = []] = callWith('CUT', 36, 0, '7/8');
    expect([upright, level].map(Number)).toEqual([0, 0]);
  });

  test('is undone by COVE.SETUP', () => {
    const angle = fc.double({ min: 15, max: 50, noNaN: true });
    const tilt = fc.double({ min: 0.05, max: 40, noNaN: true });
    const height = fc.double({ min: 0.25, max: 1, noNaN: true });
    fc.assert(
      fc.property(angle, tilt, height, (approach, lean, depth) => {
        const [[width, offCenter] = []] = callWith('CUT', approach, lean, depth);
        const [row] = callWith('SETUP', width, depth, offCenter);
        expect(row?.[0]).toBeCloseTo(approach, 6);
        expect(row?.[2]).toBeCloseTo(lean, 6);
      }),
    );
  });

  test('refuses angles out of range by name, saying from what they are measured', () => {
    const rows = call('CUT', column(0, 91, 30, 30, ''), column(0, 0, -1, 61, 0), one('3/4'));
    expect(rows.map(([first]) => said(first))).toEqual([
      '#VALUE! Approach is 0°; measured from the blade line, it must be more than 0° and at most 90°.',
      '#VALUE! Approach is 91°; measured from the blade line, it must be more than 0° and at most 90°.',
      '#VALUE! Tilt is -1°; measured from upright, it must be from 0° to 60°.',
      '#VALUE! Tilt is 61°; measured from upright, it must be from 0° to 60°.',
      '#VALUE! Approach is empty and is needed here.',
    ]);
  });

  test('has no answer above what the blade can rise, nor where a corner alone shows', () => {
    const rows = call('CUT', one(30), column(0, 45, 45, 45), column('3 1/8', 3, '1/32', '1/16'));
    expect(rows.map(([first]) => isError(first))).toEqual([false, true, true, false]);
    expect(said(rows[1]?.[0])).toMatch(/^#N\/A The blade must rise/u);
    // A corner alone up to (t/2) sin b = 1/16 · sin 45.
    const corner = Number((Math.SQRT1_2 / 16).toFixed(4));
    expect(said(rows[2]?.[0])).toContain(`#N/A Height is 1/32 in; tilted so far`);
    expect(said(rows[2]?.[0])).toContain(`up to ${corner} in`);
    expect(rows[2]?.at(-1)).toContain('Raise the blade or tilt it less.');
  });
});
