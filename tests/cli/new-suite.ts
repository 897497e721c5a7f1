/** Inputs to fill in: a workbook, or a folder of CSV files. */
import { describe, expect, test } from '@jest/globals';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEMO } from './job-folders.ts';
import { filesIn, folderWith, linesOf, refusalOf, run } from './program.ts';
import { partsOf } from './workbook-parts.ts';
import { INPUT_SHEETS, INPUT_TABLES } from '../sheets/sheet-names.ts';

const FILES = INPUT_TABLES.map((name) => `${name.toLowerCase()}.csv`).sort();

export function newSuite(): void {
  describe('new', () => {
    test('makes a workbook with all input sheets, which asks to be filled in before it is planned', async () => {
      const folder = folderWith({});
      const made = await run(folder, ['new', 'job.xlsx']);
      expect([made.exit, made.err]).toEqual([0, '']);
      expect(made.out).toContain('coveledger plan job.xlsx --out');
      for (const name of INPUT_SHEETS)
        expect(made.out).toMatch(new RegExp(`^ {2}${name} +\\w`, 'm'));
      expect(partsOf(join(folder, 'job.xlsx')).sheetNames.slice(0, INPUT_SHEETS.length)).toEqual(
        INPUT_SHEETS,
      );
      const ran = await run(folder, ['plan', 'job.xlsx', '--json']);
      const { faults } = refusalOf(ran);
      expect(ran.exit).toBe(2);
      expect(faults.map(({ code, argument }) => `${code} ${argument}`)).toEqual([
        'table.empty Runs',
        'table.empty Profiles',
        'table.empty Stock',
      ]);
      expect(filesIn(folder)).toEqual(['job.xlsx']);
    });

    test('makes a metric one, whose usual values are whole millimetres, but none of the demo', async () => {
      const folder = folderWith({});
      const made = await run(folder, ['new', 'job', '--csv', '--metric', '--decimal-comma']);
      expect([made.exit, made.err]).toEqual([0, '']);
      const shop = readFileSync(join(folder, 'job', 'shop.csv'), 'utf8');
      for (const row of [
        'blade diameter;250;mm;',
        'least blank length;900;mm;',
        'unit;mm;;',
        'paper;a4;;',
        'feed;"1,8";m/min;',
      ]) {
        expect(shop).toContain(`\n${row}`);
      }
      const refused = await run(folder, ['new', 'demo.xlsx', '--demo', '--metric']);
      expect([refused.exit, refused.err]).toEqual([2, expect.stringContaining('--metric')]);
    });

    test('leaves a file that is there alone, unless forced', async () => {
      const folder = folderWith({ 'job.xlsx': 'mine' });
      const refused = await run(folder, ['new', 'job.xlsx']);
      expect([refused.exit, refused.out]).toEqual([2, '']);
      expect(refused.err).toMatch(/^“job\.xlsx” exists already\. Give --force/);
      expect(readFileSync(join(folder, 'job.xlsx'), 'utf8')).toBe('mine');
      const forced = await run(folder, ['new', 'job.xlsx', '--force']);
      expect(forced.exit).toBe(0);
      expect(filesIn(folder)).toEqual(['job.xlsx']);
    });

    test.each([
      { path: 'job.csv', says: /FILE\.xlsx: “job\.csv” must end in “\.xlsx”/ },
      { path: join('nowhere', 'job.xlsx'), says: /“nowhere” is not there/ },
      { path: 'folder.xlsx', says: /“folder\.xlsx” is a folder/ },
      { path: join('file.txt', 'job.xlsx'), says: /is not there|part of the path is a file/ },
    ])('is refused with one line at $path', async ({ path, says }) => {
      const folder = folderWith({ 'file.txt': '' });
      mkdirSync(join(folder, 'folder.xlsx'));
      const { exit, err } = await run(folder, ['new', path, '--force']);
      expect([exit, linesOf(err).length]).toEqual([2, 1]);
      expect(err).toMatch(says);
      expect(filesIn(folder)).toEqual(['file.txt', 'folder.xlsx']);
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
        const made = read(join(folder, 'job'));
        // What the demo does without is blank.
        if (existsSync(join(DEMO, name))) expect(made).toBe(read(DEMO));
        else expect(made.trim().split('\n')).toEqual([expect.stringMatching(/^(?:Room|Work),/u)]);
      }
    });

    test.each([
      { args: ['new', 'a.xlsx', '--decimal-comma'], says: /--decimal-comma goes with --csv alone/ },
      { args: ['new', 'none/job', '--csv'], says: /“none” is not there/ },
      { args: ['new', 'file', '--csv'], says: /a part of the path is a file|is a file/ },
      { args: ['new', 'job', '--csv', '--demo', '--decimal-comma'], says: /can't both be given/ },
      {
        args: ['new', 'job', '--csv', '--date', '2026-11-30'],
        says: /^--date and --csv can't both be given/,
      },
    ])('is refused with one line: $args', async ({ args, says }) => {
      const folder = folderWith({ file: '' });
      const { exit, err } = await run(folder, args);
      expect(exit).toBe(2);
      expect(err).toMatch(says);
      expect(filesIn(folder)).toEqual(['file']);
    });
  });
}
