import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { loadSolver } from '../cutting/solver.ts';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { jobOf, type Tables } from './make-job.ts';

const profile = fc.record({
  blank: fc.constantFrom('3', '3 1/2', '4 1/2', '5'),
  thick: fc.constantFrom('1', '1 1/4'),
  class: fc.constantFrom('', '5/4'),
});
const row = fc.record({
  for: fc.constantFrom('Poplar', 'P0', 'P1'),
  kind: fc.constantFrom('board', 'board', 'stick'),
  class: fc.constantFrom('', '4/4', '5/4', '6/4'),
  width: fc.constantFrom('5 1/4', '7 3/4', '9 1/2', '14'),
  feet: fc.constantFrom(6, 8, 10, 12),
  price: fc.integer({ min: 0, max: 999 }),
  per: fc.constantFrom('piece', 'board foot'),
  have: fc.nat(2),
  buy: fc.constantFrom('yes', 'yes', '3', 'no'),
});
const run = fc.record({
  profile: fc.nat(3),
  length: fc.integer({ min: 20, max: 170 }),
  quantity: fc.integer({ min: 1, max: 4 }),
});
const tables = fc
  .record({
    profiles: fc.array(profile, { minLength: 2, maxLength: 4 }),
    rows: fc.array(row, { minLength: 1, maxLength: 5 }),
    runs: fc.array(run, { minLength: 1, maxLength: 8 }),
    credit: fc.constantFrom(0, 40, 100),
    spare: fc.constantFrom('0', '36'),
  })
  .map(({ profiles, rows, runs, credit, spare }): Tables => ({
    profiles: [
      'Profile,Make,Blank width,Blank thickness,Class,Species,Cove width,Cove depth',
      ...profiles.map(
        (one, at) => `P${at},cove,${one.blank},${one.thick},${one.class},Poplar,2,1/4`,
      ),
    ].join('\n'),
    stock: [
      'For,Kind,Class,Width,Length,Price,Per,Have,Buy',
      // One that serves all of them, so that most jobs can be made.
      "Poplar,board,6/4,14,15',90,piece,1,yes",
      ...rows.map(
        (one) =>
          `${one.for},${one.kind},${one.class},${one.width},${one.feet}',${one.price / 100},${one.per},${one.have},${one.buy}`,
      ),
    ].join('\n'),
    runs: [
      'Room,Run,Profile,Length,Quantity',
      ...runs.map((one, at) => {
        const name = `P${one.profile % profiles.length}`;
        return `Hall,r${at},${name},${one.length},${one.quantity}`;
      }),
    ].join('\n'),
    shop: `Setting,Value\noffcut credit %,${credit}\nset-up spare,${spare}\nhourly rate,30`,
  }));

test('Random jobs of profiles that share stock stand the independent check, or say what is lacking', async () => {
  let shared = 0;
  let mixed = 0;
  await fc.assert(
    fc.asyncProperty(tables, fc.boolean(), async (job, isExact) => {
      const options = isExact ? { loadSolver, budget: { steps: 10 } } : {};
      const { plan, faults } = await planJob(jobOf(job), options);
      if (plan === undefined) {
        const codes = new Set(faults.map(({ code }) => code));
        for (const code of codes) {
          expect(['job.no-stock', 'cutting.unserved', 'cutting.splice-too-short']).toContain(code);
        }
        return;
      }
      expect(checkJobPlan(plan)).toEqual([]);
      const json = planToJson(plan);
      expect(JSON.parse(JSON.stringify(json))).toEqual(json);
      const boards = plan.groups.flatMap((group) => group.boards);
      if (plan.groups.some((group) => group.profiles.length > 1)) shared += 1;
      mixed += boards.filter(
        ({ strips }) => new Set(strips.flatMap((one) => one.profile ?? [])).size > 1,
      ).length;
    }),
    { numRuns: 60 },
  );
  expect(shared).toBeGreaterThan(10);
  expect(mixed).toBeGreaterThan(0);
}, 60_000);
