/** What two plans of one job, before and after it was changed, are against each other. Money in whole cents. */
import type { ExactInches } from '../../core/units/length.ts';

/** Something of both plans; absent in the one that lacks it. */
export interface Pair<State> {
  readonly before?: State;
  readonly after?: State;
}

export interface RunState {
  readonly pieces: number;
  /** Of them, as Runs marks them. */
  readonly done: number;
  /** Of all its pieces, as they are cut. */
  readonly length: ExactInches;
}

/** What of a run is not as it was. */
export type RunDifference = 'pieces' | 'lengths' | 'ends' | 'done' | 'one piece' | 'match';

/** A run of one profile; what is typed in several rows under one name is one. */
export interface RunPair extends Pair<RunState> {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  /** None of a run that is added or gone. */
  readonly differs: readonly RunDifference[];
}

export interface LineState {
  readonly pieces: number;
  readonly length: ExactInches;
  readonly priceCents: number;
}

/** A profile in a room, as a client sees it. */
export interface LinePair extends Pair<LineState> {
  readonly room: string;
  readonly profile: string;
}

export interface Figures {
  readonly pieces: number;
  readonly sticks: number;
  readonly length: ExactInches;
  /** Of boards as bought or pulled; absent where they aren't known. */
  readonly boardFeet?: number;
  readonly passes: number;
  readonly hours: number;
  readonly costCents: number;
  readonly priceCents: number;
}

export interface ProfilePair extends Pair<Figures> {
  readonly profile: string;
  /** Its cove, its blank or its wood is another: what is cut of it already is of no use. */
  readonly isMadeOtherwise: boolean;
}

export interface TotalFigures extends Figures {
  readonly done: number;
  readonly taxCents: number;
}

/** A piece of the plan before that is off its stick, or done. */
export interface CutBefore {
  readonly id: string;
  readonly mark: string;
  readonly profile: string;
  readonly length: ExactInches;
  /** Absent where Runs marks it as done. */
  readonly stick?: string;
  /** What the plan after has of it: the very same, one of its name that is otherwise, or none. */
  readonly need: 'same' | 'changed' | 'gone';
}

export interface Comparison {
  readonly added: readonly RunPair[];
  readonly gone: readonly RunPair[];
  readonly changed: readonly RunPair[];
  /** Runs that are as they were. */
  readonly same: number;
  /** All lines of both plans, changed or not: their prices add up to the totals'. */
  readonly lines: readonly LinePair[];
  /** All profiles of both plans. */
  readonly profiles: readonly ProfilePair[];
  readonly totals: { readonly before: TotalFigures; readonly after: TotalFigures };
  readonly cut: readonly CutBefore[];
  /** Sticks and blanks that were cut or begun: their lumber and their hours are spent. */
  readonly sticksBegun: number;
  /** By how much each plan may still be cheaper at the sticks: a difference of less says little. */
  readonly openCents: { readonly before: number; readonly after: number };
}
