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
import { labelOffcut, labelPiece } from './stick-bar-labels.ts';
import {
  BAR,
  EDGE,
  STICK_BAR_MM,
  type BarPiece,
  type EndShape,
  type StickView,
  type Stretch,
} from './stick-view.ts';

/** How far an end that isn't square slants, at most, and as a share of its piece. */
const SLANT = { most: 2, share: 0.2 } as const;
const BAR_HIGH = BAR.bottom - BAR.top;
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
  const { pieces, offcut, width, kerf } = view;
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
    ...(view.board === undefined ? [] : drawBoard(view.board, onBoard)),
    ...trims.flatMap((trim) => removed(stretch(trim), HATCH_MM)),
    ...lengths.flatMap((at, index) => drawPiece(view, index, stretch(at))),
    ...(rest.to > rest.from ? drawOffcut(offcut, stretch(rest)) : []),
    ...(kerf > 0 ? cuts.map((cut) => block(stretch(cut), 'ink', LINE.thin)) : []),
    outline(stretch({ from: 0, to: view.length })),
    ...lengths.flatMap((at, index) => {
      const piece = pieces[index];
      if (piece === undefined) return [];
      return labelPiece(index + 1, piece, withoutSlants(piece, stretch(at)));
    }),
  ];
  const look = { title: titleStick(view), alt: sayStick(view), width, height: STICK_BAR_MM };
  return { ...look, shapes, dotsPerInch: BAR_DOTS_PER_INCH };
}

/** The whole board under its clear stretch: an outline, each defect hatched and crossed. */
function drawBoard(
  { length, defects }: NonNullable<StickView['board']>,
  onBoard: (stretch: Stretch) => Stretch,
): Shape[] {
  return [
    ...defects.flatMap((defect): Shape[] => {
      const { from, to } = onBoard(defect);
      const [down, up]: Point[][] = [
        [
          [from, BAR.top],
          [to, BAR.bottom],
        ],
        [
          [from, BAR.bottom],
          [to, BAR.top],
        ],
      ];
      const crossed = [down, up].map((points) => line(points ?? [], 'ink', LINE.thin));
      return [...removed({ from, to }, HATCH_MM), ...crossed];
    }),
    outline(onBoard({ from: 0, to: length })),
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

function drawPiece({ pieces }: StickView, index: number, at: Stretch): Shape[] {
  const piece = pieces[index];
  if (piece === undefined) return [];
  const slant = slantOf(at);
  const ends = [...slanted(piece.left, at.from, slant), ...slanted(piece.right, at.to, -slant)].map(
    (points) => line(points, 'ink', LINE.usual),
  );
  return [block(at, 'wood'), ...ends];
}

function drawOffcut(offcut: StickView['offcut'], at: Stretch): Shape[] {
  const label = labelOffcut(offcut, at);
  if (offcut.kept) return [block(at, 'rail'), ...label];
  return [...removed(at, label.length === 0 ? HATCH_MM : WIDE_HATCH_MM), ...label];
}

function slantOf({ from, to }: Stretch): number {
  return Math.min(SLANT.most, (to - from) * SLANT.share);
}

/** From the long point inward to the other side. */
function slanted(end: EndShape, at: number, inward: number): Point[][] {
  if (end === 'square') return [];
  const [long, short] = end === 'long behind' ? [BAR.top, BAR.bottom] : [BAR.bottom, BAR.top];
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
function removed(at: Stretch, apart: number): Shape[] {
  const lines: Shape[] = [];
  for (let x = at.from - BAR_HIGH + apart / 2; x < at.to; x += apart) {
    const whole: Point[] = [
      [x, BAR.bottom],
      [x + BAR_HIGH, BAR.top],
    ];
    for (const points of withinStrip(whole, at.from, at.to)) {
      lines.push(line(points, 'faint', LINE.thin));
    }
  }
  return [block(at, 'removed'), ...lines];
}

/** The bar's height of a stretch; a line as well where it could be finer than a hair. */
function block({ from, to }: Stretch, fill: Tone, hair?: number): PathShape {
  const corners: Point[] = [
    [from, BAR.top],
    [to, BAR.top],
    [to, BAR.bottom],
    [from, BAR.bottom],
  ];
  return area(corners, fill, hair === undefined ? undefined : { tone: fill, width: hair });
}

function outline({ from, to }: Stretch): PathShape {
  const points: Point[] = [
    [from, BAR.top],
    [to, BAR.top],
    [to, BAR.bottom],
    [from, BAR.bottom],
  ];
  const stroke = { tone: 'ink', width: LINE.usual } as const;
  return { kind: 'path', points, closed: true, stroke };
}
