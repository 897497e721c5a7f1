import { describe, expect, test } from '@jest/globals';
import { answer, call, column, one, said } from '../calls.ts';

const first = (results: ReturnType<typeof call>): string => said(results[0]?.[0]);

describe('COVE.STICKS', () => {
  test('takes 38 sticks for sixteen doors cased both sides, where feet alone say 34', () => {
    // A published puzzle (thedailywtf.com, "Avoiding the Splice"): 84 + 84 + 32 in a side, sticks of 192.
    const pieces = column(84, "7'", '32');
    expect(call('STICKS', pieces, one("16'"), column(32, 32, 32), one(0))).toEqual([[38]]);
    expect(call('STICKS', pieces, one(192), column(32, 32, 32), one('1/8'), one(1))).toEqual([
      [38],
    ]);
  });

  test('counts kerfs and trims: two pieces of 4 ft fit 8 ft without a kerf, and not with one', () => {
    expect(call('STICKS', column(48, 48), one(96), null, one('0'))).toEqual([[1]]);
    expect(call('STICKS', column(48, 48), one(96))).toEqual([[2]]);
    expect(call('STICKS', column(48, 48), one('96 1/8'))).toEqual([[1]]);
    expect(call('STICKS', column(48, 48), one('98 1/8'), null, null, one(1))).toEqual([[1]]);
    expect(call('STICKS', column(48, 48), one(98), null, null, one(1))).toEqual([[2]]);
  });

  test('skips blank cells wherever they stand, and pieces that none are wanted of', () => {
    const pieces = [
      [48, '', 30],
      [null, 48, undefined],
    ];
    expect(call('STICKS', pieces, one(96), null, one('0'))).toEqual([[2]]);
    const quantities = [
      [1, 'what', 0],
      ['', 1, null],
    ];
    expect(call('STICKS', pieces, one(96), quantities, one('0'))).toEqual([[1]]);
    expect(call('STICKS', one(48), one(96), one(0))).toEqual([[0]]);
  });

  test('fills a stick exactly with lengths in millimetres, typed or calculated', () => {
    expect(call('STICKS', column('1220 mm', '1220 mm'), one('2440 mm'), null, one('0'))).toEqual([
      [1],
    ]);
    const halves = column(1220 / 25.4, 1220 / 25.4);
    expect(call('STICKS', halves, one(2440 / 25.4), null, one('0'))).toEqual([[1]]);
    const thirds = column(100 / 3, 100 / 3, 100 / 3);
    expect(call('STICKS', thirds, one(100.01), null, one('0'))).toEqual([[1]]);
  });

  test('names every piece at fault by its row, a few of them, and says how many more', () => {
    expect(first(call('STICKS', column(48, 'x', 0), one(96)))).toMatch(
      /^#VALUE! The piece in row 2: “x” .* The piece in row 3 is 0 in/u,
    );
    const many = column(...Array.from({ length: 20 }, () => 'x'));
    expect(first(call('STICKS', many, one(96)))).toContain(
      '15 more cells of Pieces are at fault too.',
    );
    expect(first(call('STICKS', column(48, 120), one(96)))).toBe(
      '#N/A The piece in row 2 is 120 in; a stick gives 96 in at most once its end trims are off. Use longer sticks or shorten the piece.',
    );
    expect(first(call('STICKS', [[48, 120]], one(96)))).toContain(
      'The piece in row 1, column 2 is',
    );
  });

  test('refuses other things by name', () => {
    expect(said(answer('STICKS', '', 96))).toContain('#VALUE! Pieces is empty.');
    expect(first(call('STICKS', column(1, 2), column(96, 48)))).toContain(
      '#VALUE! Stick length is 2 × 1',
    );
    expect(first(call('STICKS', column(1, 2), one(96), one(2)))).toContain(
      '#VALUE! Quantities is 1 × 1',
    );
    expect(first(call('STICKS', column(1, 2), one(96), [[1, 2]]))).toContain('Quantities is 1 × 2');
    expect(said(answer('STICKS', 1, 2, 1, 0, 1))).toContain('#N/A A stick of 2 in is used up');
    const inAStick = Math.floor(96.125 / 1.125);
    expect(answer('STICKS', 1, 96, 20_000)).toBe(Math.ceil(20_000 / inAStick));
    expect(first(call('STICKS', column(1, 2), one(96), column(20_000, 1)))).toBe(
      '#VALUE! 20,001 pieces are asked for; at most 20,000 are planned at once.',
    );
  });
});
