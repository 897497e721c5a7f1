/** Repeatable chance: numbers from 0 to below 1 by a linear congruence modulo 2^32. */
export function seededNumbers(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Milliseconds of the best of a few runs. */
export function bestOf(runs, work) {
  let best = Infinity;
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}
