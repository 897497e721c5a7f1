import { ok, type Outcome } from '../core/faults/fault.ts';
import { checkPlan } from './check-plan.ts';
import type { Draft } from './quick/draft.ts';
import type {
  PlanSticksOptions,
  StickAnswer,
  StickBound,
  StickDemand,
  StickPlan,
  StickProblem,
} from './problem.ts';
import { quickPlans } from './quick/quick-plans.ts';
import { stickKinds, type StickKind } from './stick-kind.ts';
import { validateProblem } from './validate-problem.ts';
import { volumeBound } from './bound/volume-bound.ts';
import { writePlan } from './quick/write-plan.ts';

/**
 * Plans which pieces are cut from which sticks, for the least cost that is found, with a proven
 * lower bound beside it.
 *
 * So far the quick plans: longest pieces first into the first or the fullest stick with room (D. S.
 * Johnson, Near-Optimal Bin Packing Algorithms, thesis, MIT 1973 [M]), or stick after stick as full
 * as can be, every stick then exchanged for the cheapest that still fits; and a bound by volume. The
 * same problem and seed give the same plan.
 *
 * @param problem whole numbers throughout, see StickProblem
 * @param options cancel, progress, budget and seed; a cancelled call still answers, with the best
 *   plan so far and at least the first quick one
 * @returns the plan, its bound and its status; or every fault of the problem at once
 * @throws RangeError where a budget in milliseconds comes without a clock
 */
export async function planSticks(
  problem: StickProblem,
  options: PlanSticksOptions = {},
): Promise<Outcome<StickAnswer>> {
  const faults = validateProblem(problem);
  if (faults.length > 0) return { ok: false, faults };
  const kinds = stickKinds(problem);
  const isSpent = budgetOf(options);
  let shown: Shown | undefined;
  for (const draft of quickPlans(problem, kinds, options.seed ?? 1)) {
    if (draft !== shown?.draft) {
      const now = show(problem, kinds, draft);
      shown = now;
      options.onProgress?.({
        phase: 'quick plans',
        costCents: shown.plan.costCents,
        boundCents: shown.bound.costCents,
        answer: () => answer(problem, now, false),
      });
    }
    if (isDone(shown) || isSpent()) break;
    await options.pause?.();
    if (options.signal?.aborted === true) break;
  }
  if (shown === undefined) throw new RangeError('The quick plans gave no plan at all.');
  return ok(answer(problem, shown, options.signal?.aborted === true));
}

interface Shown {
  readonly draft: Draft;
  readonly plan: StickPlan;
  readonly bound: StickBound;
}

function show(problem: StickProblem, kinds: readonly StickKind[], draft: Draft): Shown {
  const plan = writePlan(problem, kinds, draft);
  const unserved = new Set(plan.unserved.map(({ demandId }) => demandId));
  const served = problem.demands.map((demand, at) => ({
    demand,
    spliced: draft.list.spliced.has(at),
  }));
  const of = (spliced: boolean): readonly StickDemand[] =>
    served
      .filter((one) => one.spliced === spliced && !unserved.has(one.demand.id))
      .map(({ demand }) => demand);
  return { draft, plan, bound: volumeBound(problem, { whole: of(false), spliced: of(true) }) };
}

/** Nothing is left to gain: all that can be served is, at a cost that can't be less. */
function isDone({ draft, plan, bound }: Shown): boolean {
  return plan.costCents === bound.costCents && draft.unservedCount === draft.list.hopeless.length;
}

function answer(problem: StickProblem, { plan, bound }: Shown, cancelled: boolean): StickAnswer {
  const wrong = checkPlan(problem, plan);
  if (wrong.length > 0)
    throw new RangeError(`The planner made a wrong plan: ${wrong.slice(0, 3).join(' ')}`);
  const proven = plan.costCents === bound.costCents;
  return { plan, bound, status: proven ? 'proven' : cancelled ? 'unfinished' : 'gap' };
}

/** Counts a step at each call, and says whether the steps or the time are spent. */
function budgetOf({ budget, now }: PlanSticksOptions): () => boolean {
  const { milliseconds = Infinity, steps = Infinity } = budget ?? {};
  if (milliseconds !== Infinity && now === undefined) {
    throw new RangeError('A budget in milliseconds needs a clock: hand in `now`.');
  }
  const begun = now?.() ?? 0;
  let taken = 0;
  return () => {
    taken += 1;
    return taken >= steps || (now?.() ?? 0) - begun >= milliseconds;
  };
}
