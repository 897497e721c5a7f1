/** Where on its wall a run lies: what its joints and its spring-in go by, whether Trim made it or somebody took it over. */
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
