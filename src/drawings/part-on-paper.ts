/** One part of an outline at full size where it lies on its paper: its traced lines and its joining lines. */
import { MM_PER_INCH } from '../core/units/length-unit.ts';
import { line, LINE } from './compose.ts';
import type { Point, Shape } from './drawing.ts';
import { AIR, LEAST_FULL_SIZE_MM, type FullSizePart } from './full-size-parts.ts';
import { textAbout, textWidth } from './lettering.ts';
import { withinStrip } from './strip.ts';

/** An outline in inches: x to the right from its left side, y up from its lowest place. */
export interface Outline {
  readonly around: readonly Point[];
  readonly width: number;
  readonly height: number;
}

/** In millimetres of paper; the outline's lowest place is at 0, and what is over it below 0. */
export interface PartOnPaper {
  readonly width: number;
  /** Of the stretch that is shown. */
  readonly left: number;
  readonly right: number;
  /** Of a point of the outline. */
  readonly place: (point: Point) => Point;
  /** The lines that a pencil follows. */
  readonly traced: readonly Shape[];
  /** Where it is laid on its neighbors. */
  readonly joins: readonly Shape[];
}

const TRACED = 0.2;
export const LETTERS = 3.2;
/** Letters over the outline, as a share of their size. */
export const OVER_OUTLINE = 1.3;
const JOIN = [1.2, 1.2];
/** How far a joining line stands out over and under the outline. */
const JOIN_OUT = 1.5;

export function layPart({ around, height }: Outline, part: FullSizePart): PartOnPaper {
  const shown = part.to - part.from;
  const width = Math.max(shown + 2 * AIR, LEAST_FULL_SIZE_MM);
  const left = (width - shown) / 2;
  const right = left + shown;
  const place = ([x, y]: Point): Point => [left + x * MM_PER_INCH - part.from, -y * MM_PER_INCH];
  const placed = around.map(place);
  const closed = [...placed, ...placed.slice(0, 1)];
  const top = -height * MM_PER_INCH;
  return {
    width,
    left,
    right,
    place,
    traced: withinStrip(closed, left, right).map((points) => line(points, 'ink', TRACED)),
    joins: part.joins.flatMap(({ at, name }) => drawJoin(top, left + at - part.from, name, width)),
  };
}

function drawJoin(top: number, x: number, name: string, width: number): Shape[] {
  const half = textWidth(name, LETTERS) / 2;
  const middle = Math.max(half, Math.min(x, width - half));
  const ends: Point[] = [
    [x, top - JOIN_OUT],
    [x, JOIN_OUT],
  ];
  const at: Point = [middle, top - LETTERS * OVER_OUTLINE];
  return [
    line(ends, 'feed', LINE.usual, JOIN),
    textAbout(at, name, LETTERS, { anchor: 'middle', tone: 'feed' }),
  ];
}
