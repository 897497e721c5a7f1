import { describe, expect, test } from '@jest/globals';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { READING_ROOM } from '../planning/reading-room.ts';
import { PLAIN } from '../planning/make-job.ts';
import { folderWith, jsonOf, linesOf, run } from './program.ts';

const FILES = {
  ...Object.fromEntries(
    Object.entries({ ...READING_ROOM, shop: PLAIN.shop }).map(([name, text]) => [
      `${name}.csv`,
      text,
    ]),
  ),
  'runs.csv':
    'Room,Run,Profile,Length,Left end,Measured as,Reveal\nReading room,2,Base,119 1/2,cope,,\nHall,north,Casing,36,inside miter,opening,1/4',
};
const TRIM_HEADINGS = 'Room,Profile,Where,Height';

interface Plan {
  readonly pieces: readonly { readonly madeFrom: object | null }[];
}

export function runsSuite(): void {
  describe('runs', () => {
    test('lists those of Runs and those that are made, each with where it comes from', async () => {
      const ran = await run(folderWith(FILES), ['runs', '.']);
      expect(ran.exit).toBe(0);
      const lines = linesOf(ran.out);
      const [first, second] = lines.slice(2);
      expect(first!.split(/\s{2,}/u)).toEqual([
        ...['Reading room', '1', 'Base', '216"', '1', 'square', 'square'],
        'made: walls.csv, line 2; trim.csv, line 2',
      ]);
      expect(second!.split(/\s{2,}/u)).toEqual([
        ...[
          'Reading room',
          '2',
          'Base',
          '119 1/2"',
          '1',
          'cope',
          'square',
          '32 5/16" and 31 13/16"',
        ],
        'typed in place of the made one: runs.csv, line 2',
      ]);
      expect(lines.find((line) => line.startsWith('Hall'))!.split(/\s{2,}/u)).toEqual([
        ...['Hall', 'north', 'Casing', '36" (opening)', '1', 'inside miter', 'square'],
        'typed: runs.csv, line 3',
      ]);
      expect(lines).toContain('  Reading room, 5: 43 3/8" taken out of Base for the door');
      expect(ran.out).toContain('Caution: runs.csv, line 2, column 4: Run 2 in Reading room');
    });

    test('saved from --csv as runs.csv, plan to the same pieces', async () => {
      const folder = folderWith(FILES);
      const pieces = async (): Promise<unknown> => {
        const plan = jsonOf(await run(folder, ['plan', '.', '--json', '--steps', '5'])) as Plan;
        return plan.pieces.map(({ madeFrom: from, ...one }) => ({
          ...one,
          madeFrom: from === null ? null : { ...from, isTakenOver: undefined },
        }));
      };
      const before = await pieces();
      const { out, err, exit } = await run(folder, ['runs', '.', '--csv']);
      expect([exit, out.split('\n')[0]]).toEqual([
        0,
        'Room,Run,Profile,Length,Measured as,Quantity,Left end,Right end,Left corner,Right corner,Reveal,One piece,Match,Done,Note',
      ]);
      expect(err).toMatch(/^Caution: /u);
      writeFileSync(join(folder, 'runs.csv'), out);
      expect(await pieces()).toEqual(before);
    });

    test('are refused where a name would not come back from CSV', async () => {
      const walls = 'Room,Wall,Length,Turn\nDen,=1+1,100,end';
      const trim = `${TRIM_HEADINGS}\nall,Base,floor,`;
      const folder = folderWith({
        ...FILES,
        'walls.csv': walls,
        'trim.csv': trim,
        'openings.csv': READING_ROOM.openings.split('\n')[0]!,
      });
      const ran = await run(folder, ['runs', '.', '--csv']);
      expect([ran.exit, ran.out]).toEqual([1, '']);
      expect(ran.err).toContain('walls.csv, line 2, column 3: Run =1+1 in Den: its run of “Base”');
      expect((await run(folder, ['runs', '.'])).exit).toBe(0);
    });

    test('of an input at fault are refused with all that is wrong', async () => {
      const folder = folderWith({ ...FILES, 'trim.csv': `${TRIM_HEADINGS}\nDem,Base,roof,` });
      const ran = await run(folder, ['runs', '.']);
      expect([ran.exit, ran.out]).toEqual([2, '']);
      expect(ran.err).toContain('trim.csv, line 2, column 3');
    });
  });
}
