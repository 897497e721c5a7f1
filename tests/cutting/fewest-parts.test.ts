import { describe, expect, test } from '@jest/globals';
import { checkPlan } from '../../src/cutting/check/check-plan.ts';
import type { StickPlan, StickProblem } from '../../src/cutting/problem/problem.ts';
import { count } from '../deep.ts';
import { answerOf, pieces, problemOf, seededNumbers, stick } from './problem-maker.ts';
import { loadSolver } from './solver.ts';

function partsOf({ sticks }: StickPlan): ReadonlyMap<string, readonly number[]> {
  const parts = new Map<string, number[]>();
  for (const { demandId, length } of sticks.flatMap((one) => one.pieces)) {
    parts.set(demandId, [...(parts.get(demandId) ?? []), length]);
  }
  return parts;
}

/** By trying: so many parts of the longest, an overlap lost at each joint, reach the length. */
function fewest(length: number, longest: number, overlap: number): number {
  for (let parts = 1; ; parts += 1) {
    if (parts * longest - (parts - 1) * overlap >= length) return parts;
  }
}

describe('A spliced piece', () => {
  // By hand: 246 in of sticks of 144 less two trims of 1 is two parts, of 141 and 106 with an overlap
  // of 1; a stick of 96 is far the cheapest by length, and would take three.
  test.each([0, 1, 5, 400])(
    'comes in the fewest parts, whatever three would save, after %d steps',
    async (steps) => {
      const supplies = [stick(96, { priceCents: 100 }), stick(144, { priceCents: 2000 })];
      const problem = problemOf(pieces([246, 246, 191]), supplies, {
        endTrim: 1,
        splice: { overlap: 1, leastPart: 24 },
      });
      const { plan } = await answerOf(problem, { loadSolver, budget: { steps } });
      expect([...partsOf(plan).values()].map(({ length }) => length)).toEqual([2, 2, 2]);
      const short = [...partsOf(plan).values()].flat().filter((length) => length < 24);
      expect(short).toEqual([]);
    },
  );

  test('comes in the fewest parts, none too short, in random problems at any budget', async () => {
    const next = seededNumbers(77);
    let spliced = 0;
    for (let run = 0; run < count(150, 25); run += 1) {
      const grid = 1 + next(3);
      const lengths = [40 + next(40), 60 + next(60), 90 + next(70)].map((one) => one * grid);
      const supplies = lengths.map((length) => stick(length, { priceCents: 50 + next(400) }));
      const overlap = grid * next(4);
      const leastPart = grid * next(26);
      const problem: StickProblem = problemOf(
        pieces(Array.from({ length: 2 + next(7) }, () => grid * (5 + next(330)))),
        supplies,
        { kerf: next(3), endTrim: next(3), splice: { overlap, grid, leastPart } },
      );
      const usable = Math.max(...lengths) - 2 * problem.endTrim;
      const longest = Math.floor(usable / grid) * grid;
      for (const steps of [0, 3, 60]) {
        const { plan } = await answerOf(problem, { loadSolver, budget: { steps } });
        const parts = partsOf(plan);
        for (const { id, length } of problem.demands) {
          const own = parts.get(id) ?? [];
          expect(own).toHaveLength(length <= usable ? 1 : fewest(length, longest, overlap));
          if (own.length < 2) continue;
          spliced += 1;
          const even = (length + (own.length - 1) * overlap) / own.length;
          expect(Math.min(...own)).toBeGreaterThan(Math.min(leastPart, even - grid) - 1e-9);
        }
      }
    }
    expect(spliced).toBeGreaterThan(50);
  });

  test('that finds the long sticks used up comes in as many parts as those allow that never run out', async () => {
    // By hand: one rack stick of 200 holds one piece of 150 whole; the other comes from sticks of 100.
    const rack = stick(200, { priceCents: 100, have: 1, buyMost: 0 });
    const problem = problemOf(pieces([150, 150]), [rack, stick(100)], {
      splice: { overlap: 2 },
    });
    const { plan } = await answerOf(problem);
    expect([...partsOf(plan).values()].map(({ length }) => length).sort()).toEqual([1, 2]);
    expect(plan.unserved).toEqual([]);
  });

  test('in a part more, or with too short a part, is found by the check', () => {
    const problem = problemOf(pieces([150]), [stick(100)], {
      splice: { overlap: 0, leastPart: 40 },
    });
    const planOf = (lengths: readonly number[]): StickPlan => ({
      sticks: lengths.map((length, unit) => ({
        supplyId: problem.supplies[0]!.id,
        profile: '',
        unit,
        rip: 0,
        strip: 0,
        pieces: [{ demandId: problem.demands[0]!.id, length, part: unit }],
        offcut: Math.max(0, 100 - length - problem.kerf),
      })),
      unserved: [],
      costCents: lengths.length * problem.supplies[0]!.priceCents,
      creditCents: 0,
      laborCents: 0,
    });
    expect(checkPlan(problem, planOf([100, 50]))).toEqual([]);
    expect(checkPlan(problem, planOf([110 - 40, 40, 40]))).toEqual([
      expect.stringContaining('is cut in 3 parts, and 2 would do.'),
    ]);
    expect(checkPlan(problem, planOf([115, 35]))).toContainEqual(
      expect.stringContaining('is 35, shorter than 40.'),
    );
  });
});
