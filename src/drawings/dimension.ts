/** Measures in a drawing: a line with arrow heads from end to end, its number in it or beside it. */
import { area, arrowHead, line, LINE } from './compose.ts';
import type { Point, Shape, TextShape, Tone } from './drawing.ts';
import { textAbout, textBox, textWidth } from './lettering.ts';

const HEAD = 1.7;
/** Between a line's end and its number. */
const GAP = 0.7;
/** What a patch behind a text lacks of its room: a share of the width, and millimetres of height. */
const PATCH_LESS = 0.15;
const PATCH_LOWER = 0.3;
/** How far the line goes on past the ends of a measure whose number stands beside it. */
export const TAIL = 3;
/** Shorter measures have their heads outside. */
export const SHORTEST_WITH_HEADS = 2 * HEAD + 0.4;

export interface LevelMeasure {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  /** Room for the number when it must stand beside the measure, and the side to try first. */
  readonly room: { readonly left: number; readonly right: number };
  readonly beside: 'left' | 'right';
}

/** A level measure. The number stands in the line where there is room, else beyond one end. */
export function levelMeasure(measure: LevelMeasure): Shape[] {
  const { y, text, size } = measure;
  const [left, right] = [Math.min(measure.from, measure.to), Math.max(measure.from, measure.to)];
  const width = textWidth(text, size);
  const middle = (left + right) / 2;
  const stretch = (from: number, to: number): Shape => measureLine([from, y], [to, y]);
  const letters = (x: number, anchor: 'start' | 'middle' | 'end'): Shape[] =>
    onPaper(textAbout([x, y], text, size, { anchor, tone: 'measure' }));
  if (fitsInLine(right - left, text, size)) {
    const reach = width / 2 + GAP;
    const broken = [stretch(left, middle - reach), stretch(middle + reach, right)];
    return [...broken, ...heads([left, y], [right, y]), ...letters(middle, 'middle')];
  }
  const isShort = right - left < SHORTEST_WITH_HEADS;
  const end = isShort ? TAIL : 0;
  const fits = roomBeside(measure);
  const other = measure.beside === 'left' ? 'right' : 'left';
  const side = fits[measure.beside] || !fits[other] ? measure.beside : other;
  const number =
    side === 'left'
      ? letters(Math.max(left - end - GAP, measure.room.left + width), 'end')
      : letters(Math.min(right + end + GAP, measure.room.right - width), 'start');
  return [...measureWithHeads([left, y], [right, y], isShort), ...number];
}

/** A text on a patch of what lies behind it, so that no line runs through it. */
export function onPaper(text: TextShape, behind: Tone = 'paper'): Shape[] {
  const { left, top, right, bottom } = textBox(text);
  // Most texts take less room than they are given.
  const less = text.turn === undefined ? PATCH_LESS * (right - left) : 0;
  const from = left + { start: 0, middle: less / 2, end: less }[text.anchor];
  const to = from + (right - left) - less;
  const [over, under] = [top + PATCH_LOWER, bottom - PATCH_LOWER];
  const corners: Point[] = [
    [from, over],
    [to, over],
    [to, under],
    [from, under],
  ];
  return [area(corners, behind), text];
}

/** At which ends of a measure there is room for its number. */
function roomBeside({
  from,
  to,
  text,
  size,
  room,
}: LevelMeasure): Record<'left' | 'right', boolean> {
  const [left, right] = [Math.min(from, to), Math.max(from, to)];
  const end = (right - left < SHORTEST_WITH_HEADS ? TAIL : 0) + GAP + textWidth(text, size);
  return { left: left - end >= room.left, right: right + end <= room.right };
}

/** Whether a number stands in the line of a measure of that length. */
export function fitsInLine(length: number, text: string, size: number): boolean {
  return length >= textWidth(text, size) + 2 * GAP + 2 * HEAD + 1;
}

/** An upright measure without its number: heads within, or pointing in from outside where it is short. */
export function uprightMeasure(x: number, top: number, bottom: number): Shape[] {
  return measureWithHeads([x, top], [x, bottom], bottom - top < SHORTEST_WITH_HEADS);
}

/** A thin line from what is measured to its measure. */
export function extension(from: Point, to: Point): Shape {
  return line([from, to], 'measure', LINE.thin);
}

function measureWithHeads(from: Point, to: Point, isShort: boolean): Shape[] {
  if (!isShort) return [measureLine(from, to), ...heads(from, to)];
  const level = from[1] === to[1];
  const [x, y] = level ? [TAIL, 0] : [0, TAIL];
  const inward = level ? 0 : Math.PI / 2;
  return [
    measureLine([from[0] - x, from[1] - y], from),
    measureLine(from, to),
    measureLine(to, [to[0] + x, to[1] + y]),
    arrowHead(from, inward, 'measure', HEAD),
    arrowHead(to, inward + Math.PI, 'measure', HEAD),
  ];
}

function heads(from: Point, to: Point): Shape[] {
  const way = Math.atan2(to[1] - from[1], to[0] - from[0]);
  return [arrowHead(from, way + Math.PI, 'measure', HEAD), arrowHead(to, way, 'measure', HEAD)];
}

function measureLine(from: Point, to: Point): Shape {
  return line([from, to], 'measure', LINE.usual);
}
