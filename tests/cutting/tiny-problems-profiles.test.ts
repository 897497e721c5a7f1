import { describe, expect, test } from '@jest/globals';
import { leastCosts } from './every-plan.ts';
import { answerOf, seededNumbers } from './problem-maker.ts';
import { loadSolver } from './solver.ts';
import { expectAround, isServable, servedSet } from './tiny-answers.ts';
import { tinyJob } from './tiny-jobs.ts';
import { count } from '../deep.ts';

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
    if (answer.plan.costCents + answer.plan.laborCents - answer.plan.creditCents === optimum)
      tally.least += 1;
    if (answer.plan.creditCents > 0) tally.credited += 1;
    if (!isServable(problem, costs)) continue;
    tally.servable += 1;
    if (answer.plan.unserved.length === 0) tally.served += 1;
  }
  return tally;
}

const QUICK = count(1_500);
const SOLVED = count(600);

describe('against every plan there is, with profiles, rips, matched groups and credits', () => {
  test(`Quick plans cost no less than the least, and bounds no more, on ${QUICK} tiny problems`, async () => {
    const { credited, servable } = await compareAll(QUICK, 11, 6, {});
    expect(credited / QUICK).toBeGreaterThan(150 / 1500);
    expect(servable / QUICK).toBeGreaterThan(500 / 1500);
  }, 60_000);

  test(`Plans with the solver cost no less than the least, bounds no more, on ${SOLVED} tiny problems, nearly all proven`, async () => {
    const tally = await compareAll(SOLVED, 12, 6, { loadSolver, budget: { steps: 2000 } });
    // Regression values.
    expect(tally.least / SOLVED).toBeGreaterThanOrEqual(590 / 600);
    expect(tally.proven / SOLVED).toBeGreaterThanOrEqual(580 / 600);
    expect(tally.served).toBeGreaterThanOrEqual(tally.servable - 2);
  }, 120_000);
});
