/** What a line shows between two uprights. */
import type { Point } from './drawing.ts';

/** The stretches of a line that lie between two uprights, in the line's order. */
export function withinStrip(points: readonly Point[], left: number, right: number): Point[][] {
  const stretches: Point[][] = [];
  let open: Point[] | undefined;
  points.forEach((to, index) => {
    const from = points[index - 1];
    if (from === undefined) return;
    const clipped = clip(from, to, left, right);
    if (clipped === undefined) {
      open = undefined;
      return;
    }
    if (open === undefined) stretches.push((open = [clipped[0]]));
    open.push(clipped[1]);
    if (clipped[1] !== to) open = undefined;
  });
  return stretches;
}

/** One straight piece; its own ends where they lie between the uprights. */
function clip(
  from: Point,
  to: Point,
  left: number,
  right: number,
): readonly [Point, Point] | undefined {
  if (Math.max(from[0], to[0]) < left || Math.min(from[0], to[0]) > right) return undefined;
  const at = (x: number): Point => [
    x,
    from[1] + ((x - from[0]) / (to[0] - from[0])) * (to[1] - from[1]),
  ];
  const end = (point: Point): Point =>
    point[0] < left ? at(left) : point[0] > right ? at(right) : point;
  return [end(from), end(to)];
}
