import { describe, expect, test } from '@jest/globals';
import { NO_TICKS, type Ticks } from '../../src/planning/cut/cut-already.ts';
import { planOf, type Tables } from './make-job.ts';
import { codes, replanned, SHOP, THREE } from './three-pieces.ts';

describe('What is left over could be recut, at a kerf of 1/8 in,', () => {
  const shop = SHOP.replace('crosscut kerf,0', 'crosscut kerf,1/8');
  const table = (...rows: readonly string[]): string =>
    ['Room,Run,Profile,Length,Measured as,Left end,Right end,Match', ...rows].join('\n');
  const row = (run: string, length: string, ends: string, match = ''): string =>
    `Hall,${run},Base,${length},finished,${ends},${match}`;
  const other = row('b', '50', 'cope,outside miter');
  const MITERS = 'inside miter,inside miter';

  test.each([
    ['a kerf shorter, its ends the same', MITERS, '60', MITERS, '59 7/8', true],
    ['less than a kerf shorter', MITERS, '60', MITERS, '59 15/16', false],
    ['longer', MITERS, '60', MITERS, '61', false],
    ['shorter, one end square before', 'square,cope', '60', 'inside miter,cope', '59', true],
    ['shorter, both square before, by two kerfs', 'square,square', '60', MITERS, '59 3/4', true],
    ['shorter, both square before, by one', 'square,square', '60', MITERS, '59 7/8', false],
    ['shorter, one end slanted before', MITERS, '60', 'inside miter,square', '50', false],
    ['shorter, one end coped before', 'cope,square', '60', 'square,square', '50', false],
  ])('where the piece is %s', async (_, before, long, after, short, isOffered) => {
    const runsOf = (ends: string, length: string) => table(row('a', length, ends), other);
    const tables: Tables = { ...THREE, shop, runs: runsOf(before, long) };
    const first = await planOf(tables);
    const onlyA: Ticks = { ...NO_TICKS, pieces: new Set(['Hall / a / 1']) };
    const plan = await replanned(first, { ...tables, runs: runsOf(after, short) }, onlyA);
    const cuts = plan.profiles[0]!.sticks.flatMap(({ pieces }) => pieces);
    const left = cuts.find(({ unneeded }) => unneeded !== undefined);
    expect(left?.recutTo?.id).toBe(isOffered ? 'Hall / a / 1' : undefined);
    expect(codes(plan).includes('job.cut-could-recut')).toBe(isOffered);
  });

  test('to another piece, each to one, but not to one that is matched', async () => {
    const ends = 'square,square';
    const tables: Tables = {
      ...THREE,
      shop,
      runs: table(row('a', '60', ends), row('b', '59', ends), row('c', '50', ends)),
    };
    const first = await planOf(tables);
    const ab: Ticks = { ...NO_TICKS, pieces: new Set(['Hall / a / 1', 'Hall / b / 1']) };
    const left = async (...rows: readonly string[]): Promise<string[]> => {
      const plan = await replanned(first, { ...tables, runs: table(...rows) }, ab);
      return plan.profiles[0]!.sticks.flatMap(({ pieces }) =>
        pieces.flatMap(({ id, unneeded, recutTo }) =>
          unneeded === undefined ? [] : [`${id} > ${recutTo?.id ?? ''}`],
        ),
      ).sort();
    };
    expect(await left(row('c', '50', ends), row('d', '58', ends))).toEqual([
      'Hall / a / 1 > Hall / c / 1',
      'Hall / b / 1 > Hall / d / 1',
    ]);
    expect(await left(row('c', '50', ends, 'M'), row('d', '50 1/2', ends, 'M'))).toEqual([
      'Hall / a / 1 > ',
      'Hall / b / 1 > ',
    ]);
  });
});
