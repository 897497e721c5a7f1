/**
 * Rooms whose geometry is known from elsewhere: polygons that a general library (manifold-3d) joins and
 * cuts, walked round clockwise as seen from above. Nothing of the core's own is in it.
 */
import type { ManifoldToplevel } from 'manifold-3d';
import type { Room, Turn, Wall } from '../../../src/core/room/wall.ts';
import { degrees, radians, toRadians } from '../../../src/core/units/angle.ts';

export type Corner = readonly [x: number, y: number];

/** A room by hand: lengths in inches, corners in degrees. */
export function roomOf(...walls: readonly (readonly [number, number, Turn?])[]): Room {
  return {
    name: 'Den',
    walls: walls.map(([length, corner, turn = 'inside'], at) => ({
      name: String(at + 1),
      length,
      cornerAtRight: toRadians(degrees(corner)),
      turn,
    })),
  };
}

/** Walls along corners that go clockwise, x to the right and y up: gauge readings from the walls' directions. */
export function wallsAlong(corners: readonly Corner[]): Wall[] {
  const at = (index: number): Corner => corners[index % corners.length]!;
  return corners.map((from, index) => {
    const [to, next] = [at(index + 1), at(index + 2)];
    const along = [to[0] - from[0], to[1] - from[1]] as const;
    const onward = [next[0] - to[0], next[1] - to[1]] as const;
    const cross = along[0] * onward[1] - along[1] * onward[0];
    const dot = along[0] * onward[0] + along[1] * onward[1];
    return {
      name: String(index + 1),
      length: Math.hypot(...along),
      cornerAtRight: radians(Math.PI - Math.atan2(Math.abs(cross), dot)),
      turn: cross < 0 ? 'inside' : 'outside',
    };
  });
}

export type Kind = 'rectilinear' | 'octagon' | 'bay' | 'skew';
export const KINDS: readonly Kind[] = ['rectilinear', 'octagon', 'bay', 'skew'];

/** Corners of a room of ordinary size, clockwise: 6 to 20 ft across, no wall under a foot. */
export function drawCorners(kind: Kind, next: () => number, library: ManifoldToplevel): Corner[] {
  const feet = (least: number, most: number): number =>
    12 * (least + Math.floor(next() * (most - least + 1)));
  if (kind === 'rectilinear') return rectilinear(next, feet, library);
  if (kind === 'octagon') {
    const radius = 60 + 50 * next();
    return Array.from({ length: 8 }, (_, at) => pointOn(radius, radius, -at * (Math.PI / 4)));
  }
  if (kind === 'bay') {
    // Its slanted walls stand at 135° on the wall that it opens, and at 135° on its front.
    const [deep, side, out, front] = [feet(10, 16), feet(3, 5), feet(1, 2), feet(4, 6)];
    const [left, right] = [side + out, side + out + front];
    const wide = right + out + side;
    return [
      [0, 0],
      [0, deep],
      [side, deep],
      [left, deep + out],
      [right, deep + out],
      [right + out, deep],
      [wide, deep],
      [wide, 0],
    ];
  }
  return skew(next);
}

function rectilinear(
  next: () => number,
  feet: (least: number, most: number) => number,
  { CrossSection }: ManifoldToplevel,
): Corner[] {
  for (;;) {
    let section = CrossSection.square([feet(8, 16), feet(8, 16)]);
    for (let more = Math.floor(next() * 3); more > 0; more--) {
      const box = CrossSection.square([feet(2, 8), feet(2, 8)]);
      const placed = box.translate([feet(-3, 12), feet(-3, 12)]);
      const joined = next() < 0.6 ? section.add(placed) : section.subtract(placed);
      for (const done of [section, box, placed]) done.delete();
      section = joined;
    }
    // Points along a straight wall are no corners.
    const outline = section.simplify();
    const contours = outline.toPolygons();
    outline.delete();
    section.delete();
    const [contour] = contours;
    // In two parts, or round a pillar: no room.
    if (contours.length === 1 && contour !== undefined) return [...contour].reverse();
  }
}

/** Four to seven corners on an ellipse, at odd angles. */
function skew(next: () => number): Corner[] {
  for (;;) {
    const [radius, count] = [72 + 48 * next(), 4 + Math.floor(next() * 4)];
    const angles = Array.from({ length: count }, () => 2 * Math.PI * next()).sort((a, b) => b - a);
    const corners = angles.map((angle) => pointOn(1.4 * radius, radius, angle));
    const isRoom = wallsAlong(corners).every(
      ({ length, cornerAtRight: corner, turn }) =>
        turn === 'inside' && length > 24 && corner > 0.5 && corner < Math.PI - 0.2,
    );
    if (isRoom) return corners;
  }
}

function pointOn(wide: number, deep: number, angle: number): Corner {
  return [wide * Math.cos(angle), deep * Math.sin(angle)];
}

/** Off by anything up to so much, either way. */
export function upTo(most: number, next: () => number): number {
  return (2 * next() - 1) * most;
}

/** As an honest tape and gauge have it: off by up to 1/4 in, and by up to 1/2°. */
export function measured(walls: readonly Wall[], next: () => number): Wall[] {
  return walls.map((wall) => ({
    ...wall,
    length: wall.length + upTo(0.25, next),
    cornerAtRight: radians(wall.cornerAtRight + toRadians(degrees(upTo(0.5, next)))),
  }));
}
