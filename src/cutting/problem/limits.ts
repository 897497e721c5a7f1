/** What the stick planner takes on at most, so that every sum stays an exact whole number. */

/** Pieces at once, the parts of spliced pieces counted. */
export const MOST_PLANNED_PIECES = 200_000;

/** The finest unit is 1/FINEST_UNITS_PER_INCH of an inch. */
export const FINEST_UNITS_PER_INCH = 1_000_000;

/** The longest length, in the planner's units: MOST_PLANNED_PIECES of them still sum exactly. */
export const MOST_UNITS = 10_000_000_000;

/** The highest price of one stick or board, in cents: MOST_PLANNED_PIECES of them still sum exactly. */
export const MOST_PRICE_CENTS = 1_000_000_000;

/** Blanks ripped from one board. */
export const MOST_STRIPS = 1_000;

/** Sticks of one kind on the rack, or to be bought; more than can ever be used. */
export const MOST_STICKS = 1_000_000_000;
