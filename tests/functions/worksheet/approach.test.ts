import { describe, expect, test } from '@jest/globals';
import { answer, call, column, one, said } from '../calls.ts';

describe('COVE.APPROACH', () => {
  test('agrees with a published worked example: 41.827 degrees from the blade', () => {
    // "Making Cove Profiles on a Table Saw", instructables.com: blade 10, kerf 1/8, half-width 1.5,
    // depth 1/2; the printed legs 7.0849 and 6.3406 give the angle.
    expect(answer('APPROACH', 3, '1/2')).toBeCloseTo(
      (Math.atan2(6.3406, 7.0849) * 180) / Math.PI,
      3,
    );
  });

  test('is 29 degrees from the blade and 61 from the front edge for the trade’s example, read to 2', () => {
    // 3 in wide, 3/4 deep, 1/2 off center, set to 61 from the table's front edge [C].
    expect(Math.abs(Number(answer('APPROACH', 3, '3/4', '1/2')) - 29)).toBeLessThan(2);
    const fromFront = Number(answer('APPROACH', 3, '3/4', '1/2', 10, '1/8', 'front'));
    expect(Math.abs(fromFront - 61)).toBeLessThan(2);
  });

  test('from the front edge is 90 less the angle from the blade line', () => {
    const fromBlade = Number(answer('APPROACH', '3 5/8', '7/8', '3/8'));
    expect(answer('APPROACH', '3 5/8', '7/8', '3/8', undefined, undefined, ' Front ')).toBe(
      90 - fromBlade,
    );
    for (const blade of ['blade', 'BLADE', '', null, undefined]) {
      expect(answer('APPROACH', '3 5/8', '7/8', '3/8', undefined, undefined, blade)).toBe(
        fromBlade,
      );
    }
  });

  test('refuses any other word by name', () => {
    const refused = answer('APPROACH', 3, '3/4', 0, 10, '1/8', 'fence');
    expect(said(refused)).toBe(
      '#VALUE! Measured from: “fence” is not known here. Allowed: blade, front.',
    );
  });

  test('says how wide the widest cove is where this one is too wide', () => {
    // Upright, by 75° from the blade line: chord · sin 75° + kerf · cos 75°, chord 2 sqrt(0.75 · 9.25).
    const steepest = (75 * Math.PI) / 180;
    const chord = 2 * Math.sqrt(0.75 * 9.25);
    const widest = (chord * Math.sin(steepest) + Math.cos(steepest) / 8).toFixed(4);
    expect(said(answer('APPROACH', 9, '3/4'))).toContain(
      `#N/A Width is 9 in; this blade cuts ${Number(widest)} in at most`,
    );
  });

  test('goes through a table of widths and depths', () => {
    const table = call('APPROACH', [[2, 3]], column('1/2', '3/4', 'deep'));
    expect(table.map((row) => row.length)).toEqual([2, 2, 2]);
    expect(table[0]?.[1]).toBe(answer('APPROACH', 3, '1/2'));
    expect(table[1]?.[0]).toBe(answer('APPROACH', 2, '3/4'));
    expect(said(table[2]?.[0])).toContain('#VALUE! Depth: “deep”');
  });

  test('names every argument at fault, not just the first', () => {
    const message = said(answer('APPROACH', 'x', 'y', 0, 10, -1));
    for (const name of ['Width', 'Depth', 'Kerf']) expect(message).toContain(name);
    expect(call('APPROACH', one(3))).toHaveLength(1);
    expect(said(answer('APPROACH', 3))).toContain('#VALUE! Depth is empty.');
  });
});
