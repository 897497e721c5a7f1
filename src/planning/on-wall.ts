/** Where on its wall a run is, and what it comes from. */
import type { Where } from '../core/faults/fault.ts';
import type { Turn } from '../core/room/wall.ts';
import type { ExactInches } from '../core/units/length.ts';

/** Where on the wall a molding is: what an opening cuts away goes by it. */
export const PLACES = ['floor', 'ceiling', 'height', 'opening'] as const;

/** Where on the wall a molding is. */
export interface WallPlace {
  readonly at: (typeof PLACES)[number];
  /** Whether Profiles says it; else it is the usual place of such a molding. */
  readonly isSaid: boolean;
  /** From the floor to its lower edge; absent where it isn't known. */
  readonly height?: ExactInches;
  /** The cell that says it, or would. */
  readonly cell: Where;
}

/** What a run along a wall of Walls comes from, and when it goes up. */
export interface MadeRun {
  /** The wall's length. */
  readonly wall: Where;
  /** The profile in the row of Trim. */
  readonly trim: Where;
  /** Where on the wall it is: goes before what Profiles says. */
  readonly place: WallPlace;
  /** Somebody took it over: a row of Runs stands in its place, and says its length, its ends and all else. */
  readonly isTakenOver?: true;
  /** Absent where rows of Runs stand in place of another number of made ones: whose turn is whose isn't known. */
  readonly order?: FittingOrder;
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

/** What the joints and the spring-in of a run go by, whether Trim made it or somebody took it over. */
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
