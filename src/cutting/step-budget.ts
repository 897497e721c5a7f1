import type { PlanSticksOptions } from './problem/problem.ts';

export interface StepBudget {
  /** Counts a step, and says whether the steps or the time are spent, or the person has stopped it. */
  readonly isSpent: () => boolean;
  /** The same without counting: for what is asked a different number of times on each machine. */
  readonly isOver: () => boolean;
  /** Infinity where the budget is none of time. */
  readonly secondsLeft: () => number;
}

export function stepBudget({ budget, now, signal }: PlanSticksOptions): StepBudget {
  const { milliseconds = Infinity, steps = Infinity } = budget ?? {};
  if (milliseconds !== Infinity && now === undefined) {
    throw new RangeError('A budget in milliseconds needs a clock: hand in `now`.');
  }
  const begun = now?.() ?? 0;
  let taken = 0;
  const left = (): number =>
    milliseconds === Infinity ? Infinity : milliseconds - ((now?.() ?? 0) - begun);
  const isOver = (): boolean => signal?.aborted === true || taken >= steps || left() <= 0;
  return {
    isSpent: () => {
      taken += 1;
      return isOver();
    },
    isOver,
    secondsLeft: () => Math.max(0, left() / 1000),
  };
}
