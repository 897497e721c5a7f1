/** Puts shapes together into a drawing: lines, arrow heads, mirrored where asked, room all round. */
import type { Drawing, PathShape, Point, Shape, Stroke, TextShape, Tone } from './drawing.ts';
import { middleOf, textAbout, textBox, type Box } from './lettering.ts';

/** Widths of lines in millimetres, few and the same in every drawing. */
export const LINE = { thin: 0.15, usual: 0.25, strong: 0.5 } as const;
const ROOM = 1.2;

export function line(points: readonly Point[], tone: Tone, width: number, dash?: Stroke['dash']) {
  const stroke = { tone, width, ...(dash === undefined ? {} : { dash }) };
  return { kind: 'path', points, closed: false, stroke } as const satisfies PathShape;
}

export function area(points: readonly Point[], fill: Tone, stroke?: Stroke): PathShape {
  return { kind: 'path', points, closed: true, fill, ...(stroke === undefined ? {} : { stroke }) };
}

/** A filled arrow head with its tip at a point; `toward` is the way it points, in radians from +x. */
export function arrowHead(tip: Point, toward: number, tone: Tone, length = 1.7): PathShape {
  const corner = (side: 1 | -1): Point => {
    const [back, out] = [-length, side * length * 0.3];
    const [cosine, sine] = [Math.cos(toward), Math.sin(toward)];
    return [tip[0] + back * cosine - out * sine, tip[1] + back * sine + out * cosine];
  };
  return { kind: 'path', points: [tip, corner(1), corner(-1)], closed: true, fill: tone };
}

export interface Mirroring {
  readonly sides?: boolean;
  readonly topAndBottom?: boolean;
}

/** The drawing of those shapes, as high as they need; letters are moved by a mirror, never turned. */
export function compose(
  what: Pick<Drawing, 'title' | 'alt' | 'width'>,
  shapes: readonly Shape[],
  mirroring: Mirroring = {},
): Drawing {
  const boxes = shapes.map(boxOf);
  const top = Math.min(...boxes.map((box) => box.top)) - ROOM;
  const height = Math.max(...boxes.map((box) => box.bottom)) + ROOM - top;
  const { sides = false, topAndBottom = false } = mirroring;
  const place = ([x, y]: Point): Point => [
    sides ? what.width - x : x,
    topAndBottom ? height - (y - top) : y - top,
  ];
  return { ...what, height, shapes: shapes.map((shape) => placed(shape, place, sides)) };
}

function placed(shape: Shape, place: (point: Point) => Point, sides: boolean): Shape {
  if (shape.kind === 'path') return { ...shape, points: shape.points.map(place) };
  if (shape.kind === 'circle') return { ...shape, center: place(shape.center) };
  const { text, size, anchor, tone, bold, turn } = shape;
  const swapped = ({ start: 'end', middle: 'middle', end: 'start' } as const)[anchor];
  const look = {
    anchor: sides && turn === undefined ? swapped : anchor,
    tone,
    ...(bold === undefined ? {} : { bold }),
    ...(turn === undefined ? {} : { turn }),
  };
  return textAbout(place(middleOf(shape)), text, size, look);
}

/** The paper under which nothing stands. */
export function lowestOf(shapes: readonly Shape[]): number {
  return Math.max(...shapes.map((shape) => boxOf(shape).bottom));
}

/** The room that a shape takes. */
export function boxOf(shape: Shape): Box {
  if (shape.kind === 'text') return textBox(shape);
  if (shape.kind === 'circle') {
    const { center, radius } = shape;
    const [x, y] = center;
    return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
  }
  return boxAround(shape.points);
}

export function boxAround(points: readonly Point[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

/** The texts among shapes. */
export function textsOf(shapes: readonly Shape[]): TextShape[] {
  return shapes.filter((shape) => shape.kind === 'text');
}
