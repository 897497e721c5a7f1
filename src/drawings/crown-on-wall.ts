/** The section of a crown as it stands between wall and ceiling, the wall at the left. */
import type { LengthReading } from '../core/units/length.ts';
import { QUARTER_TURN, type Radians, radians } from '../core/units/angle.ts';
import { area, compose, line, LINE } from './compose.ts';
import { extension, levelMeasure, onPaper, uprightMeasure } from './dimension.ts';
import type { Drawing, Point } from './drawing.ts';
import {
  LEAST_WIDTH_MM,
  letterSize,
  lineHeight,
  soundWidth,
  textAbout,
  textWidth,
} from './lettering.ts';
import { planRaked, type RakedView } from './raked-section.ts';
import { sayAngle, sayLength } from './say.ts';

export interface CrownOnWallView
  extends LengthReading, Pick<RakedView, 'blade' | 'setting' | 'blank' | 'lower'> {
  /** From the wall, above 0 and below a right angle. */
  readonly spring: Radians;
  /** Whether its sides differ, and either may be the lower one. */
  readonly mayTurn?: boolean;
  /** Of the drawing, in millimetres; 65, the least, where absent. */
  readonly width?: number;
}

const MARGIN = 1;
/** The section takes so much of the drawing's width at most in height. */
const TALLEST_SHARE = 0.6;
/** From the section to its measures, and to the ends of the lines that lead there, in millimetres. */
const BESIDE = 3;
const PAST = 0.8;
/** Wall and ceiling go on so far beyond it, in millimetres. */
const BEYOND = 4;
const TURNED = 'either edge may go up';

/**
 * Draws the crown to scale at its spring, with how far it comes down the wall and out along the ceiling.
 *
 * @returns Shapes in millimetres, with a text alternative that says every number.
 * @throws RangeError for a spring at which nothing stands (a bug of the caller's).
 */
export function drawCrownOnWall({
  width: wanted,
  mayTurn = false,
  ...view
}: CrownOnWallView): Drawing {
  const { blank, spring } = view;
  if (!(spring > 0 && spring < QUARTER_TURN)) {
    throw new RangeError(`No crown stands at ${spring} radians from the wall.`);
  }
  const width = soundWidth(wanted ?? LEAST_WIDTH_MM);
  const section = planRaked({ ...view, slope: radians(0) });
  const letters = letterSize(width);
  const [out, down] = [sayLength(section.width, view), sayLength(section.height, view)];
  const room = width - 2 * MARGIN - BESIDE - 1 - textWidth(down, letters);
  const scale = Math.min(room / section.width, (width * TALLEST_SHARE) / section.height);
  const [across, high] = [section.width * scale, section.height * scale];
  const left = MARGIN + (room - across) / 2;
  const right = left + across;
  const under = high + BEYOND + 2.2 + letters * 0.75;
  const beside = right + BESIDE;
  const angle = sayAngle(spring, view.decimalSign);
  const face = sayLength(blank.width, view);
  const words = [`face ${face}, ${angle} from the wall`, ...(mayTurn ? [TURNED] : [])];
  const place = ([x, y]: Point): Point => [left + x * scale, high - y * scale];
  const shapes = [
    area(section.around.map(place), 'wood', { tone: 'ink', width: LINE.strong }),
    line(
      [
        [left, high + BEYOND],
        [left, 0],
        [Math.min(right + BEYOND, width - MARGIN), 0],
      ],
      'ink',
      LINE.usual,
    ),
    ...words.map((text, at) => {
      const y = -lineHeight(letters) * (words.length - at);
      return textAbout([width / 2, y], text, letters, { anchor: 'middle', tone: 'ink' });
    }),
    extension([left, high + BEYOND + PAST], [left, under + PAST]),
    extension([right, PAST], [right, under + PAST]),
    ...levelMeasure({
      ...{ from: left, to: right, y: under, text: out, size: letters },
      room: { left: MARGIN, right: width - MARGIN },
      beside: 'right',
    }),
    extension([left + PAST, high], [beside + PAST, high]),
    ...uprightMeasure(beside, 0, high),
    ...onPaper(
      textAbout([beside + 1, high / 2], down, letters, { anchor: 'start', tone: 'measure' }),
    ),
  ];
  const title = `Crown ${down} down the wall and ${out} out, seen from its end`;
  const alt = `Section of the molding as it stands, the wall at the left and the ceiling above. Its face is ${face} wide and leans ${angle} from the wall: it comes ${down} down the wall and ${out} out along the ceiling.${mayTurn ? ` Its sides differ: ${TURNED}.` : ''}`;
  return compose({ title, alt, width }, shapes);
}
