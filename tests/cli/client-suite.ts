import { describe, expect, test } from '@jest/globals';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEMO, demoPlan, demoWorkbook, QUICK, SMALL } from './job-folders.ts';
import { filesIn, folderWith, jsonOf, linesOf, refusalOf, run, type SaidFault } from './program.ts';
import { partsOf } from './workbook-parts.ts';

interface ClientAnswer {
  readonly version: number;
  readonly price: number;
  readonly tax: number;
  readonly toPay: number;
  readonly currency: string;
  readonly rooms: readonly { readonly room: string; readonly price: number }[];
  readonly cautions: readonly SaidFault[];
  readonly faults: readonly SaidFault[];
  readonly workbook: string;
}

interface PlanAnswer {
  readonly totals: { readonly price: number; readonly tax: number };
  readonly rooms: readonly { readonly room: string; readonly price: number }[];
}

export function clientSuite(): void {
  describe('client', () => {
    test('writes the copy alone, tells rooms, lines, price and how long it holds, the same each time', async () => {
      const folder = folderWith(SMALL);
      const args = ['client', '.', '--out', 'copy.xlsx', '--date', '2026-11-30'];
      const { exit, out, err } = await run(folder, args);
      expect([exit, err]).toEqual([0, '']);
      const told = [
        /^Written: copy\.xlsx$/m,
        /^ {2}1 room, 2 lines with a quantity to change$/m,
        /^ {2}to pay \$[\d.]+, of which tax \$0\.00$/m,
        /^ {2}number [0-9a-f]{8}, dated 30 Nov 2026; holds 30 days from its date$/m,
        /^It has nothing of the shop's costs, hours, margin or stock\.$/m,
        /^Caution: /m,
      ].map((one) => out.search(one));
      expect([...told].sort((one, other) => one - other)).toEqual(told);
      expect(told).not.toContain(-1);
      const path = join(folder, 'copy.xlsx');
      const { sheetNames, formulas, texts } = partsOf(path);
      expect([sheetNames, filesIn(folder).includes('plan.xlsx')]).toEqual([['Moldings'], false]);
      expect([...texts]).toEqual(expect.arrayContaining(['Hall', 'Cove', 'Base']));
      expect(formulas).toEqual(expect.arrayContaining([expect.stringMatching(/^ROUND\(C/)]));
      const bytes = readFileSync(path);
      await run(folder, [...args, '--force']);
      expect(readFileSync(path).equals(bytes)).toBe(true);
    });

    test('as JSON has the price and the rooms of the plan, and the file', async () => {
      const folder = folderWith({});
      const ran = await run(folder, ['client', DEMO, '--out', 'copy.xlsx', '--json', ...QUICK]);
      const answer = jsonOf(ran) as ClientAnswer;
      const plan = jsonOf(await demoPlan()) as PlanAnswer;
      const { price, tax } = plan.totals;
      expect([ran.exit, answer.version, answer.price, answer.tax]).toEqual([0, 1, price, tax]);
      expect(answer.toPay).toBeCloseTo(price + tax, 9);
      expect(answer.rooms).toEqual(plan.rooms.map((one) => ({ room: one.room, price: one.price })));
      expect([answer.currency, answer.faults, answer.workbook]).toEqual(['$', [], 'copy.xlsx']);
      expect(answer.cautions.length).toBeGreaterThan(0);
      expect(JSON.stringify(answer)).not.toMatch(/"(?:cost|labor|margin|lumber|hours)"/);
    });

    test('as JSON keeps to itself what lumber costs the shop', async () => {
      const folder = folderWith({
        'profiles.csv':
          'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth\nCove,cove,4,1,Poplar,2,1/2',
        'stock.csv': "For,Kind,Length,Price,Per\nCove,stick,8',32,piece",
        'runs.csv': 'Room,Run,Profile,Length\nHall,r,Cove,90',
        'shop.csv': 'Setting,Value\nhourly rate,60\nset-up spare,36',
      });
      const plan = await run(folder, ['plan', '.', '--json', ...QUICK]);
      expect(plan.out).toContain('of lumber');
      const ran = await run(folder, ['client', '.', '--out', 'copy.xlsx', '--json', ...QUICK]);
      expect([ran.exit, /lumber|32\.00/u.test(ran.out)]).toEqual([0, false]);
    });

    test('asks for --out, and lists every fault of the call at once', async () => {
      const folder = folderWith(SMALL);
      const without = await run(folder, ['client', '.']);
      expect([without.exit, without.out, without.err]).toEqual([
        2,
        '',
        'coveledger client needs --out FILE.xlsx. See coveledger client --help.\n',
      ]);
      const twice = await run(folder, ['client', '.', '--out', 'copy.csv', '--seconds', 'soon']);
      expect([twice.exit, linesOf(twice.err).length]).toEqual([2, 2]);
      expect(filesIn(folder)).toEqual(Object.keys(SMALL).sort());
    });

    test.each([
      { out: 'there.xlsx', force: false, says: /“there\.xlsx” exists already\. Give --force/ },
      { out: 'in.xlsx', force: true, says: /“in\.xlsx” is the input itself/ },
      { out: 'folder.xlsx', force: true, says: /“folder\.xlsx” is a folder/ },
      { out: join('none', 'copy.xlsx'), force: false, says: /“none” is not there/ },
    ])('writes nothing at $out', async ({ out, force, says }) => {
      const folder = folderWith({ 'there.xlsx': 'mine', 'in.xlsx': await demoWorkbook() });
      mkdirSync(join(folder, 'folder.xlsx'));
      const before = ['there.xlsx', 'in.xlsx'].map((name) => readFileSync(join(folder, name)));
      const args = ['client', 'in.xlsx', '--out', out, ...QUICK, ...(force ? ['--force'] : [])];
      const ran = await run(folder, args);
      expect([ran.exit, ran.out, linesOf(ran.err).length]).toEqual([2, '', 1]);
      expect(ran.err).toMatch(says);
      const after = ['there.xlsx', 'in.xlsx'].map((name) => readFileSync(join(folder, name)));
      expect(after).toEqual(before);
      expect(filesIn(folder)).toEqual(['folder.xlsx', 'in.xlsx', 'there.xlsx']);
    });

    test('an input that is missing or at fault is refused with 2, a job that cannot be made with 1', async () => {
      const wide = SMALL['profiles.csv']!.replace('cove,2,1/2,3', 'cove,9,1/2,11');
      const folder = folderWith({
        'half/runs.csv': 'Room\n',
        ...Object.fromEntries(
          Object.entries({ ...SMALL, 'profiles.csv': wide }).map(([name, text]) => [
            `wide/${name}`,
            text,
          ]),
        ),
      });
      const before = filesIn(folder);
      const refused = async (input: string): Promise<unknown> => {
        const ran = await run(folder, ['client', input, '--out', 'copy.xlsx', '--json']);
        return [ran.exit, refusalOf(ran).faults.map(({ code }) => code)];
      };
      expect(await refused('nowhere')).toEqual([2, ['file.missing']]);
      expect(await refused('half')).toEqual([2, ['table.missing', 'table.missing']]);
      expect(await refused('wide')).toEqual([1, ['cove.too-wide']]);
      expect(filesIn(folder)).toEqual(before);
    });

    test('says so where everything is done already', async () => {
      const runs = 'Room,Profile,Length,Done\nHall,Cove,60,yes\n';
      const folder = folderWith({ ...SMALL, 'runs.csv': runs });
      const { exit, out } = await run(folder, ['client', '.', '--out', 'copy.xlsx']);
      expect([exit, out.includes('nothing to price: every run is marked as done')]).toEqual([
        0,
        true,
      ]);
    });
  });
}
