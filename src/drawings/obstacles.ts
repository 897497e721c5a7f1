/** Finds room for a label among what is drawn already. */
import type { Point } from './drawing.ts';
import { boxesOverlap, type Box } from './lettering.ts';

export interface Obstacles {
  readonly areas: readonly (readonly Point[])[];
  readonly boxes: readonly Box[];
}

/** Of the grid on which room is looked for, in millimetres. */
const STEP = 1;

/**
 * The free place nearest to a point for a box of that size, on a grid over `within`.
 *
 * @param wanted Where its middle would best be.
 * @param room Width and height, in millimetres.
 * @param reach How far from `wanted` it may be, in millimetres.
 * @returns The box's middle; undefined where it fits nowhere.
 */
export function findRoom(
  wanted: Point,
  room: { readonly width: number; readonly height: number },
  within: Box,
  { areas, boxes }: Obstacles,
  reach = Infinity,
): Point | undefined {
  const [halfWidth, halfHeight] = [room.width / 2, room.height / 2];
  const places: { readonly at: Point; readonly distance: number }[] = [];
  for (let x = within.left + halfWidth; x <= within.right - halfWidth; x += STEP) {
    for (let y = within.top + halfHeight; y <= within.bottom - halfHeight; y += STEP) {
      const distance = Math.hypot(x - wanted[0], y - wanted[1]);
      if (distance <= reach) places.push({ at: [x, y], distance });
    }
  }
  places.sort((one, other) => one.distance - other.distance);
  return places.find(({ at }) => isFree(boxAbout(at, room), { areas, boxes }))?.at;
}

export function boxAbout(
  [x, y]: Point,
  { width, height }: { readonly width: number; readonly height: number },
): Box {
  return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

/** Whether nothing stands in a box. */
export function isFree(box: Box, { areas, boxes }: Obstacles): boolean {
  const isClear = !boxes.some((other) => boxesOverlap(box, other));
  return isClear && !areas.some((area) => meets(box, area));
}

/** Whether a box and a convex area share a point: no side of either keeps them apart. */
function meets(box: Box, area: readonly Point[]): boolean {
  const corners: Point[] = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ];
  return [corners, area].every((one) =>
    one.every((from, index) => {
      const to = one[(index + 1) % one.length] ?? from;
      const normal: Point = [from[1] - to[1], to[0] - from[0]];
      const [least, most] = extent(corners, normal);
      const [otherLeast, otherMost] = extent(area, normal);
      return least <= otherMost && otherLeast <= most;
    }),
  );
}

function extent(points: readonly Point[], [nx, ny]: Point): [number, number] {
  const along = points.map(([x, y]) => x * nx + y * ny);
  return [Math.min(...along), Math.max(...along)];
}
