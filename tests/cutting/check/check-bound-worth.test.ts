import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { checkBound } from '../../../src/cutting/check/check-bound.ts';
import {
  bestFills,
  worthCutAtWill,
  type Fills,
  type ValuedBlock,
} from '../../../src/cutting/check/knapsack.ts';
import { restWorths } from '../../../src/cutting/check/rest-of-strip.ts';
import { creditFor } from '../../../src/cutting/check/indexed-problem.ts';
import type { StickBound, StickProblem } from '../../../src/cutting/problem/problem.ts';
import { seededNumbers } from '../problem-maker.ts';
import { leastCosts } from '../every-plan.ts';
import { tinyJob } from '../tiny-jobs.ts';

/** The most within a room, by every number of every block in turn; -1 where none goes in. */
function mostByTrying(blocks: readonly ValuedBlock[], room: number): number {
  const [first, ...others] = blocks;
  if (first === undefined) return -1;
  let most = mostByTrying(others, room);
  for (let count = 1; count <= first.count && count * first.weight <= room; count += 1) {
    const rest = Math.max(0, mostByTrying(others, room - count * first.weight));
    most = Math.max(most, count * first.worth + rest);
  }
  return most;
}

function mostWithin({ weights, worths }: Fills, room: number): number {
  let most = -1;
  for (let at = 0; at < weights.length && weights[at]! <= room; at += 1) {
    most = Math.max(most, worths[at]!);
  }
  return most;
}

