/** Letters in drawings: their fonts, their sizes, and the room they are given. */
import type { Point, TextShape } from './drawing.ts';

/** Fonts of near widths, one of which every machine has. */
export const FONT_FAMILIES = ['Segoe UI', 'Helvetica Neue', 'Arial', 'DejaVu Sans', 'sans-serif'];

/** Shares of the em. Widths of letters differ by font: a mean that none of the fonts goes over. */
const LETTER_WIDTH = 0.62;
/** Of capitals and figures, above the base line. */
const CAPITAL_HEIGHT = 0.72;
const LINE_HEIGHT = 1.2;

/** Narrowest drawing: on paper, and 246 CSS pixels on a screen (W3C, CSS Values 4: 96 to the inch). */
export const LEAST_WIDTH_MM = 65;
const WIDEST_MM = 400;

/** Letters of 3 mm are 11.3 CSS pixels; on larger drawings they grow to about 10 points. */
export function letterSize(width: number): number {
  return Math.min(3.5, Math.max(3, width / 32));
}

/** @throws RangeError where no drawing of that width can be lettered. */
export function soundWidth(width: number, least = LEAST_WIDTH_MM): number {
  if (width >= least && width <= WIDEST_MM) return width;
  throw new RangeError(`A drawing is ${least} to ${WIDEST_MM} mm wide, not ${width}.`);
}

/** Room for a text, in millimetres; most texts take less. */
export function textWidth(text: string, size: number): number {
  return Array.from(text).length * size * LETTER_WIDTH;
}

export function lineHeight(size: number): number {
  return size * LINE_HEIGHT;
}

export type TextLook = Omit<TextShape, 'kind' | 'at' | 'text' | 'size'>;

/** A text whose capitals and figures stand midway about a point, level or turned upright. */
export function textAbout(point: Point, text: string, size: number, look: TextLook): TextShape {
  const [x, y] = point;
  const drop = (size * CAPITAL_HEIGHT) / 2;
  const at: Point = look.turn === undefined ? [x, y + drop] : [x + drop, y];
  return { kind: 'text', at, text, size, ...look };
}

/** The point that `textAbout` was given. */
export function middleOf(shape: TextShape): Point {
  const [x, y] = shape.at;
  const drop = (shape.size * CAPITAL_HEIGHT) / 2;
  return shape.turn === undefined ? [x, y - drop] : [x - drop, y];
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The room of a text, level or turned upright (-90°), from the tops of its letters to their tails. */
export function textBox(shape: TextShape): Box {
  const [x, y] = middleOf(shape);
  const width = textWidth(shape.text, shape.size);
  const half = lineHeight(shape.size) / 2;
  const before = { start: 0, middle: width / 2, end: width }[shape.anchor];
  if (shape.turn === undefined) {
    return { left: x - before, right: x - before + width, top: y - half, bottom: y + half };
  }
  // Turned upright a text runs from below to above.
  return { left: x - half, right: x + half, top: y + before - width, bottom: y + before };
}

export function boxesOverlap(one: Box, other: Box): boolean {
  return (
    one.left < other.right &&
    other.left < one.right &&
    one.top < other.bottom &&
    other.top < one.bottom
  );
}

/** Breaks a text between words so that no line is wider than told, in lines of about one length. */
export function breakLines(text: string, size: number, width: number): string[] {
  const lines = fillLines(text, size, width);
  const even = fillLines(text, size, (textWidth(text, size) / lines.length) * 1.15);
  return even.length === lines.length ? even : lines;
}

function fillLines(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = `${last ?? ''} ${word}`;
    if (last !== undefined && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
