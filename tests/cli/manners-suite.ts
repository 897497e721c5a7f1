/** What a person at the keyboard expects of any program: near names, short options, quiet, a way on. */
import { describe, expect, test } from '@jest/globals';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { SETTINGS } from '../../src/planning/shop.ts';
import { DEMO, SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, linesOf, refusalOf, ROOT, run } from './program.ts';

const FILES = ['openings.csv', 'profiles.csv', 'runs.csv', 'shop.csv', 'stock.csv'];

export function mannersSuite(): void {
  describe('near names', () => {
    test.each([
      { args: ['plann'], may: 'plan' },
      { args: ['setup', 'x'], may: 'setups' },
      { args: ['help', 'exprot'], may: 'export' },
      { args: ['plan', 'x', '--ouput', 'y'], may: '--out' },
      { args: ['plan', 'x', '--output=y'], may: '--out' },
      { args: ['plan', 'x', '--jsn'], may: '--json' },
      { args: ['cut', 'x', 'y', '--endtrim', '1'], may: '--end-trim' },
      { args: ['plan', 'x', '--hlep'], may: '--help' },
      { args: ['plan', 'x', '--overwrite'], may: '--force' },
    ])('$args: did you mean $may?', async ({ args, may }) => {
      const { exit, out, err } = await run(ROOT, args);
      expect([exit, out, linesOf(err).length]).toEqual([2, '', 1]);
      expect(err).toContain(` Did you mean ${may}? `);
    });

    test.each([{ args: ['frobnicate'] }, { args: ['plan', 'x', '--zebra'] }])(
      'nothing is near $args',
      async ({ args }) => {
        expect((await run(ROOT, args)).err).not.toContain('Did you mean');
      },
    );
  });

  describe('short options', () => {
    test('are the long ones in a letter, and nothing is guessed of several in one', async () => {
      const folder = folderWith(SMALL);
      const first = await run(folder, ['plan', '.', '-o', 'a.xlsx', '--steps', '5']);
      expect([first.exit, filesIn(folder).includes('a.xlsx')]).toEqual([0, true]);
      const refused = await run(folder, ['plan', '.', '-o', 'a.xlsx', '-qf']);
      expect([refused.exit, linesOf(refused.err).length]).toEqual([2, 1]);
      expect(refused.err).toContain('“-qf” is no option of plan');
      const again = await run(folder, ['plan', '.', '-f', '-o', 'a.xlsx', '--steps', '5']);
      expect(again).toEqual(first);
      const { err } = await run(folder, ['plan', '.', '-o', '-f']);
      expect(err).toMatch(/“--out” needs a value after it/);
      expect((await run(folder, ['plan', '--help'])).out).toMatch(/^ {2}--out, -o FILE\.xlsx +\w/m);
    });
  });

  describe('quiet and verbose', () => {
    test('quiet says cautions alone, on the error output; a refusal as ever', async () => {
      const folder = folderWith(SMALL);
      const plan = ['plan', '.', '--steps', '5', '--force', '-o', 'a.xlsx'];
      const { exit, out, err } = await run(folder, [...plan, '--quiet']);
      expect([exit, out]).toEqual([0, '']);
      const loud = await run(folder, plan);
      const cautions = linesOf(loud.out).filter((line) => line.startsWith('Caution: '));
      expect(cautions.length).toBeGreaterThan(0);
      expect(linesOf(err)).toEqual(cautions);
      const wrong = await run(folder, ['plan', 'gone', '-q']);
      expect([wrong.exit, linesOf(wrong.err).length]).toEqual([2, 1]);
      const made = await run(folder, ['new', 'n.xlsx', '-q']);
      expect(made).toEqual({ exit: 0, out: '', err: '' });
    });

    test('usual values are a short line; --verbose and JSON name them all', async () => {
      const folder = folderWith(SMALL);
      const plan = ['plan', '.', '--steps', '5'];
      const [short, long, json] = await Promise.all([
        run(folder, plan),
        run(folder, [...plan, '--verbose']),
        run(folder, [...plan, '--json']),
      ]);
      const line = (out: string): string =>
        linesOf(out).find((one) => one.startsWith('Caution: Shop leaves '))!;
      expect(line(short.out)).toMatch(
        /^Caution: Shop leaves \d+ settings open; the usual values stand in\. Fill in your own: --verbose lists them\.$/,
      );
      expect(line(long.out)).toContain('blade diameter 10 in; kerf 1/8 in;');
      const { cautions } = refusalOf(json);
      expect(`Caution: ${cautions.find(({ code }) => code === 'job.usual-values')!.message}`).toBe(
        line(long.out),
      );
    });
  });

  describe('ways on', () => {
    test.each(['plan', 'setups'])(
      '%s says how a workbook of another kind is read',
      async (name) => {
        const folder = folderWith({ 'job.numbers': Uint8Array.from([0x50, 0x4b, 3, 4]) });
        const { exit, err } = await run(folder, [name, 'job.numbers']);
        expect([exit, err]).toEqual([
          2,
          '“job.numbers” is a workbook of another kind. Open it in its own program, save it as .xlsx, and try again.\n',
        ]);
      },
    );

    test('export answers as JSON what it saved', async () => {
      const folder = folderWith(SMALL);
      const ran = await run(folder, ['export', '.', '-o', 'a.zip', '--steps', '5', '--json']);
      const answer = jsonOf(ran) as { version: number; exported: string; files: string[] };
      expect(answer).toMatchObject({ version: 1, exported: 'a.zip', faults: [] });
      expect(answer.files).toContain('lists/pieces.csv');
      expect(filesIn(folder)).toContain('a.zip');
    });

    test('help headings names every heading and setting with what it holds', async () => {
      const { exit, out, err } = await run(ROOT, ['help', 'headings']);
      expect([exit, err]).toEqual([0, '']);
      for (const [table, headings] of Object.entries(TABLE_HEADINGS)) {
        expect(out).toMatch(new RegExp(`^${table}$`, 'm'));
        for (const { heading, required } of headings) {
          expect(out).toContain(`\n  ${heading}${required === true ? '*' : ''} `);
        }
      }
      for (const { name } of Object.values(SETTINGS)) expect(out).toContain(`\n  ${name} `);
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(90);
    });
  });

  describe('new as CSV', () => {
    test.each([
      { options: [], sign: ',' },
      { options: ['--decimal-comma'], sign: ';' },
    ])('makes a folder that passes its own reading, with $options', async ({ options, sign }) => {
      const folder = folderWith({});
      const made = await run(folder, ['new', 'job', '--csv', ...options]);
      expect([made.exit, made.err, filesIn(folder)]).toEqual([
        0,
        '',
        ['job', ...FILES.map((name) => join('job', name))],
      ]);
      const blank = await run(folder, ['plan', 'job', '--json']);
      const { faults, cautions } = refusalOf(blank);
      expect(faults.map(({ code, argument }) => `${code} ${argument}`)).toEqual([
        'table.empty Runs',
        'table.empty Profiles',
        'table.empty Stock',
      ]);
      // Every setting stands there, so that no usual value stands in.
      expect(cautions.map(({ code }) => code)).not.toContain('job.usual-values');
      const shop = readFileSync(join(folder, 'job', 'shop.csv'), 'utf8');
      expect(shop.replaceAll('"', '')).toContain(
        `decimal sign${sign}${sign === ';' ? ',' : '.'}${sign}`,
      );
    });

    test.each([[], ['--decimal-comma']])(
      'is filled in and planned like a workbook: %p',
      async (...options) => {
        const folder = folderWith({});
        await run(folder, ['new', 'job', '--csv', ...options]);
        const sign = options.length > 0 ? ';' : ',';
        const add = (name: string, row: readonly string[]): void => {
          const path = join(folder, 'job', name);
          const text = readFileSync(path, 'utf8');
          const columns = text.split('\r\n')[0]!.split(sign).length;
          const cells = Array.from({ length: columns }, (_, at) => row[at] ?? '');
          writeFileSync(path, `${text}${cells.join(sign)}\r\n`);
        };
        add('runs.csv', ['Hall', 'N', 'Base', '90 1/2']);
        add('profiles.csv', ['Base', 'buy']);
        add('stock.csv', ['Base', '', '', '', '192', '24']);
        const { exit, err } = await run(folder, ['plan', 'job', '--json', '--steps', '5']);
        expect([exit, err]).toEqual([0, '']);
      },
    );

    test('fills it with the demo, and leaves what is there alone, all of it', async () => {
      const folder = folderWith({ 'job/stock.csv': 'mine' });
      const refused = await run(folder, ['new', 'job', '--csv', '--demo']);
      expect([refused.exit, filesIn(folder)]).toEqual([2, ['job', join('job', 'stock.csv')]]);
      expect(refused.err).toMatch(/stock\.csv” exists already/);
      const forced = await run(folder, ['new', 'job', '--csv', '--demo', '--force']);
      expect(forced.exit).toBe(0);
      for (const name of FILES) {
        const read = (where: string): string => readFileSync(join(where, name), 'utf8');
        expect(read(join(folder, 'job'))).toBe(read(DEMO));
      }
    });

    test.each([
      { args: ['new', 'a.xlsx', '--decimal-comma'], says: /--decimal-comma goes with --csv alone/ },
      { args: ['new', 'none/job', '--csv'], says: /“none” is not there/ },
      { args: ['new', 'file', '--csv'], says: /a part of the path is a file|is a file/ },
      { args: ['new', 'job', '--csv', '--demo', '--decimal-comma'], says: /can't both be given/ },
    ])('is refused with one line: $args', async ({ args, says }) => {
      const folder = folderWith({ file: '' });
      const { exit, err } = await run(folder, args);
      expect(exit).toBe(2);
      expect(err).toMatch(says);
      expect(filesIn(folder)).toEqual(['file']);
    });
  });
}
