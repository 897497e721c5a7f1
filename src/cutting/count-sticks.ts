/** How many sticks of one length a list of pieces takes, at once and by the quick plan alone. */
import type { Argument } from '../core/faults/argument.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../core/faults/fault.ts';
import { checkPlan } from './check/check-plan.ts';
import { MOST_UNITS } from './problem/limits.ts';
import type { StickPlan, StickProblem } from './problem/problem.ts';
import { quickSticks } from './quick/quick-sticks.ts';
import { validateProblem } from './problem/validate-problem.ts';
import { volumeBound } from './bound/volume-bound.ts';
import { EPSILON_UNITS } from './tolerances.ts';
import { writePlan } from './write-plan.ts';

/** Lengths in inches. */
export interface StickOrder {
  /** Each with what a fault calls it, above 0 long, a whole number of times from 0. */
  readonly pieces: readonly {
    readonly name: Argument;
    readonly length: number;
    readonly quantity: number;
  }[];
  /** Above 0. */
  readonly stickLength: number;
  /** Lost at each cut between two pieces; 0 or more. */
  readonly kerf: number;
  /** Comes off each end of every stick, its own cut included; 0 or more. */
  readonly endTrim: number;
}

export interface StickCount {
  /** Enough, by a plan that was checked; fewer may do. */
  readonly sticks: number;
  /** No plan takes fewer than that. */
  readonly fewest: number;
  readonly problem: StickProblem;
  readonly plan: StickPlan;
}

/**
 * Units that an inch is counted in: 2^6 · 5^2 · 127, so that 1/64 in, 1/100 in and 1/10 mm are whole.
 * What lies between them was calculated, and is rounded to the safe side by less than a saw's dust.
 */
const UNITS_PER_INCH = 203_200;
const LONGEST_INCHES = Math.floor(MOST_UNITS / UNITS_PER_INCH);
/** At once, so that a sheet is never kept waiting. */
export const MOST_PIECES_COUNTED = 20_000;

/**
 * Counts the sticks that an order takes, by the quick plans (see plan-sticks.ts).
 * Faults: `cutting.piece-too-long` or `cutting.kerf-longer-than-piece` for each piece,
 * `cutting.stick-shorter-than-trim`, `cutting.too-many-pieces`, `length.too-long`.
 */
export function countSticks(order: StickOrder): Outcome<StickCount> {
  const faults = checkOrder(order);
  if (faults.length > 0) return failed(...faults);
  const problem = stateProblem(order);
  const wrong = validateProblem(problem);
  if (wrong.length > 0) throw new RangeError(`A stick problem is unsound: ${wrong[0]?.message}`);
  if (problem.demands.length === 0) {
    const plan = { sticks: [], unserved: [], costCents: 0, creditCents: 0, laborCents: 0 };
    return ok({ sticks: 0, fewest: 0, problem, plan });
  }
  const fewest = volumeBound(problem, { whole: problem.demands, spliced: [] }).costCents;
  let plan: StickPlan | undefined;
  for (const { sticks, unserved, costCents } of quickSticks(problem, 1)) {
    if (plan === undefined || costCents < plan.costCents) {
      plan = writePlan(problem, sticks, unserved);
    }
    if (plan.costCents === fewest) break;
  }
  const mistakes = plan === undefined ? ['There is none.'] : checkPlan(problem, plan);
  if (plan === undefined || mistakes.length > 0 || plan.unserved.length > 0) {
    throw new RangeError(`The quick plan is wrong: ${mistakes.slice(0, 3).join(' ')}`);
  }
  return ok({ sticks: plan.sticks.length, fewest, problem, plan });
}

function checkOrder({ pieces, stickLength, kerf, endTrim }: StickOrder): Fault[] {
  const tooLong = [
    ['stickLength', stickLength],
    ['kerf', kerf],
    ['endTrim', endTrim],
  ] as const;
  const faults = tooLong
    .filter(([, inches]) => inches > LONGEST_INCHES)
    .map(([argument, inches]) =>
      fault('length.too-long', argument, { inches }, { limit: { inches: LONGEST_INCHES } }),
    );
  if (faults.length > 0) return faults;
  const room = inUnits(stickLength, 'down') - 2 * inUnits(endTrim, 'up');
  if (room <= 0) {
    const limit = { inches: 2 * endTrim };
    const given = { inches: stickLength };
    return [fault('cutting.stick-shorter-than-trim', 'aStick', given, { limit })];
  }
  const limit = { inches: stickLength - 2 * endTrim };
  for (const { name, length, quantity } of pieces) {
    if (quantity === 0) continue;
    if (inUnits(length, 'up') > room) {
      faults.push(fault('cutting.piece-too-long', name, { inches: length }, { limit }));
    } else if (inUnits(kerf, 'up') > Math.max(1, inUnits(length, 'up'))) {
      const more = { limit: { inches: length } };
      faults.push(fault('cutting.kerf-longer-than-piece', name, { inches: kerf }, more));
    }
  }
  const count = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  if (count > MOST_PIECES_COUNTED) {
    faults.push(fault('cutting.too-many-pieces', 'pieces', count, { limit: MOST_PIECES_COUNTED }));
  }
  return faults;
}

function stateProblem({ pieces, stickLength, kerf, endTrim }: StickOrder): StickProblem {
  const demands = pieces.flatMap(({ length, quantity }, at) => {
    const units = Math.max(1, inUnits(length, 'up'));
    return Array.from({ length: quantity }, (_, number) => ({
      id: `${at}, ${number}`,
      length: units,
      onePiece: true,
    }));
  });
  return {
    unitsPerInch: UNITS_PER_INCH,
    kerf: inUnits(kerf, 'up'),
    endTrim: inUnits(endTrim, 'up'),
    demands,
    // At a cent a stick the cost is the count.
    supplies: [
      {
        id: 'stick',
        length: inUnits(stickLength, 'down'),
        priceCents: 1,
        strips: 1,
        have: 0,
        buyMost: null,
      },
    ],
    keepOffcutsOver: 0,
  };
}

/** What is needed and what is lost is rounded up, what is had down. */
function inUnits(inches: number, rounding: 'up' | 'down'): number {
  const units = inches * UNITS_PER_INCH;
  return rounding === 'up'
    ? Math.max(0, Math.ceil(units - EPSILON_UNITS))
    : Math.floor(units + EPSILON_UNITS);
}