describe('the fills of a strip', () => {
  test('are not worked out where that takes long and there is no time', () => {
    const blocks = Array.from({ length: 40 }, (_, at) => {
      const weight = 8_000_000 + 500_009 * at + at ** 3;
      return { weight, worth: weight, count: 1 };
    });
    expect(bestFills(blocks, 100_000_000, true)).toEqual({
      weights: [],
      worths: [],
      isExact: false,
    });
    expect(bestFills(blocks.slice(0, 8), 100_000_000, true).isExact).toBe(true);
  });

  test.each([
    ['of few units, by a table', 1],
    ['of very many units, by a list', 99_999_989],
  ])('%s are the best of every fill, at every room', (_, unit) => {
    const block = fc.record({
      weight: fc.integer({ min: 1, max: 12 }),
      worth: fc.nat(9),
      count: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(fc.array(block, { maxLength: 5 }), fc.nat(40), (drawn, room) => {
        // One unit more, so that the weights have no divisor in common.
        const blocks = drawn.map((one) => ({
          ...one,
          weight: one.weight * unit + (unit > 1 ? 1 : 0),
        }));
        const longest = 40 * unit + 40;
        const fills = bestFills(blocks, longest);
        expect(fills.isExact).toBe(true);
        for (const within of [room * unit, room * unit + 20, longest]) {
          expect(mostWithin(fills, within)).toBe(mostByTrying(blocks, within));
        }
      }),
    );
  });

  test('too many to be listed, of too many units for a table, are bounded from above', () => {
    const next = seededNumbers(8);
    const longest = 10_000_000_019;
    const blocks = Array.from({ length: 100 }, () => {
      const weight = 400_000_000 + next(1_600_000_000);
      return { weight, worth: Math.floor(weight / 1000) + next(50), count: 1 };
    });
    const fills = bestFills(blocks, longest);
    expect(fills.isExact).toBe(false);
    // Between a fill that there is and, but for the rounding, the blocks cut up at will.
    let there = 0;
    let room = longest;
    const byLength = [...blocks].sort((a, b) => b.worth / b.weight - a.worth / a.weight);
    for (const { weight, worth } of byLength) {
      if (weight > room) continue;
      there += worth;
      room -= weight;
    }
    const most = mostWithin(fills, longest);
    const atWill = worthCutAtWill(blocks, longest);
    expect(most).toBeGreaterThanOrEqual(there);
    expect(atWill).toBeGreaterThanOrEqual(there);
    expect(most).toBeLessThanOrEqual(atWill * 1.0001);
  });

  test('are worth no more than the blocks cut up at will', () => {
    const block = fc.record({
      weight: fc.integer({ min: 1, max: 12 }),
      worth: fc.nat(9),
      count: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(fc.array(block, { maxLength: 5 }), fc.nat(40), (blocks, room) => {
        const most = Math.max(0, mostByTrying(blocks, room));
        const atWill = worthCutAtWill(blocks, room);
        expect(atWill).toBeGreaterThanOrEqual(most);
        // What is cut up is part of a single block.
        expect(atWill - most).toBeLessThanOrEqual(Math.max(0, ...blocks.map(({ worth }) => worth)));
      }),
    );
  });
});

test('the rest of a strip is worth the best of every way to pour and keep it', () => {
  const rules = fc.record({
    centsPerUnit: fc.nat(24).map((eighths) => eighths / 8),
    mostCents: fc.nat(9),
    leastOffcut: fc.nat(8),
  });
  fc.assert(
    fc.property(rules, fc.nat(3), fc.nat(12), (rule, kerf, rate) => {
      const worth = restWorths(rule, kerf, rate, 4, 30);
      for (let rest = 0; rest <= 30; rest += 1) {
        let most = 0;
        for (let poured = 0; poured <= rest; poured += 1) {
          const kept = 4 * creditFor(rule, rest - poured - kerf);
          most = Math.max(most, rate * poured + kept);
        }
        expect(worth(rest)).toBe(most);
      }
    }),
  );
});

/**
 * What each supply is worth, by the least costs of every set of pieces cut from it alone: what the
 * pieces are worth together, and the credit, which is the price less the cost.
 */
function worthsByTrying(problem: StickProblem, cents: readonly number[]): readonly number[] {
  return problem.supplies.map((supply) => {
    const alone = { ...problem, supplies: [{ ...supply, have: 1, buyMost: 0 }] };
    return [...leastCosts(alone, problem.demands)].reduce((most, cost, set) => {
      const pieces = cents.reduce((sum, one, at) => ((set >> at) % 2 === 1 ? sum + one : sum), 0);
      return set === 0 || cost === Infinity
        ? most
        : Math.max(most, pieces + supply.priceCents - cost);
    }, 0);
  });
}

test('just the supplies are found that trying everything finds worth too much', () => {
  const next = seededNumbers(31);
  let sound = 0;
  let unsound = 0;
  for (let run = 0; run < 1500; run += 1) {
    // Each piece once, so that a strip of a board is worth no more than what is left for it.
    const problem = tinyJob(next, 4);
    const single = problem.supplies.every(({ strips, rips }) =>
      (rips ?? [[{ count: strips }]]).every(
        (rip) => rip.reduce((sum, { count }) => sum + count, 0) === 1,
      ),
    );
    if (!single) continue;
    const lengths = new Map<string, number>();
    const cents = problem.demands.map(({ length, profile = '' }) => {
      const key = `${length} ${profile}`;
      const own = lengths.get(key) ?? next(60) / 4;
      lengths.set(key, own);
      return own;
    });
    const bound: StickBound = {
      costCents: 0,
      duals: [...lengths].map(([key, own]) => {
        const [length = '', profile = ''] = key.split(' ');
        return { length: Number(length), profile, cents: own };
      }),
      credits: problem.supplies.flatMap(({ id, buyMost }) =>
        buyMost === null ? [] : [{ supplyId: id, cents: next(20) / 2 }],
      ),
    };
    const credits = new Map(bound.credits.map((one) => [one.supplyId, one.cents]));
    const plan = { sticks: [], unserved: [], costCents: 1e6, creditCents: 0, laborCents: 0 };
    const worths = worthsByTrying(problem, cents);
    const tooMuch = problem.supplies.filter(
      ({ id, priceCents, have, buyMost }, at) =>
        have + (buyMost ?? 1) > 0 && worths[at]! > priceCents + (credits.get(id) ?? 0),
    );
    const found = checkBound(problem, plan, bound).filter((one) => one.startsWith('Supply'));
    expect(found.map((one) => one.split(' ')[1])).toEqual(tooMuch.map(({ id }) => id));
    if (tooMuch.length > 0) unsound += 1;
    else sound += 1;
  }
  expect(sound).toBeGreaterThan(100);
  expect(unsound).toBeGreaterThan(100);
});
