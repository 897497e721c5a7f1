/** What a person at the keyboard expects of any program: near names, short options, quiet, a way on. */
import { describe, expect, test } from '@jest/globals';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import { SETTINGS } from '../../src/planning/shop.ts';
import { SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, linesOf, refusalOf, ROOT, run } from './program.ts';

export function mannersSuite(): void {
  describe('near names', () => {
    test.each([
      { args: ['plann'], may: 'plan' },
      { args: ['setup', 'x'], may: 'setups' },
      { args: ['help', 'exprot'], may: 'export' },
      { args: ['help', 'heading'], may: 'help headings' },
      { args: ['--verison'], may: '--version' },
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
      const demo = await run(folder, ['demo', '-q', '--steps', '3']);
      expect([demo.exit, demo.out]).toEqual([0, '']);
      for (const line of linesOf(demo.err)) expect(line).toMatch(/^Caution: /);
      expect(filesIn(folder)).toContain('coveledger-demo.xlsx');
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
    test.each([
      {
        args: ['plan', 'p.csv'],
        says: /^“p\.csv” is neither .* coveledger new makes either, to fill in\. A list by itself goes to cut/,
      },
      {
        args: ['plan', 'none'],
        says: /^There is no runs\.csv in “none”, for the table Runs\. .* new FOLDER --csv makes one\.$/m,
      },
      {
        args: ['cut', 'empty.csv', 's.csv'],
        says: /^empty\.csv has nothing in it\. Its first row is its headings \(Length, Quantity, Label, Unit, Material\)/,
      },
      {
        args: ['cut', 's.csv', 'p.csv'],
        says: /^The pieces come first \(here “s\.csv”\), then the sticks \(here “p\.csv”\)/m,
      },
      { args: ['plan', ''], says: /^coveledger plan needs INPUT\./ },
      {
        args: ['cut', 'p.csv', 's.csv', '--kerf', '3'],
        says: /^--kerf is 3 in, more than any shop/,
      },
      {
        args: ['cut', 'p.csv', 's.csv', '--end-trim', '25'],
        says: /^--end-trim is 25 in, more than any shop/,
      },
    ])('are told to whoever calls $args', async ({ args, says }) => {
      const folder = folderWith({
        'p.csv': 'Length,Quantity\n40,5\n',
        's.csv': 'Length,Price\n96,10\n',
        'empty.csv': '',
        'none/notes.txt': '',
      });
      const { exit, out, err } = await run(folder, args);
      expect([exit, out]).toEqual([2, '']);
      expect(err).toMatch(says);
    });

    test('a length beyond belief is taken where its unit stands with it', async () => {
      const folder = folderWith({ 'p.csv': 'Length\n40\n', 's.csv': 'Length\n96\n' });
      const ran = await run(folder, ['cut', 'p.csv', 's.csv', '--json', '--end-trim', '13 in']);
      expect(jsonOf(ran)).toMatchObject({ endTrim: 13 });
    });

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
}
