/** What is written on the table: angles with their arcs, the blade's lean, the names of the rails. */
import { toDegrees } from '../core/units/angle.ts';
import { arrowHead, line, LINE } from './compose.ts';
import { onPaper } from './dimension.ts';
import type { Point, Shape, TextShape, Tone } from './drawing.ts';
import { lineHeight, textAbout, textBox, textWidth, type Box } from './lettering.ts';
import { findRoom } from './obstacles.ts';
import { formatDegrees } from '../core/units/format-mark.ts';
import { sayAngle } from './say.ts';
import { RAIL_WIDTH_INCHES, type TablePlan, type TablePoint } from './table-plan.ts';

/** Air around a label, in millimetres. */
const AIR = 0.5;
const ARC_STEPS = 24;
/** How far the arc at the front edge stands out from the rail, in millimetres. */
const FRONT_ARC = 4;
/** How far a label may stand from where it would best be, in millimetres. */
const [ANGLE_REACH, RAIL_REACH, FEED_REACH] = [16, 14, 14];

interface Label {
  readonly lines: readonly string[];
  readonly tone: Tone;
  /** Where its middle would best be. */
  readonly wanted: Point;
  /** Its widest line, where that is another on a saw that is the mirror image. */
  readonly widest?: string;
  /** How far from there it still belongs to what it names, in millimetres. */
  readonly reach: number;
  /** Written under the drawing where there is no room for it on the table; others are left out. */
  readonly otherwise?: string;
}

export interface TableLabels {
  readonly shapes: readonly Shape[];
  /** What had no room on the table. */
  readonly left: readonly string[];
}

export function labelTable(plan: TablePlan): TableLabels {
  const front = frontAngle(plan);
  const approach = approachAngle(plan);
  const labels = [...approach.labels, ...front.labels, ...leanLabels(plan), ...railLabels(plan)];
  const placed: TextShape[] = [];
  const left: string[] = [];
  const within = tableBox(plan);
  const { near, far, board } = plan.bands;
  const middle: TablePoint[] = [
    [-plan.table.front, 0],
    [plan.table.back, 0],
  ];
  const areas = [near, far, board, middle].map((area) => area.map(plan.at));
  const arcs = [...approach.shapes, ...front.shapes].map((shape) => shape.points);
  const arcBoxes = arcs.flatMap(boxesAlong);
  for (const { lines, tone, wanted, reach, widest = '', otherwise } of labels) {
    const { size } = plan;
    const room = {
      width: Math.max(...[...lines, widest].map((text) => textWidth(text, size))) + 2 * AIR,
      height: lines.length * lineHeight(size) + AIR,
    };
    const boxes = [...placed.map(textBox), ...arcBoxes];
    const place = findRoom(wanted, room, within, { areas, boxes }, reach);
    if (place === undefined) {
      if (otherwise !== undefined) left.push(otherwise);
      continue;
    }
    const top = place[1] - ((lines.length - 1) / 2) * lineHeight(size);
    lines.forEach((text, index) => {
      const at: Point = [place[0], top + index * lineHeight(size)];
      placed.push(textAbout(at, text, size, { anchor: 'middle', tone }));
    });
  }
  const letters = placed.flatMap((text) => onPaper(text, 'removed'));
  return { shapes: [...approach.shapes, ...front.shapes, ...letters], left };
}

interface Angle {
  readonly shapes: readonly (Shape & { readonly kind: 'path' })[];
  readonly labels: readonly Label[];
}

/** Between the blade line and the feed, about the middle of the blade, past its back end. */
function approachAngle({ view, table, halfChord, size, scale, at }: TablePlan): Angle {
  const { approach } = view.setting;
  const said = sayAngle(approach, view.decimalSign);
  const radius = Math.max(halfChord + 1.5 / scale, Math.min(table.back * 0.8, halfChord + 4));
  const arc = arcAbout([0, 0], radius, 0, approach).map(at);
  const [x, y] = at([radius, 0]);
  const wanted: Point = [x - textWidth('the blade line', size) / 2 - 1, y];
  const reach = radius + 1.5 / scale;
  const end = at([reach * Math.cos(approach), reach * Math.sin(approach)]);
  return {
    shapes: [line([at([0, 0]), end], 'feed', LINE.usual, [1.2, 0.8]), ...angleShapes(arc)],
    labels: [
      {
        lines: [`${said} from`, 'the blade line'],
        tone: 'measure',
        wanted,
        reach: ANGLE_REACH,
        otherwise: `rails ${said} from the blade line`,
      },
    ],
  };
}

