import { entryAt } from '../entry-at.ts';
import type { Highs } from 'highs';
import type { StepBudget } from '../step-budget.ts';
import { EPSILON_WHOLE_USES } from '../tolerances.ts';
import type { Column, ColumnUses } from './column.ts';
import { columnMatrix } from './column-matrix.ts';
import type { Instance } from './instance.ts';

/** How long the whole-number program may take: branches, counted so that every machine stops alike. */
const MOST_NODES = 400;
const MOST_COLUMNS = 6_000;
/** An option of HiGHS is a finite number. */
const FAR = 1e12;

export interface WholeProgramOptions extends Pick<StepBudget, 'isOver' | 'secondsLeft'> {
  readonly beatCents: number;
}

/**
 * The least cost of whole uses of the columns found so far, by HiGHS, stopped after a set count of
 * branches or when time is up.
 *
 * @returns undefined where it finds nothing cheaper than asked
 */
export function settleByProgram(
  instance: Instance,
  highs: Highs,
  columns: readonly Column[],
  { beatCents, isOver, secondsLeft }: WholeProgramOptions,
): ColumnUses | undefined {
  const some = columns.filter(({ what }) => what.kind !== 'shortfall').slice(-MOST_COLUMNS);
  const rowCount = instance.rowLeast.length;
  const model = highs.createModel({
    numCols: some.length,
    numRows: rowCount,
    colCost: Float64Array.from(some, ({ costCents }) => costCents),
    colLower: new Float64Array(some.length),
    colUpper: new Float64Array(some.length).fill(highs.infinity),
    rowLower: instance.rowLeast,
    rowUpper: new Float64Array(rowCount).fill(highs.infinity),
    integrality: Int32Array.from(some, () => highs.constants.variableType.integer),
    matrix: columnMatrix(some, rowCount),
  });
  try {
    model.options.set({
      output_flag: false,
      mip_max_nodes: MOST_NODES,
      objective_bound: Math.min(beatCents, FAR),
      mip_rel_gap: 0,
      time_limit: Math.min(secondsLeft(), FAR),
    });
    model.run({
      [highs.constants.callbackType.mipInterrupt]: (event) => {
        if (isOver()) event.interrupt();
      },
    });
    const { colValue } = model.getSolution();
    const uses = Float64Array.from(colValue, (use) => Math.round(use));
    if (uses.length !== some.length || !isCovered(instance, some, uses)) return undefined;
    const cost = some.reduce((sum, { costCents }, at) => sum + costCents * entryAt(uses, at), 0);
    if (cost >= beatCents) return undefined;
    return new Map(
      some.flatMap((column, at) => (entryAt(uses, at) > 0 ? [[column, entryAt(uses, at)]] : [])),
    );
  } finally {
    model.dispose();
  }
}

/** A solver's whole numbers are near whole: rounded, they are looked at again. */
function isCovered(instance: Instance, columns: readonly Column[], uses: Float64Array): boolean {
  const covered = new Float64Array(instance.rowLeast.length);
  columns.forEach(({ rows, values }, at) => {
    rows.forEach((row, place) => {
      covered[row] = entryAt(covered, row) + entryAt(values, place) * entryAt(uses, at);
    });
  });
  return covered.every((sum, row) => sum >= entryAt(instance.rowLeast, row) - EPSILON_WHOLE_USES);
}
