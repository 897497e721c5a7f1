import { describe, expect, test } from '@jest/globals';
import { folderWith, jsonOf, run } from './program.ts';

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
}
