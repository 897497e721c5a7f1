/** Grades, yields and defects of Stock: by hand, what holds for any job, and what is refused. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { findGrade } from '../../src/core/lumber/grades.ts';
import { plannedPercent } from '../../src/planning/allowed-lumber.ts';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { listYardOrder } from '../../src/planning/yard-order.ts';
import { listKeptStock } from '../../src/exports/kept-stock-list.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { numberAt, rowWith, sheetOf, textsOf } from '../sheets/sheet-jobs.ts';
import { planOf, readTables, type Tables } from './make-job.ts';

const HEADINGS = 'For,Kind,Class,Width,Length,Price,Per,Have,Buy,Grade,Yield %,Defects';
const SHOP = 'Setting,Value\nhourly rate,60\nend allowance,0\nset-up spare,0';

/** Coves from these rows of Stock. */
const jobWith = (rows: string, lengths: readonly string[], shop = SHOP): Tables => ({
  stock: `${HEADINGS}\n${rows}`,
  runs: `Room,Profile,Length,Measured as,One piece\n${lengths.map((long) => `Hall,Cove,${long},finished,yes`).join('\n')}`,
  shop,
});

const lumberOf = (plan: JobPlan): number =>
  plan.groups.reduce((sum, { lumberCents }) => sum + lumberCents, 0);

const SIX = ['130', '130', '130', '130', '130', '130'];

