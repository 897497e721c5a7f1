/** A piece to be cut, as it goes on the sheets and into the plan. */
import type { Where } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { EndKind } from './job.ts';
import type { MadeRun } from './room-rows.ts';
import type { OnWall } from './on-wall.ts';

/** The point that the cut length is measured to at one end. */
export type MeasurePoint =
  | 'square end'
  | 'long point at the wall'
  | 'long point at the face'
  | 'long point at the outer edge'
  | 'tip of the cope at the wall'
  | 'long point of the return miter';

export interface PieceEnd {
  readonly kind: EndKind;
  readonly cornerDeg: number;
  readonly point: MeasurePoint;
  /** What this end added to the length as measured, the shop's end allowance included; inches. */
  readonly added: ExactInches;
}

export interface Piece {
  /** From room, run and number: a change in one room relabels nothing elsewhere. */
  readonly id: string;
  /** Short, not twice in a job, see markPieces: `R1-12`. */
  readonly mark: string;
  readonly room: string;
  readonly run: string;
  readonly number: number;
  readonly profile: string;
  /** Rounded up to the shop's precision: what is printed is what is planned. */
  readonly cutLength: ExactInches;
  readonly left: PieceEnd;
  readonly right: PieceEnd;
  readonly kind: 'run' | 'return';
  readonly onePiece: boolean;
  readonly match: string;
  /** Done pieces are listed but not planned again. */
  readonly done: boolean;
  readonly note: string;
  readonly where: Where;
  /** What the cut length has on top of its ends, to be sprung in between two walls; absent: nothing. */
  readonly sprungIn?: ExactInches;
  /** As its run has it. */
  readonly made?: MadeRun;
  readonly onWall?: OnWall;
}
