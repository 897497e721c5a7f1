/** The price by the offcut allowance: by hand, and what holds for any job. */
import { describe, expect, test } from '@jest/globals';
import { sayWhere } from '../../src/core/faults/fault.ts';
import { allowanceFactor } from '../../src/core/lumber/offcut-allowance.ts';
import { plannedPercent } from '../../src/planning/allowed-lumber.ts';
import { cutFromPlan } from '../../src/planning/cut/cut-from-plan.ts';
import { NO_TICKS } from '../../src/planning/cut/cut-already.ts';
import { sameName, type Job, type Profile } from '../../src/planning/job.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { hoursOf } from '../../src/planning/work/hours.ts';
import { planProfiles } from '../../src/planning/plan-profile.ts';
import { listPieces } from '../../src/planning/pieces/list-pieces.ts';
import { planSetUp, type SetUp } from '../../src/planning/plan-setup.ts';
import { totalsBy } from '../../src/planning/price-bases.ts';
import { roomLines } from '../../src/planning/sum-up.ts';
import { planJobWork } from '../../src/planning/work/job-work.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { randomTables } from '../sheets/random-jobs.ts';
import { jobOf, planOf, readTables } from './make-job.ts';

const SHOP = 'Setting,Value\nhourly rate,60\nend allowance,0';
const FINISHED = 'Room,Profile,Length,Quantity,Measured as\n';

const planNamed = (plan: JobPlan, name: string) =>
  plan.profiles.find(({ profile }) => profile.name === name)!;
const lumberOf = (plan: JobPlan, name: string) => planNamed(plan, name).byAllowance.lumber;
const overOf = (plan: JobPlan, name: string) =>
  plannedPercent(lumberOf(plan, name), planNamed(plan, name), plan.job.shop);

/**
 * What a job is priced at by the allowance, with no stick planned.
 *
 * @param setUps Of its profiles: runs change none of them.
 */
function priceWithoutSticks(job: Job, setUps = new Map<Profile, SetUp>()): number {
  const { pieces } = listPieces(job);
  const cuts = job.profiles.flatMap((profile) => {
    const own = pieces.filter(({ done, profile: of }) => !done && sameName(of, profile.name));
    if (own.length === 0) return [];
    if (profile.make !== 'buy' && !setUps.has(profile)) {
      setUps.set(profile, planSetUp(profile, job.shop).setUp!);
    }
    return [{ profile, pieces: own, sticks: [], lumberCents: 0, offcutCreditCents: 0 }];
  });
  const profiles = planProfiles(cuts, setUps, job);
  const jobWork = planJobWork(job, roomLines(pieces, profiles));
  return totalsBy({ profiles, jobWork, job }, 'allowance').priceCents;
}

/** What is drawn by chance and planned by nobody: cheap. */
const JOBS = count(1_000, 50);