describe('Yield', () => {
  test('makes a used board dearer, and orders whole boards for those that the plan uses', async () => {
    const plan = await planOf(jobWith("Poplar,board,4/4,10,12',5,board foot,,,FAS,80,", SIX));
    // By hand [D]: 1 in · 10 in · 12 ft are 10 board feet, 50.00 a board, 62.50 for a clear one. Two blanks of
    // 4 1/2 a board: 3 boards, 187.50. To order: 3 / 0.8 = 3.75, so 4 boards, 40 board feet, 200.00.
    expect(lumberOf(plan)).toBe(18_750);
    expect(plan.groups[0]?.stockUse[0]).toMatchObject({ bought: 3, priceCents: 6250 });
    expect(plan.totals.boardFeetBought).toBeCloseTo(37.5, 9);
    const [line] = listYardOrder(plan);
    expect(line).toMatchObject({ pieces: 3, toBuy: 4, priceCents: 5000 });
    expect(line?.boardFeet).toBeCloseTo(40, 9);
    expect(Number(line?.lineal)).toBe(4 * 144);
    expect(planToJson(plan).groups[0]?.stock[0]).toMatchObject({
      ...{ grade: 'FAS', yieldPercent: 80, bought: 3, toOrder: 4, cost: 187.5 },
    });
    expect(checkJobPlan(plan)).toEqual([]);
    const sheets = describePlan(plan);
    const yard = sheetOf(sheets, 'Yard');
    const row = rowWith(yard, 'Poplar', 1);
    expect([4, 9, 10].map((at) => numberAt(yard, row, at))).toEqual([4, 50, 200]);
    expect(textsOf(yard).join('\n')).toMatch(/board 4\/4 FAS, 10" wide, 12'/u);
    expect(textsOf(yard).join('\n')).toMatch(/83 1\/3.*American Hardwood Export Council/u);
    for (const name of ['Production', 'Cutting']) {
      expect(textsOf(sheetOf(sheets, name)).join('\n')).toMatch(
        /order 4, of which 80 % can be used/u,
      );
    }
    // 10 % on 6 · 130 in of 4 1/2 in, 24.375 board feet, at 5.00 / 0.8: yield and allowance once each.
    const [planned] = plan.profiles;
    const { lumber: allowed } = planned!.byAllowance;
    expect(allowed).toMatchObject({ per: 'board foot', eachCents: 625, cents: 16_758 });
    expect(plannedPercent(allowed, planned!, plan.job.shop)).toBeCloseTo(
      (30 / 24.375 - 1) * 100,
      9,
    );
  });

  test('of 100 is as a blank, and never makes a job cheaper that has less of it', async () => {
    const plans = await Promise.all(
      ['', '100', '99.5', '83 1/3', '50', '12'].map((share) =>
        planOf(jobWith(`Poplar,board,4/4,10,12',5,board foot,,,,${share},`, SIX)),
      ),
    );
    const [blank, whole, ...less] = plans.map(lumberOf);
    expect(whole).toBe(blank);
    expect(planToJson(plans[1]!)).toEqual(planToJson(plans[0]!));
    let before = blank!;
    for (const cents of less) {
      expect(cents).toBeGreaterThan(before);
      before = cents;
    }
    // What limits buying counts boards as they come: of 4 at 80 % three are clear.
    const limited = jobWith("Poplar,board,4/4,10,12',5,board foot,,4,,80,", SIX);
    expect(listYardOrder(await planOf(limited))[0]).toMatchObject({ pieces: 3, toBuy: 4 });
    const short = jobWith("Poplar,board,4/4,10,12',5,board foot,,3,,80,", SIX);
    await expect(planOf(short)).rejects.toThrow(/used up/u);
  });

  test('is asked for where a printed grade has none', () => {
    const { cautions } = readTables(
      jobWith("Poplar,board,4/4,10,12',5,board foot,,,#1 common,,", SIX),
    );
    const [said] = cautions.filter(({ code }) => code === 'job.grade-no-yield');
    expect(said?.message).toMatch(/66 2\/3 %.*69 %/u);
    expect(said?.where).toMatchObject({ line: 2 });
    expect(
      ['FAS', '1C', 'No. 2A', '3A Common', 'F1F', 'best'].map((one) => findGrade(one)?.name),
    ).toEqual([...['FAS', 'No. 1 Common', 'No. 2A Common', 'No. 3A Common', 'FAS1F', undefined]]);
  });
});

describe('Defects', () => {
  const BOARD = "Poplar,board,4/4,5,12',30,piece,1,no,FAS,,";

  test('make a board into its clear stretches, each at its share of the price', async () => {
    const tables = jobWith(`${BOARD}50-54`, ['48', '88']);
    const plan = await planOf(tables);
    // By hand [D]: clear from 0 to 50 and from 54 to 144, 140 in. of 30.00 they bear 10.71 and 19.29. Less 1 in at
    // each end 48 and 88 are left: both pieces fill them, from 1 to 49 and from 55 to 143.
    const sticks = plan.profiles.flatMap((one) => one.sticks);
    expect(sticks.map(({ item }) => [Number(item.stretch?.from), Number(item.length)])).toEqual([
      [54, 90],
      [0, 50],
    ]);
    const uses = plan.groups.flatMap(({ stockUse }) => stockUse);
    expect(uses.map(({ priceCents }) => priceCents)).toEqual([1071, 1929]);
    expect(lumberOf(plan)).toBe(3000);
    expect(checkJobPlan(plan)).toEqual([]);
    const said = textsOf(sheetOf(describePlan(plan), 'Cutting')).join('\n');
    expect(said).toContain(
      `From the marked end of its board of 12': 50" to 54" can’t be used. Crosscut it at 54" first. Pieces lie: 1 from 55" to 143".`,
    );
    expect(said).toContain('Crosscut it at 50" first. Pieces lie: 1 from 1" to 49".');
    // A hair more, and no clear stretch holds it.
    await expect(planOf(jobWith(`${BOARD}50-54`, ['88 1/16']))).rejects.toThrow(
      /longer than every stick/u,
    );
    // The check sees a piece that lies over a defect.
    const moved = sticks.map((stick) => {
      const stretch = stick.item.stretch!;
      const defects = [{ from: new Fraction(50), to: new Fraction(60) }];
      return { ...stick, item: { ...stick.item, stretch: { ...stretch, defects } } };
    });
    const [profile] = plan.profiles;
    const spoiled = { ...plan, profiles: [{ ...profile!, sticks: moved }] } as JobPlan;
    expect(checkJobPlan(spoiled).filter((one) => one.includes('lies over a defect'))).toHaveLength(
      1,
    );
  });

  test('leave a stretch that nothing is cut from, with its share of the price, for the next job', async () => {
    const plan = await planOf(jobWith(`${BOARD}50-54`, ['80']));
    expect(lumberOf(plan)).toBe(1929);
    const { headings, rows } = listKeptStock(plan);
    const left = rows.find((row) => String(row.at(-1)).includes('from 0"'));
    expect(Object.fromEntries(headings.map((name, at) => [name, left?.[at]]))).toMatchObject({
      ...{ For: 'Poplar', Kind: 'board', Length: '50"', Width: '5"', Price: 10.71 },
      ...{ Per: 'piece', Have: 1, Buy: 'no', Grade: 'FAS' },
    });
  });

  test('narrower than a cut take a cut; what the shop would not keep is waste with them', () => {
    const stretchesOf = (defects: string) =>
      readTables(jobWith(`${BOARD}${defects}`, ['36'])).asRead.stock.map(({ stretch }) =>
        [stretch!.from, stretch!.to].map(Number),
      );
    expect(stretchesOf('60-60 1/16')).toEqual([
      [0, 60],
      [60.125, 144],
    ]);
    expect(stretchesOf('20-21')).toEqual([[21, 144]]);
    expect(stretchesOf('0-3; 100 to 102-1/2')).toEqual([
      [3, 100],
      [102.5, 144],
    ]);
    expect(stretchesOf(`4' - 4' 2"`)).toEqual([
      [0, 48],
      [50, 144],
    ]);
    expect(stretchesOf('1270-1397 mm')).toEqual([
      [0, 50],
      [55, 144],
    ]);
  });

  test('of any board give stretches apart from each other and from every defect, which bear its price once', () => {
    const defect = fc.record({
      at: fc.integer({ min: 0, max: 1100 }),
      long: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(fc.array(defect, { minLength: 1, maxLength: 4 }), (list) => {
        const typed = list.map(({ at, long }) => `${at / 8}-${(at + long) / 8}`).join('; ');
        const { asRead, faults } = readTables(jobWith(`${BOARD}${typed}`, ['36']));
        if (faults.length > 0) {
          const codes = faults.map(({ code }) => code);
          expect(['job.defects-overlap', 'job.defects-leave-none']).toContain(codes[0]);
          return;
        }
        const found = asRead.stock.map(({ stretch }) => stretch!);
        for (const { from, to } of found) {
          for (const { at, long } of list) {
            expect(Number(from) >= (at + long) / 8 || Number(to) <= at / 8).toBe(true);
          }
        }
        expect(Number(found[0]?.bearsFrom)).toBe(0);
        expect(Number(found.at(-1)?.bearsTo)).toBe(1);
      }),
      { numRuns: 20 },
    );
  });
});

test('What can’t stand in Grade, Yield % or Defects is refused at its cell, with a way on', () => {
  const row = (yieldOrDefects: string): string =>
    `Poplar,board,4/4,5,12',5,board foot,${yieldOrDefects}`;
  const cases: readonly (readonly [string, string, number])[] = [
    [row(',,,0,'), 'job.yield-no-share', 11],
    [row(',,,101,'), 'job.yield-no-share', 11],
    [row(',,,-5,'), 'job.yield-no-share', 11],
    [row(',,,0.8,'), 'job.yield-no-share', 11],
    [row(',,,FAS,'), 'job.yield-is-grade', 11],
    [row(',,,good,'), 'number.unreadable', 11],
    [row('2,,,80,'), 'job.yield-on-rack', 11],
    ["Poplar,stick,4/4,5,12',5,board foot,,,,80,", 'job.yield-of-stick', 11],
    [row('1,no,,,60-50'), 'job.defect-reversed', 12],
    [row('1,no,,,3-1/2'), 'job.defect-reversed', 12],
    [row('1,no,,,140-145'), 'job.defect-outside', 12],
    [row('1,no,,,10-20; 18-30'), 'job.defects-overlap', 12],
    [row('1,no,,,0-144'), 'job.defects-leave-none', 12],
    [row('1,no,,,a knot'), 'job.defects-unreadable', 12],
    [row('1,no,,,30'), 'job.defects-unreadable', 12],
    [row('1,no,,,;'), 'job.defects-unreadable', 12],
    [row('2,no,,,30-34'), 'job.defects-of-many', 12],
    [row(',no,,,30-34'), 'job.defects-of-many', 12],
    [row('1,,,,30-34'), 'job.defects-of-bought', 12],
    [row('1,3,,,30-34'), 'job.defects-of-bought', 12],
  ];
  for (const [stock, code, column] of cases) {
    const { job, faults } = readTables(jobWith(stock, ['36']));
    expect([stock, job, faults.map((one) => one.code)]).toEqual([stock, undefined, [code]]);
    expect([stock, faults[0]?.where]).toEqual([
      stock,
      expect.objectContaining({ line: 2, column }),
    ]);
  }
});
