/** The only home of the stick planner's tolerances. Each names its unit and says why it is of that size. */

/**
 * How far a row of the linear program, or the use of a column, may be off a whole number. HiGHS keeps
 * its rows to 1e-7, and pieces and sticks come whole.
 */
export const EPSILON_USES = 1e-6;

/** What whole uses may miss of a row: only the rounding of their sum is left, far below the solver's. */
export const EPSILON_WHOLE_USES = 1e-9;

/**
 * By how much a dive must stay below the plan that stands, in cents. Its cost is a sum of whole cents
 * and of the linear program's cost for the rest, and only the latter is rounded.
 */
export const EPSILON_DIVE_CENTS = 1e-6;

/**
 * What the solver's costs and bounds may be off together, in cents. Plans differ by a whole cent at
 * least, so nothing that is cheaper is lost by it.
 */
export const EPSILON_CENTS = 1e-3;

/** A gain below this share of a price is the rounding of duals, in cents per cent. */
export const EPSILON_GAIN_SHARE = 1e-9;

/** What a column must gain to join the program, in cents per cent: well more than rounding, or it comes again. */
export const EPSILON_COLUMN_GAIN_SHARE = 10 * EPSILON_GAIN_SHARE;

/** Duals are scaled down by this share more than was worked out, so that rounding leaves none too high. */
export const EPSILON_SCALE_SHARE = 1e-12;

/**
 * What a double may be off the length that it stands for, in units of 1/203,200 in: a length of the
 * order of a stick is off by 1e-8 of them, and what was calculated by some thousand times that.
 */
export const EPSILON_UNITS = 1e-4;
