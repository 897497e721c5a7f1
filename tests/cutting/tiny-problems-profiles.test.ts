import { describe, expect, test } from '@jest/globals';
import { leastCosts } from './every-plan.ts';
import { answerOf, seededNumbers } from './problem-maker.ts';
import { loadSolver } from './solver.ts';
import { expectAround, isServable, servedSet } from './tiny-answers.ts';
import { tinyJob } from './tiny-jobs.ts';

interface Tally {
  proven: number;
  least: number;
  servable: number;
  served: number;
  credited: number;
}

/** Plans so many tiny jobs and compares each with every plan there is. */
async function compareAll(
  runs: number,
  seed: number,
  mostPieces: number,
  options: Parameters<typeof answerOf>[1],
): Promise<Tally> {
  const next = seededNumbers(seed);
  const tally: Tally = { proven: 0, least: 0, servable: 0, served: 0, credited: 0 };
  for (let run = 0; run < runs; run += 1) {
    const problem = tinyJob(next, mostPieces);
    const answer = await answerOf(problem, options);
    const costs = leastCosts(problem, problem.demands);
    const optimum = costs[servedSet(problem, answer.plan)]!;
    expectAround(problem, answer, optimum);
    if (answer.status === 'proven') tally.proven += 1;
    if (answer.plan.costCents - answer.plan.creditCents === optimum) tally.least += 1;
    if (answer.plan.creditCents > 0) tally.credited += 1;
    if (!isServable(problem, costs)) continue;
    tally.servable += 1;
    if (answer.plan.unserved.length === 0) tally.served += 1;
  }
  return tally;
}

describe('against every plan there is, with profiles, rips, matched groups and credits', () => {
  test('quick plans alone: plan ≥ least cost ≥ bound on 1,500 tiny problems', async () => {
    const { credited, servable } = await compareAll(1500, 11, 6, {});
    expect(credited).toBeGreaterThan(150);
    expect(servable).toBeGreaterThan(500);
  }, 60_000);

  test('with the solver: plan ≥ least cost ≥ bound on 600 tiny problems, nearly all proven', async () => {
    const tally = await compareAll(600, 12, 6, { loadSolver, budget: { steps: 2000 } });
    // Regression values.
    expect(tally.least).toBeGreaterThanOrEqual(590);
    expect(tally.proven).toBeGreaterThanOrEqual(580);
    expect(tally.served).toBeGreaterThanOrEqual(tally.servable - 2);
  }, 120_000);
});
