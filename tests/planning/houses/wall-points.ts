/** Where a molding on a wall has its points, found where the edges of neighbors meet. */
import type { WallRun } from './house.ts';
import { beside, meet, reach, turned } from './plane-geometry.ts';
import type { Room } from './rooms.ts';

/** From and to, along the wall from its left corner. */
export type Stretch = readonly [from: number, to: number];

/** How far a molding stands out: across its thickness, or its face tipped by the spring from the wall. */
export function standsOut({ width, thick, spring }: WallRun['molding']): number {
  return spring === undefined ? thick : turned([width, 0], spring)[1];
}

/**
 * The wall's own stretch, the molding's shortest edge and its longest. Seen from above a molding is a
 * strip along the wall: its back on the wall, its face in the room. At a miter back and face each end where
 * they meet the neighbor's back and face.
 */
export function shortAndLong(
  { walls }: Room,
  { wall, molding, left, right }: WallRun,
): { readonly wallLength: Stretch; readonly short: Stretch; readonly long: Stretch } {
  const { line, length } = walls[wall]!;
  const out = standsOut(molding);
  const faceMeets = (neighbor: number): number => {
    const other = walls[(neighbor + walls.length) % walls.length]!.line;
    return reach(line, meet(beside(line, -out), beside(other, -out)));
  };
  const start = left.endsWith('miter') ? faceMeets(wall - 1) : 0;
  const end = right.endsWith('miter') ? faceMeets(wall + 1) : length;
  return {
    wallLength: [0, length],
    short: [Math.max(0, start), Math.min(length, end)],
    long: [Math.min(0, start), Math.max(length, end)],
  };
}
