/** Where on its wall a run lies, and when it goes up, whether Trim made it or somebody took it over: joints and spring-in go by it. */
import type { Turn } from '../core/room/wall.ts';
import type { ExactInches } from '../core/units/length.ts';

export interface OnWall {
  /** As Trim says it. */
  readonly at: 'floor' | 'ceiling' | 'height';
  /** At the wall's own ends, whatever is left of it between openings. */
  readonly leftTurn: Turn;
  readonly rightTurn: Turn;
  /**
   * From the wall's left corner, as measured, and whether that is all of the wall; absent where openings
   * are cut out by their total alone.
   */
  readonly lies?: {
    readonly from: ExactInches;
    readonly to: ExactInches;
    readonly isWhole: boolean;
  };
  /**
   * From the wall's left corner, along the wall, to where the middle of the room's first door is as seen
   * square to the wall; below 0 and past the wall's length too; inches. Absent: it isn't known.
   */
  readonly door?: number;
}

/**
 * The how-many-eth its left and its right end go up of the row's pieces in the room, from 1. Those that
 * are joined at outside corners before they go up have the same number. Both are one where no opening parts
 * the run.
 */
export interface FittingOrder {
  readonly left: number;
  readonly right: number;
  /** Of the parts between two openings, which reach no corner, in order to the right. */
  readonly between?: readonly number[];
}
