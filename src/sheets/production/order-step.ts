/** One step of the order of work, before it has its row. */
import type { JobPlan, ProfilePlan } from '../../planning/job-plan.ts';
import type { DraftCell } from '../grammar/sheet-draft.ts';
import type { PlanAnchors } from '../plan-anchors.ts';
import type { ProductionAnchors } from './production-anchors.ts';

export interface OrderFacts {
  readonly plan: JobPlan;
  readonly acrossSheets: PlanAnchors;
  readonly onThisSheet: ProductionAnchors;
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
  /** Where more is said: a sheet, or a table below. */
  readonly see: string;
  /** The profile that its hours belong to. */
  readonly planned?: ProfilePlan;
  /** Whether its cuts are the profile's passes over the blade. */
  readonly isCove?: boolean;
  /** Whether its count is the profile's square feet to smooth, or its cuts the profile's crosscuts. */
  readonly isSmoothing?: boolean;
  readonly isCrosscut?: boolean;
}
