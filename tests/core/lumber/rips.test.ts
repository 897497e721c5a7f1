import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { countBlanks } from '../../../src/core/lumber/blanks.ts';
import { listRips } from '../../../src/core/lumber/rips.ts';

const inches = (text: string): Fraction => new Fraction(text);
const ripsOf = (board: string, blanks: readonly string[], kerf = '1/8', most = 2000) =>
  listRips({
    boardWidth: inches(board),
    blankWidths: blanks.map(inches),
    kerf: inches(kerf),
    most,
  });

describe('The ways to rip a board', () => {
  // By hand. 4 1/2 and 3 take 7 5/8 with one kerf. Two of 4 1/2 take 9 1/8. Three of 3 take 9 1/4. Four and a
  // half, and two of 3 take 10 3/4.
  test.each([
    [
      '8',
      [
        [1, 1],
        [0, 2],
      ],
    ],
    [
      '9 1/8',
      [
        [2, 0],
        [1, 1],
        [0, 2],
      ],
    ],
    [
      '9 1/4',
      [
        [2, 0],
        [1, 1],
        [0, 3],
      ],
    ],
    [
      '10 3/4',
      [
        [2, 0],
        [1, 2],
        [0, 3],
      ],
    ],
    ['4', [[0, 1]]],
    ['2', []],
  ])('of %s in into 4 1/2 and 3 are %j', (board, rips) => {
    expect(ripsOf(board, ['4 1/2', '3'])).toEqual({ rips, isLimited: false });
  });

  test('stand in the order of the widths, and a blank that is too wide is in none', () => {
    expect(ripsOf('8', ['3', '9', '4 1/2']).rips).toEqual([
      [1, 0, 1],
      [2, 0, 0],
    ]);
  });

  test('for one width are as many as the rule of the hand gives', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: 0, max: 8 }),
        (board, blank, kerf) => {
          const [boardWidth, blankWidth, cut] = [board, blank, kerf].map(
            (n) => new Fraction(n, 16),
          );
          const counted = countBlanks({
            boardWidth: boardWidth!,
            blankWidth: blankWidth!,
            kerf: cut!,
          });
          const { rips } = listRips({
            boardWidth: boardWidth!,
            blankWidths: [blankWidth!],
            kerf: cut!,
            most: 10,
          });
          expect(rips).toEqual(counted.ok ? [[counted.value]] : []);
        },
      ),
    );
  });

  test('are all mixes that fit and are within no other, as trying each of them finds', () => {
    const sizes = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), sizes, fc.nat(3), (board, blanks, kerf) => {
        const fits = (counts: readonly number[]): boolean => {
          const number = counts.reduce((sum, count) => sum + count, 0);
          const wide = counts.reduce((sum, count, at) => sum + count * blanks[at]!, 0);
          return number > 0 && wide + (number - 1) * kerf <= board;
        };
        const every = blanks.reduce<number[][]>(
          (all, blank) =>
            all.flatMap((counts) =>
              Array.from({ length: Math.floor(board / blank) + 1 }, (_, count) => [
                ...counts,
                count,
              ]),
            ),
          [[]],
        );
        const fitting = every.filter(fits);
        const isWithin = (one: readonly number[], other: readonly number[]): boolean =>
          one !== other && one.every((count, at) => count <= other[at]!);
        const widest = fitting.filter((one) => !fitting.some((other) => isWithin(one, other)));
        const { rips, isLimited } = listRips({
          boardWidth: new Fraction(board),
          blankWidths: blanks.map((blank) => new Fraction(blank)),
          kerf: new Fraction(kerf),
          most: 1e6,
        });
        const sorted = (mixes: readonly (readonly number[])[]): string[] =>
          mixes.map((mix) => mix.join()).sort();
        expect(sorted(rips)).toEqual(sorted(widest));
        expect(isLimited).toBe(false);
      }),
    );
  });

  test('beyond the most are mixes of two widths at most, every width in one of them', () => {
    const blanks = Array.from({ length: 8 }, (_, at) => `${20 + at}/16`);
    const all = ripsOf('12', blanks, '1/8', 1e6);
    expect(all.rips.length).toBeGreaterThan(2000);
    const { rips, isLimited } = ripsOf('12', blanks);
    expect(isLimited).toBe(true);
    expect(rips.length).toBeLessThanOrEqual(2000);
    for (const rip of rips) expect(rip.filter((count) => count > 0).length).toBeLessThanOrEqual(2);
    blanks.forEach((_, at) => expect(rips.some((rip) => rip[at]! > 0)).toBe(true));
    const few = ripsOf('12', blanks, '1/8', 10);
    expect(few.rips).toHaveLength(10);
    blanks.forEach((_, at) => expect(few.rips.some((rip) => rip[at]! > 0)).toBe(true));
  });
});
