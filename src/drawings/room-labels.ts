/** What is written in a room's drawing: each wall's name and length, and corners that aren't square. */
import { toDegrees } from '../core/units/angle.ts';
import type { PlanWall } from '../core/room/room-plan.ts';
import { boxAround, boxOf } from './compose.ts';
import type { Point, Shape, Tone } from './drawing.ts';
import { lineHeight, textAbout, textBox, textWidth, type Box } from './lettering.ts';
import { findRoom, type Obstacles } from './obstacles.ts';
import { depthOfRuns } from './room-runs.ts';
import { sayLength, sayAngle } from './say.ts';
import { distanceFrom } from './segments.ts';
import type { PlacedRoom } from './room-view.ts';

/** From a wall's face, in millimetres: beyond its panes, with some air. */
const CLEAR = 1.4;
/** How far from its wall a label still belongs to it. */
const REACH = 7;
/** How far outside of the plan labels may stand, in millimetres. */
const OUTSIDE = 8;
const SQUARE_WITHIN_DEGREES = 0.05;

export interface RoomLabels {
  readonly shapes: readonly Shape[];
  /** What had no room, to be written under the drawing. */
  readonly left: readonly string[];
}

/** @param taken Besides walls and marks, where nothing is written. */
export function labelRoom(
  placed: PlacedRoom,
  marks: readonly Shape[],
  { areas: taken, boxes: others }: Obstacles,
): RoomLabels {
  const { view, plan, size, beside, scale } = placed;
  const { walls } = view.room;
  const shapes: Shape[] = [];
  const left: string[] = [];
  const bands = plan.map((wall, at) => bandOf(placed, wall, walls[at]?.length ?? 0));
  const areas = [...bands, ...taken];
  const boxes: Box[] = [...marks.map(boxOf), ...others];
  const inward = depthOfRuns(view.runs ?? []);
  const around = boxAround(plan.flatMap(({ from, to }) => [placed.at(from), placed.at(to)]));
  const within = {
    left: 1,
    right: placed.width - 1,
    top: around.top - OUTSIDE,
    bottom: around.bottom + OUTSIDE,
  };
  const put = (
    text: string,
    wanted: Point,
    tone: Tone,
    belongs: (point: Point) => boolean = () => true,
  ): boolean => {
    const room = { width: textWidth(text, size), height: lineHeight(size) };
    const near = nearby(wanted, room, within);
    const found = findRoom(wanted, room, near, { areas, boxes }, REACH);
    if (found === undefined || !belongs(found)) return false;
    const shape = textAbout(found, text, size, { anchor: 'middle', tone });
    shapes.push(shape);
    boxes.push(textBox(shape));
    return true;
  };
  walls.forEach(({ name, length }, at) => {
    const wall = plan[at];
    if (wall === undefined) return;
    const isSuspect = view.suspects?.some((one) => one.is === 'length' && one.wall === at);
    const tone = isSuspect === true ? 'feed' : 'ink';
    // A label must not be taken for that of a wall that is nearer to it.
    const belongs = (point: Point): boolean => nearestWall(placed, point) === at;
    /** So far from the wall that the text's own room is clear of it. */
    const clearOf = (text: string): number =>
      CLEAR +
      (textWidth(text, size) / 2) * Math.abs(Math.sin(wall.heading)) +
      (lineHeight(size) / 2) * Math.abs(Math.cos(wall.heading));
    // Where runs stand before the wall, its name is better off behind it.
    const sides = inward === 0 ? ([1, -1] as const) : ([-1, 1] as const);
    const putBeside = (text: string): boolean =>
      sides.some((side) => {
        const away = side * (clearOf(text) + (side === 1 ? inward : 0));
        return put(text, beside(wall, length / 2, away), tone, belongs);
      });
    const text = `${name}: ${sayLength(length, view)}`;
    if (putBeside(text)) return;
    left.push(text);
    putBeside(name);
  });
  walls.forEach(({ cornerAtRight, turn }, at) => {
    const wall = plan[at];
    const isSquare = Math.abs(toDegrees(cornerAtRight) - 90) < SQUARE_WITHIN_DEGREES;
    if (wall === undefined || turn === 'end' || isSquare) return;
    const back = Math.min(walls[at]?.length ?? 0, size / scale);
    const away = turn === 'inside' ? 4 + inward : -4;
    const wanted = beside(wall, (walls[at]?.length ?? 0) - back, away);
    put(sayAngle(cornerAtRight, view.decimalSign), wanted, 'measure');
  });
  return { shapes, left };
}

/** A wall's line with its jambs: nothing is written on it. */
function bandOf({ beside }: PlacedRoom, wall: PlanWall, length: number): Point[] {
  const half = CLEAR - 0.2;
  return [
    beside(wall, 0, -half),
    beside(wall, length, -half),
    beside(wall, length, half),
    beside(wall, 0, half),
  ];
}

/** As much of the paper as a label within reach takes: what lies further off needn't be looked at. */
function nearby([x, y]: Point, room: { width: number; height: number }, within: Box): Box {
  const [wide, high] = [REACH + room.width / 2, REACH + room.height / 2];
  return {
    left: Math.max(within.left, x - wide),
    right: Math.min(within.right, x + wide),
    top: Math.max(within.top, y - high),
    bottom: Math.min(within.bottom, y + high),
  };
}

/** The wall that a point on paper is nearest to. */
function nearestWall({ plan, at }: PlacedRoom, point: Point): number {
  const distances = plan.map(({ from, to }) => distanceFrom(point, [at(from), at(to)]));
  return distances.indexOf(Math.min(...distances));
}
