/**
 * The stick planner's problem, as plain data of whole numbers, so that it can cross into a worker.
 * Every length is a whole count of one unit, 1/unitsPerInch of an inch, that divides the shop's
 * precision, kerf, trim and stick lengths; money is whole cents.
 */
export interface StickProblem {
  /** How many planner's units make an inch; a whole number from 1. */
  readonly unitsPerInch: number;
  /** Lost at each cut between two pieces. */
  readonly kerf: number;
  /** Comes off each end of every stick, its own cut included. */
  readonly endTrim: number;
  /** One entry a piece; ids are unique. */
  readonly demands: readonly StickDemand[];
  readonly supplies: readonly StickSupply[];
  /** Absent: an overlong piece is refused. Present: it may be spliced, losing `overlap` at each joint. */
  readonly splice?: { readonly overlap: number };
  /** Offcuts at least this long are kept and listed. */
  readonly keepOffcutsOver: number;
}

export interface StickDemand {
  readonly id: string;
  readonly length: number;
  /** Never spliced. */
  readonly onePiece: boolean;
  /** Pieces with the same text come from one stick (a matched pair). */
  readonly match?: string;
}

/** A kind of stick, or of board that is ripped into `strips` sticks of one length. */
export interface StickSupply {
  readonly id: string;
  readonly length: number;
  /** Price of one stick, or of one whole board, in cents; 0 or more. */
  readonly priceCents: number;
  /** 1 for a stick; for a board the blanks that it rips into. */
  readonly strips: number;
  /** How many are on the rack. */
  readonly have: number;
  /** How many may be bought; null is as many as needed. */
  readonly buyMost: number | null;
}

export interface StickPlan {
  /** Longest sticks first, pieces in the order they are cut. */
  readonly sticks: readonly PlannedStick[];
  readonly unserved: readonly { readonly demandId: string; readonly why: UnservedReason }[];
  /** Whole boards and sticks used, times their prices. */
  readonly costCents: number;
}

export type UnservedReason = 'longer than every stick' | 'stock used up' | 'matched group too long';

export interface PlannedStick {
  readonly supplyId: string;
  /** Which of the supply's sticks or boards this is, from 0; strips of one board share it. */
  readonly unit: number;
  /** Which strip of that board, from 0; 0 for a stick. */
  readonly strip: number;
  readonly pieces: readonly PlannedPiece[];
  /** What is left after trims, pieces and kerfs, the cut that frees it included; 0 or more. */
  readonly offcut: number;
}

export interface PlannedPiece {
  readonly demandId: string;
  readonly length: number;
  /** Which part of a spliced piece, from 0; absent when whole. */
  readonly part?: number;
}

/** A proven lower limit on cost, with the prices (duals) from which anyone can recompute it. */
export interface StickBound {
  readonly costCents: number;
  /** Cents that each length is worth; a whole plan can't cost less than their sum over the demands. */
  readonly duals: readonly { readonly length: number; readonly cents: number }[];
}

export type StickStatus = 'proven' | 'gap' | 'unfinished';

export interface StickAnswer {
  readonly plan: StickPlan;
  readonly bound: StickBound;
  readonly status: StickStatus;
}

export interface StickProgress {
  readonly phase: string;
  readonly costCents: number;
  readonly boundCents: number;
}

export interface PlanSticksOptions {
  readonly signal?: { readonly aborted: boolean };
  readonly onProgress?: (progress: StickProgress) => void;
  /** Stop after so many milliseconds of `now`, or after so many counted steps. */
  readonly budget?: { readonly milliseconds?: number; readonly steps?: number };
  readonly seed?: number;
  readonly now?: () => number;
  /** Loads the solver of linear programs; unused until a step needs it. */
  readonly loadSolver?: () => Promise<unknown>;
}
