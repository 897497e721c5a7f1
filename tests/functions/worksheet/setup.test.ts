import { describe, expect, test } from '@jest/globals';
import { answer, call, column, isError, one, said } from '../calls.ts';

describe('COVE.SETUP', () => {
  test('gives a row each what the single functions give', () => {
    const rows = call('SETUP', column('3 5/8', '2 1/2'), column('7/8', '1/2'), column('3/8', null));
    expect(rows).toEqual([
      [
        answer('APPROACH', '3 5/8', '7/8', '3/8'),
        answer('APPROACH', '3 5/8', '7/8', '3/8', undefined, undefined, 'front'),
        answer('TILT', '3 5/8', '7/8', '3/8'),
        answer('PASSES', '7/8'),
        '',
      ],
      [
        answer('APPROACH', '2 1/2', '1/2'),
        answer('APPROACH', '2 1/2', '1/2', 0, 10, '1/8', 'front'),
        0,
        answer('PASSES', '1/2'),
        '',
      ],
    ]);
  });

  test('has a bad row’s error once, in its first cell, and its words in the last', () => {
    const [good, bad, impossible] = call('SETUP', column(3, 'x', 9), one('3/4'));
    expect(good?.filter(isError)).toEqual([]);
    expect(bad?.filter(isError)).toHaveLength(1);
    expect(bad?.slice(1, 4)).toEqual(['', '', '']);
    expect(said(bad?.[0])).toMatch(/^#VALUE! Width: “x”/u);
    expect(bad?.[4]).toBe(answer('REASON', 'x', '3/4'));
    expect(said(impossible?.[0])).toMatch(/^#N\/A Width is 9 in/u);
    expect(impossible?.[4]).toBe(answer('REASON', 9, '3/4'));
  });

  test('says cautions in the last column beside the numbers', () => {
    const [[angle, , , , words] = []] = call(
      'SETUP',
      one(3),
      one('3/4'),
      one(0),
      one(10),
      one('3/32'),
    );
    expect(angle).toBeGreaterThan(0);
    expect(words).toMatch(/^Caution: The kerf is 3\/32 in/u);
  });

  test('takes columns or single cells, and refuses a wider range by name', () => {
    const [refused] = call('SETUP', [[3, 4]], one('3/4'));
    expect(refused).toHaveLength(5);
    expect(said(refused?.[0])).toBe(
      '#VALUE! Width is 1 × 2 cells; this function takes one column there, or a single cell.',
    );
  });
});
