/** What a stick's bar is drawn from, and the room that it takes. */

/** Which side runs long at an end that isn't square: the wall's or the outer edge, or the face. */
export type EndShape = 'square' | 'long behind' | 'long in front';

export interface BarPiece {
  /** Room and run, or what else it is for. */
  readonly label: string;
  /** In inches; `said` is the length as it is printed everywhere. */
  readonly length: number;
  readonly said: string;
  readonly left: EndShape;
  readonly right: EndShape;
}

/** Lengths in inches, with the words that say them. */
export interface StickView {
  readonly id: string;
  readonly length: number;
  readonly said: string;
  /** The longest stick among those that share the scale: its bar takes all of the width. */
  readonly longest: number;
  /** Off either end, its cut included. */
  readonly endTrim: number;
  readonly endTrimSaid: string;
  readonly kerf: number;
  readonly kerfSaid: string;
  readonly pieces: readonly BarPiece[];
  readonly offcut: { readonly length: number; readonly said: string; readonly kept: boolean };
  /**
   * Of a board with defects the stick is a clear stretch: it is drawn where it lies on the whole board, from
   * whose marked end, at the left, all this is measured. Absent: the stick is the whole board's length.
   */
  readonly board?: {
    readonly from: number;
    readonly length: number;
    readonly defects: readonly Stretch[];
    /** As words: what stands beside the stick's own length. */
    readonly said: string;
  };
  /** Of the drawing, in millimetres. */
  readonly width: number;
  /** Low, with the pieces' numbers alone, where all else stands right below it. Absent: all that there is room for. */
  readonly isLow?: true;
}

/** Heights of a bar's drawing, in millimetres. */
export const STICK_BAR_MM = 10.4;
export const LOW_BAR_MM = 5;
/** Room for half of an outline. */
export const EDGE = 0.3;

/** A bar's upper and lower edge, and the size of its letters; 3.6 mm are 10 points. */
export interface Bar {
  readonly top: number;
  readonly bottom: number;
  readonly letters: number;
}
export const BAR: Bar = { top: EDGE, bottom: STICK_BAR_MM - EDGE, letters: 2.7 };
export const LOW_BAR: Bar = { top: EDGE, bottom: LOW_BAR_MM - EDGE, letters: 3.6 };

/** From the drawing's left, or from the stick's first end. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}
