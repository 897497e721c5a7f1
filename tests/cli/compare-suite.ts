import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { QUICK, SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, linesOf, refusalOf, run } from './program.ts';
import { partsOf } from './workbook-parts.ts';

interface Told {
  readonly price: number;
  readonly cost: number;
  readonly toPay: number;
}
interface CompareAnswer {
  readonly added: readonly { readonly run: string; readonly length: number }[];
  readonly gone: readonly { readonly run: string }[];
  readonly changed: readonly { readonly run: string; readonly differs: readonly string[] }[];
  readonly same: number;
  readonly lines: readonly { readonly difference: number }[];
  readonly totals: { readonly before: Told; readonly after: Told; readonly difference: Told };
  readonly cut: { readonly sticks: number; readonly pieces: readonly { readonly need: string }[] };
  readonly workbook: string | null;
}

/** A longer wall, a run more, and one gone. */
const CHANGED = {
  ...SMALL,
  'runs.csv': 'Room,Run,Profile,Length,Quantity\nHall,north,Cove,100,1\nDen,west,Base,60,1\n',
};

const jobs = (before: Readonly<Record<string, string>>, after: Readonly<Record<string, string>>) =>
  Object.fromEntries([
    ...Object.entries(before).map(([name, text]) => [`old/${name}`, text] as const),
    ...Object.entries(after).map(([name, text]) => [`new/${name}`, text] as const),
  ]);

