/** Lumber by the offcut allowance: by hand, and what holds for any job. */
import { describe, expect, test } from '@jest/globals';
import { allowedLumber } from '../../src/planning/allowed-lumber.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { count } from '../deep.ts';
import { randomTables } from '../sheets/random-jobs.ts';
import { planOf } from './make-job.ts';

const allowedOf = (plan: JobPlan) =>
  new Map(plan.profiles.map((one) => [one.profile.name, allowedLumber(one, plan.job)]));

const centsOf = (plan: JobPlan) =>
  [...allowedOf(plan)].map(([name, allowed]) => [name, allowed?.cents, allowed?.eachCents]);

describe('Lumber by the offcut allowance', () => {
  test('is net and its percent of net, at the price of a foot or a board foot', async () => {
    const plan = await planOf({
      runs: 'Room,Profile,Length,Measured as\nHall,Base,100,finished\nHall,Cove,120,finished',
    });
    // By hand [D]: 100 in and 10 % at 2.00 a foot are 18.33, of a stick of 16 ft: 92 % more is bought.
    expect(allowedOf(plan).get('Base')).toMatchObject({ per: 'foot', cents: 1833 });
    expect(allowedOf(plan).get('Base')?.plannedPercent).toBeCloseTo(92, 9);
    // 1 in · 4 1/2 in · 120 in are 3.75 board feet; with 10 % 4.125, at 5.00 20.625. The board has 10.
    expect(allowedOf(plan).get('Cove')).toMatchObject({
      per: 'board foot',
      allowancePercent: 10,
      cents: 2063,
    });
    expect(allowedOf(plan).get('Cove')?.plannedPercent).toBeCloseTo((10 / 3.75 - 1) * 100, 9);
  });

  test('goes by the least price of what can be bought without end', async () => {
    const stock =
      "For,Length,Price,Per,Have,Buy\nBase,16',2,foot,,\nBase,12',0.5,foot,1,no\nBase,10',1.5,foot,,yes";
    const plan = await planOf({ stock });
    expect(allowedOf(plan).get('Base')).toMatchObject({ eachCents: 150, cents: 1375 });
  });

  test('is the same however long is looked, and never less for more of anything', async () => {
    for (let seed = 1; seed <= count(100); seed++) {
      const tables = randomTables(seed);
      const [quick, long] = [
        await planOf(tables, { budget: { steps: 0 } }),
        await planOf(tables, { budget: { steps: 60 } }),
      ];
      expect([seed, centsOf(long)]).toEqual([seed, centsOf(quick)]);
      const [first] = quick.job.runs.filter(({ done }) => !done);
      if (first === undefined) continue;
      const name = quick.profiles.find(
        ({ profile }) => profile.name.toLowerCase() === first.profile.toLowerCase(),
      )?.profile.name;
      if (name === undefined) continue;
      const [head, ...rows] = tables.runs!.split('\n');
      const more = [...rows, `Loft,one more,"${name.replaceAll('"', '""')}",20 in,,,,,,,`];
      const longer = await planOf(
        { ...tables, runs: [head, ...more].join('\n') },
        { budget: { steps: 0 } },
      );
      for (const [profile, allowed] of allowedOf(quick)) {
        const after = allowedOf(longer).get(profile);
        expect([seed, profile, after!.cents >= allowed!.cents]).toEqual([seed, profile, true]);
      }
      expect(allowedOf(longer).get(name)!.cents).toBeGreaterThan(0);
    }
  }, 300_000);
});
