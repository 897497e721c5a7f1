/** A raked molding's end at full size, to be traced on paper or wood as a pattern. */
import type { LengthReading } from '../core/units/length.ts';
import { MM_PER_INCH, type LengthUnit } from '../core/units/length-unit.ts';
import { radians } from '../core/units/angle.ts';
import { CHORD_ERROR_INCHES } from './board-end.ts';
import { compose } from './compose.ts';
import type { Drawing, Point, Shape } from './drawing.ts';
import { nameOfUnit, writeDxf } from './dxf.ts';
import { AIR, partsOf, type FullSizePart } from './full-size-parts.ts';
import { textAbout } from './lettering.ts';
import { layPart, LETTERS, OVER_OUTLINE } from './part-on-paper.ts';
import { planRaked, type RakedSection, type RakedView } from './raked-section.ts';
import { sayAngle, sayLength } from './say.ts';
import { scaleBars } from './scale-bars.ts';

export interface RakedDrawingView extends RakedView, LengthReading {
  /** Of the paper's room, in millimetres; absent: all in one part. */
  readonly widest?: number;
}

/** From the lowest place down, as shares of the letters. */
const UNDER = { ways: [1.3, 2.6], bars: 3.8 } as const;

/**
 * Draws a raked molding's end at full size, the wall at the left, square to its length.
 *
 * @param view Blade, setting and blank of the level cove in inches, angles in radians; `widest` in millimetres.
 * @returns Drawings in millimetres of paper, true to the wood, from the wall outward; each with bars of
 *   100 mm and 4 in to check the print by.
 */
export function drawRaked(view: RakedDrawingView): Drawing[] {
  const section = planRaked(view);
  return partsOf(section, view.widest ?? Infinity).map((part) => drawPart(section, part, view));
}

function drawPart(section: RakedSection, part: FullSizePart, view: RakedDrawingView): Drawing {
  const { width, traced, joins } = layPart(section, part);
  const ways = sayWays(view);
  const shapes: Shape[] = [
    ...joins,
    ...traced,
    ...nameSides(section, part, width),
    ...ways.map((text, at) => {
      const place: Point = [width / 2, LETTERS * (UNDER.ways[at] ?? 0)];
      return textAbout(place, text, LETTERS, { anchor: 'middle', tone: 'ink' });
    }),
    ...scaleBars(width / 2, LETTERS * UNDER.bars),
  ];
  const which = part.count === 1 ? '' : `, part ${part.number} of ${part.count}`;
  const title = `Raked profile at full size, ${ways.join(' ')}${which}`;
  return compose({ title, alt: sayRaked(section, part, view), width }, shapes);
}

/** The same profile serves both, since the miter of an inside corner lies on the other side. */
function sayWays({ slope, decimalSign }: RakedDrawingView): readonly [string, string] {
  const angle = sayAngle(radians(Math.abs(slope)), decimalSign);
  return slope > 0
    ? [`${angle} rising from an outside corner,`, 'or falling from an inside one']
    : [`${angle} falling from an outside corner,`, 'or rising from an inside one'];
}

/** Over the outline, each on the part that shows its side. */
function nameSides({ height }: RakedSection, part: FullSizePart, width: number): Shape[] {
  const y = -height * MM_PER_INCH - LETTERS * OVER_OUTLINE;
  const look = { tone: 'ink' } as const;
  return [
    ...(part.number === 1
      ? [textAbout([AIR, y], 'wall side', LETTERS, { ...look, anchor: 'start' })]
      : []),
    ...(part.number === part.count
      ? [textAbout([width - AIR, y], 'room side', LETTERS, { ...look, anchor: 'end' })]
      : []),
  ];
}

function sayRaked(section: RakedSection, part: FullSizePart, view: RakedDrawingView): string {
  const say = (inches: number): string => sayLength(inches, view);
  const joins = part.joins.map(({ name }) => name).join(' and ');
  return [
    `The end of a raked molding at full size, square to its length, the wall at the left: ${sayWays(view).join(' ')}, mitered to the level one round a square corner.`,
    `It stands ${say(section.width)} out from the wall and is ${say(section.height)} high.`,
    ...(part.count === 1
      ? []
      : [
          `This is part ${part.number} of ${part.count}, from the wall outward; lay ${joins} on the same line of the part beside it.`,
        ]),
    'Bars of 100 mm and of 4 in stand under it, to check the print by.',
  ].join(' ');
}

export interface RakedDxfView extends RakedView {
  readonly unit: LengthUnit;
  /** Comments at the top of the file: a name, the cautions. */
  readonly notes?: readonly string[];
}

const LAYERS = { RAKED: 7, COVE: 1 } as const;

/**
 * Writes it as DXF: on RAKED all round, on COVE its curve alone, X out from the wall.
 *
 * @returns ASCII text; the curve within 0.0005 in of the true one.
 */
export function rakedToDxf(view: RakedDxfView): string {
  const { around, cove, width, height } = planRaked(view);
  const { unit, notes = [] } = view;
  return writeDxf({
    notes: [
      ...notes,
      `Units: ${nameOfUnit(unit)}. The curve is true to ${CHORD_ERROR_INCHES} in.`,
      `A raked molding's end, square to its length, mitered to the level one round a square corner: ${sayWays(
        { ...view, decimalSign: '.' },
      )
        .join(' ')
        .replace('°', ' degrees')}. X out from the wall, Y square to the slope.`,
      'RAKED is all round; COVE repeats its curve alone: follow one of the two.',
    ],
    unit,
    extent: [width, height],
    layers: LAYERS,
    lines: [
      { layer: 'RAKED', points: around, closed: true },
      { layer: 'COVE', points: cove },
    ],
  });
}
