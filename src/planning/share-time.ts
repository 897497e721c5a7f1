/** A job's time to look for cheaper plans, shared among its groups. */
import type { PlanSticksOptions } from '../cutting/problem/problem.ts';

/** No group gets less than this part of the time that is left: most small ones need but little of it. */
const LEAST_SHARE = 1 / 4;

export interface TimeShare {
  readonly budget: Pick<PlanSticksOptions, 'budget'>;
  /** Called when the group is planned, so that what it has not used goes to later ones. */
  readonly end: () => void;
}

/**
 * Gives each group, when its turn comes, its part of the time that is left by then: by its number of
 * pieces among those still to be planned, at least a quarter. So what one doesn't use goes to the
 * later ones, and the last may use all that is left. A group's quick plans run whole, and a step that
 * was begun is finished: what a group takes beyond its share comes off nobody's. So with more time for
 * the job no group has less. A budget of steps holds for each group, so that a plan doesn't depend on
 * a clock.
 *
 * @param milliseconds for the whole job; undefined for no limit
 * @param pieces of each group, in the order in which they are planned
 * @returns begins a group by its place
 * @throws RangeError where there are milliseconds and no clock
 */
export function shareTime(
  milliseconds: number | undefined,
  pieces: readonly number[],
  { budget, now }: Pick<PlanSticksOptions, 'budget' | 'now'>,
): { readonly begin: (place: number) => TimeShare } {
  const total = milliseconds ?? budget?.milliseconds;
  if (total === undefined) {
    const share = { budget: budget === undefined ? {} : { budget }, end: () => undefined };
    return { begin: () => share };
  }
  if (now === undefined) throw new RangeError('A budget of time needs a clock: hand in `now`.');
  let left = Math.max(0, total);
  return {
    begin: (place) => {
      const begun = now();
      const toPlan = pieces.slice(place).reduce((sum, count) => sum + count, 0);
      const part = toPlan === 0 ? 1 : (pieces[place] ?? 0) / toPlan;
      const share = left * Math.max(part, LEAST_SHARE);
      return {
        budget: { budget: { ...budget, milliseconds: share } },
        end: () => {
          left -= Math.min(share, Math.max(0, now() - begun));
        },
      };
    },
  };
}
