/**
 * A drawing as plain data: shapes in millimetres on paper, x to the right and y down, drawn in
 * their order. It knows no page, no screen and no host: to-svg.ts and paint.ts show it.
 */
export interface Drawing {
  readonly title: string;
  /** The text alternative: what it shows, with the numbers, for a person who can't see it. */
  readonly alt: string;
  /** Millimetres on paper; shown larger or smaller on a screen. */
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** As a picture for paper: DOTS_PER_INCH, or fewer where there are hundreds of its kind. */
  readonly dotsPerInch?: number;
}

/** Of a picture for paper, where the drawing doesn't say. */
export const DOTS_PER_INCH = 300;

export type Point = readonly [x: number, y: number];

export type Shape = PathShape | CircleShape | TextShape;

export interface PathShape {
  readonly kind: 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly stroke?: Stroke;
  readonly fill?: Tone;
}

export interface CircleShape {
  readonly kind: 'circle';
  readonly center: Point;
  readonly radius: number;
  readonly stroke?: Stroke;
  readonly fill?: Tone;
}

export interface TextShape {
  readonly kind: 'text';
  /** On the text's base line. */
  readonly at: Point;
  readonly text: string;
  /** Height of the letters' em, in millimetres. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly tone: Tone;
  readonly bold?: boolean;
  /** Clockwise about `at`, in degrees, from level. */
  readonly turn?: number;
}

export interface Stroke {
  readonly tone: Tone;
  readonly width: number;
  /** Lengths of dash and gap, by turns; unbroken where absent. */
  readonly dash?: readonly number[];
}

/** What a line or an area stands for; a palette (palette.ts) gives each its color. */
export type Tone =
  'ink' | 'faint' | 'paper' | 'wood' | 'removed' | 'metal' | 'rail' | 'measure' | 'feed';
