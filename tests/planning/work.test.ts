/** Work: what is in the price and what isn't, how it is counted, and what it comes to. */
import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { hoursOf } from '../../src/planning/work/hours.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { sheetOf } from '../sheets/sheet-jobs.ts';
import { planOf, readTables, type Tables } from './make-job.ts';

const WORK = 'Work,Per,Minutes,Money,For,Ours\n';
const SHOP = 'Setting,Value\nhourly rate,60\nend allowance,0\n';
const COVE_RUNS = 'Room,Profile,Length,Measured as\nHall,Cove,60,finished\nHall,Cove,60,finished';

/** Of each line: what it is, how many, hours. */
const linesOf = (plan: JobPlan, at = 0): (readonly [string, number, number])[] =>
  plan.profiles[at]!.work.map(({ row, count: many, hours }) => [row.work, many, hours]);

describe('Work', () => {
  // By hand [D], as stock-and-money's: 9 passes over two blanks of 12 ft; 2 + 1 pieces and spare, 5 cuts.
  test('is what was always in the price where nothing is typed, a line each', async () => {
    const plan = await planOf({ runs: COVE_RUNS });
    expect(linesOf(plan)).toEqual([
      ['set up a cove', 1, 40 / 60],
      ['feed over the blade', 216, expect.closeTo(216 / 360, 12)],
      ['carry round', 18, expect.closeTo(9 / 60, 12)],
      ['smooth', expect.closeTo(2.66, 1), expect.closeTo(0.31, 2)],
      ['crosscut', 5, expect.closeTo((5 * 45) / 3600, 12)],
    ]);
    const [{ tally, work }] = plan.profiles as [JobPlan['profiles'][number]];
    expect(hoursOf(tally.hours)).toBeCloseTo(
      work.reduce((sum, { hours }) => sum + hours, 0),
      12,
    );
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('is priced the same by a setting, and by a row of Work that says its minutes', async () => {
    const bySetting = await planOf({
      runs: COVE_RUNS,
      shop: `${SHOP}set-up minutes,55\nfeed,4\nhandling per pass,36\ncrosscut seconds,90`,
    });
    const byRow = await planOf({
      runs: COVE_RUNS,
      shop: SHOP,
      work: `${WORK}Set up a cove,,55,,,\nfeed over the blade,,0.25,,,\ncarry round,,0.6,,all,yes\ncrosscut,crosscut,1.5,,,`,
    });
    expect(byRow.totals.hours).toBeCloseTo(bySetting.totals.hours, 12);
    expect(byRow.totals.priceCents).toBe(bySetting.totals.priceCents);
    expect(bySetting.totals.priceCents).not.toBe(
      (await planOf({ runs: COVE_RUNS })).totals.priceCents,
    );
  });

  // By hand [D]: base 100 in, inside miter and cope: one miter, one cope. A stick of 16 ft is one board.
  const RUN = 'Room,Profile,Length,Measured as,Left end,Right end\nHall,';
  test.each<readonly [string, string, number, number]>([
    ['pull and check lumber,,,,,', 'Base,100,finished,inside miter,cope', 1, 2 / 60],
    ['miter,,,,,', 'Base,100,finished,inside miter,cope', 1, 1 / 60],
    ['miter,,,,,', 'Crown,100,finished,inside miter,cope', 0, 0],
    ['compound miter,,,,,', 'Crown,100,finished,inside miter,outside miter', 2, 4 / 60],
    ['cope,,7.5,,,', 'Base,100,finished,cope,cope', 2, 15 / 60],
    ['return,,,,,', 'Base,100,finished,return,square', 1, 4 / 60],
    ['label and bundle,,,,,', 'Base,100,finished,return,square', 2, 2 / 60],
    ['install,,,,,', 'Base,120,finished,square,square', 10, 30 / 60],
    // 5 1/4 wide, 120 long: 4.375 square feet.
    ['prime or finish,,2,,,', 'Base,120,finished,square,square', 4.375, 8.75 / 60],
    ['rip along,foot a rip,1,,,', 'Base,120,finished,square,square', 0, 0],
    // A board of 12 ft that both blanks come from, 1 in · 4 1/2 · 120 in and 10 % more: 4.125 board feet.
    ['rip boards,,,,,', 'Cove,120,finished,square,square', 1, 2 / 60],
    ['joint and plane,,,,cove,', 'Cove,120,finished,square,square', 4.125, 6.1875 / 60],
    ['rip along,,1,,Cove,', 'Cove,120,finished,square,square', 24, 24 / 60],
  ])('counts %s', async (row, run, many, hours) => {
    const plan = await planOf({ runs: `${RUN}${run}`, work: WORK + row });
    const [name] = row.split(',');
    const line = linesOf(plan).find(([work]) => work === name) ?? [name, 0, 0];
    expect(line).toEqual([name, expect.closeTo(many, 9), expect.closeTo(hours, 9)]);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('of the whole job stands by itself, and no room or molding bears it', async () => {
    const openings = 'Room,Wall,Kind,Width,Height,Casing,Quantity\nHall,,door,36,80,Casing,3';
    const work = `${WORK}load and deliver,,90,,,\nsite visit,room,20,,,\nhang a door,opening,,25,,`;
    const plan = await planOf({ openings, work, shop: SHOP });
    const plain = await planOf({ openings, shop: SHOP });
    expect(plan.jobWork.lines.map(({ count: many, hours, money }) => [many, hours, money])).toEqual(
      [
        [1, 1.5, 0],
        [1, 20 / 60, 0],
        [3, 0, 75],
      ],
    );
    // 1.5 h and 1/3 h at 60.00, and 75.00.
    expect(plan.jobWork.money).toMatchObject({ laborCents: 18500, priceCents: 18500 });
    expect(plan.totals.priceCents).toBe(plain.totals.priceCents + 18500);
    expect(plan.totals.linesCents).toBe(plain.totals.linesCents);
    expect(plan.rooms).toEqual(plain.rooms);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('of a molding goes before that of its make, and that before that of all', async () => {
    const work = `${WORK}install,,4,,,\ninstall,,6,,buy,\ninstall,foot,9,,Base,\ninstall at height,,1.5,,Casing,`;
    const runs = 'Room,Profile,Length\nHall,Base,120\nHall,Casing,120\nHall,Cove,60';
    const plan = await planOf({ runs, work, shop: SHOP });
    const install = plan.profiles.map(({ work: lines }) => {
      const line = lines.find(({ row }) => row.work === 'install')!;
      return [line.count, line.row.minutes, line.factor, line.hours];
    });
    expect(install).toEqual([
      [10, 9, 1, 1.5],
      [10, 6, 1.5, 1.5],
      [5, 4, 1, 20 / 60],
    ]);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('that is not ours, or asks nothing, is in no price and is told as such', async () => {
    const plan = await planOf({ runs: COVE_RUNS, work: `${WORK}smooth,,,,,no\ncrosscut,,0,,,` });
    expect(plan.profiles[0]!.tally.hours).toMatchObject({ smoothing: 0, crosscuts: 0 });
    const not = planToJson(plan).work.filter(({ included, typed }) => typed && !included);
    expect(not.map((row) => row.work)).toEqual(['smooth', 'crosscut']);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test.each<readonly [string, string, number, Partial<Tables>?]>([
    ['crosscut,mile,1,,,', 'word.unknown', 2],
    ['crosscut,,-1,,,', 'number.too-small', 3],
    ['crosscut,,abc,,,', 'number.unreadable', 3],
    ['crosscut,,24000,,,', 'number.too-large', 3],
    ['measure,,10,,,', 'text.missing', 2],
    ['measure,room,,,,', 'job.work-needs-minutes', 3],
    ['cope,,,,Bse,', 'job.work-for-unknown', 5],
    ['site visit,room,10,,Base,', 'job.work-for-of-job', 5],
    ['cope,,,,,perhaps', 'word.unknown', 6],
    ['cope,,,€4,,', 'number.other-currency', 4],
    ['cope,,4,,,\nCope,,5,,all,', 'job.work-twice', 1],
    ['install at height,,0,,,', 'number.not-positive', 3],
    ['install at height,,1.2,5,,', 'job.work-factor-money', 4],
    ['crosscut,,2,,,', 'job.work-differs', 3, { shop: `${SHOP}crosscut seconds,45` }],
    [',room,10,,,', 'text.missing', 1],
  ])('is refused at its cell: %s', (rows, code, column, more = {}) => {
    const { faults } = readTables({ work: WORK + rows, ...more });
    expect(faults.map((one) => one.code)).toEqual([code]);
    const line = rows.includes('\n') ? 3 : 2;
    expect(faults[0]!.where).toEqual({ file: 'work.csv', line, column });
  });

  test('by the metre is the same work as by the foot, and Labor has it in metres for a job in mm', async () => {
    // [D] A foot is 0.3048 m, a square foot 0.09290304 m²: so many minutes, and so much money, of a metre's.
    const inMetres = [
      'install,metre,10,,Base,',
      'rip along,meter a rip,2,,,',
      'back bevel,metre a cut,1.5,,,',
      'feed over the blade,metre a pass,0.5,,,',
      'smooth,square metre,80,,,',
      'prime or finish,square metre a coat,16,2.5,Base,',
    ];
    const inFeet = [
      'install,foot,3.048,,Base,',
      'rip along,foot a rip,0.6096,,,',
      'back bevel,foot a cut,0.4572,,,',
      'feed over the blade,foot a pass,0.1524,,,',
      'smooth,square foot,7.4322432,,,',
      'prime or finish,square foot a coat,1.48644864,0.2322576,Base,',
    ];
    const runs = 'Room,Profile,Length,Measured as\nHall,Base,120,finished\nHall,Cove,60,finished';
    const planWith = (rows: readonly string[]) =>
      planOf({ runs, work: WORK + rows.join('\n'), shop: SHOP });
    const [metres, feet] = [await planWith(inMetres), await planWith(inFeet)];
    expect(metres.totals.priceCents).toBe(feet.totals.priceCents);
    expect(metres.totals.hours).toBeCloseTo(feet.totals.hours, 12);
    expect(checkJobPlan(metres)).toEqual([]);
    const metric = await planOf({
      runs: 'Room,Profile,Length,Measured as\nHall,Base,3000,finished',
      profiles: 'Profile,Make,Blank width,Blank thickness,Species\nBase,buy,140,18,Poplar',
      stock: 'For,Kind,Length,Price,Per\nBase,stick,4000,5,metre',
      work: `${WORK}install,metre,10,1.5,,\nprime or finish,,1.5,,,`,
      shop: `${SHOP}unit,mm`,
    });
    const cells = sheetOf(describePlan(metric), 'Labor').rows.map((row) =>
      row.cells.map((one) => one?.value ?? null),
    );
    const rate = cells.find(([, work]) => work === 'install')!;
    expect([...rate.slice(1, 5), rate[8]]).toEqual(['install', 'all', 'metre', 10, 1.5]);
    const line = cells.findLast(([, work]) => work === 'install')!;
    // 3 m at 10 minutes and 1.50.
    expect(line.slice(3, 9)).toEqual(['metre', 10, 1, 3, 0.5, 4.5]);
    const coat = cells.findLast(([, work]) => work === 'prime or finish')!;
    // 140 mm by 3 m, 1.5 minutes a square foot.
    expect(coat.slice(3, 8)).toEqual([
      'square metre a coat',
      expect.closeTo(1.5 / 0.09290304, 9),
      1,
      expect.closeTo(0.42, 9),
      expect.closeTo((0.42 / 0.09290304) * (1.5 / 60), 9),
    ]);
  });

  test('by the metre that contradicts a setting of Shop is told in metres', () => {
    const { faults } = readTables({
      work: `${WORK}feed over the blade,metre a pass,0.3,,,`,
      shop: `${SHOP}feed,6`,
    });
    expect(faults.map(({ code, given, limit }) => [code, given, limit])).toEqual([
      // 6 ft a minute: 1 / (6 · 0.3048) of a minute a metre.
      ['job.work-differs', 0.3, 0.5468],
    ]);
  });

  test('that repeats what is usual, minutes and all, says nothing; a no without minutes is a word of its own', () => {
    const workOf = (rows: string) => readTables({ work: WORK + rows, shop: SHOP }).asRead.work;
    const none = workOf('');
    expect(workOf('miter,miter,1,,,no\ncrosscut,,,,,yes\nset up a cove,set-up,40,,all,')).toEqual(
      none,
    );
    for (const row of ['miter,,,,,no', 'miter,,2,,,no', 'miter,,1,,,yes', 'crosscut,,,,,no']) {
      expect(workOf(row).filter(({ typed }) => typed !== undefined)).toHaveLength(1);
    }
  });

  test('on a face whose width isn’t known is refused at that width', () => {
    const { faults } = readTables({
      profiles: 'Profile,Make,Blank width\nBase,buy,',
      stock: "For,Length,Price\nBase,16',2",
      work: `${WORK}prime or finish,,,,,`,
    });
    expect(faults.map(({ code, where }) => [code, where])).toEqual([
      ['job.work-needs-width', { file: 'profiles.csv', line: 2, column: 3 }],
    ]);
  });
});
