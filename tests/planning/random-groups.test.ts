import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { loadSolver } from '../cutting/solver.ts';
import { checkJobPlan } from '../../src/planning/check-job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { planToJson } from '../../src/planning/plan-json.ts';
import { jobOf } from './make-job.ts';
import { jobsThatShareStock } from './random-tables.ts';

test('Random jobs of profiles that share stock stand the independent check, or say what is lacking', async () => {
  let shared = 0;
  let mixed = 0;
  let clear = 0;
  let graded = 0;
  await fc.assert(
    fc.asyncProperty(jobsThatShareStock, fc.boolean(), async (job, isExact) => {
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
      clear += boards.filter(({ item }) => item.stretch !== undefined).length;
      graded += boards.filter(({ item }) => item.yieldPercent !== undefined).length;
      if (plan.groups.some((group) => group.profiles.length > 1)) shared += 1;
      mixed += boards.filter(
        ({ strips }) => new Set(strips.flatMap((one) => one.profile ?? [])).size > 1,
      ).length;
    }),
    { numRuns: 60 },
  );
  expect(shared).toBeGreaterThan(10);
  expect(mixed).toBeGreaterThan(0);
  // Clear stretches of boards with defects, and boards with a yield, are among them.
  expect(clear).toBeGreaterThan(0);
  expect(graded).toBeGreaterThan(0);
}, 60_000);
