/** The rows of Walls and Trim as they were read, and what they say of the runs that come from them. */
import type { Where } from '../core/faults/fault.ts';
import type { Turn } from '../core/room/wall.ts';
import type { Degrees } from '../core/units/angle.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { FittingOrder } from './on-wall.ts';

/** Where on the wall a molding is: what an opening cuts away goes by it. */
export const PLACES = ['floor', 'ceiling', 'height', 'opening'] as const;

/** Cells of a row by the headings that they stand under: those that must change where a fault says so. */
export type CellsOf<Heading extends string> = Readonly<Record<Heading, Where>>;

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

/** Where trim round a room is; what stands round an opening comes from Openings. */
export const TRIM_PLACES = ['floor', 'ceiling', 'height'] as const;

export const INSIDE_CORNERS = ['cope', 'miter'] as const;

/** A wall of a room, in order as one stands in the room and goes to the right. */
export interface WallRow {
  readonly room: string;
  readonly wall: string;
  readonly length: ExactInches;
  /** Between this wall and the next, as a gauge reads it; not looked at where turn is `end`. */
  readonly corner: Degrees;
  readonly turn: Turn;
  /** From floor to ceiling; absent where it isn't known. */
  readonly height?: ExactInches;
  readonly note: string;
  /** Its length. */
  readonly where: Where;
  readonly cells: CellsOf<WallCell>;
}

export const WALL_CELLS = ['wall', 'corner', 'turn'] as const;
export type WallCell = (typeof WALL_CELLS)[number];

/** What runs along walls. */
export interface TrimRow {
  /** Absent: in every room of Walls. */
  readonly room?: string;
  readonly profile: string;
  readonly at: (typeof TRIM_PLACES)[number];
  /** From the floor to its lower edge, of what is at a height. */
  readonly height?: ExactInches;
  readonly walls: NamedWalls;
  readonly insideCorners: (typeof INSIDE_CORNERS)[number];
  /** The wall whose piece goes up first; absent: the one across from the door. */
  readonly starts?: string;
  readonly note: string;
  /** Its profile. */
  readonly where: Where;
  readonly cells: CellsOf<TrimCell>;
}

export const TRIM_CELLS = ['room', 'profile', 'where', 'height', 'walls', 'starts'] as const;
export type TrimCell = (typeof TRIM_CELLS)[number];

/** Which walls of a room are meant: these, or all but these; `text` is the cell as it stands. */
export interface NamedWalls {
  readonly are: 'these' | 'all but these';
  readonly names: readonly string[];
  readonly text: string;
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
