/** How far straight lines are from points and from each other, in the unit of their points. */
import type { Point } from './drawing.ts';

export type Segment = readonly [from: Point, to: Point];

export function distanceFrom([x, y]: Point, [from, to]: Segment): number {
  const along: Point = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(...along);
  if (length === 0) return Math.hypot(x - from[0], y - from[1]);
  const share = ((x - from[0]) * along[0] + (y - from[1]) * along[1]) / length ** 2;
  const within = Math.min(1, Math.max(0, share));
  return Math.hypot(x - from[0] - within * along[0], y - from[1] - within * along[1]);
}

/** 0 where they cross; else one of the four ends is the nearest point. */
export function distanceBetween(one: Segment, other: Segment): number {
  if (cross(one, other)) return 0;
  return Math.min(
    ...one.map((end) => distanceFrom(end, other)),
    ...other.map((end) => distanceFrom(end, one)),
  );
}

function cross(one: Segment, other: Segment): boolean {
  const isParted = (by: Segment, [from, to]: Segment): boolean => side(by, from) * side(by, to) < 0;
  return isParted(one, other) && isParted(other, one);
}

/** Above 0 on one side of a line, below 0 on the other. */
function side([from, to]: Segment, [x, y]: Point): number {
  return (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
}
