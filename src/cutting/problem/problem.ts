import type { Highs } from 'highs';

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
   * What the pieces are cut from, where there is more than one: a stick gives pieces of one profile
   * alone. Absent: all pieces are of one profile, with the id '' and the blank ''.
   */
  readonly profiles?: readonly StickProfile[];
  /**
   * How every profile that has no rule of its own is spliced. Absent: not at all. A piece longer than
   * every stick is then left unserved.
   *
   * A spliced piece is cut as two parts or more, each longer than `overlap`. Their lengths sum to the
   * piece's length and one `overlap` a joint. It is cut into the fewest parts that the longest stick
   * to be had allows, whatever more would save. Where limited sticks are used up, a piece may come in
   * more parts than these would allow, never in more than the sticks allow that never run out; so a
   * piece that fits only sticks that are used up may be spliced too. One-piece demands and matched
   * ones never are.
   */
  readonly splice?: SpliceRule;
  /** Offcuts at least this long are kept and listed. */
  readonly keepOffcutsOver: number;
}

export interface SpliceRule {
  readonly overlap: number;
  /**
   * The shop's precision: parts are whole multiples of it where the piece and the overlap are. 1 where
   * absent.
   */
  readonly grid?: number;
  /**
   * No part is shorter, where the piece's length can be cut so into its parts; else the shortest is as
   * long as even parts on the grid are. Absent: 0.
   */
  readonly leastPart?: number;
}

/**
 * What each strip (or stick) put to use costs in labor, whatever is cut from it: `cents` and
 * `centsPerUnit` for each unit of its length, rounded to the whole cent once a strip, halves up.
 */
export interface StripLabor {
  /** 0 or more; not whole. */
  readonly cents: number;
  /** 0 or more; not whole. */
  readonly centsPerUnit: number;
}

export interface StickProfile {
  readonly id: string;
  /** The blank that it is made from; profiles with the same blank can each use any strip of it. */
  readonly blank: string;
  readonly splice?: SpliceRule;
  /** What kept offcuts of it are worth. Absent: nothing. */
  readonly offcutCredit?: OffcutCredit;
  /** What each strip that its pieces are cut from costs in labor. Absent: nothing. */
  readonly labor?: StripLabor;
}

/**
 * An offcut that is kept is worth `centsPerUnit` for each unit of its length, at most `mostCents`,
 * rounded down to the cent, and never more than half of what its strip costs (a board's price shared
 * alike among the strips of its rip), or the plan would hoard; see offcut-credit.ts.
 */
export interface OffcutCredit {
  /** 0 or more; not whole. */
  readonly centsPerUnit: number;
  /** Whole, 0 or more. */
  readonly mostCents: number;
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
  /**
   * How its ends are cut, in whatever words: of plans for the same money those are wanted in which more
   * sticks are cut alike to their ends, see tidy/alike-ends.ts. Absent: of no account.
   */
  readonly ends?: string;
  /** Of which profile it is. Absent: the only one. */
  readonly profile?: string;
  /**
   * Where parts of it may end, each from its left end. Where it is spliced, all its joints lie there, as
   * long as the sticks that never run out allow it in no more parts and none below the least; else they
   * lie anywhere. Parts are numbered from the left then. Absent: anywhere.
   */
  readonly joints?: readonly number[];
  /** Of plans for the same money those are wanted whose joints stand early in the list of `joints`. */
  readonly firstJointsBest?: true;
}

/** A kind of stick, or of board that is ripped into strips, each a stick of the board's length. */
export interface StickSupply {
  readonly id: string;
  readonly length: number;
  /** Price of one stick, or of one whole board, in cents; 0 or more. */
  readonly priceCents: number;
  /**
   * What one strip is taken to cost where its offcut is credited, in whole cents, instead of its share
   * of the price: of a strip whose board is paid for already.
   */
  readonly stripWorthCents?: number;
  /** 1 for a stick; for a board the blanks that it rips into. Of no account where there are `rips`. */
  readonly strips: number;
  /**
   * The ways to rip it, none of them within another. Absent: any one of the blanks of the problem's
   * profiles, `strips` times. A stick that serves two blanks has a rip of one strip for each.
   */
  readonly rips?: readonly Rip[];
  /** How many sticks or boards are on the rack; they cost their price too (0 where they are paid). */
  readonly have: number;
  /** How many may be bought; null is as many as needed. */
  readonly buyMost: number | null;
}

/** How many strips of each blank one board is ripped into, each more than 0. */
export type Rip = readonly { readonly blank: string; readonly count: number }[];

export interface StickPlan {
  /**
   * Profile by profile, the longest sticks of each first. Sticks cut alike stand together, and pieces in
   * the order in which they are cut.
   */
  readonly sticks: readonly PlannedStick[];
  /** In the order of the demands. */
  readonly unserved: readonly { readonly demandId: string; readonly why: UnservedReason }[];
  /** Whole boards and sticks used, times their prices. */
  readonly costCents: number;
  /**
   * What the kept offcuts are worth by their profiles' `offcutCredit`, strips of an opened board that
   * nothing was cut from left out; 0 where there is no credit.
   */
  readonly creditCents: number;
  /** The labor of every strip put to use, by its profile's `labor`; 0 where there is none. */
  readonly laborCents: number;
}

