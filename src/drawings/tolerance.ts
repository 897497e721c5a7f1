/** What arithmetic may be off in drawings; core's own tolerances are in core/units. */

/** A solved cove meets its sizes to less than this: 3 is 3, not 2.9999999996, and none is none. */
export const SOLVED_NOISE_INCHES = 1e-6;

/** What the pieces of a stick, summed up as doubles, may be off: a share of its length. */
export const SUM_NOISE_SHARE = 1e-9;
