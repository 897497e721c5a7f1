import { describe, expect, test } from '@jest/globals';
import type { StickProblem } from '../../src/cutting/problem/problem.ts';
import { leastCosts } from './every-plan.ts';
import { answerOf, piece, problemOf, seededNumbers, stick } from './problem-maker.ts';
import { expectAround, isServable, servedSet } from './tiny-answers.ts';
import type { Next } from './tiny-jobs.ts';
import { count } from '../deep.ts';

/** Of one profile, without splices. */
function tinyProblem(next: Next): StickProblem {
  const endTrim = next(3);
  const kerf = next(3);
  const supplies = Array.from({ length: 1 + next(3) }, (_, at) =>
    stick(2 * endTrim + 1 + next(16), {
      id: `s${at}`,
      priceCents: next(13),
      strips: next(3) > 0 ? 1 : 2 + next(2),
      have: next(4),
      buyMost: next(3) > 0 ? next(3) : null,
    }),
  );
  const demands = Array.from({ length: next(7) }, (_, at) =>
    piece(`p${at}`, Math.max(1, kerf) + next(12), {
      onePiece: next(2) === 0,
      ...(next(4) === 0 ? { match: `pair ${next(2)}` } : {}),
    }),
  );
  return problemOf(demands, supplies, { kerf, endTrim });
}

/** Every stick of a limited stock cut up without waste: it can all be served, just so. */
function tightProblem(next: Next): StickProblem {
  const kerf = next(2);
  const endTrim = next(2);
  const lengths: number[] = [];
  const supplies = Array.from({ length: 2 + next(2) }, (_, at) => {
    let room = 6 + next(15);
    const supply = stick(room + 2 * endTrim, {
      id: `s${at}`,
      priceCents: 1 + next(12),
      have: 1,
      buyMost: 0,
    });
    for (let cut = next(2); cut >= 0 && room > 2 * kerf + 4; cut -= 1) {
      const length = 1 + next(room - kerf - 2);
      lengths.push(length);
      room -= length + kerf;
    }
    lengths.push(room);
    return supply;
  });
  const demands = lengths.map((length, at) => piece(`p${at}`, length));
  return problemOf(demands, supplies, { kerf, endTrim });
}

const RUNS = count(1_500);

describe('against every plan there is', () => {
  test(`Plans cost no less than the least, bounds no more, on ${RUNS} tiny problems, and all is served that can be`, async () => {
    const next = seededNumbers(1);
    let least = 0;
    for (let run = 0; run < RUNS; run += 1) {
      const problem = tinyProblem(next);
      const answer = await answerOf(problem);
      const costs = leastCosts(problem, problem.demands);
      const optimum = costs[servedSet(problem, answer.plan)]!;
      expectAround(problem, answer, optimum);
      if (isServable(problem, costs)) expect(answer.plan.unserved).toEqual([]);
      if (answer.plan.costCents === optimum) least += 1;
    }
    // Regression value: so many of these quick plans were the cheapest there is.
    expect(least / RUNS).toBeGreaterThanOrEqual(1490 / 1500);
  }, 20_000);

  test('a limited stock that can just be cut without waste serves nearly every time', async () => {
    const next = seededNumbers(2);
    let served = 0;
    for (let run = 0; run < 300; run += 1) {
      const { plan } = await answerOf(tightProblem(next));
      if (plan.unserved.length === 0) served += 1;
    }
    // Regression value, of 300 that can all be served.
    expect(served).toBeGreaterThanOrEqual(300);
  });
});
