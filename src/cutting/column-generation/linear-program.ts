import type { Highs, Model } from 'highs';
import type { Column } from './column.ts';
import { columnMatrix } from './column-matrix.ts';

export interface LinearSolution {
  readonly costCents: number;
  /** How often each column is used, in the order in which they were added. */
  readonly uses: Float64Array;
  /** What one more of each row would cost, in cents; 0 or more. */
  readonly duals: Float64Array;
}

/**
 * The linear program over the columns known so far: every row covered at least, at the least cost.
 * It keeps its basis, so that solving again after a change is quick. HiGHS does the work.
 */
export class LinearProgram {
  readonly columns: Column[] = [];
  private readonly model: Model;
  private readonly highs: Highs;
  private readonly rowCount: number;
  private closed: Uint8Array = new Uint8Array(0);

  constructor(highs: Highs, rowLeast: ArrayLike<number>) {
    this.highs = highs;
    this.rowCount = rowLeast.length;
    this.model = highs.createModel({
      numCols: 0,
      numRows: rowLeast.length,
      colCost: [],
      colLower: [],
      colUpper: [],
      rowLower: Float64Array.from(rowLeast),
      rowUpper: new Float64Array(rowLeast.length).fill(highs.infinity),
      matrix: columnMatrix([], rowLeast.length),
    });
    this.model.options.set({ output_flag: false, presolve: 'off', solver: 'simplex' });
  }

  add(columns: readonly Column[]): void {
    if (columns.length === 0) return;
    this.model.addCols({
      cost: Float64Array.from(columns, ({ costCents }) => costCents),
      lower: new Float64Array(columns.length),
      upper: new Float64Array(columns.length).fill(this.highs.infinity),
      matrix: columnMatrix(columns, this.rowCount),
    });
    for (const column of columns) this.columns.push(column);
    const closed = new Uint8Array(this.columns.length);
    closed.set(this.closed);
    this.closed = closed;
  }

  /** Sets what each row needs at least. */
  setRows(rowLeast: ArrayLike<number>): void {
    this.model.changeRowsBounds(
      { kind: 'range', from: 0, to: this.rowCount - 1 },
      Float64Array.from(rowLeast),
      new Float64Array(this.rowCount).fill(this.highs.infinity),
    );
  }

  /** Closes the columns for which it says 1: they can't be used till they are opened again. */
  close(closed: Uint8Array): void {
    const changed: number[] = [];
    closed.forEach((value, at) => {
      if (value !== this.closed[at]) changed.push(at);
    });
    if (changed.length === 0) return;
    this.model.changeColsBounds(
      { kind: 'set', indices: Int32Array.from(changed) },
      new Float64Array(changed.length),
      Float64Array.from(changed, (at) => (closed[at] === 1 ? 0 : this.highs.infinity)),
    );
    this.closed = Uint8Array.from(closed);
  }

  isClosed(column: number): boolean {
    return this.closed[column] === 1;
  }

  /** @param onlyAdded only columns were added since the last solve, so that the basis is still feasible */
  solve(onlyAdded: boolean): LinearSolution {
    this.model.options.set({ simplex_strategy: onlyAdded ? 4 : 1 });
    this.model.run();
    const { colValue, rowDual } = this.model.getSolution();
    const duals = Float64Array.from(rowDual, (dual) => Math.max(0, dual));
    return { costCents: this.model.getObjectiveValue(), uses: colValue, duals };
  }

  dispose(): void {
    this.model.dispose();
  }
}
