import { describe, expect, test } from '@jest/globals';

import { sayMoney } from '../../src/core/units/say-money.ts';
import { sayPlan } from '../../src/cli/say-plan.ts';
import { exportPlan } from '../../src/exports/export-plan.ts';
import { sayResult } from '../../src/pane/plan/say-result.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { rangeOfPrice } from '../../src/planning/range-of-price.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { sheetOf, textsOf } from '../sheets/sheet-jobs.ts';
import { planOf, readTables } from './make-job.ts';

const WORK = 'Work,Per,Minutes,Money,For,Ours,Low,High\n';
const SHOP = 'Setting,Value\nhourly rate,60\nend allowance,0';
const RUNS = 'Room,Profile,Length,Measured as\nHall,Base,1200,finished';
const rangeWith = async (rows: string) => {
  const plan = await planOf({ runs: RUNS, shop: SHOP, work: WORK + rows });
  return { plan, range: plan.range };
};

describe('Low and High on Work', () => {
  test('give the price of a foot’s minutes the band of a triangle, worked by hand', async () => {
    // [D] 100 ft at 2 minutes (1 to 4), 60 an hour: 100.00 a minute. The triangle (1, 2, 4) has 1.548 at
    // a tenth and 3.225 at nine tenths; all else of the price is known.
    const { plan, range } = await rangeWith('install,foot,2,,,,1,4');
    const likely = plan.totals.priceCents / 100;
    const [factor] = [1 / (1 - plan.job.shop.margin / 100)];
    const { overhead } = plan.job.shop;
    const aMinute = 100 * (1 + overhead / 100) * factor;
    expect(range!.likely).toBe(likely);
    expect(Math.abs(range!.low - (likely + (1.548 - 2) * aMinute))).toBeLessThan(0.02 * aMinute);
    expect(Math.abs(range!.high - (likely + (3.225 - 2) * aMinute))).toBeLessThan(0.03 * aMinute);
    const [driver] = range!.drivers;
    expect([driver!.name, driver!.share]).toEqual(['install', 1]);
    expect(driver!.atHigh - driver!.atLow).toBeCloseTo(3 * aMinute, 1);
  });

  test('hold for a factor and for work of the whole job, and order what moves the price', async () => {
    const { plan, range } = await rangeWith(
      'install,foot,3,,,,,\ninstall at height,factor,1.2,,,,1,1.5\nload and deliver,job,60,,,,50,600',
    );
    expect(range!.likely).toBe(plan.totals.priceCents / 100);
    const moved = range!.drivers.filter(({ share }) => share > 0);
    // [D] The factor moves 300 minutes by a half of them, 150; the delivery moves 550.
    expect(moved.map(({ name }) => name)).toEqual(['load and deliver', 'install at height']);
    expect(moved[0]!.share).toBeCloseTo(550 / 700, 3);
  });

  test('are the same each time, and the sheet Office says them; without them it says nothing', async () => {
    const rows = 'install,foot,2,,,,1,4';
    const { plan, range } = await rangeWith(rows);
    expect((await rangeWith(rows)).range).toEqual(range);
    expect(textsOf(sheetOf(describePlan(plan), 'Office'))).toContain('Low, likely, high');
    const none = await rangeWith('install,foot,2,,,,,');
    expect(none.range).toBeUndefined();
    expect(textsOf(sheetOf(describePlan(none.plan), 'Office'))).not.toContain('Low, likely, high');
  });

  test('one of them alone leaves the other at the minutes', async () => {
    const { range } = await rangeWith('install,foot,2,,,,,4');
    expect(range!.drivers[0]!.atLow).toBe(range!.likely);
    expect(range!.low).toBeGreaterThan(range!.likely);
  });

  test('change nothing of the plan', async () => {
    const [without, withThem] = [
      await rangeWith('install,foot,2,,,,,'),
      await rangeWith('install,foot,2,,,,0,9'),
    ];
    expect(withThem.plan.totals).toEqual(without.plan.totals);
  });

  test.each([
    ['install,foot,2,,,,3,4', 'G2', 'job.work-low-above'],
    ['install,foot,2,,,,1,1.5', 'H2', 'job.work-high-below'],
    ['install,foot,2,,,no,1,4', 'G2', 'job.work-range-of-nothing'],
    ['install,foot,0,,,,,4', 'H2', 'job.work-range-of-nothing'],
    ['install,foot,2,,,,x,4', 'G2', 'number.unreadable'],
    ['install,foot,2,,,,-1,4', 'G2', 'number.too-small'],
    ['install,foot,2,,,,,99999', 'H2', 'number.too-large'],
  ])('%s is refused at its cell %s', (row, at, code) => {
    const { faults } = readTables({ runs: RUNS, work: WORK + row });
    expect(faults.map((one) => [JSON.stringify(one.where), one.code])).toEqual([
      [expect.stringContaining(at.slice(1)), code],
    ]);
    const heading = at.startsWith('G') ? 'Low' : 'High';
    expect(faults[0]!.message).toContain(heading);
  });
});

