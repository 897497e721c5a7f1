import { describe, expect, test } from '@jest/globals';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { loadSolver } from '../cutting/solver.ts';
import { planByHand } from './hand-made-plan.ts';
import { jobOf, planOf, type Tables } from './make-job.ts';
import { MIXED, planMixed, SHARED, withCredit } from './shared-boards.ts';

describe('Profiles that share boards', () => {
  test('are one problem, whose boards may be ripped for both side by side', async () => {
    const { plan, problems } = planByHand(MIXED);
    await planOf(SHARED, { planSticks: plan });
    expect(problems).toHaveLength(1);
    const [{ supplies, profiles, demands }] = problems as [(typeof problems)[number]];
    expect(profiles!.map(({ id, blank }) => [id, blank])).toEqual([
      ['Wide', '0'],
      ['Narrow', '1'],
    ]);
    expect(demands.map(({ profile }) => profile)).toEqual(['Wide', 'Narrow']);
    expect(supplies).toMatchObject([{ priceCents: 4000, strips: 2, have: 0, buyMost: null }]);
    expect(supplies[0]!.rips).toEqual([
      [
        { blank: '0', count: 1 },
        { blank: '1', count: 1 },
      ],
      [{ blank: '1', count: 2 }],
    ]);
  });

  test('pay for one board what two would cost apart, by the widths of their blanks', async () => {
    const plan = await planMixed();
    // 40.00 by 4 1/2 to 3.
    expect(plan.profiles.map(({ money }) => money.lumberCents)).toEqual([2400, 1600]);
    const [group] = plan.groups;
    expect(group).toMatchObject({ name: 'Wide, Narrow', lumberCents: 4000, layouts: 2 });
    // 1 · 8 · 120 / 144, and 1 · (4 1/2 + 3) · 100 / 144.
    expect(group!.boardFeetBought).toBeCloseTo(80 / 12, 9);
    expect(group!.boardFeetUsed).toBeCloseTo(750 / 144, 9);
    expect(plan.totals.costCents).toBe(4000);
    expect(checkJobPlan(plan)).toEqual([]);
    const apart = await planOf({
      ...SHARED,
      stock: SHARED.stock!.replace('Poplar', 'Wide') + "\nNarrow,board,4/4,8,10',40,piece,,",
    });
    expect(apart.groups.map(({ name, lumberCents }) => [name, lumberCents])).toEqual([
      ['Wide', 4000],
      ['Narrow', 4000],
    ]);
  });

  test('are planned so by the planner of our own too', async () => {
    const plan = await planOf(SHARED, { loadSolver });
    expect(checkJobPlan(plan)).toEqual([]);
    expect(plan.groups).toMatchObject([{ lumberCents: 4000, answer: { status: 'proven' } }]);
  });

  test('share every amount to the cent', async () => {
    const [odd, ...none] = [4001, 3999, 1, 7].map((cents) =>
      SHARED.stock!.replace('40,', `${cents / 100},`),
    );
    for (const stock of [odd!, ...none]) {
      const plan = await planMixed({ ...withCredit, stock });
      const sum = (key: 'lumberCents' | 'offcutCreditCents'): number =>
        plan.profiles.reduce((all, { money }) => all + money[key], 0);
      expect(sum('lumberCents')).toBe(plan.groups[0]!.lumberCents);
      expect(sum('offcutCreditCents')).toBe(plan.groups[0]!.offcutCreditCents);
      expect(checkJobPlan(plan)).toEqual([]);
    }
  });

  test('have their kept offcuts credited by what their own blank costs where it is cheapest', async () => {
    // 118 - 100 - 1/8 = 17 7/8 in are left of each. An inch of Wide costs 40.00 / 120, one of Narrow half
    // of that: at 50 % 2.979 and 1.489; the most are 20.00 and 10.00.
    const plan = await planMixed(withCredit);
    expect(plan.profiles.map(({ money }) => money.offcutCreditCents)).toEqual([297, 148]);
    expect(plan.groups[0]!.offcutCreditCents).toBe(445);
    expect(plan.totals.costCents).toBe(4000 - 445);
    const { offcutCredit } = plan.groups[0]!.problem.profiles![1]!;
    expect(offcutCredit!.mostCents).toBe(1000);
    const none = await planMixed();
    expect(none.groups[0]!.problem.profiles!.map((one) => one.offcutCredit)).toEqual([
      undefined,
      undefined,
    ]);
  });

  test('of one blank width use each other’s blanks', async () => {
    const { plan, problems } = planByHand([
      { profile: 'Wide', unit: 0, strip: 0, rip: [2], pieces: ['Hall / Wide / 1'] },
      { profile: 'Narrow', unit: 0, strip: 1, rip: [2], pieces: ['Den / Narrow / 1'] },
    ]);
    const alike = {
      ...SHARED,
      profiles: SHARED.profiles!.replace('4 1/2', '3').replace(',3,1/2', ',2,1/2'),
    };
    const made = await planOf(alike, { planSticks: plan });
    expect(problems[0]!.profiles!.map(({ blank }) => blank)).toEqual(['0', '0']);
    expect(problems[0]!.supplies[0]!.rips).toEqual([[{ blank: '0', count: 2 }]]);
    expect(made.groups[0]!.boards[0]!.strips.map(({ profile }) => profile)).toEqual([
      'Wide',
      'Narrow',
    ]);
    expect(checkJobPlan(made)).toEqual([]);
  });
});

