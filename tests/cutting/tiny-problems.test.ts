import { describe, expect, test } from '@jest/globals';
import { checkPlan } from '../../src/cutting/check-plan.ts';
import type { StickPlan, StickProblem } from '../../src/cutting/problem.ts';
import { everySplice, leastCosts, type TinyPiece } from './every-plan.ts';
import { answerOf, piece, problemOf, seededNumbers, stick } from './problem-maker.ts';

type Next = (limit: number) => number;

function tinyProblem(next: Next): StickProblem {
  const endTrim = next(3);
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
    piece(`p${at}`, 1 + next(12), {
      onePiece: next(2) === 0,
      ...(next(4) === 0 ? { match: `pair ${next(2)}` } : {}),
    }),
  );
  return problemOf(demands, supplies, { kerf: next(3), endTrim });
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

function servedSet(problem: StickProblem, plan: StickPlan): number {
  const unserved = new Set(plan.unserved.map(({ demandId }) => demandId));
  return problem.demands.reduce((set, { id }, at) => (unserved.has(id) ? set : set | (1 << at)), 0);
}

describe('against every plan there is', () => {
  test('plan ≥ least cost ≥ bound on 1,500 tiny problems, and all is served that can be', async () => {
    const next = seededNumbers(1);
    let least = 0;
    for (let run = 0; run < 1500; run += 1) {
      const problem = tinyProblem(next);
      const { plan, bound, status } = await answerOf(problem);
      const costs = leastCosts(problem, problem.demands);
      const served = servedSet(problem, plan);
      const optimum = costs[served]!;
      const said = JSON.stringify(problem);
      expect([said, ...checkPlan(problem, plan)]).toEqual([said]);
      expect([said, plan.costCents >= optimum, optimum >= bound.costCents]).toEqual([
        said,
        true,
        true,
      ]);
      if (costs.at(-1)! < Infinity) expect([said, ...plan.unserved]).toEqual([said]);
      if (status === 'proven') expect(plan.costCents).toBe(optimum);
      if (plan.costCents === optimum) least += 1;
    }
    // Regression value: so many of these plans were the cheapest there is.
    expect(least).toBeGreaterThanOrEqual(1490);
  }, 20_000);

  test('a limited stock that can just be cut without waste serves nearly every time', async () => {
    const next = seededNumbers(2);
    let served = 0;
    for (let run = 0; run < 300; run += 1) {
      const problem = tightProblem(next);
      const { plan } = await answerOf(problem);
      expect(checkPlan(problem, plan)).toEqual([]);
      if (plan.unserved.length === 0) served += 1;
    }
    // Regression value, of 300 that can all be served.
    expect(served).toBeGreaterThanOrEqual(300);
  });
});

/** The least cost where the given demands are spliced, over every way to cut them into parts. */
function leastWithSplices(
  problem: StickProblem,
  served: StickProblem['demands'],
  spliced: ReadonlySet<string>,
  mostParts: number,
): number {
  let choices: TinyPiece[][] = [[]];
  for (const demand of served) {
    const ways = spliced.has(demand.id)
      ? everySplice(demand.length, problem.splice!.overlap, mostParts).map((lengths) =>
          lengths.map((length) => ({ length })),
        )
      : [[{ length: demand.length, match: demand.match }]];
    choices = choices.flatMap((before) => ways.map((way) => [...before, ...way]));
  }
  return choices.reduce(
    (least, chosen) => Math.min(least, leastCosts(problem, chosen).at(-1)!),
    Infinity,
  );
}

test('splices: plan ≥ least cost ≥ bound on 300 tiny problems, and nearly all is served that can be', async () => {
  const next = seededNumbers(3);
  let withSplices = 0;
  let servable = 0;
  let served = 0;
  for (let run = 0; run < 300; run += 1) {
    const endTrim = next(2);
    const overlap = next(3);
    const supplies = Array.from({ length: 1 + next(2) }, (_, at) =>
      stick(2 * endTrim + overlap + 2 + next(8), {
        id: `s${at}`,
        priceCents: 1 + next(12),
        strips: next(4) > 0 ? 1 : 2,
        have: next(3),
        buyMost: next(3) > 0 ? null : next(3),
      }),
    );
    const longest = Math.max(...supplies.map(({ length }) => length)) - 2 * endTrim;
    const demands = [
      piece('long', longest + 1 + next(longest - overlap)),
      ...Array.from({ length: next(4) }, (_, at) => piece(`p${at}`, 1 + next(longest))),
    ];
    const problem = problemOf(demands, supplies, { kerf: next(2), endTrim, splice: { overlap } });
    const most = supplies.every(({ have, buyMost }) => have + (buyMost ?? 1) === 0);
    const { plan, bound } = await answerOf(problem);
    const said = JSON.stringify(problem);
    expect([said, ...checkPlan(problem, plan)]).toEqual([said]);
    const parts = plan.sticks.flatMap((one) => one.pieces.filter(({ part }) => part !== undefined));
    const spliced = new Set(parts.map(({ demandId }) => demandId));
    const unserved = new Set(plan.unserved.map(({ demandId }) => demandId));
    if (spliced.size > 0) withSplices += 1;
    const optimum = leastWithSplices(
      problem,
      demands.filter(({ id }) => !unserved.has(id)),
      spliced,
      Math.max(3, ...[...spliced].map((id) => parts.filter((one) => one.demandId === id).length)),
    );
    expect([said, plan.costCents >= optimum, optimum >= bound.costCents]).toEqual([
      said,
      true,
      true,
    ]);
    if (!most && leastWithSplices(problem, demands, new Set(['long']), 3) < Infinity) {
      servable += 1;
      if (unserved.size === 0) served += 1;
    }
  }
  expect(withSplices).toBeGreaterThan(200);
  // Regression value: where so few inches are left, the parts are not sought by trial.
  expect(served).toBeGreaterThanOrEqual(servable - 1);
}, 20_000);