/** 'longer than every stick' of those listed, had or not, where no splice helps. */
export type UnservedReason = 'longer than every stick' | 'stock used up' | 'matched group too long';

export interface PlannedStick {
  readonly supplyId: string;
  /** The profile's id; '' where the problem names none. */
  readonly profile: string;
  /** Which of the supply's sticks or boards this is, from 0; strips of one board share it. */
  readonly unit: number;
  /** Which of the supply's `rips` that board is ripped by, from 0; 0 where there are none. */
  readonly rip: number;
  /** Which strip of that board, from 0, those of the rip's first blank first; 0 for a stick. */
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
 * A proven lower limit on what a plan costs: its sticks and their labor, its credits taken off. It holds for every plan that serves
 * the same demands (those that the plan lists as unserved are left out) and splices the same ones, into
 * however many parts. With it stand the prices (duals) from which anyone can recompute it:
 *
 * 1. A strip is worth the most that can be cut from it: served lengths of one profile that it is
 *    ripped for, together with what its offcut is credited, less that profile's labor for it; at
 *    least 0. A stick or board is worth the most that
 *    the strips of any one of its rips are worth together. It is never worth more than its price and
 *    its supply's `credits` together.
 * 2. So no plan costs less than Σ duals over the served demands, less Σ credits times the supply's
 *    count (have + buyMost). Where no offcut is credited and no strip costs labor, a cost is a whole multiple of the greatest
 *    common divisor of the prices of all sticks that some served piece can be cut from; else of 1.
 *
 * `costCents` is step 2's figure rounded up to that multiple. The figures are whole multiples of a
 * power of two (2^-20, say), rounded to the safe side, so that floating-point numbers add them exactly.
 *
 * The parts of a spliced length may be of any length in step 1: each unit of a part and its kerf is
 * worth the `spliceRates` of its profile. Its dual is what its fewest parts are worth so.
 */
export interface StickBound {
  readonly costCents: number;
  /**
   * Cents that a piece of each served length and profile is worth, 0 or more. A spliced piece is worth
   * what its parts are together.
   */
  readonly duals: readonly {
    readonly length: number;
    readonly profile: string;
    readonly cents: number;
    /** The length is one that the plan splices; other pieces of that length may stand beside it. */
    readonly spliced?: true;
    /**
     * Of a whole matched group, `length` being the sum of its pieces' lengths; its pieces then count
     * no further. A group that no entry names is worth what its pieces are by their lengths.
     */
    readonly match?: string;
  }[];
  /** Cents that one more stick or board of a supply that runs out would save; the others have none. */
  readonly credits: readonly { readonly supplyId: string; readonly cents: number }[];
  /**
   * Present: the duals alone come to `pricesCents`; that nothing costs less than `costCents` is known
   * from trying every set of lay-outs that the duals leave room for, in whole numbers.
   */
  readonly tried?: { readonly pricesCents: number };
  /** Of each profile that the plan splices. */
  readonly spliceRates?: readonly { readonly profile: string; readonly centsPerUnit: number }[];
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
  /**
   * Plans found on the way that serve the same and cost so nearly the same that rounding decides: before
   * the labor of strips is rounded, at most 3 cents a profile more than the cheapest found. None of
   * them is longer in parts.
   */
  readonly near?: readonly StickPlan[];
}

export interface StickProgress {
  readonly phase: string;
  /** What the best plan so far costs with its labor, its credits taken off; so it is with the bound. */
  readonly costCents: number;
  readonly boundCents: number;
  /** Writes the best plan so far out. It takes time, so it is called only where it is wanted. */
  readonly answer: () => StickAnswer;
}

export interface PlanSticksOptions {
  readonly signal?: { readonly aborted: boolean };
  readonly onProgress?: (progress: StickProgress) => void;
  /**
   * Stop so many milliseconds of `now` (which must be given then), or so many counted steps, after the
   * quick plans, which are always made whole. More of either never gives a dearer plan.
   */
  readonly budget?: { readonly milliseconds?: number; readonly steps?: number };
  readonly seed?: number;
  /**
   * A plan of this problem from earlier: it is taken up after the quick plans where it is better, so
   * that the answer costs no more. One that is no plan of it, or splices other pieces, is passed over.
   */
  readonly start?: StickPlan;
  readonly now?: () => number;
  /** Awaited between steps, so that a host with one thread can hear a cancel or draw progress. */
  readonly pause?: () => Promise<void>;
  /** Loads the solver of linear programs, once it is needed. Absent: the quick plans alone. */
  readonly loadSolver?: () => Promise<Highs>;
}