/** A job whose lumber is one row of whole boards, and whose hours are by the foot and by the set-up. */
const MIXED = {
  runs: 'Room,Profile,Length,Measured as\nHall,Base,1200,finished\nHall,Cove,60,finished\nDen,Cove,40,finished',
  work: `${WORK}install,foot,3,,,,,\nload and deliver,job,60,,,,,\ntruck,job,,85,,,,`,
};
const MONEY =
  'overhead %,12\nmargin %,15\ncontingency %,3\nmaterial markup %,8\nlabor markup %,4\ndelivery,40';
const shopWith = (rows: string, rate = 60): string =>
  `Setting,Value\nhourly rate,${rate}\nend allowance,0\noffcut credit %,30\nkeep offcuts over,12\n${MONEY}\n${rows}`;
const STOCK = (times: number): string =>
  `For,Kind,Class,Width,Length,Price,Per,Have,Buy\nBase,stick,,,16',${32 * times},piece,,\nPoplar,board,4/4,10,12',${50 * times},piece,,`;
const priceOf = async (tables: Parameters<typeof planOf>[0]): Promise<number> =>
  (await planOf(tables)).totals.priceCents / 100;

describe('Low and High on Shop', () => {
  test.each([
    ['hourly rate', 'hourly rate low,45\nhourly rate high,80', 45, 80],
    ['lumber price', 'lumber price low %,-10\nlumber price high %,20', 0.9, 1.2],
    ['the whole job', 'whole job low %,-10\nwhole job high %,35', 0.9, 1.35],
  ])('move the price as a plan with %s typed so', async (name, rows, low, high) => {
    const { range } = await planOf({ ...MIXED, stock: STOCK(1), shop: shopWith(rows) });
    // All hours of this job, each minute of it times the factor.
    const minutes = (times: number): string =>
      [
        `set up a cove,,${40 * times}`,
        `feed over the blade,,${times / 6}`,
        `carry round,,${times / 2}`,
        `smooth,,${7 * times}`,
        `crosscut,,${0.75 * times}`,
        `join,,${10 * times}`,
        `install,foot,${3 * times}`,
        `load and deliver,job,${60 * times}`,
        'truck,job,,85',
      ].join('\n');
    const typed = (value: number): Parameters<typeof planOf>[0] => ({
      ...MIXED,
      stock: STOCK(name === 'lumber price' ? value : 1),
      shop: shopWith('', name === 'hourly rate' ? value : 60),
      ...(name === 'the whole job' ? { work: `Work,Per,Minutes,Money\n${minutes(value)}` } : {}),
    });
    const [only, ...others] = range!.drivers;
    expect(others).toEqual([]);
    expect(only!.name).toBe(name);
    // A cent for each line that is rounded otherwise, times what comes on it.
    expect(Math.abs(only!.atLow - (await priceOf(typed(low))))).toBeLessThan(0.05);
    expect(Math.abs(only!.atHigh - (await priceOf(typed(high))))).toBeLessThan(0.05);
    expect(range!.likely).toBe(await priceOf(typed(name === 'hourly rate' ? 60 : 1)));
  });

  test('waste is lumber that brings no credit, worked by hand', async () => {
    const shop = 'waste high %,25';
    const plan = await planOf({ ...MIXED, stock: STOCK(1), shop: shopWith(shop) });
    // [D] A quarter of the lumber more, with overhead, contingency, markup and margin on it.
    const lumber = plan.profiles.reduce((sum, { money }) => sum + money.lumberCents, 0) / 100;
    const factor = (1.12 * 1.03 + 0.08) / 0.85;
    const [only] = plan.range!.drivers;
    expect(only!.name).toBe('waste');
    expect(only!.atLow).toBe(plan.range!.likely);
    expect(Math.abs(only!.atHigh - only!.atLow - (lumber / 4) * factor)).toBeLessThan(0.05);
  });

  test('of one alone, in which the price is linear, give the price that triangle', async () => {
    // [D] Whole job 0.5, 1, 2: the triangle (1, 2, 4) halved, so 0.774 at a tenth and 1.6125 at nine tenths.
    const shop = 'whole job low %,-50\nwhole job high %,100';
    const { range } = await planOf({ ...MIXED, stock: STOCK(1), shop: shopWith(shop) });
    const { atLow, atHigh } = range!.drivers[0]!;
    const at = (factor: number): number => atLow + ((factor - 0.5) / 1.5) * (atHigh - atLow);
    const wide = atHigh - atLow;
    expect(Math.abs(range!.low - at(0.774))).toBeLessThan(0.02 * wide);
    expect(Math.abs(range!.high - at(1.6125))).toBeLessThan(0.02 * wide);
  });

  test('all at once are in order, drive by their swings, and are the same the next time', async () => {
    const shop = shopWith(
      'whole job low %,-10\nwhole job high %,30\nhourly rate high,70\nlumber price high %,20\nwaste high %,10',
    );
    const again = async () => (await planOf({ ...MIXED, stock: STOCK(1), shop })).range!;
    const range = await again();
    expect(await again()).toEqual(range);
    expect(range.low).toBeLessThan(range.middle);
    expect(range.middle).toBeLessThan(range.high);
    const swings = range.drivers.map(({ atLow, atHigh }) => atHigh - atLow);
    expect(swings).toEqual(swings.toSorted((one, other) => other - one));
    expect(range.drivers.map(({ name }) => name).toSorted()).toEqual([
      'hourly rate',
      'lumber price',
      'the whole job',
      'waste',
    ]);
    expect(range.drivers.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  test('stand on Office as drawings that say their numbers, and on no other sheet', async () => {
    const rows = 'lumber price low %,-10\nlumber price high %,20\nwhole job high %,30';
    const plan = await planOf({ ...MIXED, stock: STOCK(1), shop: shopWith(rows) });
    const described = describePlan(plan);
    const { drawings = [] } = sheetOf(described, 'Office');
    const say = (money: number): string => sayMoney(Math.round(money * 100), '$');
    const { low, middle, high, likely, drivers, bars } = plan.range!;
    for (const figure of [low, middle, high, likely]) {
      expect(drawings[0]!.drawing.alt).toContain(say(figure));
    }
    for (const { name, atLow, atHigh } of drivers) {
      expect(drawings[1]!.drawing.alt).toContain(`${name}, ${say(atLow)} to ${say(atHigh)}`);
    }
    const cells = sheetOf(described, 'Office').rows.flatMap((row) =>
      row.cells.map((one) => one?.value),
    );
    expect(cells).toEqual(
      expect.arrayContaining([
        ...bars.map(({ draws }) => draws),
        ...drivers.map(({ name }) => name),
      ]),
    );
    for (const { name, drawings: others = [] } of described.sheets) {
      if (name === 'Office') continue;
      expect(others.map(({ drawing }) => drawing.title).join()).not.toMatch(/price/iu);
    }
    expect(
      exportPlan(plan)
        .map(({ path }) => path)
        .join(),
    ).not.toMatch(/office|price-may/u);
    expect(planToJson(plan).range).toMatchObject({ likely, drivers });
    const terminal = sayPlan(plan).flat().join('\n');
    const pane = sayResult(plan).find(({ label }) => label === 'Price, eight jobs of ten');
    for (const words of [terminal, `${pane?.value} ${pane?.note}`]) {
      expect(words).toContain(`between ${say(low)} and ${say(high)}`);
    }
  });

  test('are drawn ten thousand times in no time that anybody notices', async () => {
    const rows =
      'whole job high %,30\nlumber price high %,20\nwaste high %,10\nhourly rate high,90';
    const plan = await planOf({ ...MIXED, stock: STOCK(1), shop: shopWith(rows) });
    const began = performance.now();
    rangeOfPrice(plan);
    // Some 20 ms on the machine that it was written on: ten times as long is another kind of work.
    expect(performance.now() - began).toBeLessThan(1000);
  });

  test.each([
    ['lumber price low %,10', 'job.range-low-above', 'write -10 for 10 % less'],
    ['lumber price high %,-5', 'job.range-high-below', 'write 10 for 10 % more'],
    ['whole job low %,5', 'job.range-low-above', 'whole job low % is 5'],
    ['waste high %,-1', 'job.range-high-below', 'waste high % is -1'],
    [
      'hourly rate low,61',
      'job.range-low-above',
      'hourly rate low is 61, above what is likely: 60.',
    ],
    ['hourly rate high,59', 'job.range-high-below', 'hourly rate high is 59'],
    ['waste low %,-100', 'number.too-small', 'waste low %'],
    ['waste high %,lots', 'number.unreadable', 'waste high %'],
  ])('%s is refused at its cell, in words', (row, code, words) => {
    const { faults } = readTables({ shop: `Setting,Value\nhourly rate,60\n${row}` });
    expect(faults.map((one) => one.code)).toEqual([code]);
    expect(faults[0]!.where).toMatchObject({ line: 3, column: 2 });
    expect(faults[0]!.message).toContain(words);
  });

  test('of a rate that nobody gave, or that can’t be read, is one fault, not two', () => {
    const codesOf = (shop: string) =>
      readTables({ shop: `Setting,Value\n${shop}` }).faults.map((one) => one.code);
    expect(codesOf('hourly rate high,80')).toEqual(['job.range-without-rate']);
    expect(codesOf('hourly rate,x\nhourly rate high,80')).toEqual(['number.unreadable']);
  });
});
