import { entryAt } from '../entry-at.ts';
import type { Column } from './column.ts';
import { dualBound } from './dual-bound.ts';
import { supplyOf, type Instance } from './instance.ts';
import type { LinearProgram, LinearSolution } from './linear-program.ts';
import type { LayoutPricer } from './pricing.ts';
import { EPSILON_COLUMN_GAIN_SHARE, EPSILON_GAIN_SHARE } from '../tolerances.ts';

/** How far the duals at which layouts are sought are smoothed toward the best duals so far. */
const SMOOTHING = 0.6;
/** Without gain for so many rounds, the program is as good as solved. */
const MOST_ROUNDS = 5_000;

export interface GeneratedColumns {
  readonly solution: LinearSolution;
  /** The duals with the best bound, and that bound; it is only worked out at the root. */
  readonly bestDuals: Float64Array;
  readonly boundCents: number;
  /** No layout is left that would make it cheaper. */
  readonly finished: boolean;
}

export interface GenerateOptions {
  readonly isSpent: () => boolean;
  readonly pause: () => Promise<void>;
  readonly onBound?: (boundCents: number, duals: Float64Array) => void;
  /** Stop as soon as the bound reaches this: nothing cheaper is left to be found. */
  readonly enoughCents?: number;
}

/**
 * Solves the linear program over all layouts by adding those that make it cheaper, round by round
 * (P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem,
 * Operations Research 9, 1961), with duals smoothed toward the best ones so far (P. Wentges, Weighted
 * Dantzig-Wolfe decomposition for linear mixed-integer programming, Int. Trans. in Operational
 * Research 4, 1997) [M]: without that, thousands of lengths don't settle.
 */
export async function generateColumns(
  instance: Instance,
  program: LinearProgram,
  pricer: LayoutPricer,
  options: GenerateOptions,
): Promise<GeneratedColumns> {
  const counts = instance.items.map(({ most }) => most);
  let solution = program.solve(false);
  let bestDuals = solution.duals;
  let boundCents = -Infinity;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    await options.pause();
    if (options.isSpent()) return { solution, bestDuals, boundCents, finished: false };
    let columns: readonly Column[] = [];
    for (const weight of boundCents > -Infinity ? [SMOOTHING, 0] : [0]) {
      const duals = blend(bestDuals, solution.duals, weight);
      const found = priceOnce(instance, pricer, duals, counts);
      const { costCents, scale } = dualBound(instance, duals, found.worth);
      if (costCents > boundCents) {
        boundCents = costCents;
        bestDuals = scale === 1 ? duals : duals.map((dual) => dual * scale);
        options.onBound?.(boundCents, bestDuals);
      }
      columns = found.columns.filter((column) => isOfUse(column, solution.duals));
      if (columns.length > 0) break;
    }
    const near = EPSILON_GAIN_SHARE * Math.max(1, solution.costCents);
    const isDone = columns.length === 0 || solution.costCents - boundCents <= near;
    if (isDone || boundCents >= (options.enoughCents ?? Infinity)) {
      return { solution, bestDuals, boundCents, finished: isDone };
    }
    program.add(columns);
    solution = program.solve(true);
  }
  return { solution, bestDuals, boundCents, finished: false };
}

/** A few rounds of the same on the way down a dive, for what is left to be covered. */
export function generateColumnsBelow(
  instance: Instance,
  program: LinearProgram,
  pricer: LayoutPricer,
  counts: ArrayLike<number>,
  mostRounds: number,
): LinearSolution {
  let solution = program.solve(false);
  for (let round = 0; round < mostRounds; round += 1) {
    const found = priceOnce(instance, pricer, solution.duals, counts);
    const columns = found.columns.filter((column) => isOfUse(column, solution.duals));
    if (columns.length === 0) break;
    program.add(columns);
    solution = program.solve(true);
  }
  return solution;
}

/** Each slot's layouts that are worth more than it costs at these duals. */
function priceOnce(
  instance: Instance,
  pricer: LayoutPricer,
  duals: Float64Array,
  counts: ArrayLike<number>,
): ReturnType<LayoutPricer['price']> {
  const thresholds = Float64Array.from(instance.slots, (slot) => {
    const row = slot.stripRow >= 0 ? slot.stripRow : (supplyOf(instance, slot)?.row ?? -1);
    const cost = slot.priceCents + (row < 0 ? 0 : entryAt(duals, row));
    return cost + EPSILON_GAIN_SHARE * Math.max(1, cost);
  });
  return pricer.price(duals, counts, thresholds);
}

function isOfUse({ rows, values, costCents }: Column, duals: Float64Array): boolean {
  let worth = 0;
  rows.forEach((row, at) => (worth += (values[at] ?? 0) * (duals[row] ?? 0)));
  return worth > costCents + EPSILON_COLUMN_GAIN_SHARE * Math.max(1, Math.abs(costCents));
}

function blend(center: Float64Array, outer: Float64Array, weight: number): Float64Array {
  if (weight === 0) return outer;
  return outer.map((dual, at) => weight * (center[at] ?? 0) + (1 - weight) * dual);
}
