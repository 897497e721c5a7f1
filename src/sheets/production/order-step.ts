/** One step of the order of work, before it has its row. */
import type { JobPlan } from '../../planning/job-plan.ts';
import type { PlanCells } from '../plan-cells.ts';
import type { DraftCell } from '../grammar/sheet-draft.ts';
import type { ProductionCells } from './production-cells.ts';

export interface OrderFacts {
  readonly plan: JobPlan;
  readonly cells: PlanCells;
  readonly own: ProductionCells;
}

/** A figure by formula, for the row on which it will stand. */
export type FigureOnRow = (row: number) => {
  readonly formula: string | (() => string);
  readonly value: number;
};

export interface Step {
  readonly work: string;
  readonly how: string;
  /** Passes that one blank takes, or the length of the cove's outline. */
  readonly each?: DraftCell;
  /** How many, and of what. */
  readonly count: (row: number) => DraftCell;
  readonly of: string;
  readonly cuts?: FigureOnRow;
  readonly hours?: FigureOnRow;
  /** The sheet that says more. */
  readonly see: string;
  /** Told the step's row before its cells are asked for. */
  readonly placed?: (row: number) => void;
}
