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

  describe('rates', () => {
    const spring = { ...FILES, 'hours.csv': 'Work,Hours\njoin,1\nset up a cove,3/4 h\n' };
    const ofHours = (hours: string) => ({ ...FILES, 'hours.csv': `Date,Work,Hours\n${hours}` });
    const jobs = {
      ...Object.fromEntries(Object.entries(spring).map(([name, text]) => [`bad/${name}`, text])),
      ...Object.fromEntries(
        Object.entries(ofHours(',crosscut,12 min\n,cope,0:20')).map(([name, text]) => [
          `one/${name}`,
          text,
        ]),
      ),
      ...Object.fromEntries(
        Object.entries(ofHours(',cope,0:25\n,install,400')).map(([name, text]) => [
          `two/${name}`,
          text,
        ]),
      ),
      ...Object.fromEntries(Object.entries(FILES).map(([name, text]) => [`none/${name}`, text])),
    };

    test('are shown kind by kind, with where each is written down, and nothing is changed', async () => {
      const ran = await run(folderWith(jobs), ['rates', 'one', 'two', '--seconds', '0']);
      expect(ran.exit).toBe(0);
      expect(ran.out).toMatch(/^one +crosscut +0\.2 h, [\d.]+ h by the rates until now$/m);
      expect(ran.out).toMatch(/^cope +cope +\d+ +6 min +[\d.]+ min +.* a new row of Work$/m);
      expect(ran.out).toMatch(/^two +install +400 h, .*; odd: [\d.]+ spreads above/m);
      expect(ran.out).toContain('They are in no price until you take them over');
      expect(ran.out).toMatch(
        /Caution: two: hours\.csv, line 3, column 3: Hours: 400 h for install/,
      );
    });

    test('with --csv are rows of Work that plan with these minutes', async () => {
      const folder = folderWith(jobs);
      const ran = await run(folder, ['rates', 'one', '--csv', '--seconds', '0']);
      expect(ran.exit).toBe(0);
      const lines = linesOf(ran.out);
      expect(lines[0]).toBe('Work,Per,Minutes,Money,For,Ours,Low,High,Note');
      expect(lines.slice(1)).toHaveLength(2);
      writeFileSync(join(folder, 'one', 'work.csv'), ran.out);
      const again = await run(folder, ['rates', 'one', '--json', '--seconds', '0']);
      const { rates } = jsonOf(again) as {
        readonly rates: readonly {
          readonly work: string;
          readonly minutes: { readonly old: number };
        }[];
      };
      for (const { work, minutes } of rates) {
        expect(lines.find((line) => line.startsWith(work))).toContain(
          `,${Number(minutes.old.toPrecision(6))},`,
        );
      }
    });

    test.each([
      { args: ['rates', 'none'], exit: 2, says: /no job has hours to learn from/ },
      { args: ['rates', 'one', 'one/../one'], exit: 2, says: /is given twice/ },
      { args: ['rates', 'bad'], exit: 2, says: /hours\.csv, line 3, column 2: Hours: “3\/4 h”/ },
      { args: ['rates'], exit: 2, says: /JOB/ },
    ])('are refused: $args', async ({ args, exit, says }) => {
      const ran = await run(folderWith(jobs), [...args, '--seconds', '0']);
      expect([ran.exit, ran.out]).toEqual([exit, '']);
      expect(ran.err).toMatch(says);
    });
  });
}
