/** The section of a molding whose shape isn't known, as when it is bought: a plain block with its sizes. */
import type { LengthReading } from '../core/units/length.ts';
import { area, compose, LINE } from './compose.ts';
import {
  extension,
  levelMeasure,
  onPaper,
  SHORTEST_WITH_HEADS,
  TAIL,
  uprightMeasure,
} from './dimension.ts';
import type { Drawing, Point } from './drawing.ts';
import {
  LEAST_WIDTH_MM,
  letterSize,
  lineHeight,
  soundWidth,
  textAbout,
  textWidth,
} from './lettering.ts';
import { sayLength } from './say.ts';

export interface PlainSectionView extends LengthReading {
  /** Inches. */
  readonly size: { readonly width: number; readonly thickness: number };
  /** Of the drawing, in millimetres; 65, the least, where absent. */
  readonly width?: number;
}

const MARGIN = 1;
/** The board takes so much of the drawing's width at most in height. */
const TALLEST_SHARE = 0.5;
/** From the board to its measures, and to the ends of the lines that lead there, in millimetres. */
const BESIDE = 1.8;
const PAST = 0.8;
const WORDS = 'shape as bought';

/**
 * Draws a molding's width and thickness as a block to scale, with the words "shape as bought".
 *
 * @returns Shapes in millimetres, with a text alternative that says both numbers.
 * @throws RangeError for sizes that no molding has (a bug of the caller's).
 */
export function drawPlainSection({ size, width: wanted, ...reading }: PlainSectionView): Drawing {
  const width = soundWidth(wanted ?? LEAST_WIDTH_MM);
  if (![size.width, size.thickness].every((inches) => inches > 0 && Number.isFinite(inches))) {
    throw new RangeError(`No section can be drawn of ${size.width} by ${size.thickness}.`);
  }
  const letters = letterSize(width);
  const wide = sayLength(size.width, reading);
  const thick = sayLength(size.thickness, reading);
  const column = BESIDE + 1 + textWidth(thick, letters);
  const room = width - 2 * MARGIN - column;
  const scale = Math.min(room / size.width, (width * TALLEST_SHARE) / size.thickness);
  const [across, high] = [size.width * scale, size.thickness * scale];
  const left = MARGIN + (room - across) / 2;
  const right = left + across;
  const corners: Point[] = [
    [left, 0],
    [right, 0],
    [right, high],
    [left, high],
  ];
  const under = high + 2.2 + letters * 0.75;
  const beside = right + BESIDE;
  // A measure too short for its arrows has them outside.
  const over = high < SHORTEST_WITH_HEADS ? TAIL : 0;
  const words = textAbout([left + across / 2, -over - lineHeight(letters) * 0.75], WORDS, letters, {
    anchor: 'middle',
    tone: 'ink',
  });
  const measures = { from: left, to: right, y: under, text: wide, size: letters };
  const shapes = [
    area(corners, 'wood', { tone: 'ink', width: LINE.strong }),
    words,
    ...[left, right].map((x) => extension([x, high + PAST], [x, under + PAST])),
    ...levelMeasure({
      ...measures,
      room: { left: MARGIN, right: width - MARGIN },
      beside: 'right',
    }),
    ...[0, high].map((y) => extension([right + PAST, y], [beside + PAST, y])),
    ...uprightMeasure(beside, 0, high),
    ...onPaper(
      textAbout([beside + 1, high / 2], thick, letters, { anchor: 'start', tone: 'measure' }),
    ),
  ];
  const title = `Molding ${wide} by ${thick}, seen from its end`;
  const alt = `A plain block in place of the molding, whose shape is as bought: ${wide} wide and ${thick} thick.`;
  return compose({ title, alt, width }, shapes);
}
