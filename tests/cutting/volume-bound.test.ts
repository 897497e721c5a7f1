import { describe, expect, test } from '@jest/globals';
import type { StickAnswer, StickBound, StickProblem } from '../../src/cutting/problem/problem.ts';
import { volumeBound } from '../../src/cutting/bound/volume-bound.ts';
import { answerOf, piece, pieces, problemOf, seededNumbers, stick } from './problem-maker.ts';

function boundOf(problem: StickProblem): StickBound {
  return volumeBound(problem, { whole: problem.demands, spliced: [] });
}

describe('the bound by volume', () => {
  test('is the length with its kerfs at the cheapest price of length', () => {
    // Worked by hand: capacity 100 - 2·2 + 1 = 97; 10 pieces of 47 and a kerf are 480 units at
    // 97 cents a stick: 480 cents, rounded up to whole sticks 485.
    const problem = problemOf(
      pieces(Array<number>(10).fill(47)),
      [stick(100, { priceCents: 97 })],
      {
        kerf: 1,
        endTrim: 2,
      },
    );
    expect(boundOf(problem)).toEqual({
      costCents: 485,
      duals: [{ length: 47, profile: '', cents: 48 }],
      credits: [],
    });
  });

  test('prices a length by the sticks that are long enough for it', () => {
    // The short stick is half the price, but holds no 60: 60 at 2 cents and 40 at 1 a unit are 160.
    const problem = problemOf(pieces([60, 40]), [
      stick(50, { priceCents: 50 }),
      stick(100, { priceCents: 200 }),
    ]);
    expect(boundOf(problem)).toEqual({
      costCents: 200,
      duals: [
        { length: 60, profile: '', cents: 120 },
        { length: 40, profile: '', cents: 40 },
      ],
      credits: [],
    });
  });

  test('gives a limited cheap stick a credit', () => {
    // 300 units: 100 free, 200 at 1 cent. A free stick is worth 100 by the duals, all of it credit.
    const problem = problemOf(pieces([50, 50, 50, 50, 50, 50]), [
      stick(100, { priceCents: 100 }),
      stick(100, { id: 'free', priceCents: 0, have: 1, buyMost: 0 }),
    ]);
    expect(boundOf(problem)).toEqual({
      costCents: 200,
      duals: [{ length: 50, profile: '', cents: 50 }],
      credits: [{ supplyId: 'free', cents: 100 }],
    });
  });

  test('shares the price of a board among its strips', () => {
    const problem = problemOf(pieces([60, 60, 60]), [stick(60, { priceCents: 90, strips: 3 })]);
    expect(boundOf(problem).costCents).toBe(90);
  });

  test('counts the overlaps and kerfs of a splice', () => {
    // 190 from sticks of 100 with an overlap of 10: two parts, 200 units and two kerfs of 1 into
    // capacities of 101 at 101 cents: 202.
    const problem = problemOf([piece('long', 190)], [stick(100, { priceCents: 101 })], {
      kerf: 1,
      splice: { overlap: 10 },
    });
    expect(volumeBound(problem, { whole: [], spliced: problem.demands }).costCents).toBe(202);
  });

  test('of nothing is nothing', () => {
    expect(boundOf(problemOf([], [stick(100)]))).toEqual({ costCents: 0, duals: [], credits: [] });
  });

  test('holds at the largest numbers that are allowed', () => {
    // 1e10 of 1e10 units each fill one stick of 1e9 cents: 1,000 of them cost 1e12, exactly.
    const problem = problemOf(pieces(Array<number>(1000).fill(1e10)), [
      stick(1e10, { priceCents: 1e9 }),
    ]);
    expect(boundOf(problem).costCents).toBe(1e12);
  });
});

/** What the contract promises: step 1 by a knapsack over every room, step 2 by plain addition. */
function expectRecomputed(problem: StickProblem, { plan, bound }: StickAnswer): void {
  const said = JSON.stringify(problem);
  const worth = new Map(bound.duals.map(({ length, cents }) => [length, cents]));
  const credit = new Map(bound.credits.map(({ supplyId, cents }) => [supplyId, cents]));
  const usable = problem.supplies.filter(({ have, buyMost }) => have + (buyMost ?? 1) > 0);
  const room = (length: number): number => length - 2 * problem.endTrim;
  const best = [0];
  for (
    let filled = 1;
    filled <= Math.max(...usable.map(({ length }) => room(length) + problem.kerf), 0);
    filled += 1
  ) {
    best[filled] = best[filled - 1]!;
    for (const [length, cents] of worth) {
      const before = filled - length - problem.kerf;
      if (before >= 0) best[filled] = Math.max(best[filled]!, best[before]! + cents);
    }
  }
  for (const { id, length, strips, priceCents } of usable) {
    const most = strips * best[room(length) + problem.kerf]!;
    expect([said, most <= priceCents + (credit.get(id) ?? 0)]).toEqual([said, true]);
  }
  const unserved = new Set(plan.unserved.map(({ demandId }) => demandId));
  const served = problem.demands.filter(({ id }) => !unserved.has(id));
  const sum = served.reduce((total, { length }) => total + worth.get(length)!, 0);
  const least = usable.reduce(
    (total, { id, have, buyMost }) => total - (credit.get(id) ?? 0) * (have + (buyMost ?? 0)),
    sum,
  );
  const unlimited = usable.filter(({ buyMost }) => buyMost === null);
  for (const { id } of unlimited) expect(credit.get(id)).toBeUndefined();
  const shortest = Math.min(...served.map(({ length }) => length));
  const divisor = usable
    .filter(({ length }) => room(length) >= shortest)
    .reduce((common, { priceCents }) => greatestDivisor(common, priceCents), 0);
  const step = Math.max(1, divisor);
  expect([said, bound.costCents]).toEqual([said, Math.max(0, Math.ceil(least / step) * step)]);
}

function greatestDivisor(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}

test('anyone can recompute the bound from its duals and credits', async () => {
  const next = seededNumbers(4);
  for (let run = 0; run < 120; run += 1) {
    const endTrim = next(4);
    const supplies = Array.from({ length: 1 + next(4) }, (_, at) =>
      stick(2 * endTrim + 1 + next(200), {
        id: `s${at}`,
        priceCents: next(4) * next(700),
        strips: 1 + next(2) * next(4),
        have: next(6),
        buyMost: next(2) > 0 ? next(4) : null,
      }),
    );
    const demands = pieces(Array.from({ length: next(40) }, () => 3 + next(150)));
    const problem = problemOf(demands, supplies, { kerf: next(4), endTrim });
    expectRecomputed(problem, await answerOf(problem));
  }
});
