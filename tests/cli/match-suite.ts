import { describe, expect, test } from '@jest/globals';
import { folderWith, jsonOf, run, type Ran } from './program.ts';

/** Read off an invented cove with a rule, to the sixty-fourth, a flat of 1/2 in on either side. */
export const TRACE = `Across,Deep
0,0
1/2,0
13/16,23/64
1 3/16,39/64
1 11/16,47/64
2 3/16,47/64
2 11/16,39/64
3 1/16,23/64
3 3/8,0
3 7/8,0
`;

interface Answer {
  readonly settings: readonly { readonly width: number; readonly tiltDeg: number }[];
  readonly rms: number;
  readonly intervals: unknown;
}

export function matchSuite(): void {
  describe('match', () => {
    test('finds the set-up that a handful of points was cut by, and says how sure it is', async () => {
      const folder = folderWith({ 'points.csv': TRACE });
      const answer = jsonOf(await run(folder, ['match', 'points.csv', '--json'])) as Answer;
      const [only] = answer.settings;
      expect(only?.tiltDeg).toBe(0);
      expect(only?.width).toBeCloseTo(2.9, 1);
      expect(answer.rms).toBeLessThan(1 / 32);
      const said = await run(folder, ['match', 'points.csv']);
      expect(said.exit).toBe(0);
      expect(said.out).toContain("Read your saw's manual first.");
      expect(said.out).toMatch(/Approach, from the blade line +\d\d\.\d\d°/u);
    });

    test('names each point that can not be read, at its line, and answers nothing', async () => {
      const folder = folderWith({ 'points.csv': 'Across,Deep\n0,0\nx,1\n2,\n' });
      const ran = await run(folder, ['match', 'points.csv']);
      expect(ran.exit).toBe(2);
      expect(ran.out).toBe('');
      expect(ran.err).toMatch(/points\.csv, line 3, column 1: Across: “x”/u);
      expect(ran.err).toMatch(/points\.csv, line 4, column 2: Deep is empty/u);
    });

    test('refuses a blade that is none, and points that are too few', async () => {
      const folder = folderWith({ 'points.csv': TRACE, 'few.csv': 'Across,Deep\n0,0\n1,1\n2,0\n' });
      const thick = await run(folder, [
        'match',
        'points.csv',
        '--diameter',
        '8',
        '--kerf',
        '2 1/2',
      ]);
      expect([thick.exit, thick.err]).toEqual([2, expect.stringContaining('--kerf')]);
      const few = await run(folder, ['match', 'few.csv']);
      expect([few.exit, few.err]).toEqual([2, expect.stringContaining('at least 8 are needed')]);
    });
  });

  describe('trial', () => {
    const trial = (...args: readonly string[]): Promise<Ran> =>
      run(folderWith({}), ['trial', ...args]);

    test('says what to move and what was likely wrong, in inches and in millimetres', async () => {
      const ran = await trial('3 5/8 x 7/8 x 3/8', '3 11/16 x 57/64 x 3/8');
      expect(ran.exit).toBe(0);
      expect(ran.out).toContain("Read your saw's manual first.");
      expect(ran.out).toMatch(/Highest tooth above table, last pass +0\.016 in less/u);
      expect(ran.out).toContain('the height was 1/32 in more than was thought');
      const metric = await trial('92 mm x 22 mm', '92 mm x 22 mm');
      expect(metric.out).toContain('nothing need be moved');
    });

    test.each([
      [['3 5/8 x', '3x1'], 2, /AIMED: “3 5\/8 x” isn't two or three sizes/u],
      [['3x3/4', 'threexone'], 2, /MEASURED/u],
      [['3x3/4', '2x3/4'], 1, /this is another cove than the one aimed at/u],
      [['9x1/2', '3x1/2'], 1, /Cove width is 9 in/u],
      [['3x3/4'], 2, /MEASURED/u],
    ])('refuses %j with %d and words', async (args, exit, words) => {
      const ran = await trial(...args);
      expect([ran.exit, ran.out]).toEqual([exit, '']);
      expect(ran.err).toMatch(words);
    });
  });
}
