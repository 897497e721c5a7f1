/** The least of a quadratic ½zᵀAz - bᵀz over all z that are not below their bounds. */

export type Matrix = readonly (readonly number[])[];

/** What is left of the way down, as a share of the longest of b. */
const LEFT_OVER = 1e-13;
/** Far more than any list of hours needs: a stop, not a limit. */
const MOST_SWEEPS = 1_000_000;

/**
 * By turns each z goes to where it is best for the others as they are, or to its bound; that never goes up, and
 * where A is positive definite it ends at the one least (Gauss and Seidel's method; with bounds C. Hildreth, A
 * quadratic programming procedure, Naval Research Logistics Quarterly 4, 1957 [M]).
 *
 * @param matrix A, symmetric; A - 1 positive or 0 for every z, so that what is left of b is at least as long as the way to go.
 * @param pull b.
 * @param least The bounds, -Infinity for none.
 * @throws RangeError where it doesn't end (a bug of the caller's: no such matrix)
 */
export function solveBounded(
  matrix: Matrix,
  pull: readonly number[],
  least: readonly number[],
): number[] {
  const answer = pull.map((_, at) => Math.max(0, least[at] ?? -Infinity));
  const enough = LEFT_OVER * Math.max(1, ...pull.map(Math.abs));
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let leftOver = 0;
    matrix.forEach((row, at) => {
      const from = answer[at] ?? 0;
      const diagonal = row[at] ?? 1;
      const gap = row.reduce((sum, one, to) => sum - one * (answer[to] ?? 0), pull[at] ?? 0);
      const to = Math.max(least[at] ?? -Infinity, from + gap / diagonal);
      leftOver = Math.max(leftOver, Math.abs(to - from) * diagonal);
      answer[at] = to;
    });
    if (leftOver <= enough) return answer;
  }
  throw new RangeError('The least of the quadratic was not found.');
}

/** Square roots of the diagonal of A's inverse. */
export function computeSpreads(matrix: Matrix): number[] {
  const free = matrix.map(() => -Infinity);
  return matrix.map((_, at) => {
    const unit = matrix.map((_row, to) => (to === at ? 1 : 0));
    return Math.sqrt(solveBounded(matrix, unit, free)[at] ?? 0);
  });
}
