import { describe, expect, test } from '@jest/globals';

import { rangeOfPrice } from '../../src/planning/range-of-price.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { sheetOf, textsOf } from '../sheets/sheet-jobs.ts';
import { planOf, readTables } from './make-job.ts';

const WORK = 'Work,Per,Minutes,Money,For,Ours,Low,High\n';
const SHOP = 'Setting,Value\nhourly rate,60\nend allowance,0';
const RUNS = 'Room,Profile,Length,Measured as\nHall,Base,1200,finished';
const rangeWith = async (rows: string) => {
  const plan = await planOf({ runs: RUNS, shop: SHOP, work: WORK + rows });
  return { plan, range: rangeOfPrice(plan, ({ work }) => work) };
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
