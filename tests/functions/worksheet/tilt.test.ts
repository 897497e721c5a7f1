import { describe, expect, test } from '@jest/globals';
import { answer, said } from '../calls.ts';

describe('COVE.TILT', () => {
  test('is 38 degrees from upright for the trade’s example, within 1 1/2 of it', () => {
    // 3 in wide, 3/4 deep, 1/2 off center [C].
    expect(Math.abs(Number(answer('TILT', 3, '3/4', '1/2')) - 38)).toBeLessThan(1.5);
  });

  test('is 0 for a cove whose deepest line lies in the middle', () => {
    expect(answer('TILT', 3, '3/4', 0)).toBe(0);
  });

  test('grows with the off-center', () => {
    const tilts = [1, 2, 3, 4, 5, 6, 7, 8].map((parts) =>
      Number(answer('TILT', 3, '3/4', parts / 16)),
    );
    expect(tilts).toEqual([...tilts].sort((a, b) => a - b));
  });

  test('asks for the off-center by name where it is left out', () => {
    for (const blank of ['', null, undefined]) {
      expect(said(answer('TILT', 3, '3/4', blank))).toContain('#VALUE! Off-center is empty.');
    }
  });

  test('says that no tilt is enough, or that it is past the stop, with the number that is', () => {
    expect(said(answer('TILT', 3, '3/4', '1 1/4'))).toMatch(/^#N\/A Tilt comes to .* 45°/u);
    expect(said(answer('TILT', 3, '3/4', -1))).toContain('#VALUE! Off-center is -1 in');
    expect(said(answer('TILT', 3, '3/4', 2))).toContain('#VALUE! Off-center is 2 in, beyond half');
  });
});
