/** Lists for `cut` as people write them: without prices, with units and kerfs, as workbooks, through a pipe. */
import { describe, expect, test } from '@jest/globals';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeXlsx, row } from '../hosts/make-xlsx.ts';
import {
  folderWith,
  jsonOf,
  linesOf,
  refusalOf,
  run,
  runAlone,
  type Ran,
  type Refusal,
} from './program.ts';

interface CutAnswer {
  readonly version: number;
  readonly optimized: string;
  readonly cost: number | null;
  readonly length: number;
  readonly bound: number;
  readonly kerf: number;
  readonly proven: boolean;
  readonly sticks: readonly {
    readonly length: number;
    readonly price: number | null;
    readonly pieces: readonly number[];
  }[];
  readonly duals: readonly { readonly length: number; readonly inches?: number }[];
}

const answerOf = (ran: Ran): CutAnswer => jsonOf(ran) as CutAnswer;

function cut(pieces: string, sticks: string, ...options: readonly string[]): Promise<Ran> {
  const folder = folderWith({ 'p.csv': pieces, 's.csv': sticks });
  return run(folder, ['cut', 'p.csv', 's.csv', ...options]);
}

export function cutListSuite(): void {
  describe('cut without prices', () => {
    // By hand [D]: trims of 1 in leave 94 of 96 and 142 of 144. Two 40s and a kerf are 80 1/8, three and two
    // kerfs 120 1/4. Five 40s: 144 + 96 = 240 holds 3 + 2; three 96s are 288, two 144s 288, and no two
    // shorter sticks hold five.
    test('takes the least length of sticks, and says so', async () => {
      const ran = await cut('Length,Quantity\n40,5\n', 'Length\n96\n144\n', '--json');
      const answer = answerOf(ran);
      expect(ran.exit).toBe(0);
      expect(answer).toMatchObject({
        version: 1,
        optimized: 'length',
        cost: null,
        length: 240,
        bound: 240,
        proven: true,
      });
      expect(answer.sticks.map(({ length, price }) => [length, price]).sort()).toEqual([
        [144, null],
        [96, null],
      ]);
      const words = await cut('Length,Quantity\n40,5\n', 'Length\n96\n144\n');
      expect(words.out).toMatch(
        /5 pieces from 2 sticks of 240 in together; proven least length\. No stick has a price, so the length/,
      );
      expect(words.out).not.toMatch(/Price|cost|\$/);
    });

    // By hand [D]: two 47s and a kerf are 94 1/8, over 94: a 96 holds one. One 144 against two 96s, 192.
    test('counts the kerf and the trims as with prices', async () => {
      const answer = answerOf(await cut('Length,Quantity\n47,2\n', 'Length\n96\n144\n', '--json'));
      expect([answer.length, answer.sticks.length]).toEqual([144, 1]);
      const without = answerOf(
        await cut('Length,Quantity\n47,2\n', 'Length\n96\n144\n', '--json', '--kerf', '0'),
      );
      expect([without.length, without.sticks.length]).toEqual([96, 1]);
    });

    test('is what prices in proportion to length give, whatever they are in', async () => {
      const pieces = 'Length,Quantity\n50,7\n31 1/3,9\n22.5,4\n900 mm,3\n';
      const [bare, priced, cents] = await Promise.all([
        cut(pieces, 'Length\n96\n120.5\n144\n', '--json', '--steps', '50'),
        cut(pieces, 'Length,Price\n96,19.20\n120.5,24.10\n144,28.80\n', '--json', '--steps', '50'),
        cut(pieces, 'Length,Price\n96,96\n120.5,120.5\n144,144\n', '--json', '--steps', '50'),
      ]);
      const least = answerOf(bare);
      expect(least.length).toBeCloseTo(answerOf(priced).cost! * 5, 6);
      expect(least.length).toBeCloseTo(answerOf(cents).cost!, 6);
      expect(least.bound).toBeLessThanOrEqual(least.length);
      const sum = least.sticks.reduce((all, one) => all + one.length, 0);
      expect(least.length).toBeCloseTo(sum, 9);
      expect(least.duals.every((one) => typeof one.inches === 'number')).toBe(true);
    });
  });

  describe('cut with a unit and a kerf in its lists', () => {
    test('reads bare numbers in the unit of their row, and what says its own as it says', async () => {
      const pieces =
        'Length,Unit,Quantity\n2.5,ft,1\n762,mm,1\n76.2,CM,1\n0.762,Metres,1\n30 in,,1\n"2\' 6""",mm,1\n30,in.,1\n';
      const answer = answerOf(
        await cut(pieces, 'Length,Unit,Kerf\n24,ft,0 in\n', '--json', '--end-trim', '0'),
      );
      expect(answer.sticks).toMatchObject([{ length: 288, pieces: Array<number>(7).fill(30) }]);
    });

    test('answers in millimetres where every row counts in a metric unit', async () => {
      const { out } = await cut(
        'Length,Unit,Quantity\n1200,mm,3\n',
        'Length,Unit,Kerf\n4,m,3 mm\n',
      );
      expect(out).toMatch(/3 × 1200 mm +3\d\d(\.\d)? mm$/m);
      expect(out).toContain('3 mm for each cut');
      expect(out).not.toMatch(/\d in\b/);
    });

    test('asks for the unit of a bare length where other rows have one', async () => {
      const ran = await cut('Length,Unit\n762,mm\n30,\n30 in,\n', 'Length\n96\n', '--json');
      const { faults } = refusalOf(ran);
      expect([ran.exit, faults.map(({ code }) => code)]).toEqual([2, ['cutting.some-units']]);
      const bare = await cut('Length,Unit\n76,\n30,\n', 'Length\n96\n', '--json');
      expect(answerOf(bare).length).toBe(192);
    });

    test('takes no total for a piece', async () => {
      const ran = await cut(
        'Label,Length,Quantity\na,40,3\nTotal,90,3\n',
        'Length\n96\n',
        '--json',
      );
      expect([ran.exit, refusalOf(ran).faults.map(({ code }) => code)]).toEqual([
        2,
        ['table.total-row'],
      ]);
    });

    test('takes the kerf of the list where its rows agree, or the option says the same', async () => {
      const pieces = 'Length,Quantity\n30,3\n';
      // By hand [D]: 90 in of pieces, two cuts of 1/4 in and two trims of 1 in are 92 1/2 in.
      const [fits, short] = await Promise.all([
        cut(pieces, 'Length,Kerf\n92 1/2,1/4\n92 1/2,\n', '--json'),
        cut(pieces, 'Length,Kerf\n92 31/64,6.35 mm\n', '--json', '--kerf', '1/4'),
      ]);
      expect([answerOf(fits).kerf, answerOf(fits).sticks.length]).toEqual([0.25, 1]);
      expect([answerOf(short).kerf, answerOf(short).sticks.length]).toEqual([0.25, 2]);
    });

    test.each([
      {
        sticks: 'Length,Kerf\n96,1/8\n96,3/32\n',
        says: /line 3, column 2: Kerf is 3\/32 in here and 1\/8 in further up/,
      },
      {
        sticks: 'Length,Kerf\n96,1/8\n',
        kerf: '3/32',
        says: /line 2, column 2: Kerf is 1\/8 in here, and --kerf says 3\/32 in/,
      },
      {
        sticks: 'Length,Unit,Kerf\n8,ft,1/8\n',
        says: /line 2, column 3: Kerf: “1\/8” has no unit, and this row counts in ft/,
      },
      { sticks: 'Length,Kerf\n96,5\n', says: /column 2: Kerf is 5 in, more than/ },
      {
        sticks: 'Length,Unit,Kerf\n8,furlong,\n',
        says: /column 2: Unit: “furlong” is not known here\. Allowed: in, ft, mm/,
      },
      {
        sticks: 'Length,Price\n96,\n96,5\n',
        says: /line 2, column 2: Price is empty here, and other sticks have one/,
      },
    ])('refuses what contradicts itself, at its cell: $says', async ({ sticks, kerf, says }) => {
      const ran = await cut(
        'Length\n30\n',
        sticks,
        ...(kerf === undefined ? [] : ['--kerf', kerf]),
      );
      expect([ran.exit, ran.out, linesOf(ran.err).length]).toEqual([2, '', 1]);
      expect(ran.err).toMatch(says);
    });
  });

  describe('lists out of workbooks and pipes', () => {
    const PIECES = 'Length,Quantity\n40,5\n';
    const STICKS = 'Length,Price\n96,1\n';
    const workbook = (): Uint8Array =>
      makeXlsx({
        sheets: [
          ['My pieces', row(1, 'Length', 'Quantity') + row(2, 40, 5)],
          ['Sticks', row(1, 'Length', 'Price') + row(2, 96, 1)],
          ['Bad', row(1, 'Length', 'Price') + row(2, 'long', 1)],
          ['Coves', row(1, 'Profile', 'Cove width', 'Cove depth') + row(2, 'A', 2, '1/2')],
        ],
      });

    test('are the same as CSV: the first sheet, one by its name, the standard input', async () => {
      const folder = folderWith({ 'p.csv': PIECES, 's.csv': STICKS });
      writeFileSync(join(folder, 'lists.xlsx'), workbook());
      const csv = await run(folder, ['cut', 'p.csv', 's.csv', '--json']);
      const others = await Promise.all([
        run(folder, ['cut', 'lists.xlsx', 'lists.xlsx#sticks', '--json']),
        run(folder, ['cut', 'lists.xlsx#My pieces', 's.csv', '--json']),
        run(folder, ['cut', '-', 's.csv', '--json'], PIECES),
        runAlone(folder, ['cut', 'p.csv', '-', '--json'], [], `\uFEFF${STICKS}`),
        run(folder, ['cut', '-', 's.csv', '--json'], workbook()),
      ]);
      expect(csv.exit).toBe(0);
      for (const one of others) expect(one).toEqual(csv);
    });

    test('tell what is out of sight in a sheet, in words and in JSON, and plan it', async () => {
      const hidden = (number: number, ...values: readonly (string | number)[]): string =>
        row(number, ...values).replace('<row ', '<row hidden="1" ');
      const folder = folderWith({
        's.csv': STICKS,
        'lists.xlsx': makeXlsx({
          sheets: [
            ['My pieces', row(1, 'Length', 'Quantity') + row(2, 40, 1) + hidden(3, 30, 2)],
            [
              'Coves',
              row(1, 'Profile', 'Cove width', 'Cove depth') +
                hidden(2, 'A', 2, '1/2') +
                row(3, 'B', 3, '1/2'),
            ],
          ],
        }),
      });
      const cutting = ['cut', 'lists.xlsx', 's.csv'];
      const setups = ['setups', 'lists.xlsx#Coves'];
      for (const [args, cell] of [
        [cutting, 'My pieces!A3'],
        [setups, 'Coves!A2'],
      ] as const) {
        const words = await run(folder, args);
        expect([words.exit, words.err]).toEqual([0, '']);
        expect(words.out).toMatch(
          new RegExp(
            `^Caution: ${cell}: A row of ${cell.slice(0, -3)} is hidden or filtered out; it`,
            'm',
          ),
        );
        const [answer] = [jsonOf(await run(folder, [...args, '--json']))].flat();
        expect((answer as Refusal).cautions.map(({ code }) => code)).toEqual(['table.hidden-rows']);
      }
      expect((await run(folder, cutting)).out).toMatch(/^3 pieces from 2 sticks/m);
    });

    test('say where in words: by sheet and cell, and what the standard input lacks', async () => {
      const folder = folderWith({ 'p.csv': PIECES, 's.csv': STICKS });
      writeFileSync(join(folder, 'lists.xlsx'), workbook());
      const said = async (args: readonly string[], input = ''): Promise<unknown> => {
        const { exit, out, err } = await run(folder, args, input);
        return [exit, out, err];
      };
      expect(await said(['cut', 'p.csv', 'lists.xlsx#Bad'])).toEqual([
        2,
        '',
        expect.stringMatching(/^Bad!A2: Length: “long”/),
      ]);
      expect(await said(['cut', 'p.csv', 'lists.xlsx#None'])).toEqual([
        2,
        '',
        expect.stringMatching(
          /no sheet None in “lists\.xlsx”\. It has: My pieces, Sticks, Bad, Coves\./,
        ),
      ]);
      expect(await said(['setups', 'lists.xlsx'])).toEqual([
        2,
        '',
        expect.stringMatching(
          /^Of “lists\.xlsx” the sheet My pieces was read, its first\. .*, lists\.xlsx#Sticks\. It has: My/m,
        ),
      ]);
      expect(await said(['cut', '-', '-'], PIECES)).toEqual([
        2,
        '',
        expect.stringMatching(/“-” stands twice: the standard input is read once/),
      ]);
      expect(await said(['cut', '-', 's.csv'], 'Length\nx\n')).toEqual([
        2,
        '',
        expect.stringMatching(/^the standard input, line 2, column 1: /),
      ]);
      expect(await said(['setups', '-'])).toEqual([
        2,
        '',
        expect.stringMatching(/the standard input has nothing in it/),
      ]);
    });

    test('give setups its coves too', async () => {
      const folder = folderWith({ 'c.csv': 'Profile,Cove width,Cove depth\nA,2,1/2\n' });
      writeFileSync(join(folder, 'lists.xlsx'), workbook());
      const [csv, piped, sheet] = await Promise.all([
        run(folder, ['setups', 'c.csv', '--json']),
        run(folder, ['setups', '-', '--json'], 'Profile,Cove width,Cove depth\nA,2,1/2\n'),
        run(folder, ['setups', 'lists.xlsx#Coves', '--json']),
      ]);
      expect([csv.exit, piped.out, sheet.out]).toEqual([0, csv.out, csv.out]);
    });

    test('take no more of a pipe than of a file', async () => {
      const folder = folderWith({ 's.csv': STICKS });
      const { exit, ...said } = await runAlone(
        folder,
        ['cut', '-', 's.csv', '--json'],
        [],
        new Uint8Array(50_000_001).fill(10),
      );
      expect([exit, refusalOf({ exit, ...said }).faults.map(({ code }) => code)]).toEqual([
        2,
        ['file.too-large'],
      ]);
    });
  });
}
