/**
 * One stick as a bar to scale, seen from above with its first end at the left: what is trimmed off,
 * the pieces in the order they are cut, each cut, what is left over.
 */
import { MM_PER_INCH } from '../core/units/length-unit.ts';
import { area, line, LINE } from './compose.ts';
import type { Drawing, PathShape, Point, Shape, Tone } from './drawing.ts';
import { withinStrip } from './strip.ts';
import { SUM_NOISE_SHARE } from './tolerance.ts';
import { sayStick, titleStick } from './stick-bar-alt.ts';
import { labelOffcut, labelPiece, numberAlone } from './stick-bar-labels.ts';
import {
  BAR,
  EDGE,
  LOW_BAR,
  LOW_BAR_MM,
  STICK_BAR_MM,
  type Bar,
  type BarPiece,
  type EndShape,
  type StickView,
  type Stretch,
} from './stick-view.ts';

/** How far an end that isn't square slants, at most, and as a share of its piece. */
const SLANT = { most: 2, share: 0.2 } as const;
/**
 * Level and upright edges, and letters of 2.7 mm: a job has hundreds of bars, and their pictures take
 * half of the time that its workbook is written in.
 */
const BAR_DOTS_PER_INCH = 200;
/** Whole pixels: a row of them is then the one above it, moved, and packs well. */
const HATCH_MM = (9 / BAR_DOTS_PER_INCH) * MM_PER_INCH;
/** Lines over what is no piece stand less close where letters stand between them. */
const WIDE_HATCH_MM = (19 / BAR_DOTS_PER_INCH) * MM_PER_INCH;

/**
 * Draws a stick as a bar.
 *
 * @param view Lengths in inches; the drawing's width in millimetres.
 * @returns Shapes in millimetres, with a text alternative that says every number and piece.
 * @throws RangeError where the pieces do not fit in the stick, or the stick in the width (a bug of
 *   the caller's).
 */
export function drawStick(view: StickView): Drawing {
  const { pieces, offcut, width, kerf, isLow = false } = view;
  const bar = isLow ? LOW_BAR : BAR;
  const scale = (width - 2 * EDGE) / view.longest;
  const { trims, lengths, cuts, rest } = layOut(view);
  const before = view.board?.from ?? 0;
  const onBoard = ({ from, to }: Stretch): Stretch => ({
    from: EDGE + from * scale,
    to: EDGE + to * scale,
  });
  const stretch = ({ from, to }: Stretch): Stretch =>
    onBoard({ from: before + from, to: before + to });
  const shapes: Shape[] = [
    ...(view.board === undefined ? [] : drawBoard(view.board, bar, onBoard)),
    ...trims.flatMap((trim) => removed(stretch(trim), bar, HATCH_MM)),
    ...lengths.flatMap((at, index) => drawPiece(view, bar, index, stretch(at))),
    ...(rest.to > rest.from ? drawOffcut(offcut, bar, stretch(rest), isLow) : []),
    ...(kerf > 0 ? cuts.map((cut) => block(stretch(cut), bar, 'ink', LINE.thin)) : []),
    outline(stretch({ from: 0, to: view.length }), bar),
    ...lengths.flatMap((at, index) => {
      const piece = pieces[index];
      if (piece === undefined) return [];
      const clear = withoutSlants(piece, stretch(at));
      return isLow
        ? numberAlone(String(index + 1), bar, clear)
        : labelPiece(index + 1, piece, bar, clear);
    }),
  ];
  const height = isLow ? LOW_BAR_MM : STICK_BAR_MM;
  const look = { title: titleStick(view), alt: sayStick(view), width, height };
  return { ...look, shapes, dotsPerInch: BAR_DOTS_PER_INCH };
}

/** The whole board under its clear stretch: an outline, each defect hatched and crossed. */
function drawBoard(
  { length, defects }: NonNullable<StickView['board']>,
  bar: Bar,
  onBoard: (stretch: Stretch) => Stretch,
): Shape[] {
  return [
    ...defects.flatMap((defect): Shape[] => {
      const { from, to } = onBoard(defect);
      const [down, up]: Point[][] = [
        [
          [from, bar.top],
          [to, bar.bottom],
        ],
        [
          [from, bar.bottom],
          [to, bar.top],
        ],
      ];
      const crossed = [down, up].map((points) => line(points ?? [], 'ink', LINE.thin));
      return [...removed({ from, to }, bar, HATCH_MM), ...crossed];
    }),
    outline(onBoard({ from: 0, to: length }), bar),
  ];
}

