/** From cost to price: contingency, markups, margin, minimum charge, delivery, rounding and tax. */
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { priceLines } from '../../src/planning/money.ts';
import { WORK_PER } from '../../src/planning/work/work-row.ts';
import { priceJob } from '../../src/planning/price-job.ts';
import { count } from '../deep.ts';
import { randomTables } from '../sheets/random-jobs.ts';
import { jobOf, PLAIN, planOf, readTables } from './make-job.ts';

const planned = (shop: string): Promise<JobPlan> =>
  planOf({ shop: `Setting,Value\nend allowance,0\n${shop}` });

describe('The price of a job', () => {
  // By hand [D]: a stick of 16 ft at 2.00 is 32.00; two crosscuts of 45 s at 60.00 an hour are 1.50. 33.50 and
  // 10 % overhead (3.35) cost 36.85; contingency 4 % is 1.47; markup 25 % of 32.00 and 50 % of 1.50 is 8.75;
  // 47.07 are 80 % of 58.84.
  const LINES =
    'hourly rate,60\noverhead %,10\ncontingency %,4\nmaterial markup %,25\nlabor markup %,50\nmargin %,20\ntax %,10';

  test('is made of cost, contingency, markup on each and margin, a line each', async () => {
    const plan = await planned(LINES);
    expect(plan.profiles[0]!.money).toEqual({
      lumberCents: 3200,
      offcutCreditCents: 0,
      laborCents: 150,
      overheadCents: 335,
      costCents: 3685,
      contingencyCents: 147,
      markupCents: 875,
      priceCents: 5884,
    });
    expect(plan.totals).toMatchObject({ linesCents: 5884, priceCents: 5884, taxCents: 588 });
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test.each([
    // 58.84 up to 100.00, 65.00 delivery, 0.00 to the next 5.
    ['minimum charge,100\ndelivery,65\nprice rounding,5', [4116, 6500, 0, 16500], 1650],
    // 58.84 and 12.35 are 71.19: up to 72.00.
    ['delivery,12.345\nprice rounding,dollar', [0, 1235, 81, 7200], 720],
    ['price rounding,5\ntax on,none', [0, 0, 116, 6000], 0],
    // 32.00 and 25 % are 40.00, 80 % of 50.00: 5.00 tax, whatever comes on the price.
    ['minimum charge,100\ntax on,material', [4116, 0, 0, 10000], 500],
    ['minimum charge,58.84', [0, 0, 0, 5884], 588],
  ] as const)('has on it what %j asks for', async (shop, parts, tax) => {
    const plan = await planned(`${LINES}\n${shop}`);
    const { toMinimumCents, deliveryCents, roundingCents, priceCents, taxCents } = plan.totals;
    expect([toMinimumCents, deliveryCents, roundingCents, priceCents]).toEqual(parts);
    expect(taxCents).toBe(tax);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('is nothing where nothing is left to make, whatever the minimum charge', async () => {
    const { totals } = await planOf({
      runs: `${PLAIN.runs.split('\n')[0]!},Done\nHall,north,Base,100,yes`,
      shop: 'Setting,Value\nminimum charge,100\ndelivery,65\nprice rounding,5\ntax %,8',
    });
    expect([totals.toMinimumCents, totals.deliveryCents, totals.roundingCents]).toEqual([0, 0, 0]);
    expect([totals.priceCents, totals.taxCents]).toEqual([0, 0]);
  });

  test('without these settings is what cost and margin alone make it', async () => {
    const plan = await planned('hourly rate,60\noverhead %,10\nmargin %,20\ntax %,10');
    expect(plan.totals).toMatchObject({ costCents: 3685, priceCents: 4606, taxCents: 461 });
  });

  test.each([
    ['delivery', '\u20ac65', 'number.other-currency'],
    ['minimum charge', '-5', 'number.too-small'],
    ['tax on', 'lumber', 'word.unknown'],
    ['price rounding', '7', 'word.unknown'],
    ['material markup', '20', 'job.setting-near'],
    ['margin %', '100', 'number.too-large'],
  ])('refuses %s of %s at its cell', (name, value, code) => {
    const { faults } = readTables({ shop: `Setting,Value\n${name},${value}` });
    expect(faults.map((one) => one.code)).toEqual([code]);
    expect(faults[0]!.where).toMatchObject({ file: 'shop.csv', line: 2 });
  });

  test('is never less for more of anything, nor for a higher setting', () => {
    const { shop } = jobOf({});
    const money = fc.nat(2_000_000);
    const share = fc.double({ min: 0, max: 60, noNaN: true });
    const asked = fc.record({
      lumber: money,
      hours: fc.double({ min: 0, max: 500, noNaN: true }),
      overhead: share,
      contingency: share,
      materialMarkup: share,
      laborMarkup: share,
      margin: share,
      minimumCharge: fc.double({ min: 0, max: 900, noNaN: true }),
      delivery: fc.double({ min: 0, max: 900, noNaN: true }),
    });
    type Asked = typeof asked extends fc.Arbitrary<infer One> ? One : never;
    const steps = ['cent', 'dollar', '5'] as const;
    const priceOf = (
      { lumber, hours, ...settings }: Asked,
      priceRounding: (typeof steps)[number],
    ) => {
      const own = { ...shop, hourlyRate: 47.5, ...settings, priceRounding };
      const lines = priceLines(lumber, 0, { hours, money: 0 }, own);
      return priceJob([{ money: lines }], { lines: [], hours: 0 }, own).priceCents;
    };
    fc.assert(
      fc.property(asked, fc.constantFrom(...steps), (less, step) => {
        const price = priceOf(less, step);
        for (const key of Object.keys(less) as (keyof Asked)[]) {
          const more = { ...less, [key]: Math.ceil(less[key]) + 1 };
          expect([key, priceOf(more, step) >= price]).toEqual([key, true]);
        }
        expect(priceOf(less, 'cent')).toBeLessThanOrEqual(price);
      }),
    );
  });

  test('of random jobs adds up to the cent, with all kinds of work, as an independent look finds it', async () => {
    const works = new Set<string>();
    for (let seed = 1; seed <= count(1000); seed++) {
      const plan = await planOf(randomTables(seed), { budget: { steps: 0 } });
      expect([seed, checkJobPlan(plan)]).toEqual([seed, []]);
      const lines = [...plan.profiles.flatMap(({ work }) => work), ...plan.jobWork.lines];
      for (const { row } of lines) works.add(row.per);
    }
    // Of all that work is counted by; a factor is no line.
    expect([...works].sort()).toEqual(WORK_PER.filter((per) => per !== 'factor').sort());
  }, 300_000);
});
