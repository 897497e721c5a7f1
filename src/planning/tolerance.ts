/** What arithmetic may be off in plans; core's own tolerances are in core/units. */
import { IRRATIONAL_GRID_INCHES } from '../core/units/tolerance.ts';

/** Twice the grid of irrational additions, which is what they may be off: 19 mm doesn't become 20. */
export const CUT_LENGTH_SLACK_INCHES = 2 * IRRATIONAL_GRID_INCHES;

/** An amount this little below half a cent, from arithmetic, counts as the half. */
export const HALF_CENT_SLACK_CENTS = 1e-7;

/** What the checks of a plan allow to sums of doubles: far below the finest precision of a shop. */
export const CHECK_SLACK_INCHES = 1e-6;
/** What a length may be off that was rounded up, for each piece: the slack that it was rounded with, and its ends' grid. */
export const CHECK_SLACK_ROUNDED_INCHES = 4 * IRRATIONAL_GRID_INCHES;
export const CHECK_SLACK_BOARD_FEET = 1e-6;
export const CHECK_SLACK_CENTS = 1e-6;
/** Of one, and of each hour or count: far below what any line shows. */
export const CHECK_SLACK_HOURS = 1e-9;