/** Between the front edge and the near rail, or the far one where the near rail isn't there. */
function frontAngle({ view, table, layout, hand, size, scale, at }: TablePlan): Angle {
  const { approach } = view.setting;
  const said = formatDegrees(90 - toDegrees(approach), view.decimalSign);
  const rail = layout.near.front.onTable ? layout.near : layout.far;
  const label = {
    lines: [`${said} from`, 'the front edge'],
    tone: 'measure',
    reach: ANGLE_REACH,
    otherwise: `rails ${said} from the front edge`,
  } as const;
  const mark = rail.front;
  const corner: TablePoint = [-table.front, hand * mark.fromBlade];
  const [x, y] = at(corner);
  const radius = (RAIL_WIDTH_INCHES * scale) / Math.cos(approach) + FRONT_ARC;
  const wanted: Point = [
    x + radius + 1 + textWidth('the front edge', size) / 2,
    y - lineHeight(size),
  ];
  if (!mark.onTable) return { shapes: [], labels: [{ ...label, wanted: at([-table.front, 0]) }] };
  const arc = arcAbout(corner, radius / scale, approach, Math.PI / 2).map(at);
  return { shapes: angleShapes(arc), labels: [{ ...label, wanted }] };
}

function leanLabels({ view, size, at }: TablePlan): Label[] {
  const [x, y] = at([0, 0]);
  const { tilt } = view.setting;
  const wanted: Point = [x + textWidth('from upright', size), y + size * 3];
  if (tilt === 0) {
    const lines = ['blade upright'];
    return [{ lines, tone: 'ink', wanted, reach: Infinity, otherwise: 'blade upright' }];
  }
  const said = sayAngle(tilt, view.decimalSign);
  const lines = [`blade leans ${view.tiltSide},`, `${said} from upright`];
  const otherwise = `blade ${said} ${view.tiltSide} of upright`;
  return [{ lines, tone: 'ink', wanted, widest: 'blade leans right,', reach: Infinity, otherwise }];
}

/** Beside the rails' outer faces. */
function railLabels({ bands, size, at }: TablePlan): Label[] {
  const beside = (
    [, start, end]: TablePlan['bands']['near'],
    share: number,
    way: number,
  ): Point => {
    const [fromX, fromY] = at(start);
    const [toX, toY] = at(end);
    const out = way * (textWidth('near rail', size) / 2 + 1);
    return [fromX + (toX - fromX) * share + out, fromY + (toY - fromY) * share];
  };
  return [
    { lines: ['far rail'], tone: 'ink', wanted: beside(bands.far, 0.4, -1), reach: RAIL_REACH },
    { lines: ['near rail'], tone: 'ink', wanted: beside(bands.near, 0.65, 1), reach: RAIL_REACH },
    { lines: ['feed'], tone: 'feed', wanted: beside(bands.far, 0.12, -1), reach: FEED_REACH },
  ];
}

function arcAbout([x, y]: TablePoint, radius: number, from: number, to: number): TablePoint[] {
  return Array.from({ length: ARC_STEPS + 1 }, (_, step): TablePoint => {
    const angle = from + ((to - from) * step) / ARC_STEPS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

/** An arc with a head at each end, where it is long enough for them. */
function angleShapes(arc: readonly Point[]): Angle['shapes'] {
  const [first, second] = arc;
  const [beforeLast, last] = arc.slice(-2);
  if (first === undefined || second === undefined) return [];
  if (beforeLast === undefined || last === undefined) return [];
  const length = Math.hypot(second[0] - first[0], second[1] - first[1]) * (arc.length - 1);
  const head = Math.min(1.7, length / 3);
  const way = (from: Point, to: Point): number => Math.atan2(to[1] - from[1], to[0] - from[0]);
  return [
    line(arc, 'measure', LINE.usual),
    arrowHead(first, way(second, first), 'measure', head),
    arrowHead(last, way(beforeLast, last), 'measure', head),
  ];
}

/** Small boxes along a line, for labels to keep off it. */
function boxesAlong(points: readonly Point[]): Box[] {
  return points.flatMap(([x, y], index) => {
    const [toX, toY] = points[index + 1] ?? [x, y];
    const steps = Math.max(1, Math.ceil(Math.hypot(toX - x, toY - y)));
    return Array.from({ length: steps }, (_, step): Box => {
      const [left, top] = [x + ((toX - x) * step) / steps, y + ((toY - y) * step) / steps];
      return { left: left - 0.3, right: left + 0.3, top: top - 0.3, bottom: top + 0.3 };
    });
  });
}

function tableBox({ table, sides, halfShown, at }: TablePlan): Box {
  const half = sides ?? halfShown;
  const [left, bottom] = at([-table.front, -half]);
  const [right, top] = at([table.back, half]);
  return { left: left + 0.6, right: right - 0.6, top: top + 0.6, bottom: bottom - 0.6 };
}
