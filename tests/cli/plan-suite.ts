import { describe, expect, test } from '@jest/globals';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoFiles, demoPlan, demoWorkbook, demoWorkbookPlan, SMALL } from './job-folders.ts';
import {
  filesIn,
  folderWith,
  jsonOf,
  linesOf,
  ROOT,
  run,
  type Ran,
  type SaidFault,
} from './program.ts';
import { partsOf } from './workbook-parts.ts';
import { planSheets } from '../sheets/sheet-names.ts';

interface PlanAnswer {
  readonly totals: Readonly<Record<string, number | string>>;
  readonly rooms: readonly { readonly room: string; readonly price: number }[];
  readonly groups: readonly ({
    readonly name: string;
    readonly sticks: readonly { readonly length: number; readonly pieces: readonly unknown[] }[];
  } & Readonly<Record<'cost' | 'labor' | 'credit' | 'net' | 'bound', number>>)[];
  readonly cautions: readonly SaidFault[];
  readonly faults: readonly SaidFault[];
  readonly workbook: string | null;
}

const PLAN_SHEETS = planSheets(['Rooms']);
const DEMO_SHEETS = planSheets();

export function planSuite(): void {
  describe('demo', () => {
    test('writes its workbook here and tells of every sheet; again, it says what it replaced', async () => {
      const folder = folderWith({});
      const demo = ['demo', '--date', '2026-11-30', '--steps', '3'];
      const first = await run(folder, demo);
      const path = join(folder, 'coveledger-demo.xlsx');
      const bytes = readFileSync(path);
      expect([first.exit, first.err]).toEqual([0, '']);
      expect(first.out).toContain(path);
      for (const name of DEMO_SHEETS)
        expect(first.out).toMatch(new RegExp(`^ {2}${name} +\\w`, 'm'));
      expect(partsOf(path).sheetNames).toEqual(DEMO_SHEETS);
      const second = await run(folder, demo);
      expect(second.out).toContain('coveledger-demo.xlsx that was here before is replaced');
      expect(first.out).not.toMatch(/replaced|\.csv, line/);
      expect(readFileSync(path).equals(bytes)).toBe(true);
      expect(filesIn(folder)).toEqual(['coveledger-demo.xlsx']);
    });
  });

  describe('plan', () => {
    test('the demo folder and the demo workbook are one plan', async () => {
      const ran = [await demoPlan(), await demoWorkbookPlan()];
      const [ofFolder, ofWorkbook] = ran.map((one) => withoutPlaces(answerOf(one)));
      expect(ran.map(({ exit }) => exit)).toEqual([0, 0]);
      expect(ofWorkbook).toEqual(ofFolder);
      expect(JSON.stringify(ofFolder)).not.toMatch(/null,null|NaN|Infinity/);
    });

    test('totals are the sums of their parts', async () => {
      const { totals, groups, rooms, faults } = answerOf(await demoPlan());
      const sticks = groups.flatMap((group) => group.sticks);
      expect(totals['sticks']).toBe(sticks.length);
      const bought = sticks.reduce((sum, { length }) => sum + length, 0);
      expect(totals['lengthBought']).toBeCloseTo(bought, 6);
      const price = rooms.reduce((sum, room) => sum + room.price, 0);
      expect(totals['price']).toBeCloseTo(price, 6);
      for (const { bound, cost, labor, credit, net } of groups) {
        expect(net).toBeCloseTo(cost + labor - credit, 9);
        expect(bound).toBeLessThanOrEqual(net);
      }
      expect(faults).toEqual([]);
    });

    test('in words: a table by profile, lumber with its bound, totals, the manual, cautions last', async () => {
      const folder = folderWith(SMALL);
      const { exit, out, err } = await run(folder, ['plan', '.', '--out', 'plan.xlsx']);
      expect([exit, err]).toEqual([0, '']);
      const parts = [
        /^Profile +Pieces +Sticks +Net length +Board feet net +allowed +bought +Passes +Hours +Price$/m,
        /^Cove +1 +1 +7' \d+" +[\d.]+ +[\d.]+ +[\d.]+ +9 +[\d.]+ +\$[\d.]+$/m,
        /^Base +2 +1 +14' 8" +- +- +- +- +[\d.]+ +\$[\d.]+$/m,
        /^ {2}Base \$24\.50 and \$0\.75 of labor at the sticks, proven least cost\.$/m,
        /^In all:\n {2}3 pieces from 2 sticks, /m,
        /^Read your saw's manual first/m,
        /^Written: plan\.xlsx$/m,
        /^ {2}Production +\w/m,
        /^Caution: Shop leaves /m,
      ];
      const places = parts.map((part) => out.search(part));
      expect(places).not.toContain(-1);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
      const plain = await run(folder, ['plan', '.']);
      expect(plain.out).toContain('No workbook is written: give --out FILE.xlsx to have one.');
    });

    test('faults of cells are all listed by file and line, with 2, and nothing is written', async () => {
      const demo = demoFiles();
      const runs = `${demo['runs.csv']!.trimEnd()}\nAttic,,Tall base,3/0\nAttic,,No such,12\n`;
      const line = runs.split('\n').length - 2;
      const folder = folderWith({
        ...demo,
        'runs.csv': runs,
        'stock.csv': "For,Length\nPoplar,8'\n",
      });
      const before = filesIn(folder);
      const words = await run(folder, ['plan', '.', '--out', 'plan.xlsx', '--force']);
      expect([words.exit, words.out, filesIn(folder)]).toEqual([2, '', before]);
      const faults = linesOf(words.err).filter((one) => !one.startsWith('Caution: '));
      expect(faults).toEqual([
        expect.stringMatching(new RegExp(`^runs\\.csv, line ${line}, column 4: .*divides by zero`)),
        expect.stringMatching(/^stock\.csv, line 1, column 1: .* no column headed Price/),
        expect.stringMatching(new RegExp(`^runs\\.csv, line ${line + 1}, column 3: .*“No such”`)),
      ]);
      const json = await run(folder, ['plan', '.', '--out', 'plan.xlsx', '--json']);
      const said = answerOf(json);
      expect([json.exit, said.faults.length, filesIn(folder)]).toEqual([2, 3, before]);
      expect(Object.keys(said)).toEqual(['faults', 'cautions']);
    });

    test.each([
      {
        name: 'a cove wider than the blade cuts',
        change: { 'profiles.csv': SMALL['profiles.csv']!.replace('cove,2,1/2,3', 'cove,9,1/2,11') },
        codes: ['cove.too-wide'],
      },
      {
        name: 'a piece that must be one and is longer than every stick',
        change: { 'runs.csv': "Room,Profile,Length,One piece\nHall,Base,20',yes\nHall,Cove,40,\n" },
        codes: ['cutting.unserved'],
      },
      {
        name: 'stock that runs out',
        change: { 'stock.csv': "For,Length,Price,Have,Buy\nCove,12',20,,\nBase,8',9,1,no\n" },
        codes: ['cutting.unserved'],
      },
    ])('a job that cannot be made is refused with 1: $name', async ({ change, codes }) => {
      const folder = folderWith({ ...SMALL, ...change });
      const before = filesIn(folder);
      const args = ['plan', '.', '--out', 'plan.xlsx', '--json'];
      const ran = await run(folder, args);
      const { faults } = answerOf(ran);
      expect([ran.exit, faults.map(({ code }) => code)]).toEqual([1, codes]);
      expect(faults[0]!.where?.line).toBeGreaterThan(1);
      expect(filesIn(folder)).toEqual(before);
    });

    test('a workbook that is there is replaced with --force alone, the input never', async () => {
      const folder = folderWith({ ...SMALL, 'plan.xlsx': 'mine' });
      const refused = await run(folder, ['plan', '.', '--out', 'plan.xlsx']);
      expect([refused.exit, linesOf(refused.err).length]).toEqual([2, 1]);
      expect(readFileSync(join(folder, 'plan.xlsx'), 'utf8')).toBe('mine');
      const forced = await run(folder, ['plan', '.', '--out', 'plan.xlsx', '--force']);
      expect([forced.exit, partsOf(join(folder, 'plan.xlsx')).sheetNames]).toEqual([
        0,
        PLAN_SHEETS,
      ]);
      const input = await demoWorkbook();
      writeFileSync(join(folder, 'job.xlsx'), input);
      const onInput = await run(folder, ['plan', 'job.xlsx', '--out', './job.xlsx', '--force']);
      expect([onInput.exit, onInput.err]).toEqual([
        2,
        '--out: “./job.xlsx” is the input itself, which is never written over. Choose another name.\n',
      ]);
      expect(readFileSync(join(folder, 'job.xlsx')).equals(input)).toBe(true);
    });

    test('what stands in cells of the input is written as text, whatever it begins with', async () => {
      const rooms = ['=1+1', '+SUM(A1)', '-2+3', '@SUM(A1:A9)', '=HYPERLINK("x")'];
      const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
      const folder = folderWith({
        ...SMALL,
        'runs.csv': [
          'Room,Run,Profile,Length,Note',
          ...rooms.map((room) => `${quoted(room)},=A1,=Cove,40,${quoted(`=${room}`)}`),
          '',
        ].join('\n'),
        'profiles.csv': SMALL['profiles.csv']!.replace('\nCove,', '\n=Cove,'),
        'stock.csv': SMALL['stock.csv']!.replace('\nCove,', '\n=Cove,'),
      });
      const { exit } = await run(folder, ['plan', '.', '--out', 'plan.xlsx']);
      expect(exit).toBe(0);
      const { formulas, texts } = partsOf(join(folder, 'plan.xlsx'));
      for (const room of rooms) expect([...texts]).toContain(room);
      expect(formulas.length).toBeGreaterThan(0);
      const foreign = /HYPERLINK|A1:A9|^\+?SUM\(A1\)|^1\+1|^-?2\+3|Cove/;
      expect(formulas.filter((formula) => foreign.test(formula))).toEqual([]);
    });

    test("writes the client's copy and the files for other programs from the same plan", async () => {
      const folder = folderWith(SMALL);
      // Else each file tells the moment of its making.
      const dated = ['--date', '2026-11-30'];
      const args = [
        'plan',
        '.',
        '--out',
        'shop.xlsx',
        '--client',
        'copy.xlsx',
        '--export',
        'all.zip',
        '--shop-view',
        'saw.html',
        ...dated,
      ];
      const { exit, out, err } = await run(folder, args);
      expect([exit, err]).toEqual([0, '']);
      const written = [...out.matchAll(/^Written: (.*)$/gm)].map(([, path]) => path);
      expect(written).toEqual(['shop.xlsx', 'copy.xlsx', 'all.zip', 'saw.html']);
      expect(readFileSync(join(folder, 'saw.html'), 'utf8')).toContain('<!doctype html>');
      expect(partsOf(join(folder, 'copy.xlsx')).sheetNames).toEqual(['Moldings']);
      const alone = folderWith(SMALL);
      await run(alone, ['client', '.', '--out', 'copy.xlsx', ...dated]);
      await run(alone, ['export', '.', '--out', 'all.zip', ...dated]);
      for (const name of ['copy.xlsx', 'all.zip']) {
        expect(readFileSync(join(folder, name)).equals(readFileSync(join(alone, name)))).toBe(true);
      }
      const json = jsonOf(await run(folder, [...args, '--force', '--json']));
      expect(json).toMatchObject({
        workbook: 'shop.xlsx',
        client: 'copy.xlsx',
        exported: 'all.zip',
        shopView: 'saw.html',
      });
    });

    test('says of all its files at once where they may not be written, and writes none', async () => {
      const folder = folderWith(SMALL);
      const before = filesIn(folder);
      const wrong = ['--out', 'a.xlsx', '--client', './a.xlsx', '--export', 'all.xlsx'];
      const { exit, err } = await run(folder, ['plan', '.', ...wrong]);
      expect(exit).toBe(2);
      expect(err).toContain('--client names the same file as --out, “./a.xlsx”.');
      expect(err).toContain('--export: “all.xlsx” must end in “.zip”.');
      expect(filesIn(folder)).toEqual(before);
    });

    test('with --formulas the set-up numbers stand in the workbook as plain formulas too', async () => {
      const folder = folderWith(SMALL);
      const asked = ['plan', '.', '--out', 'plan.xlsx', '--formulas'];
      const { exit, out, err } = await run(folder, asked);
      expect([exit, err]).toEqual([0, '']);
      const { sheetNames, formulas } = partsOf(join(folder, 'plan.xlsx'));
      expect(sheetNames).toEqual([...PLAN_SHEETS, 'Set-up formulas', 'Formula steps']);
      expect(formulas.filter((one) => one.includes('ASIN('))).not.toEqual([]);
      expect(formulas.filter((one) => one.includes('COVE.'))).toEqual([]);
      expect(out).toMatch(/^ {2}Set-up formulas +\w/m);
      expect((await run(folder, ['plan', '--help'])).out).toContain('--formulas');
      // They stand in the workbook, and nowhere else.
      const alone = await run(folder, ['plan', '.', '--formulas', '--client', 'c.xlsx']);
      expect([alone.exit, alone.err]).toEqual([
        2,
        '--formulas goes with --out alone. Give both, or leave it out.\n',
      ]);
    });

    // Real where present: a two-family house measured off an open building model, 320 runs.
    const house = join(ROOT, '..', 'shared', 'data', 'house-duplex');
    (existsSync(house) ? test : test.skip)('a real house of 320 runs is planned', async () => {
      const folder = folderWith({});
      const ran = await run(folder, [
        'plan',
        house,
        '--out',
        'house.xlsx',
        '--json',
        '--steps',
        '3',
      ]);
      const { totals, groups } = answerOf(ran);
      expect([ran.exit, groups.length]).toEqual([0, 3]);
      expect(totals['pieces']).toBeGreaterThanOrEqual(320);
      expect(partsOf(join(folder, 'house.xlsx')).sheetNames).toEqual(PLAN_SHEETS);
    });
  });
}

/** The same answer without the names of files and cells, which a folder and a workbook don't share. */
/** Where something is typed. */
const isPlace = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && ('file' in value || 'sheet' in value);

function withoutPlaces(answer: PlanAnswer): unknown {
  // Cells of a workbook and texts of a file are told apart: their mark is another.
  const told = { ...answer, made: undefined };
  return JSON.parse(
    JSON.stringify(told, (_, value: unknown) => (isPlace(value) ? undefined : value)),
  );
}

function answerOf(ran: Ran): PlanAnswer {
  return jsonOf(ran) as PlanAnswer;
}
