/** Boards and sticks that a plan opens, row by row of Stock. */
import type { ExactInches } from '../core/units/length.ts';
import type { StockItem } from './job.ts';

/**
 * How many of one row of Stock are pulled from the rack and how many are bought, counted as clear ones: for
 * those of a grade with a yield more are ordered, see `countToBuy`.
 */
export interface StockUse {
  readonly item: StockItem;
  readonly fromRack: number;
  readonly bought: number;
  /** Whole blanks of the opened boards that nothing was cut from: kept, though they earn no credit. */
  readonly unusedBlanks: number;
  /** Of one clear one: what is bought for it, where it has a yield. */
  readonly priceCents: number;
  /** Of one whole stick or board, clear or not. */
  readonly eachCents: number;
  readonly costCents: number;
  /** With what is bought beside them for their yield. */
  readonly boardFeet?: number;
}

/** A blank of a board, in the order in which they lie side by side. */
export interface RippedStrip {
  readonly width: ExactInches;
  /** Whose pieces are cut from it; absent where none are: the whole blank is kept. */
  readonly profile?: string;
}

/** A board that is opened, and what it is ripped into before anything is crosscut. */
export interface RippedBoard {
  readonly item: StockItem;
  /** Which board of its row in Stock, from 1, as its sticks have it. */
  readonly unit: number;
  readonly fromRack: boolean;
  readonly strips: readonly RippedStrip[];
}
