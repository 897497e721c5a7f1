/**
 * The stick planner's problem, as plain data of whole numbers, so that it can cross into a worker.
 * Every length is a whole count of one unit, 1/unitsPerInch of an inch, that divides the shop's
 * precision, kerf, trim and stick lengths; money is whole cents.
 *
 * A stick gives its pieces when the sum of their lengths, with a kerf between each two of them, is
 * at most the stick's length less both end trims; it may be filled exactly.
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
  /**
   * Absent: a piece longer than every stick is left unserved. Present: it is cut as two parts or
   * more, whose lengths sum to the piece's length and one `overlap` a joint, each longer than
   * `overlap`. A piece that fits only sticks that are used up may be spliced too. Never one-piece
   * demands, nor matched ones.
   */
  readonly splice?: {
    readonly overlap: number;
    /** Parts are whole multiples of it where pieces and overlap are: the shop's precision. 1 where absent. */
    readonly grid?: number;
  };
  /** Offcuts at least this long are kept and listed. */
  readonly keepOffcutsOver: number;
}

export interface StickDemand {
  readonly id: string;
  readonly length: number;
  /** Never spliced: left unserved where no stick is long enough. */
  readonly onePiece: boolean;
  /**
   * Pieces with the same text come from one stick (a matched pair), all of them or none. They are
   * never spliced. Absent or empty: the piece stands alone.
   */
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
  /** How many sticks or boards are on the rack; they cost their price too (0 where they are paid). */
  readonly have: number;
  /** How many may be bought; null is as many as needed. */
  readonly buyMost: number | null;
}

export interface StickPlan {
  /** Longest sticks first, pieces in the order they are cut. */
  readonly sticks: readonly PlannedStick[];
  /** In the order of the demands. */
  readonly unserved: readonly { readonly demandId: string; readonly why: UnservedReason }[];
  /** Whole boards and sticks used, times their prices. */
  readonly costCents: number;
}

/** 'longer than every stick' of those listed, had or not, where no splice helps. */
export type UnservedReason = 'longer than every stick' | 'stock used up' | 'matched group too long';

export interface PlannedStick {
  readonly supplyId: string;
  /** Which of the supply's sticks or boards this is, from 0; strips of one board share it. */
  readonly unit: number;
  /** Which strip of that board, from 0; 0 for a stick. */
  readonly strip: number;
  readonly pieces: readonly PlannedPiece[];
  /**
   * What is left of the stick: its length less both end trims, the n pieces and n kerfs (the last
   * frees the offcut); 0 where that would be less than 0.
   */
  readonly offcut: number;
}

export interface PlannedPiece {
  readonly demandId: string;
  readonly length: number;
  /** Which part of a spliced piece, from 0; absent when whole. */
  readonly part?: number;
}

/**
 * A proven lower limit on what any plan costs that serves the same demands (those that the plan
 * lists as unserved are left out) and splices the same ones, into however many parts; with the
 * prices (duals) from which anyone can recompute it:
 *
 * 1. No stick or board of a supply can be cut into served lengths worth more, by `duals`, than its
 *    price and its supply's `credits` together.
 * 2. So no plan costs less than Σ duals over the served demands, less Σ credits times the supply's
 *    count (have + buyMost), and a cost is a whole multiple of the greatest common divisor of the
 *    prices of all sticks that some served piece can be cut from.
 *
 * `costCents` is step 2's figure rounded up to that multiple. The figures are multiples of a power
 * of two, rounded to the safe side, so that adding them as floating-point numbers is exact.
 */
export interface StickBound {
  readonly costCents: number;
  /** Cents that a piece of each served length is worth, 0 or more; a splice's is its parts' together. */
  readonly duals: readonly { readonly length: number; readonly cents: number }[];
  /** Cents that one more stick or board of a supply that runs out would save; the others have none. */
  readonly credits: readonly { readonly supplyId: string; readonly cents: number }[];
}

/**
 * 'proven': no plan that serves (and splices) the same demands is cheaper. 'gap': there may be one,
 * no cheaper than the bound. 'unfinished': as 'gap', but the planner was told to stop.
 */
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
  /** Stop after so many milliseconds of `now` (which must be given then), or so many counted steps. */
  readonly budget?: { readonly milliseconds?: number; readonly steps?: number };
  readonly seed?: number;
  readonly now?: () => number;
  /** Awaited between steps, so that a host with one thread can hear a cancel or draw progress. */
  readonly pause?: () => Promise<void>;
  /** Loads the solver of linear programs; unused until a step needs it. */
  readonly loadSolver?: () => Promise<unknown>;
}
