import { beforeAll, describe, expect, test } from '@jest/globals';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import type {
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { planByHand, type HandStick } from '../planning/hand-made-plan.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import { planMixed, SHARED, withCredit } from '../planning/shared-boards.ts';
import { PICKS } from '../../src/sheets/cutting/cutting-columns.ts';
import { cutSticks, offcutRows } from './cut-rows.ts';
import { planCut, withLongerEnds } from './cut-plans.ts';
import { JOBS, sheetOf, textsOf } from './sheet-jobs.ts';

/** Boards of 9 1/2 in: two blanks of 4 1/2 (9 1/8), three of 3 (9 1/4), or one of each (7 5/8). */
const MANY: Tables = {
  ...SHARED,
  shop: `${SHARED.shop!}\noffcut credit %,10`,
  runs: 'Room,Profile,Length,Quantity,Measured as\nHall,Wide,100,4,finished\nDen,Narrow,100,3,finished',
  stock: "For,Kind,Class,Width,Length,Price,Per,Have\nPoplar,board,4/4,9 1/2,10',40,piece,1",
};
const wide = (piece: number, unit: number, strip: number, rip: readonly number[]): HandStick => ({
  profile: 'Wide',
  unit,
  strip,
  rip,
  pieces: [`Hall / Wide / ${piece}`],
});
const narrow = (piece: number, unit: number, strip: number, rip: readonly number[]): HandStick => ({
  profile: 'Narrow',
  unit,
  strip,
  rip,
  pieces: [`Den / Narrow / ${piece}`],
});

describe('The cutting sheet of profiles that share boards', () => {
  let mixed: SheetDescription;
  let many: SheetDescription;

  beforeAll(async () => {
    mixed = sheetOf(describePlan(await planMixed(withCredit)), 'Cutting');
    const sticks = [
      wide(1, 0, 0, [2, 0]),
      wide(2, 0, 1, [2, 0]),
      wide(3, 1, 0, [2, 0]),
      wide(4, 2, 0, [1, 1]),
      narrow(1, 2, 1, [1, 1]),
      narrow(2, 3, 0, [0, 3]),
      narrow(3, 3, 1, [0, 3]),
    ];
    const plan = await planOf(MANY, { planSticks: planByHand(sticks).plan });
    many = sheetOf(describePlan(plan), 'Cutting');
  });

  test('says how many sticks, in how many lay-outs, and the board feet; money on the screen alone', () => {
    const said = textsOf(mixed).filter((text) => text.includes(' lay-out'));
    expect(said).toContain(
      '2 sticks in 2 lay-outs. 6.7 board feet bought or from the rack, 5.2 used. Cut the cove on the whole blanks, and crosscut them afterwards.',
    );
    // What it costs stands beside it, where nothing is printed.
    expect(textsOf(mixed)).toContain(
      'Lumber $40.00 less $4.45 for kept offcuts, least possible $0.00: how near the least possible is not known (at most $35.55 more might be saved).',
    );
    const printed = mixed.rows.flatMap(({ cells }) => cells.slice(0, mixed.print.printedColumns));
    expect(printed.filter((cell) => /[$€£]/u.test(String(cell?.value ?? '')))).toEqual([]);
  });

  test('says how a board is ripped before its sticks', () => {
    const texts = textsOf(mixed);
    const rip = texts.indexOf('Rip the boards first');
    expect(texts[rip + 1]).toBe(
      `Board A1 of Poplar (board 4/4, 8" wide, 10'): rip 1 × Wide 4 1/2", 1 × Narrow 3"`,
    );
    const [first, second] = cutSticks(mixed);
    expect([first!.id, second!.id, second!.which]).toEqual(['Wide #1', 'Narrow #1', 'A1/2']);
    const rows = mixed.rows.map(({ cells }) => cells[0]?.value);
    expect(first!.row).toBeGreaterThan(rows.indexOf('Rip the boards first') + 1);
  });

  test('gathers boards that are ripped alike, and lists whole blanks that are kept', () => {
    const rips = textsOf(many).filter((text) => text.includes(': rip '));
    const of = `of Poplar (board 4/4, 9 1/2" wide, 10')`;
    expect(rips).toEqual([
      `Board A1 ${of}: rip 2 × Wide 4 1/2"`,
      `Board A2 ${of}: rip 1 × Wide 4 1/2", 1 × 4 1/2" to keep`,
      `Board A3 ${of}: rip 1 × Wide 4 1/2", 1 × Narrow 3"`,
      `Board A4 ${of}: rip 2 × Narrow 3", 1 × 3" to keep`,
    ]);
    const kept = offcutRows(many).filter(({ what }) => what !== 'rest of a stick');
    expect(
      kept.map(({ label, wide, thick, length, what, from }) => [
        label,
        wide,
        thick,
        length,
        what,
        from,
      ]),
    ).toEqual([
      ['A2 blank 2', '4 1/2"', '4/4', 120, 'whole blank, not credited', 'board A2'],
      ['A4 blank 3', '3"', '4/4', 120, 'whole blank, not credited', 'board A4'],
    ]);
  });

  test('names each stick by its board and the blank of it, and where the boards come from', () => {
    const which = cutSticks(many).map(({ id, which: name }) => `${id} ${name}`);
    expect(which.sort()).toEqual([
      'Narrow #1 A3/2',
      'Narrow #2 A4/1',
      'Narrow #3 A4/2',
      'Wide #1 A1/1',
      'Wide #2 A1/2',
      'Wide #3 A2/1',
      'Wide #4 A3/1',
    ]);
    const picks = many.rows.flatMap(({ cells }) => {
      const from = cells[PICKS.start('from')]?.value;
      return from === 'rack' || from === 'buy'
        ? [[from, cells[PICKS.start('numbers')]?.value]]
        : [];
    });
    expect(picks).toEqual([
      ['rack', 'A1'],
      ['buy', 'A2 to A4'],
    ]);
  });
});

test('Boards that are ripped alike are one line of the cutting sheet', async () => {
  const sticks = [0, 1, 2].flatMap((unit) => [
    wide(2 * unit + 1, unit, 0, [2, 0]),
    wide(2 * unit + 2, unit, 1, [2, 0]),
  ]);
  const tables = {
    ...MANY,
    runs: 'Room,Profile,Length,Quantity,Measured as\nHall,Wide,100,6,finished\nDen,Narrow,100,1,finished',
  };
  const all = [...sticks, narrow(1, 3, 0, [0, 3])];
  const plan = await planOf(tables, { planSticks: planByHand(all).plan });
  const rips = textsOf(sheetOf(describePlan(plan), 'Cutting')).filter((text) =>
    text.includes(': rip '),
  );
  expect(rips[0]).toBe(
    `Boards A1 to A3 of Poplar (board 4/4, 9 1/2" wide, 10'): rip 2 × Wide 4 1/2"`,
  );
  expect(rips).toHaveLength(2);
});

test('A Have that was changed after the cutting is cautioned over what is to be pulled and bought', async () => {
  const shared = JOBS['shared']!;
  const plan = await planCut(shared, {
    ...shared,
    stock: shared.stock!.replace('foot,1,', 'foot,0,'),
  });
  const texts = textsOf(sheetOf(describePlan(plan), 'Cutting'));
  const said = texts.findIndex((text) => text.includes('Have is 0 and was 1 when its sticks were'));
  expect(said).toBeGreaterThan(0);
  expect(texts.indexOf('Pull from the rack, and buy')).toBe(said + 1);
});

describe('The sheets of a job that is begun', () => {
  let plan: JobPlan;
  let workbook: WorkbookDescription;

  beforeAll(async () => {
    const shared = JOBS['shared']!;
    plan = await planCut(shared, withLongerEnds(shared));
    workbook = describePlan(plan);
  });

  test('list what is cut already apart, with its tick, so that nobody pulls, buys or rips it again', () => {
    const { rows } = sheetOf(workbook, 'Cutting');
    const picks = rows.flatMap(({ cells }) => {
      const at = (name: Parameters<typeof PICKS.start>[0]) =>
        cells[PICKS.start(name)]?.value ?? null;
      const [tick, count, from, numbers] = [at('tick'), at('count'), at('from'), at('numbers')];
      return ['rack', 'buy', 'cut already'].includes(String(from))
        ? [[tick, count, from, numbers]]
        : [];
    });
    expect(picks).toEqual([
      ['x', 1, 'cut already', 'B1'],
      [null, 1, 'buy', 'A1'],
      [null, 1, 'buy', 'B2'],
      [null, 2, 'buy', 'C2 and C3'],
      ['x', 1, 'cut already', 'C1'],
    ]);
    const cut = plan.profiles.flatMap((one) => one.sticks.filter(({ isCut }) => isCut));
    expect(cut.map(({ item, unit, fromRack }) => [item.for, unit, fromRack])).toEqual([
      ['Poplar', 1, true],
      ['Narrow', 1, false],
    ]);
    const texts = textsOf(sheetOf(workbook, 'Cutting'));
    const board = (name: string): string =>
      `Board ${name} of Poplar (board 4/4, 9 1/2" wide, 12'):`;
    expect(texts.filter((text) => /: rip/u.test(text))).toEqual([
      `${board('B1')} ripped already into 2 × Wide 4 1/2"`,
      `${board('B2')} rip 1 × Flat 4 1/2", 1 × 4 1/2" to keep`,
    ]);
    const onProduction = textsOf(sheetOf(workbook, 'Production'));
    expect(
      onProduction.filter((text) => /(?:cut|ripped) already(?!.*left over)/u.test(text)),
    ).toEqual([
      'as listed under lumber; all are cut already',
      'as listed under lumber; 1 of them cut already',
      'into 2 × Wide 4 1/2", 1 × Flat 4 1/2", 1 × 4 1/2" to keep; 1 of the boards is ripped already',
      `board 4/4, 9 1/2" wide, 12'; cut already: 1 from the rack`,
      `stick 4/4, 3 1/4" wide, 8'; cut already: 1 bought`,
    ]);
  });
});