describe('Profiles are planned apart', () => {
  const namesOf = async (tables: Tables): Promise<string[]> =>
    (await planOf(tables)).groups.map(({ name }) => name);

  test('where no board is wide enough for both, and any number can be bought', async () => {
    const narrow = SHARED.stock!.replace(',8,', ',7,');
    expect(await namesOf({ ...SHARED, stock: narrow })).toEqual(['Wide', 'Narrow']);
    const limited = narrow.replace('Per\n', 'Per,Have,Buy\n') + ',0,9';
    expect(await namesOf({ ...SHARED, stock: limited })).toEqual(['Wide, Narrow']);
  });

  test('where each has stock of its own, even beside a third that joins neither', async () => {
    const stock = `For,Kind,Width,Length,Price\nWide,board,8,10',40\nNarrow,board,8,10',40`;
    expect(await namesOf({ ...SHARED, stock })).toEqual(['Wide', 'Narrow']);
  });

  test('but joined by a third profile they are one', async () => {
    const tables: Tables = {
      ...SHARED,
      profiles: `${SHARED.profiles!}\nThird,cove,2,1,Poplar,1,1/4`,
      runs: `${SHARED.runs!}\nDen,Third,50,finished`,
      stock: `For,Kind,Width,Length,Price\nWide,board,4 3/4,10',20\nNarrow,board,3 1/2,10',20\nPoplar,board,6 3/4,10',30`,
    };
    // 6 3/4 holds 4 1/2 with 2, and 3 with 2, not 4 1/2 with 3.
    const plan = await planOf(tables);
    expect(plan.groups.map(({ name }) => name)).toEqual(['Wide, Narrow, Third']);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  // By the board foot a board without Class costs the profile of 1 1/2 thick half as much again.
  const byThickness = (more: string): Tables => ({
    ...SHARED,
    profiles: SHARED.profiles!.replace('Narrow,cove,3,1,', 'Narrow,cove,3,1 1/2,'),
    stock: `For,Kind,Width,Length,Price,Per,Have,Buy\nPoplar,board,8,10',6,board foot,${more}`,
  });

  test('where a row without Class costs each another price, numbered through', async () => {
    const plan = await planOf(byThickness('1,yes'));
    expect(
      plan.groups.map(({ name, stockUse }) => [
        name,
        stockUse[0]!.priceCents,
        stockUse[0]!.fromRack,
      ]),
    ).toEqual([
      ['Wide', 4000, 1],
      ['Narrow', 6000, 0],
    ]);
    expect(plan.groups.map(({ boards }) => boards[0]!.unit)).toEqual([1, 2]);
    expect(checkJobPlan(plan)).toEqual([]);
  });

  test('where such a row is limited: the later takes what is left, and lacks it by name', async () => {
    const both = await planOf(byThickness('1,1'));
    expect(both.groups.map(({ name }) => name)).toEqual(['Wide', 'Narrow']);
    const { faults } = await planJob(jobOf(byThickness('1,no')));
    expect(faults.map(({ code, argument }) => [code, argument])).toEqual([
      ['cutting.unserved', { own: 'Den / Narrow / 1' }],
    ]);
  });

  test('where such a row is limited though another joins them', async () => {
    const tables = byThickness('1,1');
    const plan = await planOf({
      ...tables,
      stock: `${tables.stock!}\nPoplar,board,9,10',90,piece,,`,
    });
    expect(plan.groups.map(({ name }) => name)).toEqual(['Wide', 'Narrow']);
    expect(checkJobPlan(plan)).toEqual([]);
  });
});

describe('A group', () => {
  test('is called by the names of its profiles as it is begun', async () => {
    const told: unknown[] = [];
    await planOf(SHARED, { onGroup: (...one) => told.push(one) });
    expect(told).toEqual([
      [0, 1, 'Wide, Narrow'],
      [1, 1, ''],
    ]);
  });

  test('of very many widths is planned with fewer ways to rip, and that is said', async () => {
    const widths = Array.from({ length: 8 }, (_, at) => `${20 + at}/16`);
    const { plan, cautions } = await planJob(
      jobOf({
        ...SHARED,
        profiles:
          'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth\n' +
          widths.map((width, at) => `P${at},cove,${width},1,Poplar,3/4,1/8`).join('\n'),
        runs: `Room,Profile,Length\n${widths.map((_, at) => `Hall,P${at},40`).join('\n')}`,
        stock: "For,Kind,Width,Length,Price\nPoplar,board,12,10',40",
      }),
    );
    expect(cautions.filter(({ code }) => code === 'job.rips-limited')).toMatchObject([
      { where: { file: 'stock.csv', line: 2 }, limit: 2000 },
    ]);
    expect(checkJobPlan(plan!)).toEqual([]);
  });
});

describe('As JSON', () => {
  test('a shared plan comes back from its text as it went, and adds up', async () => {
    const json = planToJson(await planMixed(withCredit));
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    const [group] = json.groups;
    expect(group).toMatchObject({
      name: 'Wide, Narrow',
      cost: 40,
      credit: 4.45,
      boards: [
        {
          board: 1,
          strips: [
            { width: 4.5, profile: 'Wide' },
            { width: 3, profile: 'Narrow' },
          ],
        },
      ],
      stock: [{ bought: 1, unusedBlanks: 0, cost: 40 }],
    });
    const lumber = json.profiles.reduce((sum, one) => sum + one.lumber, 0);
    expect(lumber).toBeCloseTo(group!.cost, 9);
    expect(group!.sticks.map(({ profile, board, strip }) => [profile, board, strip])).toEqual([
      ['Wide', 1, 1],
      ['Narrow', 1, 2],
    ]);
  });
});
