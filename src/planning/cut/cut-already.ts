/** What is cut of a job already: sticks as an earlier plan had them, by the ticks on its sheets. */
import type { ExactInches } from '../../core/units/length.ts';
import type { Profile, StockItem } from '../job.ts';
import type { Piece, PieceEnd } from '../piece.ts';
import type { RowOfStock } from '../same-row.ts';

/**
 * A stick that is cut, or begun: it stays in every plan that follows. It holds what it was cut from and
 * for, so that it can be told whether the job still asks for it.
 */
export interface CutAlready {
  /** It keeps the number that stands on the sheet and on the wood. */
  readonly id: string;
  readonly profile: string;
  /** Of the molding, see `sizesOfProfile`. */
  readonly sizes: string;
  /** The row of Stock that it is from. */
  readonly row: RowOfStock & Pick<StockItem, 'price' | 'per' | 'have'>;
  /** Which stick or board of that row, from 1. */
  readonly unit: number;
  /** Which blank of its board, from 1; 1 for a stick. */
  readonly strip: number;
  /** How wide the blanks of its board are, in their order; none for a stick. */
  readonly blankWidths: readonly ExactInches[];
  readonly pieces: readonly PieceThen[];
  readonly offcut: ExactInches;
}

/** A piece on such a stick, as it was planned. */
export interface PieceThen {
  readonly id: string;
  readonly length: ExactInches;
  /** Off the stick; else it is still to be cut from it. */
  readonly isCut: boolean;
  /** Of the piece as a whole, see `endsOfPiece`; empty for a set-up spare. */
  readonly ends: string;
  /** Its length as a whole; that of the parts together is longer by their overlaps. */
  readonly whole: ExactInches;
  /** From 1, and how long all parts are, where it comes in several. */
  readonly part?: number;
  readonly parts?: readonly ExactInches[];
}

/** What has to be the same for a cut stick to be of a profile still: how it is made, its cove, its blank. */
export function sizesOfProfile(profile: Profile): string {
  const { make, blankWidth, blankThickness, species } = profile;
  const inches = (length: ExactInches | undefined): string => length?.toFraction() ?? '';
  const blank = [inches(blankWidth), inches(blankThickness)];
  if (make === 'buy') return JSON.stringify([make, ...blank]);
  const { width, depth, offCenter } = profile.cove;
  const flat = inches(profile.nearFlat);
  const name = species.trim().toLowerCase();
  return JSON.stringify([make, ...blank, width, depth, offCenter, flat, name]);
}

/** `inside miter 90, cope 90`: the two ends of a piece, each with its corner in degrees. */
export function endsOfPiece({ left, right }: Pick<Piece, 'left' | 'right'>): string {
  return `${endOfPiece(left)}, ${endOfPiece(right)}`;
}

/** `inside miter 90`. */
export function endOfPiece({ kind, cornerDeg }: PieceEnd): string {
  return `${kind} ${cornerDeg}`;
}

/** The boxes that are ticked on the sheets of a plan. */
export interface Ticks {
  /** Ids of sticks. */
  readonly sticks: ReadonlySet<string>;
  /** Pieces on a stick, see `cutKey`. */
  readonly cuts: ReadonlySet<string>;
  /** Ids of pieces that are done on Pieces. */
  readonly pieces: ReadonlySet<string>;
}

export const NO_TICKS: Ticks = { sticks: new Set(), cuts: new Set(), pieces: new Set() };

/** A piece by its stick and its place on it, from 1. */
export function cutKey(stick: string, place: number): string {
  return JSON.stringify([stick, place]);
}

/** A short text that is the same for the same ticks. */
export function ticksKey({ sticks, cuts, pieces }: Ticks): string {
  return JSON.stringify([sticks, cuts, pieces].map((set) => [...set].sort()));
}

export function hasTicks({ sticks, cuts, pieces }: Ticks): boolean {
  return sticks.size + cuts.size + pieces.size > 0;
}