describe('Lumber by the offcut allowance', () => {
  test('is net and its percent of net, at the price of a foot or a board foot', async () => {
    const plan = await planOf({
      runs: `${FINISHED}Hall,Base,100,1,finished\nHall,Cove,120,1,finished`,
    });
    // By hand [D]: 100 in and 10 % at 2.00 a foot are 18.33, of a stick of 16 ft: 92 % more is bought.
    expect(lumberOf(plan, 'Base')).toMatchObject({ per: 'foot', cents: 1833 });
    expect(overOf(plan, 'Base')).toBeCloseTo(92, 9);
    // 1 in · 4 1/2 in · 120 in are 3.75 board feet; with 10 % 4.125, at 5.00 20.625. The board has 10.
    expect(lumberOf(plan, 'Cove')).toMatchObject({
      per: 'board foot',
      allowancePercent: 10,
      cents: 2063,
    });
    expect(overOf(plan, 'Cove')).toBeCloseTo((10 / 3.75 - 1) * 100, 9);
  });

  test('may be a percent of what is bought, which is another thing', async () => {
    // WoodWeb, Calculating Waste from Rough Lumber, 2010: 142.9 bought for 100 at 30 % waste [P].
    const plan = await planOf({
      runs: `${FINISHED}Hall,Base,120,10,finished`,
      shop: `${SHOP}\noffcut allowance %,30\nallowance of,bought\nprice basis,allowance`,
    });
    const { inches } = lumberOf(plan, 'Base');
    expect(inches / 12).toBeCloseTo(142.857, 3);
    expect(planNamed(plan, 'Base').money.lumberCents).toBe(28571);
    // WoodWeb, Yield Loss in Ripped-One-Edge Lumber: 370 square feet at 75 % are 493 [P].
    expect(Math.round(370 * allowanceFactor(25, 'bought'))).toBe(493);
    // As planned it is said as a percent of the same: 10 ft out of 16 is 37.5 % of what is bought [D].
    expect(overOf(plan, 'Base')).toBeCloseTo((1 - 100 / (160 / 1)) * 100, 9);
  });

  test('is refused at its cell where nothing of what is bought would be left', () => {
    const profiles =
      'Profile,Make,Offcut allowance %\nBase,buy,100\nCasing,buy,99.9\nCove 2,buy,150';
    const of = (shop: string): string[] =>
      readTables({ profiles, shop: `${SHOP}\n${shop}` }).faults.map(
        ({ message, where }) => `${sayWhere(where!)}: ${message}`,
      );
    expect(of('offcut allowance %,100')).toEqual([]);
    const said = of('offcut allowance %,120\nallowance of,bought');
    expect(said).toHaveLength(3);
    expect(said[0]).toMatch(
      /^shop\.csv, line 4, column 2: .*of 120 % of what is bought nothing would be left/u,
    );
    expect(said[1]).toMatch(
      /^profiles\.csv, line 2, column 3: .*Give less than 100, or make allowance of on Shop net/u,
    );
    expect(said[2]).toMatch(/^profiles\.csv, line 4, column 3: /u);
  });

  test('goes by the least price of what can be bought without end', async () => {
    const stock =
      "For,Length,Price,Per,Have,Buy\nBase,16',2,foot,,\nBase,12',0.5,foot,1,no\nBase,10',1.5,foot,,yes";
    const plan = await planOf({ stock });
    expect(lumberOf(plan, 'Base')).toMatchObject({ eachCents: 150, cents: 1375 });
  });
});

