/**
 * What arithmetic may be off, each with its unit and why. A tolerance that one layer alone needs
 * stands in that layer's own tolerance.ts. What wood, saws and eyes allow is no tolerance: it
 * stands with what it limits.
 */

/** Residual to which a solved set-up must meet the forward model, width and off-center together. */
export const SETUP_RESIDUAL_INCHES = 1e-10;

/**
 * Irrational additions to a length (a miter's cotangent) are snapped to this grid before they join
 * exact arithmetic: far below any tape, far above a double's noise.
 */
export const IRRATIONAL_GRID_INCHES = 2 ** -20;

/** A limit counts as kept when it is missed by less than this: 1/8 stays 1/8 after arithmetic. */
export const LIMIT_SLACK_INCHES = 1e-9;

/** A tilt that is solved this little past the saw's stop is at the stop: scales are read no finer. */
export const STOP_SLACK_RADIANS = 1e-7;

/** Tilts closer than this to the one that brings the blade's middle up to the table aren't tried. */
export const TILT_MARGIN_RADIANS = 1e-7;

/** No tilt is tried closer than this to a blade lying flat, where its slopes grow past all bounds. */
export const FLAT_BLADE_MARGIN_RADIANS = 1e-3;

/** An approach this close to straight across stands for straight across, where the width has its end. */
export const STRAIGHT_ACROSS_MARGIN_RADIANS = 1e-9;

/** The step over which a width is seen to grow: so wide that its change is none of rounding. */
export const GROWTH_STEP_RADIANS = 1e-6;

/** What a count of passes may be over a whole number and still be that number: a share of one pass. */
export const PASS_COUNT_SLACK = 1e-9;
