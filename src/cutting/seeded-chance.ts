/**
 * Numbers from 0 up to 1 that look random and repeat for the same seed: a 32-bit linear congruential
 * generator, its high bits used.
 *
 * Source of the multiplier and increment: W. H. Press et al., Numerical Recipes, 2nd ed. (1992),
 * section 7.1, "ranqd1" [M].
 */
export function seededChance(seed: number): () => number {
  let state = Math.trunc(seed) >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