interface LaidOut {
  readonly trims: readonly Stretch[];
  readonly lengths: readonly Stretch[];
  readonly cuts: readonly Stretch[];
  readonly rest: Stretch;
}

/** Everything in inches from the stick's first end; a cut stands after every piece. */
function layOut({ length, endTrim, kerf, pieces, offcut, longest, board }: StickView): LaidOut {
  const end = length - endTrim;
  const lengths: Stretch[] = [];
  const cuts: Stretch[] = [];
  let at = endTrim;
  for (const piece of pieces) {
    lengths.push({ from: at, to: at + piece.length });
    at += piece.length;
    // The last cut may have less than a kerf of wood left to go through.
    const cut = Math.min(kerf, Math.max(0, end - at));
    if (cut > 0) cuts.push({ from: at, to: at + cut });
    at += cut;
  }
  const isSound =
    (board?.length ?? length) <= longest * (1 + SUM_NOISE_SHARE) &&
    Math.abs(at + offcut.length - end) <= SUM_NOISE_SHARE * length;
  if (!isSound) throw new RangeError(`The pieces of a stick come to ${at}, not to its ${end}.`);
  const trims = endTrim === 0 ? [] : [stretchOf(0, endTrim), stretchOf(end, length)];
  return { trims, lengths, cuts, rest: stretchOf(end - offcut.length, end) };
}

function stretchOf(from: number, to: number): Stretch {
  return { from, to };
}

function drawPiece({ pieces }: StickView, bar: Bar, index: number, at: Stretch): Shape[] {
  const piece = pieces[index];
  if (piece === undefined) return [];
  const slant = slantOf(at);
  const ends = [
    ...slanted(piece.left, bar, at.from, slant),
    ...slanted(piece.right, bar, at.to, -slant),
  ].map((points) => line(points, 'ink', LINE.usual));
  return [block(at, bar, 'wood'), ...ends];
}

function drawOffcut(offcut: StickView['offcut'], bar: Bar, at: Stretch, isLow: boolean): Shape[] {
  const label = isLow ? [] : labelOffcut(offcut, bar, at);
  if (offcut.kept) return [block(at, bar, 'rail'), ...label];
  return [...removed(at, bar, label.length === 0 ? HATCH_MM : WIDE_HATCH_MM), ...label];
}

function slantOf({ from, to }: Stretch): number {
  return Math.min(SLANT.most, (to - from) * SLANT.share);
}

/** From the long point inward to the other side. */
function slanted(end: EndShape, bar: Bar, at: number, inward: number): Point[][] {
  if (end === 'square') return [];
  const [long, short] = end === 'long behind' ? [bar.top, bar.bottom] : [bar.bottom, bar.top];
  return [
    [
      [at, long],
      [at + inward, short],
    ],
  ];
}

function withoutSlants(piece: BarPiece, at: Stretch): Stretch {
  const slant = slantOf(at);
  return {
    from: at.from + (piece.left === 'square' ? 0 : slant),
    to: at.to - (piece.right === 'square' ? 0 : slant),
  };
}

/** What is no piece and isn't kept: pale, with lines over it. */
function removed(at: Stretch, bar: Bar, apart: number): Shape[] {
  const lines: Shape[] = [];
  const high = bar.bottom - bar.top;
  for (let x = at.from - high + apart / 2; x < at.to; x += apart) {
    const whole: Point[] = [
      [x, bar.bottom],
      [x + high, bar.top],
    ];
    for (const points of withinStrip(whole, at.from, at.to)) {
      lines.push(line(points, 'faint', LINE.thin));
    }
  }
  return [block(at, bar, 'removed'), ...lines];
}

/** The bar's height of a stretch; a line as well where it could be finer than a hair. */
function block({ from, to }: Stretch, bar: Bar, fill: Tone, hair?: number): PathShape {
  const corners: Point[] = [
    [from, bar.top],
    [to, bar.top],
    [to, bar.bottom],
    [from, bar.bottom],
  ];
  return area(corners, fill, hair === undefined ? undefined : { tone: fill, width: hair });
}

function outline({ from, to }: Stretch, bar: Bar): PathShape {
  const points: Point[] = [
    [from, bar.top],
    [to, bar.top],
    [to, bar.bottom],
    [from, bar.bottom],
  ];
  const stroke = { tone: 'ink', width: LINE.usual } as const;
  return { kind: 'path', points, closed: true, stroke };
}