describe('The price by the offcut allowance', () => {
  test('is lumber and the work on it, counted by the stick that prices it, by hand', async () => {
    const plan = await planOf({
      runs: `${FINISHED}Hall,Base,100,2,finished\nDen,Base,250,1,finished\nDen,Cove,120,1,finished`,
      shop: `${SHOP}\nprice basis,allowance`,
    });
    // By hand [D]. Base: 450 in and 10 % are 495 in, 41.25 ft at 2.00: 82.50; 3 sticks of 192 in. The piece of
    // 250 in is longer than 190 in: a joint. Crosscuts: 3 lengths, a part more, 3 sticks: 7 of 45 s; 10 min for
    // the joint: 15.25 min at 60.00 an hour.
    const base = planNamed(plan, 'Base');
    expect(base.byAllowance.counts).toMatchObject({ crosscut: 7, joint: 1, board: 3, piece: 3 });
    expect(base.money).toMatchObject({ lumberCents: 8250, laborCents: 1525, costCents: 9775 });
    expect(base.money.offcutCreditCents).toBe(0);
    // Cove: 120 in and 10 % are 132 in of one blank of 144 in: 20.625 of lumber, see above. Of its passes each
    // takes 30 s and 11 ft at 6 ft a minute; set-up 40 min; 7 min a square foot; 2 crosscuts, no spare's.
    const cove = planNamed(plan, 'Cove');
    const { setUp, byAllowance, money } = cove;
    const passes = setUp!.passHeights.length;
    const feet = (setUp!.arcLength / 12) * 10;
    const minutes = 40 + passes * (0.5 + 11 / 6) + 7 * feet + 2 * 0.75;
    expect(byAllowance.counts).toMatchObject({ pass: passes, 'set-up': 1, crosscut: 2, board: 1 });
    expect(byAllowance.counts['foot a rip']).toBeCloseTo(11, 9);
    expect(hoursOf(byAllowance.hours)).toBeCloseTo(minutes / 60, 9);
    expect(money.priceCents).toBe(2063 + Math.round(minutes * 100));
    expect(plan.totals.priceCents).toBe(base.money.priceCents + money.priceCents);
    // The shop's own figures stay as planned.
    expect(cove.tally.hours).toEqual(cove.byPlan.hours);
    expect(totalsBy(plan, 'plan').priceCents).not.toBe(plan.totals.priceCents);
    const byPlan = await planOf({
      runs: `${FINISHED}Hall,Base,100,2,finished\nDen,Base,250,1,finished\nDen,Cove,120,1,finished`,
    });
    expect(totalsBy(plan, 'plan').priceCents).toBe(byPlan.totals.priceCents);
    expect(totalsBy(byPlan, 'allowance').priceCents).toBe(plan.totals.priceCents);
  });

  test('keeps what is cut in it while it is asked for, and not what is left over', async () => {
    const shop = `${SHOP}\nprice basis,allowance`;
    const both = `${FINISHED}Hall,Base,100,1,finished\nDen,Base,90,1,finished`;
    const before = await planOf({ runs: both, shop });
    const sticks = new Set(before.profiles.flatMap((one) => one.sticks.map(({ id }) => id)));
    const cut = cutFromPlan(before, { ...NO_TICKS, sticks });
    const begun = await planOf({ runs: both, shop }, { cut });
    expect(begun.totals.sticksCut).toBeGreaterThan(0);
    expect(begun.totals.priceCents).toBe(before.totals.priceCents);
    const runs = `${FINISHED}Hall,Base,100,1,finished`;
    const less = await planOf({ runs, shop }, { cut });
    expect(less.totals.priceCents).toBe((await planOf({ runs, shop })).totals.priceCents);
    expect(totalsBy(less, 'plan').lumberCents).toBe(totalsBy(before, 'plan').lumberCents);
    const done =
      'Room,Profile,Length,Measured as,Done\nHall,Base,100,finished,\nDen,Base,90,finished,yes';
    expect((await planOf({ runs: done, shop })).totals.priceCents).toBe(less.totals.priceCents);
  });

  test('is the same before any stick is planned, and however long is looked', async () => {
    for (let seed = 1; seed <= count(30); seed++) {
      const tables = randomTables(seed);
      const [quick, long] = [
        await planOf(tables, { budget: { steps: 0 } }),
        await planOf(tables, { budget: { steps: 30 }, seed: seed + 1 }),
      ];
      const prices = [quick, long].map((plan) => totalsBy(plan, 'allowance').priceCents);
      const asked = priceWithoutSticks(jobOf(tables));
      expect([seed, ...prices]).toEqual([seed, asked, asked]);
      for (const { job, totals } of [quick, long]) {
        if (job.shop.priceBasis === 'allowance') expect(totals.priceCents).toBe(asked);
      }
    }
  }, 300_000);

  test('is never less for more of anything', () => {
    let dearer = 0;
    for (let seed = 1; seed <= JOBS; seed++) {
      const job = jobOf(randomTables(seed));
      const next = seededNumbers(seed * 31 + 7);
      const pick = Math.floor(next() * job.runs.length);
      const setUps = new Map<Profile, SetUp>();
      const price = priceWithoutSticks(job, setUps);
      const run = job.runs[pick]!;
      const changed = (other: typeof run): Job => ({
        ...job,
        runs: job.runs.map((one, at) => (at === pick ? other : one)),
      });
      const longer = run.length.add(Math.floor(next() * 400) + 1, 4);
      const more: readonly (readonly [string, Job])[] = [
        ['longer', changed({ ...run, length: longer })],
        ['one more', changed({ ...run, quantity: run.quantity + 1 })],
        ['a run', { ...job, runs: [...job.runs, { ...run, run: 'one run more', done: false }] }],
      ];
      for (const [what, one] of more) {
        const after = priceWithoutSticks(one, setUps);
        expect([seed, what, after >= price]).toEqual([seed, what, true]);
        if (after > price) dearer += 1;
      }
    }
    expect(dearer).toBeGreaterThan(JOBS);
  }, 300_000);
});
