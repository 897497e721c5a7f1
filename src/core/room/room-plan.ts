/**
 * A room seen from above, as its lengths and corners lay it out: x runs along the first wall to the
 * right, y square to it into the room, both in inches from the first wall's left end. On paper with y
 * down the first wall lies on top, as one faces it.
 */
import { radians, type Radians } from '../units/angle.ts';
import { turnAngle, type Wall } from './wall.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface PlanWall {
  /** Left and right end as one faces it from inside. */
  readonly from: Point;
  readonly to: Point;
  /** From left to right, clockwise from the first wall's direction: the sum of the turns before it. */
  readonly heading: Radians;
}

/** Walls of sound lengths and corners (`checkWalls`), end to end; a room that doesn't close shows its gap. */
export function layOutWalls(walls: readonly Wall[]): PlanWall[] {
  let from: Point = { x: 0, y: 0 };
  let heading = radians(0);
  return walls.map((wall) => {
    const { length } = wall;
    const to = {
      x: from.x + length * Math.cos(heading),
      y: from.y + length * Math.sin(heading),
    };
    const placed = { from, to, heading };
    from = to;
    heading = radians(heading + turnAngle(wall));
    return placed;
  });
}

/** The point so far along a wall from its left end, in inches. */
export function pointAlong({ from, heading }: PlanWall, distance: number): Point {
  return {
    x: from.x + distance * Math.cos(heading),
    y: from.y + distance * Math.sin(heading),
  };
}
