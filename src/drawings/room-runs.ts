/** Trim along a room's walls: ring by ring, each piece a line with its ends, its mark and the way it is fitted. */
import type { PlanWall } from '../core/room/room-plan.ts';
import type { Wall } from '../core/room/wall.ts';
import { area, arrowHead, line, LINE } from './compose.ts';
import type { Point, Shape } from './drawing.ts';
import { lineHeight, textAbout, textWidth, type Box } from './lettering.ts';
import { boxAbout, isFree, type Obstacles } from './obstacles.ts';
import { distanceBetween } from './segments.ts';
import type { PlacedRoom, RoomRun, RunEndShape } from './room-view.ts';

/** In millimetres on paper. */
const FIRST_RING = 3;
const APART = 4.4;
/** So far a line ends before an outside corner or an opening; and before an inside one, where another end is. */
const BACK = 0.9;
const BACK_INSIDE = 1.7;
/** Half of an end's sign, across its line. */
const END = 0.9;
const MARK_SIZE = 3;
const MARK_AIR = 0.3;
/** From a line's end to its arrow's tip, and past its tail; to what stands beside an end without one. */
const ARROW_TIP = 1.4;
const ARROW_ROOM = 3.4;
const END_ROOM = 1.3;
/** Between places where a mark is tried along its line. */
const STEP = 1.5;
/** Corners this sharp would carry an end beyond any page. */
const LEAST_CORNER = 0.1;
/** Beyond arithmetic, below what an eye would see. */
const NEARER_MM = 0.1;
const ARC_POINTS = 7;

export interface DrawnRuns extends Obstacles {
  readonly shapes: readonly Shape[];
  /** Marks of those that have no room to be drawn, or to be marked. */
  readonly left: readonly string[];
}

/** How far into the room, in millimetres, runs stand before the walls. */
export function depthOfRuns(runs: readonly RoomRun[]): number {
  return runs.reduce((most, { ring }) => Math.max(most, ringAt(ring) + END + MARK_AIR), 0);
}

const ringAt = (ring: number): number => FIRST_RING + ring * APART;

/** A run on paper, with the directions along it, to its right end, and into the room. */
interface Laid {
  readonly run: RoomRun;
  readonly from: Point;
  readonly to: Point;
  readonly along: Point;
  readonly inward: Point;
  readonly length: number;
  readonly heading: number;
}

export function drawRuns(placed: PlacedRoom): DrawnRuns {
  const left: string[] = [];
  const laid = (placed.view.runs ?? []).flatMap((run): Laid[] => {
    const found = layRun(placed, run);
    if (found === undefined) left.push(run.mark);
    return found === undefined ? [] : [found];
  });
  const areas = laid.map(bandOf);
  const boxes: Box[] = [];
  const lines: Shape[] = [];
  const marks: Shape[] = [];
  laid.forEach((one, at) => {
    const among = { areas: areas.filter((_, other) => other !== at), boxes };
    const withArrow = placeMark(one, among, roomsOfEnds(one.run));
    // A mark says more than an arrow.
    const found = withArrow ?? placeMark(one, among, [END_ROOM, END_ROOM]);
    lines.push(...drawLine(one), ...(withArrow === found ? drawArrow(one) : []));
    if (found === undefined) left.push(one.run.mark);
    else {
      boxes.push(found.box);
      marks.push(...found.shapes);
    }
  });
  return { shapes: [...lines, ...marks], areas, boxes, left };
}

/** Undefined where nothing of it is left at its distance from the wall, or another wall is nearer there. */
function layRun(
  { view, plan, at: onPaper, beside, scale }: PlacedRoom,
  run: RoomRun,
): Laid | undefined {
  const { walls } = view.room;
  const [wall, at] = [plan[run.wall], walls[run.wall]];
  if (wall === undefined || at === undefined) return undefined;
  const deep = ringAt(run.ring);
  const before = walls[(run.wall + walls.length - 1) % walls.length];
  const isAtLeft = run.from <= 0;
  const isAtRight = run.to >= at.length;
  const start = run.from * scale + (isAtLeft ? cornerShift(before, deep) : BACK);
  const end = run.to * scale - (isAtRight ? cornerShift(at, deep) : BACK);
  const length = end - start;
  if (length < 2 * END) return undefined;
  const [from, to] = [beside(wall, start / scale, deep), beside(wall, end / scale, deep)];
  const isNearer = (other: PlanWall): boolean =>
    distanceBetween([from, to], [onPaper(other.from), onPaper(other.to)]) < deep - NEARER_MM;
  if (plan.some((other) => other !== wall && isNearer(other))) return undefined;
  const along: Point = [Math.cos(wall.heading), Math.sin(wall.heading)];
  return {
    run,
    from,
    to,
    along,
    inward: [-along[1], along[0]],
    length,
    heading: wall.heading,
  };
}

