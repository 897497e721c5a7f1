/** What stands in a box that is ticked when a sheet is written. */
export const TICK = 'x';

/** Under Done on Pieces: Cutting says that the piece is cut. */
export const CUT_MARK = 'cut';
