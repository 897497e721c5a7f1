import { ok, type Outcome } from '../core/faults/fault.ts';
import { checkBound } from './check/check-bound.ts';
import { checkPlan } from './check/check-plan.ts';
import { startOffer } from './start-offer.ts';
import { stepBudget } from './step-budget.ts';
import { Incumbent } from './incumbent.ts';
import { improve } from './improve.ts';
import type { PlanSticksOptions, StickAnswer, StickProblem } from './problem/problem.ts';
import { quickSticks } from './quick/quick-sticks.ts';
import { alikeEnds, countWays } from './tidy/alike-ends.ts';
import { betterJoints } from './tidy/better-joints.ts';
import { fewerLayouts } from './tidy/fewer-layouts.ts';
import type { WholeStick } from './whole-stick.ts';
import { validateProblem } from './problem/validate-problem.ts';

/**
 * Plans which pieces are cut from which sticks, for the least cost that is found, with a proven
 * lower bound beside it.
 *
 * A ladder, each rung improving what is there: quick plans (longest pieces first into the first or
 * the fullest stick with room, D. S. Johnson, Near-Optimal Bin Packing Algorithms, thesis, MIT 1973
 * [M], or stick after stick as full as can be, then every stick exchanged for the cheapest that
 * still fits); where a solver is handed in, column generation with a bound, dives from it, and
 * whole-number programs. The same problem, seed and count of steps give the same plan.
 *
 * @param problem whole numbers throughout, see StickProblem
 * The quick plans are always made whole: neither budget nor cancel cuts them short. From there on
 * what is shown never gets dearer, so more time or more steps never cost more.
 *
 * @param options cancel, progress, budget and seed; a cancelled call still answers, with the best
 *   plan so far and at least the quick one
 * @returns the plan, its bound and its status; or every fault of the problem at once
 * @throws RangeError where a budget in milliseconds comes without a clock
 */
export async function planSticks(
  problem: StickProblem,
  options: PlanSticksOptions = {},
): Promise<Outcome<StickAnswer>> {
  const faults = validateProblem(problem);
  if (faults.length > 0) return { ok: false, faults };
  const incumbent = new Incumbent(problem, options);
  let last: object | undefined;
  for (const quick of quickSticks(problem, options.seed ?? 1)) {
    if (quick !== last) incumbent.offer(quick, 'quick plans');
    last = quick;
    if (incumbent.isProven()) break;
    await options.pause?.();
  }
  const started = startOffer(problem, options.start, incumbent.best);
  if (started !== undefined) incumbent.offer(started, 'earlier plan');
  const ways = (sticks: readonly WholeStick[]): number =>
    countWays(problem, alikeEnds(problem, sticks));
  const budget = stepBudget(options);
  if (options.loadSolver !== undefined && !incumbent.isProven() && !budget.isOver()) {
    const highs = await options.loadSolver();
    await improve(problem, incumbent, highs, { ...options, stepBudget: budget });
  }
  const recut = fewerLayouts(problem, incumbent.best.sticks);
  if (ways(recut) <= ways(incumbent.best.sticks)) incumbent.offerRecut(recut, 'tidying');
  incumbent.offerExchanged(betterJoints(problem, incumbent.best.sticks), 'tidying');
  incumbent.offerExchanged(alikeEnds(problem, incumbent.best.sticks), 'tidying');
  const near = incumbent.nearPlans();
  const answer = {
    ...incumbent.answer(options.signal?.aborted === true),
    ...(near.length === 0 ? {} : { near }),
  };
  const wrong = [answer.plan, ...near].flatMap((plan) => checkPlan(problem, plan));
  if (wrong.length > 0) {
    throw new RangeError(`The planner made a wrong plan: ${wrong.slice(0, 3).join(' ')}`);
  }
  const unproven = checkBound(problem, answer.plan, answer.bound, true);
  if (unproven.length > 0) {
    throw new RangeError(`The planner made a wrong bound: ${unproven.slice(0, 3).join(' ')}`);
  }
  return ok(answer);
}
