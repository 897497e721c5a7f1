import type { PlanSticksOptions } from './problem.ts';

/** Counts a step at each call, and says whether the steps or the time are spent. */
export function stepBudget({ budget, now }: PlanSticksOptions): () => boolean {
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
