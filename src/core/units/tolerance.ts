/** The only home of tolerances. Each says of what, in which unit, and why. */

/** Residual to which a solved set-up must meet the forward model, width and off-center together, in inches. */
export const SETUP_RESIDUAL_INCHES = 1e-10;

/**
 * Irrational additions to a length (a miter's cotangent) are snapped to this grid before they join
 * exact arithmetic, in inches: far below any tape, far above a double's noise.
 */
export const IRRATIONAL_GRID_INCHES = 2 ** -20;

/** A limit counts as kept when it is missed by less than this, in inches: 1/8 stays 1/8 after arithmetic. */
export const LIMIT_SLACK_INCHES = 1e-9;
