/** What arithmetic may be off in the sheets, each with its unit and why; core's own are in core/units. */

/** Degrees, inches or millimetres that agree to this are the planned ones: formulas solve as the core does. */
export const SAME_AS_PLANNED_OF_A_UNIT = 1e-6;

/** Width and off-center together: what a setting that was found by formula may miss, in the cells' unit. */
export const MOST_MISSED_OF_A_UNIT = 1e-9;

/** A limit counts as kept when it is missed by less, in the cells' unit; core has the same in inches. */
export const LIMIT_SLACK_OF_A_UNIT = 1e-9;

/** A tilt this little past the stop is at the stop: core's slack, rounded down in degrees. */
export const STOP_SLACK_DEGREES = 5.7e-6;

/** Sums that agree between sheets: finer than any figure shown, coarser than another order of adding. */
export const AGREES_WITHIN_OF_A_FIGURE = '0.0005';

/** Decimals to which a difference of lengths on two sheets is said: half of the last is AGREES_WITHIN. */
export const OFF_DECIMALS = 3;

/** Of a sum that grows large: what adding in another order may change it by, as a share. */
export const ADDING_NOISE_SHARE = 1e-12;

/** A gap this little over a tenth of a percent, from arithmetic, is that tenth. */
export const GAP_SLACK_TENTHS = 1e-9;

/** Passes apart by a 64th of an inch are still so after arithmetic. */
export const PASS_NOISE_INCHES = 1e-9;
