import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { StickAnswer, StickProblem, StickSupply } from '../../src/cutting/problem/problem.ts';
import { answerOf, pieces, problemOf, stick } from './problem-maker.ts';
import { loadSolver } from './solver.ts';
import { count } from '../deep.ts';

const RUNS = count(40);

const lengths = fc.array(fc.integer({ min: 5, max: 190 }), { minLength: 1, maxLength: 30 });
const supplies = fc.uniqueArray(
  fc.record({
    length: fc.integer({ min: 40, max: 250 }),
    priceCents: fc.integer({ min: 1, max: 400 }),
    strips: fc.constantFrom(1, 1, 1, 2, 3),
    have: fc.integer({ min: 0, max: 4 }),
    buyMost: fc.option(fc.integer({ min: 0, max: 4 })),
  }),
  { minLength: 1, maxLength: 4, selector: ({ length }) => length },
);
const named = (list: readonly Omit<StickSupply, 'id'>[]): readonly StickSupply[] =>
  list.map((one, at) => ({ ...one, id: `s${at}` }));
// More than there are pieces and sticks to shuffle.
const keys = fc.array(fc.nat(), { minLength: 50, maxLength: 50 });
const problems = fc
  .record({ lengths, supplies, kerf: fc.nat(3), endTrim: fc.nat(5) })
  .map(({ lengths: asked, supplies: listed, kerf, endTrim }) =>
    problemOf(pieces(asked), named(listed), { kerf, endTrim }),
  );

/** So many counted steps at most, so that the same work is done everywhere. */
const planned = (problem: StickProblem): Promise<StickAnswer> =>
  answerOf(problem, { loadSolver, budget: { steps: 60 } });

const namesLeft = ({ plan }: StickAnswer): string =>
  plan.unserved
    .map(({ demandId }) => demandId)
    .sort()
    .join();

/**
 * One and the same problem told in two ways: the plans cost the same where both are proven; else the
 * least cost lies between bound and cost of either, so that the two spans meet.
 *
 * @returns whether both serve the same; where stock runs out they need not, and can't be compared
 */
function expectSameLeast(one: StickAnswer, other: StickAnswer): boolean {
  if (namesLeft(one) !== namesLeft(other)) {
    const why = [one, other].flatMap(({ plan }) => plan.unserved.map((left) => left.why));
    expect(why).toContain('stock used up');
    return false;
  }
  if (one.status === 'proven' && other.status === 'proven') {
    expect(other.plan.costCents).toBe(one.plan.costCents);
  }
  expect(one.bound.costCents).toBeLessThanOrEqual(other.plan.costCents);
  expect(other.bound.costCents).toBeLessThanOrEqual(one.plan.costCents);
  return true;
}

/** What was added can only help: the least cost after is no more than the one before. */
function expectNoDearer(before: StickAnswer, after: StickAnswer): void {
  expect(after.bound.costCents).toBeLessThanOrEqual(before.plan.costCents);
  if (after.status === 'proven') {
    expect(after.plan.costCents).toBeLessThanOrEqual(before.plan.costCents);
  }
}

describe('the cost of a plan', () => {
  test('stays the same when every length is doubled', async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(problems, async (problem) => {
        const doubled = {
          ...problem,
          kerf: 2 * problem.kerf,
          endTrim: 2 * problem.endTrim,
          demands: problem.demands.map((one) => ({ ...one, length: 2 * one.length })),
          supplies: problem.supplies.map((one) => ({ ...one, length: 2 * one.length })),
        };
        if (expectSameLeast(await planned(problem), await planned(doubled))) compared += 1;
      }),
      { numRuns: RUNS },
    );
    expect(compared / RUNS).toBeGreaterThan(30 / 40);
  });

  test('stays the same when pieces and sticks are listed in another order', async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(problems, keys, async (problem, drawn) => {
        const numbers = [...drawn];
        const shuffled = <T>(list: readonly T[]): readonly T[] =>
          list
            .map((one) => ({ one, key: numbers.pop() ?? 0 }))
            .sort((a, b) => a.key - b.key)
            .map(({ one }) => one);
        const other = {
          ...problem,
          demands: shuffled(problem.demands),
          supplies: shuffled(problem.supplies),
        };
        if (expectSameLeast(await planned(problem), await planned(other))) compared += 1;
      }),
      { numRuns: RUNS },
    );
    expect(compared / RUNS).toBeGreaterThan(30 / 40);
  });

  test('never rises for one more stick in the list, where any number may be bought', async () => {
    const unlimited = fc.uniqueArray(
      fc.record({
        length: fc.integer({ min: 200, max: 400 }),
        priceCents: fc.integer({ min: 1, max: 400 }),
      }),
      { minLength: 2, maxLength: 5, selector: ({ length }) => length },
    );
    await fc.assert(
      fc.asyncProperty(lengths, unlimited, fc.nat(3), async (asked, listed, kerf) => {
        const all = listed.map(({ length, priceCents }) => stick(length, { priceCents }));
        const without = await planned(problemOf(pieces(asked), all.slice(0, -1), { kerf }));
        expectNoDearer(without, await planned(problemOf(pieces(asked), all, { kerf })));
      }),
      { numRuns: RUNS },
    );
  });

  test('never rises for the same stick at a lower price', async () => {
    await fc.assert(
      fc.asyncProperty(lengths, fc.nat(3), fc.nat(300), async (asked, kerf, saved) => {
        const listed = [stick(200, { priceCents: 300 }), stick(320, { priceCents: 410 })];
        const cheaper = stick(320, { id: 'cheaper', priceCents: 410 - saved });
        const before = await planned(problemOf(pieces(asked), listed, { kerf }));
        const after = await planned(problemOf(pieces(asked), [...listed, cheaper], { kerf }));
        expectNoDearer(before, after);
        // A price is never paid twice: what is saved on a stick is at most what it is cheaper by.
        const sticks = after.plan.sticks.length;
        if (before.status === 'proven') {
          expect(before.plan.costCents).toBeLessThanOrEqual(after.plan.costCents + saved * sticks);
        }
      }),
      { numRuns: RUNS },
    );
  });
});
