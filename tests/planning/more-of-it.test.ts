/** More of anything never costs less, where both plans are proven; by the allowance, see allowed-lumber.test.ts. */
import { expect, test } from '@jest/globals';
import fc from 'fast-check';

import type { JobPlan } from '../../src/planning/job-plan.ts';
import { planJob } from '../../src/planning/plan-job.ts';
import { loadSolver } from '../cutting/solver.ts';
import { count } from '../deep.ts';
import { jobOf, type Tables } from './make-job.ts';
import { jobsThatShareStock } from './random-tables.ts';

/** Enough for jobs as small as these. */
const BUDGET = { steps: 400 };
/** Lumber, labor and overhead of a profile are each rounded to the cent, and so is what is made of them. */
const CENTS_OF_A_PROFILE = 3;

async function proven(tables: Tables): Promise<JobPlan | undefined> {
  const { plan } = await planJob(jobOf(tables), { budget: BUDGET, loadSolver });
  const isProven = plan?.groups.every(({ answer }) => answer.status === 'proven') === true;
  return isProven ? plan : undefined;
}

/** With one more of a run, or with a run that is longer. */
function withMore({ runs = '', ...tables }: Tables, at: number, by: number): Tables {
  const [heads = '', ...rows] = runs.split('\n');
  const row = at % rows.length;
  const more = rows.map((line, index) => {
    if (index !== row) return line;
    const cells = line.split(',');
    if (by === 0) cells[4] = String(Number(cells[4]) + 1);
    else cells[3] = String(Number(cells[3]) + by);
    return cells.join(',');
  });
  return { ...tables, runs: [heads, ...more].join('\n') };
}

test('A job of one piece more, or of a longer one, costs no less where both plans are proven', async () => {
  let compared = 0;
  await fc.assert(
    fc.asyncProperty(
      jobsThatShareStock,
      fc.nat(7),
      fc.constantFrom(0, 1, 7),
      async (job, at, by) => {
        const tables = { ...job, shop: job.shop!.replace('allowance', 'plan') };
        const less = await proven(tables);
        const more = less === undefined ? undefined : await proven(withMore(tables, at, by));
        if (less === undefined || more === undefined) return;
        compared += 1;
        const slack = CENTS_OF_A_PROFILE * more.profiles.length;
        expect(more.totals.priceCents).toBeGreaterThanOrEqual(less.totals.priceCents - slack);
      },
    ),
    { numRuns: count(1_000, 20) },
  );
  expect(compared).toBeGreaterThan(count(1_000, 20) / 8);
}, 600_000);
