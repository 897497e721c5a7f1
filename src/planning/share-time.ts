/** A job's time to look for cheaper plans, shared among its groups. */
import type { PlanSticksOptions } from '../cutting/problem/problem.ts';

/** No group gets less than this part of the time that is left: most small ones need but little of it. */
const LEAST_SHARE = 1 / 4;

/**
 * Gives each group, when its turn comes, its part of the time that is left by then: by its number of
 * pieces among those still to be planned, at least a quarter. So what one doesn't use goes to the
 * later ones, and the last may use all that is left. A budget of steps holds for each group, so that
 * a plan doesn't depend on a clock.
 *
 * @param milliseconds for the whole job; undefined for no limit
 * @param pieces of each group, in the order in which they are planned
 * @returns the budget of a group by its place, asked for as it is begun
 * @throws RangeError where there are milliseconds and no clock
 */
export function shareTime(
  milliseconds: number | undefined,
  pieces: readonly number[],
  { budget, now }: Pick<PlanSticksOptions, 'budget' | 'now'>,
): (place: number) => Pick<PlanSticksOptions, 'budget'> {
  const total = milliseconds ?? budget?.milliseconds;
  if (total === undefined) return () => (budget === undefined ? {} : { budget });
  if (now === undefined) throw new RangeError('A budget of time needs a clock: hand in `now`.');
  const begun = now();
  return (place) => {
    const left = Math.max(0, total - (now() - begun));
    const toPlan = pieces.slice(place).reduce((sum, count) => sum + count, 0);
    const part = toPlan === 0 ? 1 : (pieces[place] ?? 0) / toPlan;
    return { budget: { ...budget, milliseconds: left * Math.max(part, LEAST_SHARE) } };
  };
}
