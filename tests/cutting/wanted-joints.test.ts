import { describe, expect, test } from '@jest/globals';
import { checkPlan } from '../../src/cutting/check/check-plan.ts';
import type { StickDemand, StickPlan, StickProblem } from '../../src/cutting/problem/problem.ts';
import { count } from '../deep.ts';
import { answerOf, piece, pieces, problemOf, seededNumbers, stick } from './problem-maker.ts';
import { loadSolver } from './solver.ts';

/** The parts of each spliced piece, from its left end. */
function partsOf({ sticks }: StickPlan): ReadonlyMap<string, readonly number[]> {
  const parts = new Map<string, number[]>();
  for (const { demandId, length, part } of sticks.flatMap((one) => one.pieces)) {
    if (part === undefined) continue;
    const own = parts.get(demandId) ?? [];
    own[part] = length;
    parts.set(demandId, own);
  }
  return parts;
}

function endsOf(parts: readonly number[], overlap: number): number[] {
  let end = overlap;
  return parts.slice(0, -1).map((part) => (end += part - overlap));
}

/** By trying: whether some of the wanted ends cut a length into so many parts, none too short or too long. */
function canHaveJoints(
  { length, joints = [] }: StickDemand,
  parts: number,
  overlap: number,
  [least, most]: readonly [number, number],
): boolean {
  const fits = (part: number): boolean => part >= least && part <= most;
  const from = (start: number, left: number): boolean =>
    left === 1
      ? fits(length - start + overlap)
      : joints.some((end) => fits(end - start + overlap) && from(end, left - 1));
  return from(overlap, parts);
}

