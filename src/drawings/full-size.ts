/**
 * The board's end with its cove at full size, to be traced: 1 mm of the drawing is 1 mm of wood, so
 * it is never scaled to a width. What is wider than the paper comes in parts that overlap.
 */
import { MM_PER_INCH } from '../core/units/length-unit.ts';
import type { LengthReading } from '../core/units/length.ts';
import { planBoardEnd, type BoardEnd, type BoardEndView } from './board-end.ts';
import { compose, line, LINE } from './compose.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { sayFullSize, titleFullSize } from './full-size-alt.ts';
import { AIR, partsOf, type FullSizePart } from './full-size-parts.ts';
import { textAbout, textWidth } from './lettering.ts';
import { layPart, LETTERS, OVER_OUTLINE } from './part-on-paper.ts';
import { sayLength } from './say.ts';
import { scaleBars } from './scale-bars.ts';

export interface FullSizeView extends BoardEndView, LengthReading {
  /** Of the paper's room, in millimetres; absent: all in one part. */
  readonly widest?: number;
}

/** Long and short dashes: a line through a middle. */
const CENTER = [2.4, 0.8, 0.5, 0.8];
/** From the face down, as shares of the letters. */
const UNDER_FACE = { deepest: 1.1, face: 2.3, bars: 3.4 } as const;

/**
 * Draws the end of the blank at full size, face down, as it is seen from the front of the saw: the
 * end that faces the operator and enters the blade last.
 *
 * @param view Blade, setting and blank in inches, angles in radians; `widest` in millimetres.
 * @returns Drawings in millimetres of paper, true to the wood, from left to right; each with bars of
 *   100 mm and 4 in to check the print by.
 * @throws RangeError for a cove that doesn't fit in the blank, or paper too narrow for the bars (a
 *   bug of the caller's).
 */
export function drawFullSize(view: FullSizeView): Drawing[] {
  const { widest = Infinity } = view;
  const end = planBoardEnd(view);
  return partsOf(end, widest).map((part) => drawPart(end, part, view));
}

function drawPart(end: BoardEnd, part: FullSizePart, reading: LengthReading): Drawing {
  const outline = { around: end.board, width: end.width, height: end.thickness };
  const { width, left, right, place, traced, joins } = layPart(outline, part);
  const shapes: Shape[] = [
    ...drawDeepest(end, place(end.deepest), left, right, reading),
    ...joins,
    ...traced,
    ...nameSides(end, part, width),
    textAbout([width / 2, LETTERS * UNDER_FACE.face], FACE, LETTERS, {
      anchor: 'middle',
      tone: 'ink',
    }),
    ...scaleBars(width / 2, LETTERS * UNDER_FACE.bars),
  ];
  const title = titleFullSize(end, part, reading);
  return compose({ title, alt: sayFullSize(end, part, reading), width }, shapes);
}

const FACE = 'face: rides on the table';

/** From the deepest place down to under the face, where this part shows it. */
function drawDeepest(
  { cut }: BoardEnd,
  [x, y]: Point,
  left: number,
  right: number,
  reading: LengthReading,
): Shape[] {
  if (x < left || x > right) return [];
  const text = `deepest, ${sayLength(cut.depth, reading)}`;
  const half = textWidth(text, LETTERS) / 2;
  const middle = Math.max(left + half, Math.min(x, right - half));
  const low = LETTERS * UNDER_FACE.deepest;
  const end: Point = [x, low - LETTERS * 0.6];
  return [
    line([[x, y], end], 'measure', LINE.thin, CENTER),
    textAbout([middle, low], text, LETTERS, { anchor: 'middle', tone: 'measure' }),
  ];
}

/** Over the board, each on the part that shows its side. */
function nameSides(
  { farSide, hasDeepSide, thickness }: BoardEnd,
  part: FullSizePart,
  width: number,
) {
  const y = -thickness * MM_PER_INCH - LETTERS * OVER_OUTLINE;
  const far = `far rail side${hasDeepSide ? ' (deep side)' : ''}`;
  const [atLeft, atRight] = farSide === 'left' ? [far, NEAR] : [NEAR, far];
  const look = { tone: 'ink' } as const;
  return [
    ...(part.number === 1
      ? [textAbout([AIR, y], atLeft, LETTERS, { ...look, anchor: 'start' })]
      : []),
    ...(part.number === part.count
      ? [textAbout([width - AIR, y], atRight, LETTERS, { ...look, anchor: 'end' })]
      : []),
  ];
}

const NEAR = 'near rail side';
