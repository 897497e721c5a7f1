/** Halving an interval: the slow and sure way to where a condition turns. */

/** Halvings until a double has no more digits to give. */
const HALVINGS = 60;

/**
 * Where a condition turns that holds from `low` on and then fails up to `high`.
 *
 * @returns The two ends of what is left: the last point seen to hold (else `low`) and the first seen
 *   to fail (else `high`).
 */
export function bisect(
  predicate: (at: number) => boolean,
  low: number,
  high: number,
): { readonly holds: number; readonly fails: number } {
  let [holds, fails] = [low, high];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (holds + fails) / 2;
    if (predicate(middle)) holds = middle;
    else fails = middle;
  }
  return { holds, fails };
}

/** The last point of [low, high] at which a condition that holds at first still holds. */
export function bisectLast(predicate: (at: number) => boolean, low: number, high: number): number {
  const { holds, fails } = bisect(predicate, low, high);
  return (holds + fails) / 2;
}
