import { describe, expect, test } from '@jest/globals';
import type { PlanJobOptions } from '../../src/planning/job-planning.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { count } from '../deep.ts';
import { loadSolver } from '../cutting/solver.ts';
import { seededNumbers } from '../cutting/problem-maker.ts';
import { jobOf, planOf, type Tables } from './make-job.ts';

/** Bought profiles and coves from sticks and boards, with splices, credit and overhead by chance. */
function randomTables(next: (below: number) => number): Tables {
  const profiles = 1 + next(3);
  const names = Array.from({ length: profiles }, (_, at) => `P${at}`);
  return {
    profiles: [
      'Profile,Make,Blank width,Blank thickness,Species,Cove width,Cove depth',
      ...names.map((name, at) =>
        at === 0 ? `${name},buy,4,3/4,,,` : `${name},cove,3 1/2,1,Poplar,2,1/4`,
      ),
    ].join('\n'),
    stock: [
      'For,Kind,Width,Length,Price,Per',
      ...[8, 12, 16].map((feet) => `P0,stick,,${feet}',${5 + next(900) / 100 + feet},piece`),
      ...[8, 10, 14].map((feet) => `Poplar,board,9 1/2,${feet}',${20 + next(2000) / 100},piece`),
    ].join('\n'),
    runs: [
      'Room,Run,Profile,Length',
      ...Array.from({ length: 4 + next(14) }, (_, at) => {
        return `Hall,r${at},P${next(profiles)},${12 + next(230)}`;
      }),
    ].join('\n'),
    shop: [
      'Setting,Value',
      `hourly rate,${[0, 31.7, 58][next(3)]}`,
      `overhead %,${[0, 7.3, 33][next(3)]}`,
      `offcut credit %,${[0, 0, 55][next(3)]}`,
      `crosscut seconds,${[10, 45, 333][next(3)]}`,
      `handling per pass,${[0, 30, 77][next(3)]}`,
      'margin %,20',
    ].join('\n'),
  };
}

describe('More time never costs more', () => {
  test('by steps or by the clock, for several seeds', async () => {
    const next = seededNumbers(4711);
    let gains = 0;
    for (let run = 0; run < count(60, 4); run += 1) {
      const tables = randomTables(next);
      const seed = 1 + next(1000);
      const costOf = async (options: PlanJobOptions): Promise<number> => {
        const { plan, faults } = await planJob(jobOf(tables), { loadSolver, seed, ...options });
        if (plan === undefined) throw new Error(faults[0]?.message);
        expect(checkJobPlan(plan)).toEqual([]);
        return plan.totals.costCents;
      };
      const quick = await costOf({ budget: { steps: 0 } });
      let before = quick;
      for (const steps of [1, 5, 20, 100]) {
        const cost = await costOf({ budget: { steps } });
        expect(cost).toBeLessThanOrEqual(before);
        before = cost;
      }
      if (before < quick) gains += 1;
      before = quick;
      for (const seconds of [0, 0.05, 0.2]) {
        let clock = 0;
        const cost = await costOf({ seconds, now: () => (clock += 3) });
        expect(cost).toBeLessThanOrEqual(before);
        before = cost;
      }
    }
    expect(gains).toBeGreaterThan(0);
  });

  test('and a plan that is stopped at once costs what the quick one does', async () => {
    const tables = randomTables(seededNumbers(5));
    const stopped = await planOf(tables, { loadSolver, signal: { aborted: true } });
    const quick = await planOf(tables, { budget: { steps: 0 } });
    expect(stopped.totals.costCents).toBe(quick.totals.costCents);
  });
});

describe('Joints', () => {
  // By hand: 30' of sticks of 12' less two trims of 1 in, 142 in, overlapping by 3/4 in: three parts.
  const tables: Tables = {
    profiles: 'Profile,Make,Blank width,Blank thickness\nBase,buy,4,3/4',
    stock: "For,Kind,Length,Price,Per\nBase,stick,12',10,piece",
    runs: "Room,Run,Profile,Length\nHall,long,Base,30'\nHall,short,Base,40",
    shop: 'Setting,Value\nhourly rate,60\njoint minutes,7\noverhead %,10',
  };

  test('cost their minutes: parts less one each, in hours, labor and totals', async () => {
    const { totals, profiles } = await planOf(tables);
    expect([totals.joints, totals.jointCostCents]).toEqual([2, 1400]);
    expect(profiles[0]!.tally.hours.joints).toBeCloseTo(14 / 60, 12);
    const free = await planOf({
      ...tables,
      shop: 'Setting,Value\nhourly rate,60\njoint minutes,0\noverhead %,10',
    });
    expect(totals.costCents - free.totals.costCents).toBe(1540);
  });

  test('with parts shorter than the shop wants are told of, with a way on', async () => {
    const shop = 'Setting,Value\nleast part,125';
    const { cautions } = await planOf({ ...tables, shop });
    const [caution] = cautions.filter(({ code }) => code === 'job.part-below-least');
    expect(caution?.message).toBe(
      "Base: 1 of its spliced pieces can't be cut into the fewest parts with each at least 125 in; the shortest part is 120 1/2 in. List longer stock, or set a smaller least part on Shop.",
    );
    const none = await planOf(tables);
    expect(none.cautions.some(({ code }) => code === 'job.part-below-least')).toBe(false);
  });
});
