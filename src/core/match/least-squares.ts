/**
 * Levenberg-Marquardt for a few unknowns and many residuals whose slopes are known, each residual weighted by
 * Huber's loss. Levenberg (1944), Marquardt (1963), Huber (1964). Written here since a general library
 * takes slopes by differences and knows no weights; tests/bench compares the two.
 */

/** A residual and its slopes by each unknown. */
export interface Residual {
  readonly value: number;
  readonly slopes: readonly number[];
}

export interface Fit {
  readonly unknowns: readonly number[];
  /** Half the weighted sum of squares that was left. */
  readonly cost: number;
  readonly residuals: readonly Residual[];
  /** Of each residual: 1, less where it lies past Huber's limit. */
  readonly weights: readonly number[];
  /** The weighted slopes' products, row by row: its inverse times the variance is the covariance. */
  readonly normal: readonly (readonly number[])[];
  readonly steps: number;
}

export interface FitTask {
  residualsAt(unknowns: readonly number[]): Residual[];
  /** Brings unknowns into their limits. */
  confine(unknowns: readonly number[]): number[];
  /** Weight of a residual, 1 where all count alike. */
  weigh(residual: number): number;
  /** What a residual costs under that weight. */
  cost(residual: number): number;
}

const MOST_STEPS = 60;
const FIRST_DAMPING = 1e-3;
const MOST_DAMPING = 1e9;
/** For an unknown that nothing depends on, as a tilt that is held upright: it stays where it is. */
const RIDGE = 1e-15;
/** A step that lowers the cost by less of itself ends the search. */
const CLOSE = 1e-10;

/** @param most steps, each of which takes the residuals once */
export function fitLeastSquares(task: FitTask, start: readonly number[], most = MOST_STEPS): Fit {
  let unknowns = task.confine(start);
  let residuals = task.residualsAt(unknowns);
  let cost = costOf(task, residuals);
  let damping = FIRST_DAMPING;
  let steps = 0;
  while (steps < most && damping < MOST_DAMPING) {
    steps++;
    const { normal, gradient } = normalEquations(task, residuals, unknowns.length);
    const move = solveSymmetric(
      normal.map((row, at) =>
        row.map((entry, to) => (at === to ? entry * (1 + damping) + RIDGE : entry)),
      ),
      gradient.map((entry) => -entry),
    );
    const next = task.confine(unknowns.map((value, at) => value + (move?.[at] ?? 0)));
    const nextResiduals = task.residualsAt(next);
    const nextCost = costOf(task, nextResiduals);
    if (move === undefined || !(nextCost < cost)) {
      damping *= 8;
      continue;
    }
    const gain = cost - nextCost;
    unknowns = next;
    residuals = nextResiduals;
    cost = nextCost;
    damping = Math.max(damping / 6, 1e-12);
    if (gain <= CLOSE * (cost + CLOSE)) break;
  }
  const { normal } = normalEquations(task, residuals, unknowns.length);
  const weights = residuals.map(({ value }) => task.weigh(value));
  return { unknowns, cost, residuals, weights, normal, steps };
}

function costOf(task: FitTask, residuals: readonly Residual[]): number {
  return residuals.reduce((sum, { value }) => sum + task.cost(value), 0);
}

function normalEquations(
  task: FitTask,
  residuals: readonly Residual[],
  size: number,
): { normal: number[][]; gradient: number[] } {
  const normal = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const gradient = new Array<number>(size).fill(0);
  for (const { value, slopes } of residuals) {
    const weight = task.weigh(value);
    for (let at = 0; at < size; at++) {
      const row = normal[at];
      const slope = weight * (slopes[at] ?? 0);
      if (row === undefined || slope === 0) continue;
      gradient[at] = (gradient[at] ?? 0) + slope * value;
      for (let to = 0; to < size; to++) row[to] = (row[to] ?? 0) + slope * (slopes[to] ?? 0);
    }
  }
  return { normal, gradient };
}

/** By Cholesky's factors; undefined where the matrix isn't positive definite to a double's noise. */
export function solveSymmetric(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): number[] | undefined {
  const size = right.length;
  const factor: number[][] = [];
  for (let at = 0; at < size; at++) {
    const row: number[] = [];
    for (let to = 0; to <= at; to++) {
      let sum = matrix[at]?.[to] ?? 0;
      for (let k = 0; k < to; k++)
        sum -= (row[k] ?? 0) * (factor[to]?.[k] ?? (to === at ? (row[k] ?? 0) : 0));
      if (to === at) {
        if (!(sum > 1e-14 * (matrix[at]?.[at] ?? 0))) return undefined;
        row.push(Math.sqrt(sum));
      } else row.push(sum / (factor[to]?.[to] ?? 1));
    }
    factor.push(row);
  }
  const answer = [...right];
  for (let at = 0; at < size; at++) {
    let sum = answer[at] ?? 0;
    for (let k = 0; k < at; k++) sum -= (factor[at]?.[k] ?? 0) * (answer[k] ?? 0);
    answer[at] = sum / (factor[at]?.[at] ?? 1);
  }
  for (let at = size - 1; at >= 0; at--) {
    let sum = answer[at] ?? 0;
    for (let k = at + 1; k < size; k++) sum -= (factor[k]?.[at] ?? 0) * (answer[k] ?? 0);
    answer[at] = sum / (factor[at]?.[at] ?? 1);
  }
  return answer;
}

/** The inverse, column by column; undefined as in solveSymmetric. */
export function invertSymmetric(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const columns = matrix.map((_, at) =>
    solveSymmetric(
      matrix,
      matrix.map((__, row) => (row === at ? 1 : 0)),
    ),
  );
  return columns.every((column) => column !== undefined) ? columns : undefined;
}