/** How much later than its wall a line begins that stands off both walls of a corner: less than 0 round an outside one. */
function cornerShift(wall: Wall | undefined, deep: number): number {
  if (wall === undefined || wall.turn === 'end') return BACK;
  const shift = deep / Math.tan(Math.max(LEAST_CORNER, wall.cornerAtRight) / 2);
  return wall.turn === 'inside' ? shift + BACK_INSIDE : BACK - shift;
}

function drawLine({ run, from, to, along, inward }: Laid): Shape[] {
  return [
    line([from, to], 'measure', LINE.usual),
    ...drawEnd(run.left, from, along, inward),
    ...drawEnd(run.right, to, [-along[0], -along[1]], inward),
  ];
}

/**
 * A bar across for a square end, a slant for a miter (its long point at the wall, or in front), an arc
 * into the piece for a cope, a hook to the wall for a return.
 *
 * @param into From the end along the piece.
 */
function drawEnd(end: RunEndShape, at: Point, into: Point, inward: Point): Shape[] {
  const point = (far: number, deep: number): Point => [
    at[0] + far * into[0] + deep * inward[0],
    at[1] + far * into[1] + deep * inward[1],
  ];
  const stroke = (points: readonly Point[]): Shape[] => [line(points, 'ink', LINE.usual)];
  switch (end) {
    case 'square':
      return stroke([point(0, -END), point(0, END)]);
    case 'inside miter':
      return stroke([point(-END, -END), point(END, END)]);
    case 'outside miter':
      return stroke([point(END, -END), point(-END, END)]);
    case 'return':
      return stroke([point(0, 0), point(0, -2 * END), point(END, -2 * END)]);
    case 'cope': {
      const turns = Array.from(
        { length: ARC_POINTS },
        (_, step) => (step / (ARC_POINTS - 1) - 0.5) * Math.PI,
      );
      return stroke(turns.map((turn) => point(END * Math.cos(turn), END * Math.sin(turn))));
    }
  }
}

function drawArrow({ run, from, to, along, heading, length }: Laid): Shape[] {
  if (run.goesOn === undefined || length < 2 * ARROW_ROOM) return [];
  const isRight = run.goesOn === 'right';
  const [end, way] = isRight ? [to, -ARROW_TIP] : [from, ARROW_TIP];
  const tip: Point = [end[0] + way * along[0], end[1] + way * along[1]];
  return [arrowHead(tip, isRight ? heading : heading + Math.PI, 'measure')];
}

/** What the left and the right end of a line need for themselves, in millimetres along it. */
function roomsOfEnds({ goesOn }: RoomRun): readonly [left: number, right: number] {
  return [goesOn === 'left' ? ARROW_ROOM : END_ROOM, goesOn === 'right' ? ARROW_ROOM : END_ROOM];
}

/** As near to the middle of its line as it stands clear of other lines, of other marks and of its own ends. */
function placeMark(
  { run, from, along, length, inward }: Laid,
  obstacles: Obstacles,
  [atLeft, atRight]: readonly [left: number, right: number],
): { readonly box: Box; readonly shapes: Shape[] } | undefined {
  const room = {
    width: textWidth(run.mark, MARK_SIZE) + 2 * MARK_AIR,
    height: lineHeight(MARK_SIZE) + 2 * MARK_AIR,
  };
  const half = (room.width * Math.abs(along[0]) + room.height * Math.abs(inward[0])) / 2;
  const [least, most] = [atLeft + half, length - atRight - half];
  const middle = Math.min(Math.max(length / 2, least), most);
  for (let step = 0; middle >= least && step * STEP <= length; step++) {
    for (const way of step === 0 ? [1] : [1, -1]) {
      const far = middle + way * step * STEP;
      if (far < least || far > most) continue;
      const at: Point = [from[0] + far * along[0], from[1] + far * along[1]];
      const box = boxAbout(at, room);
      if (!isFree(box, obstacles)) continue;
      const { left, right, top, bottom } = box;
      const corners: Point[] = [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ];
      const text = textAbout(at, run.mark, MARK_SIZE, {
        anchor: 'middle',
        tone: 'ink',
        bold: true,
      });
      return { box, shapes: [area(corners, 'removed'), text] };
    }
  }
  return undefined;
}

/** Where nothing else is written. */
function bandOf({ from, to, inward, along }: Laid): Point[] {
  const corner = ([x, y]: Point, far: number, deep: number): Point => [
    x + far * along[0] + deep * inward[0],
    y + far * along[1] + deep * inward[1],
  ];
  return [
    corner(from, -END, -END),
    corner(to, END, -END),
    corner(to, END, END),
    corner(from, -END, END),
  ];
}
