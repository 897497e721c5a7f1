import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { StickSupply } from '../../src/cutting/problem.ts';
import { answerOf, pieces, problemOf, stick } from './problem-maker.ts';

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

describe('the cost of a plan', () => {
  test('stays the same when every length is doubled', async () => {
    await fc.assert(
      fc.asyncProperty(problems, async (problem) => {
        const doubled = {
          ...problem,
          kerf: 2 * problem.kerf,
          endTrim: 2 * problem.endTrim,
          demands: problem.demands.map((one) => ({ ...one, length: 2 * one.length })),
          supplies: problem.supplies.map((one) => ({ ...one, length: 2 * one.length })),
        };
        const [once, twice] = [await answerOf(problem), await answerOf(doubled)];
        expect(twice.plan.costCents).toBe(once.plan.costCents);
        expect(twice.bound.costCents).toBe(once.bound.costCents);
        expect(twice.plan.unserved).toEqual(once.plan.unserved);
      }),
      { numRuns: 60 },
    );
  });

  test('stays the same when pieces and sticks are listed in another order', async () => {
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
        const [first, second] = [await answerOf(problem), await answerOf(other)];
        expect(second.plan.costCents).toBe(first.plan.costCents);
        expect(second.plan.unserved).toHaveLength(first.plan.unserved.length);
      }),
      { numRuns: 60 },
    );
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
        const with1 = await answerOf(problemOf(pieces(asked), all, { kerf }));
        const without = await answerOf(problemOf(pieces(asked), all.slice(0, -1), { kerf }));
        expect(with1.plan.costCents).toBeLessThanOrEqual(without.plan.costCents);
      }),
      { numRuns: 60 },
    );
  });

  test('never rises for the same stick at a lower price', async () => {
    await fc.assert(
      fc.asyncProperty(lengths, fc.nat(3), fc.nat(300), async (asked, kerf, saved) => {
        const listed = [stick(200, { priceCents: 300 }), stick(320, { priceCents: 410 })];
        const cheaper = stick(320, { id: 'cheaper', priceCents: 410 - saved });
        const before = await answerOf(problemOf(pieces(asked), listed, { kerf }));
        const after = await answerOf(problemOf(pieces(asked), [...listed, cheaper], { kerf }));
        expect(after.plan.costCents).toBeLessThanOrEqual(before.plan.costCents);
      }),
      { numRuns: 60 },
    );
  });
});
