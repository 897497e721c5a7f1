/** Short ways to write stick problems down; units are the test's own. */
import { checkBound } from '../../src/cutting/check/check-bound.ts';
import { checkPlan } from '../../src/cutting/check/check-plan.ts';
import type {
  PlanSticksOptions,
  StickAnswer,
  StickDemand,
  StickProblem,
  StickSupply,
} from '../../src/cutting/problem/problem.ts';
import { planSticks } from '../../src/cutting/plan-sticks.ts';

export function stick(length: number, more: Partial<StickSupply> = {}): StickSupply {
  return { id: `s${length}`, length, priceCents: 100, strips: 1, have: 0, buyMost: null, ...more };
}

export function piece(id: string, length: number, more: Partial<StickDemand> = {}): StickDemand {
  return { id, length, onePiece: false, ...more };
}

export function pieces(lengths: readonly number[]): readonly StickDemand[] {
  return lengths.map((length, at) => piece(`p${at}`, length));
}

export function problemOf(
  demands: readonly StickDemand[],
  supplies: readonly StickSupply[],
  more: Partial<StickProblem> = {},
): StickProblem {
  return { unitsPerInch: 1, kerf: 0, endTrim: 0, demands, supplies, keepOffcutsOver: 0, ...more };
}

/**
 * The answer of a sound problem, its plan and its bound checked; a refusal, or what the checks find,
 * fails the test in its own words.
 */
export async function answerOf(
  problem: StickProblem,
  options: PlanSticksOptions = {},
): Promise<StickAnswer> {
  const outcome = await planSticks(problem, options);
  if (!outcome.ok) throw new Error(outcome.faults.map(({ message }) => message).join('\n'));
  const { plan, bound, status } = outcome.value;
  const net = plan.costCents + plan.laborCents - plan.creditCents;
  const wrong = [
    ...checkPlan(problem, plan),
    ...checkBound(problem, plan, bound),
    ...((status === 'proven') === (net === bound.costCents)
      ? []
      : [`A plan of ${net} cents with a bound of ${bound.costCents} is called ${status}.`]),
  ];
  if (wrong.length === 0) return outcome.value;
  const said = JSON.stringify(problem);
  throw new Error([...wrong.slice(0, 8), said.slice(0, LONGEST_SAID)].join('\n'));
}

const LONGEST_SAID = 3000;

/** A repeatable source of whole numbers from 0 to below `limit`, the test's own. */
export function seededNumbers(seed: number): (limit: number) => number {
  let state = BigInt(seed);
  return (limit) => {
    // Knuth's 64-bit multiplier and increment (MMIX) [M].
    state = (state * 6364136223846793005n + 1442695040888963407n) % 2n ** 64n;
    return Number((state >> 33n) % BigInt(limit));
  };
}