describe('A spliced piece that wants its joints somewhere', () => {
  // By hand: 216 with an overlap of 1 from sticks of 190, none under 24: one joint, which may end its
  // left part from 27 (right part 190) to 190. Of 16, 32, 48, … those from 32 to 176 come into question;
  // 32 leaves parts of 32 and 185, and beside the 32 there is room for the piece of 157 with a kerf of 1.
  const joints = Array.from({ length: 13 }, (_, at) => 16 * (at + 1));
  const splice = { overlap: 1, leastPart: 24 };
  const long = piece('long', 216, { joints });

  test.each([0, 50])('has them there, cut beside what fits, after %d steps', async (steps) => {
    const problem = problemOf([long, piece('other', 157)], [stick(190)], { kerf: 1, splice });
    const { plan, status } = await answerOf(problem, { loadSolver, budget: { steps } });
    expect(partsOf(plan).get('long')).toEqual([32, 185]);
    expect([plan.sticks.length, status]).toEqual([2, 'proven']);
  });

  test('has them where it wants them most, from the same sticks for the same money', async () => {
    // 207 with an overlap of 1: 32 and 176, or 176 and 32. Of 216 with 16 k as its left part the longest
    // part is 185 at k = 2, 176 at k = 11; both take two sticks.
    const plans = async (length: number, order: readonly number[], others: number[] = []) => {
      const one = piece('long', length, { joints: order, firstJointsBest: true });
      const more = others.map((other, at) => piece(`p${at}`, other));
      const { plan } = await answerOf(problemOf([one, ...more], [stick(190)], { splice }));
      return [plan.sticks.length, ...partsOf(plan).get('long')!];
    };
    const rightFirst = [...joints].reverse();
    expect(await plans(207, joints)).toEqual([2, 32, 176]);
    expect(await plans(207, rightFirst)).toEqual([2, 176, 32]);
    expect(await plans(216, joints)).toEqual([2, 32, 185]);
    expect(await plans(216, rightFirst)).toEqual([2, 176, 41]);
    // 158 beside 32 fills a stick, so that nothing else does with two sticks.
    expect(await plans(216, rightFirst, [158])).toEqual([2, 32, 185]);
  });

  test('has them anywhere where no more parts would do and none too short', async () => {
    const free = problemOf([piece('long', 216, { joints: [20, 200] })], [stick(190)], { splice });
    const { plan } = await answerOf(free);
    expect(partsOf(plan).get('long')).toEqual([190, 27]);
  });

  test('has them anywhere where the sticks that would allow it are used up', async () => {
    // Of 150 only one is there; sticks of 100 would take a third part for the joint at 140.
    const rack = stick(150, { have: 1, buyMost: 0 });
    const two = ['a', 'b'].map((id) => piece(id, 160, { joints: [140] }));
    const { plan } = await answerOf(problemOf(two, [rack, stick(100)], { splice: { overlap: 0 } }));
    expect(plan.unserved).toEqual([]);
    expect(partsOf(plan).size).toBe(2);
  });

  test('is found by the check with a joint elsewhere', () => {
    const problem = problemOf([long], [stick(190)], { splice });
    const planOf = (lengths: readonly number[]): StickPlan => ({
      sticks: lengths.map((length, unit) => ({
        supplyId: problem.supplies[0]!.id,
        profile: '',
        unit,
        rip: 0,
        strip: 0,
        pieces: [{ demandId: 'long', length, part: unit }],
        offcut: Math.max(0, 190 - length - problem.kerf),
      })),
      unserved: [],
      costCents: 2 * problem.supplies[0]!.priceCents,
      creditCents: 0,
      laborCents: 0,
    });
    expect(checkPlan(problem, planOf([48, 169]))).toEqual([]);
    expect(checkPlan(problem, planOf([169, 48]))).toEqual([
      expect.stringContaining('has a joint where it wants none'),
    ]);
  });

  test('has them there in random problems at any budget, in the fewest parts, and never dearer with more', async () => {
    const next = seededNumbers(78);
    const tally = { wanted: 0, free: 0 };
    for (let run = 0; run < count(120, 20); run += 1) {
      const lengths = [40 + next(40), 60 + next(60), 90 + next(70)];
      const supplies = lengths.map((length) => stick(length, { priceCents: 50 + next(400) }));
      const [overlap, leastPart, spacing] = [next(4), next(26), 6 + next(40)];
      const demands = pieces(Array.from({ length: 2 + next(6) }, () => 5 + next(330))).map(
        (one) => {
          const first = next(spacing);
          const all = Array.from({ length: 60 }, (_, at) => first + at * spacing);
          const inside = all.filter((at) => at > overlap && at < one.length);
          const joints = next(2) === 0 ? inside : inside.reverse();
          return next(2) === 0
            ? { ...one, joints }
            : { ...one, joints, firstJointsBest: true as const };
        },
      );
      const problem: StickProblem = problemOf(demands, supplies, {
        kerf: next(3),
        endTrim: next(3),
        splice: { overlap, leastPart },
      });
      const longest = Math.max(...lengths) - 2 * problem.endTrim;
      let cost = Infinity;
      for (const steps of [0, 3, 60]) {
        const { plan } = await answerOf(problem, { loadSolver, budget: { steps } });
        expect(plan.costCents).toBeLessThanOrEqual(cost);
        cost = plan.costCents;
        for (const [id, parts] of partsOf(plan)) {
          const demand = problem.demands.find((one) => one.id === id)!;
          const sum = parts.reduce((all, part) => all + part, 0);
          expect(sum).toBe(demand.length + (parts.length - 1) * overlap);
          expect((parts.length - 1) * (longest - overlap) + overlap).toBeLessThan(demand.length);
          const even = Math.floor((demand.length + (parts.length - 1) * overlap) / parts.length);
          const range = [Math.max(overlap + 1, Math.min(leastPart, even)), longest] as const;
          const can = canHaveJoints(demand, parts.length, overlap, range);
          const has = endsOf(parts, overlap).every((end) => demand.joints!.includes(end));
          expect([id, has]).toEqual([id, can]);
          tally[has ? 'wanted' : 'free'] += 1;
        }
      }
    }
    expect(tally.wanted).toBeGreaterThan(20);
    expect(tally.free).toBeGreaterThan(10);
  }, 60_000);

  test('or not, is cut as the check has it where sticks run out and one length never does', async () => {
    const next = seededNumbers(79);
    let spliced = 0;
    for (let run = 0; run < count(120, 20); run += 1) {
      const lengths = [40 + next(40), 60 + next(60), 90 + next(70)];
      const endless = next(3);
      const supplies = lengths.map((length, at) => {
        const limits = at === endless ? {} : { have: next(3), buyMost: next(2) };
        return stick(length, { id: `s${at}`, priceCents: 50 + next(400), ...limits });
      });
      const [overlap, leastPart, spacing] = [next(4), next(20), 6 + next(30)];
      const joints = Array.from({ length: 60 }, (_, at) => next(spacing) + at * spacing + 1);
      const demands = Array.from({ length: 2 + next(6) }, (_, at) =>
        piece(`p${at}`, 5 + next(260), next(2) === 0 ? { joints, firstJointsBest: true } : {}),
      );
      const problem = problemOf(demands, supplies, {
        kerf: next(3),
        splice: { overlap, leastPart },
      });
      // Throws where the checks find anything.
      const { plan } = await answerOf(problem, { loadSolver, budget: { steps: 20 * next(3) } });
      spliced += partsOf(plan).size;
    }
    expect(spliced).toBeGreaterThan(20);
  }, 60_000);
});