export function compareSuite(): void {
  describe('compare', () => {
    test('tells runs, profiles and money before and after, and writes them as the sheet Changes', async () => {
      const folder = folderWith(jobs(SMALL, CHANGED));
      const args = ['compare', 'old', 'new', '--out', 'c.xlsx', '--date', '2026-11-30', ...QUICK];
      const { exit, out, err } = await run(folder, args);
      expect([exit, err]).toEqual([0, '']);
      const told = [
        /^Before: old\. Inputs [0-9a-f]{8}, planned 30 Nov 2026/m,
        /^After: new\. Inputs [0-9a-f]{8}/m,
        /^1 run added, 1 gone, 1 changed, 0 as they were\.$/m,
        /^Hall \/ north +Cove +changed: lengths +1 +7' 6 1\/2" -> 8' 4"$/m,
        /^Hall \/ south +Base +gone +2 -> - +14' 8" -> -$/m,
        /^Den \/ west +Base +added +- -> 1 +- -> 5' 0"$/m,
        /^ {2}price \$[\d.]+ -> \$[\d.]+, /m,
        /^Read your saw's manual first/m,
        /^Written: c\.xlsx$/m,
      ].map((one) => out.search(one));
      expect(told).not.toContain(-1);
      expect([...told].sort((one, other) => one - other)).toEqual(told);
      const path = join(folder, 'c.xlsx');
      const { sheetNames, texts, formulas } = partsOf(path);
      expect(sheetNames).toEqual(['Changes']);
      expect([...texts]).toEqual(expect.arrayContaining(['Hall', 'Den', 'added', 'gone']));
      expect(formulas).toEqual(expect.arrayContaining([expect.stringMatching(/^SUM\(/)]));
      const bytes = readFileSync(path);
      await run(folder, [...args, '--force']);
      expect(readFileSync(path).equals(bytes)).toBe(true);
    });

    test('as JSON, differences are those of the two plans, and the mirror has them the other way', async () => {
      const folder = folderWith(jobs(SMALL, CHANGED));
      const answer = async (...args: readonly string[]): Promise<CompareAnswer> =>
        jsonOf(await run(folder, ['compare', ...args, '--json', ...QUICK])) as CompareAnswer;
      const one = await answer('old', 'new');
      const other = await answer('new', 'old');
      const [old, now] = await Promise.all(
        ['old', 'new'].map(async (name) => {
          const ran = jsonOf(await run(folder, ['plan', name, '--json', ...QUICK]));
          return (ran as { totals: { price: number; tax: number; cost: number } }).totals;
        }),
      );
      expect(one.totals.before).toMatchObject({ price: old!.price, cost: old!.cost });
      expect(one.totals.after).toMatchObject({ price: now!.price, cost: now!.cost });
      expect(one.totals.difference.price).toBeCloseTo(now!.price - old!.price, 9);
      const lines = one.lines.reduce((sum, { difference }) => sum + difference, 0);
      expect(lines).toBeCloseTo(one.totals.difference.price, 9);
      expect(one.added.map(({ run: name }) => name)).toEqual(['west']);
      expect(other.gone.map(({ run: name }) => name)).toEqual(['west']);
      expect(one.changed).toMatchObject([{ run: 'north', differs: ['lengths'] }]);
      expect(other.totals.difference.toPay).toBeCloseTo(-one.totals.difference.toPay, 9);
      expect(one.workbook).toBeNull();
    });

    test('a written workbook is compared as it was planned, to the cent', async () => {
      const folder = folderWith(jobs(SMALL, CHANGED));
      await run(folder, ['plan', 'old', '--out', 'quoted.xlsx', ...QUICK]);
      const ran = await run(folder, ['compare', 'quoted.xlsx', 'old', '--json', '--seconds', '0']);
      // Whoever says how long to plan wants a new plan, and this workbook has no inputs.
      expect(ran.exit).toBe(2);
      const told = jsonOf(await run(folder, ['compare', 'quoted.xlsx', 'old', '--json']));
      const { added, gone, changed, same, totals } = told as CompareAnswer;
      expect([added, gone, changed, same]).toEqual([[], [], [], 2]);
      expect(totals.difference.price).toBe(0);
    });

    test('what is done and no longer asked for is named', async () => {
      const rows = 'Room,Run,Profile,Length,Done\nHall,a,Base,50,yes\nHall,b,Base,60,\n';
      const without = 'Room,Run,Profile,Length,Done\nHall,b,Base,60,\n';
      const before = { ...SMALL, 'runs.csv': rows };
      const folder = folderWith(jobs(before, { ...SMALL, 'runs.csv': without }));
      const { out } = await run(folder, ['compare', 'old', 'new', ...QUICK]);
      expect(out).toMatch(
        /^1 piece was cut or done before; the job no longer asks for 1 of them as it is\./m,
      );
      expect(out).toMatch(/^ {2}Hall \/ a \/ 1, Base, 4' 2": none of its name$/m);
    });

    test('faults of both inputs are told under their names, and nothing is written', async () => {
      const bad = (cell: string) => ({
        ...SMALL,
        'runs.csv': `Room,Profile,Length\nHall,Base,${cell}\n`,
      });
      const folder = folderWith(jobs(bad('soon'), bad('3/0')));
      const before = filesIn(folder);
      const { exit, out, err } = await run(folder, ['compare', 'old', 'new', '-o', 'c.xlsx']);
      expect([exit, out, filesIn(folder)]).toEqual([2, '', before]);
      const lines = linesOf(err).filter((line) => !line.startsWith('Caution: '));
      expect(lines.filter((line) => line !== '')).toEqual([
        'old:',
        expect.stringMatching(/^runs\.csv, line 2, column 3: .*soon/),
        'new:',
        expect.stringMatching(/^runs\.csv, line 2, column 3: .*divides by zero/),
      ]);
      const json = refusalOf(await run(folder, ['compare', 'old', 'new', '--json']));
      expect(json.faults).toHaveLength(2);
    });

    test('two currencies, an input as the target, and one standard input for both are refused', async () => {
      const euros = { ...SMALL, 'shop.csv': 'Setting,Value\nhourly rate,60\ncurrency,€\n' };
      const folder = folderWith(jobs(SMALL, euros));
      const ran = await run(folder, ['compare', 'old', 'new', '--json', ...QUICK]);
      expect([ran.exit, refusalOf(ran).faults.map(({ code }) => code)]).toEqual([
        2,
        ['plan.other-currency'],
      ]);
      await run(folder, ['plan', 'old', '--out', 'q.xlsx', ...QUICK]);
      const onto = await run(folder, ['compare', 'old', 'q.xlsx', '--out', 'q.xlsx', '--force']);
      expect([onto.exit, onto.err]).toEqual([2, expect.stringMatching(/“q\.xlsx” is the input/)]);
      const twice = await run(folder, ['compare', '-', '-']);
      expect([twice.exit, twice.err]).toEqual([2, expect.stringMatching(/stands twice/)]);
    });
  });
}
