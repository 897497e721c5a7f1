/** What a drawing of a room is given, and where it lies on paper. */
import { computeClosure } from '../core/room/closure.ts';
import { layOutWalls, pointAlong, type PlanWall } from '../core/room/room-plan.ts';
import type { Suspect } from '../core/room/suspects.ts';
import { isOpenRoom, type Room } from '../core/room/wall.ts';
import type { LengthReading } from '../core/units/length.ts';
import type { Point } from './drawing.ts';
import { letterSize, soundWidth } from './lettering.ts';

export interface RoomOpening {
  /** Its wall, from 0. */
  readonly wall: number;
  readonly kind: 'door' | 'window' | 'cased opening';
  /** Inches from the wall's left corner, as one faces it from inside; `to` is beyond `from`. */
  readonly from: number;
  readonly to: number;
}

/** A piece of trim along a wall. */
export interface RoomRun {
  /** Its wall, from 0. */
  readonly wall: number;
  /** Inches from the wall's left corner; `to` is beyond `from`, and not beyond the wall. */
  readonly from: number;
  readonly to: number;
  /** Lines of one ring run round the room at one distance from the walls; 0 is next to them. */
  readonly ring: number;
  /** By which the list beside the drawing knows it: 3A. */
  readonly mark: string;
  readonly left: RunEndShape;
  readonly right: RunEndShape;
  /** Which way fitting came to it and goes on. */
  readonly goesOn?: 'left' | 'right';
}

export type RunEndShape = 'square' | 'inside miter' | 'outside miter' | 'cope' | 'return';

export interface RoomView extends LengthReading {
  /** Of sound walls (`checkWalls`); it may miss its start. */
  readonly room: Room;
  /** Within their walls (`checkOpeningsOnWall`). */
  readonly openings?: readonly RoomOpening[];
  /** Trim along the walls, set apart from them and from each other. */
  readonly runs?: readonly RoomRun[];
  /** Lengths and corners that may be wrong: each is marked. */
  readonly suspects?: readonly Pick<Suspect, 'is' | 'wall'>[];
  /** Millimetres on paper; 110 where it isn't given. */
  readonly width?: number;
}

export interface PlacedRoom {
  readonly view: RoomView;
  readonly plan: readonly PlanWall[];
  /** Of a closed room, inches from its start to where its last wall ends. */
  readonly gap?: number;
  readonly isClosed: boolean;
  readonly width: number;
  readonly size: number;
  /** Millimetres to the inch. */
  readonly scale: number;
  /** A point of the plan (core/room/room-plan.ts), on paper. */
  readonly at: (point: { readonly x: number; readonly y: number }) => Point;
  /** So far along a wall, in inches, and so far into the room, in millimetres. */
  readonly beside: (wall: PlanWall, along: number, inward: number) => Point;
}

const USUAL_WIDTH_MM = 110;
/** Beside and above the plan, for what is written outside of it; a narrow plan needs the room for itself. */
const SIDE_MM = 14;
const NARROW = { below: 80, side: 6 } as const;
const TOP_MM = 8;

export function placeRoom(view: RoomView): PlacedRoom {
  const width = soundWidth(view.width ?? USUAL_WIDTH_MM);
  const { walls } = view.room;
  const plan = layOutWalls(walls);
  const isClosed = !isOpenRoom(view.room);
  const points = plan.flatMap(({ from, to }) => [from, to]);
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [wide, deep] = [Math.max(...xs) - left, Math.max(...ys) - top];
  if (!(Math.max(wide, deep) > 0)) throw new RangeError('A room without walls is not drawn.');
  const side = width < NARROW.below ? NARROW.side : SIDE_MM;
  const room = width - 2 * side;
  const scale = room / Math.max(wide, deep);
  const start = side + (room - wide * scale) / 2;
  const at = ({ x, y }: { x: number; y: number }): Point => [
    start + (x - left) * scale,
    TOP_MM + (y - top) * scale,
  ];
  return {
    view,
    plan,
    isClosed,
    ...(isClosed ? { gap: computeClosure(walls).gap } : {}),
    width,
    size: letterSize(width),
    scale,
    at,
    beside: (wall, along, inward) => {
      const [x, y] = at(pointAlong(wall, along));
      // To the right of a wall's heading lies the room.
      return [x - inward * Math.sin(wall.heading), y + inward * Math.cos(wall.heading)];
    },
  };
}
