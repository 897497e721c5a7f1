import { describe, expect, test } from '@jest/globals';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { QUICK, SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, linesOf, refusalOf, run, type SaidFault } from './program.ts';
import { faultsOf } from './schema-suite.ts';
import { partsOf } from './workbook-parts.ts';
import { typeInto, withoutProperties, type Typed } from '../sheets/client-copies.ts';

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

interface CopyAnswer {
  readonly copy: {
    readonly lines: number;
    readonly changed: readonly { readonly rows: unknown }[];
    readonly quoted: unknown;
    readonly now: unknown;
    readonly difference: Told;
    readonly otherwise: readonly SaidFault[];
  };
}

/** As its schema says it. */
function answerOf(value: unknown): CopyAnswer {
  expect(faultsOf('compare-copy', value)).toEqual([]);
  return value as CopyAnswer;
}

/** Two pieces of one length and one of another, bought by the stick; half a foot of neither is wasted. */
const QUOTED = {
  'runs.csv':
    'Room,Run,Profile,Length,Quantity\nHall,north,Cove,90,1\nHall,south,Base,96,2\nHall,east,Base,48,1\n',
  'profiles.csv': SMALL['profiles.csv']!,
  'stock.csv': "For,Length,Price\nCove,12',20\nBase,20',24\n",
  'shop.csv': 'Setting,Value\nhourly rate,60\ntax %,8\ndelivery,40\nend allowance,0\n',
};

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

    test('of a client’s copy that came back it tells quantities, totals from our prices, and what was typed over', async () => {
      const folder = folderWith(QUOTED);
      await run(folder, ['plan', '.', '-o', 'shop.xlsx', '--client', 'copy.xlsx', ...QUICK]);
      const told = async (...args: readonly string[]): Promise<CopyAnswer> =>
        answerOf(jsonOf(await run(folder, ['compare', ...args, '--json'])));
      const bytes = readFileSync(join(folder, 'copy.xlsx'));
      // Rows of the sheet: the cove on 30, two pieces of base on 31, the short one on 32.
      writeFileSync(join(folder, 'back.xlsx'), typeInto(bytes, { C31: 3, C32: 0 }));
      const { copy } = await told('shop.xlsx', 'back.xlsx');
      expect(copy.changed).toMatchObject([
        { molding: 'Base', length: 96, quoted: 2, now: 3, priceQuoted: 41.4, priceNow: 62.1 },
        { molding: 'Base', length: 48, quoted: 1, now: 0, priceQuoted: 10.35, priceNow: 0 },
      ]);
      expect(copy.changed.map(({ rows }) => rows)).toEqual([
        [{ run: 'south', pieces: 2, where: { file: 'runs.csv', line: 3, column: 4 } }],
        [{ run: 'east', pieces: 1, where: { file: 'runs.csv', line: 4, column: 4 } }],
      ]);
      // By hand: 94.87 + 3 x 20.70 + 0, delivery 40, 8 % of 196.97 = 15.76.
      expect(copy.quoted).toMatchObject({ pieces: 4, price: 186.62, tax: 14.93, toPay: 201.55 });
      expect(copy.now).toEqual({
        pieces: 4,
        moldings: 156.97,
        price: 196.97,
        tax: 15.76,
        toPay: 212.73,
      });
      expect(copy.difference.toPay).toBeCloseTo(11.18, 9);
      const args = ['compare', 'back.xlsx', 'shop.xlsx', '-o', 'c.xlsx', '--date', '2026-11-30'];
      const { exit, out, err } = await run(folder, args);
      expect([exit, err]).toEqual([0, '']);
      expect(out).toMatch(/^2 of 3 lines have another quantity than quoted\.$/m);
      expect(out).toMatch(/^Hall +Base +96" +2 -> 3 +\$41\.40 -> \$62\.10 +\+\$20\.70$/m);
      expect(out).toMatch(/south, 2 pieces \(runs\.csv, line 3\)$/m);
      expect(out).toMatch(/^ {2}to pay \$201\.55 -> \$212\.73, \+\$11\.18$/m);
      const { sheetNames, texts } = partsOf(join(folder, 'c.xlsx'));
      expect(sheetNames).toEqual(['Changes']);
      expect([...texts]).toContain('2 of 3 lines have another quantity than quoted.');
    });

    test('of a copy no price is taken over, and one of another plan, without a number or beside another is refused', async () => {
      const folder = folderWith(QUOTED);
      await run(folder, ['plan', '.', '-o', 'shop.xlsx', '--client', 'copy.xlsx', ...QUICK]);
      const bytes = readFileSync(join(folder, 'copy.xlsx'));
      const put = (
        name: string,
        typed: Readonly<Record<string, Typed>>,
        from: Uint8Array = bytes,
      ): void => writeFileSync(join(folder, name), typeInto(from, typed));
      put('cheap.xlsx', { F31: 1, G10: 5 });
      const cheap = jsonOf(await run(folder, ['compare', 'shop.xlsx', 'cheap.xlsx', '--json']));
      const { copy } = answerOf(cheap);
      expect(copy.now).toEqual(copy.quoted);
      expect(copy.otherwise.map(({ code, where }) => [code, where?.cell])).toEqual([
        ['copy.figure-otherwise', 'G10'],
        ['copy.cell-changed', 'F31'],
      ]);
      const refused = async (...args: readonly string[]): Promise<unknown> => {
        const ran = await run(folder, ['compare', ...args, '--json']);
        return [ran.exit, refusalOf(ran).faults.map(({ code, where }) => [code, where?.cell])];
      };
      put('soon.xlsx', { C31: 'two', C32: null });
      expect(await refused('shop.xlsx', 'soon.xlsx')).toEqual([
        2,
        [
          ['copy.quantity-text', 'C31'],
          ['copy.quantity-blank', 'C32'],
        ],
      ]);
      expect(await refused('copy.xlsx', 'cheap.xlsx')).toEqual([2, [['copy.two', undefined]]]);
      writeFileSync(join(folder, 'runs.csv'), QUOTED['runs.csv'].replace('96,2', '97,2'));
      const ofOther = [2, [['copy.other-plan', undefined]]];
      expect(await refused('.', 'copy.xlsx', ...QUICK)).toEqual(ofOther);
      put('lost.xlsx', { B12: null }, withoutProperties(bytes));
      expect(await refused('shop.xlsx', 'lost.xlsx')).toEqual([2, [['copy.no-number', undefined]]]);
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
