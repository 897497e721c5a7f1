/**
 * Points and lines in the plane, for answers that are found by drawing: a corner is two lines, a
 * molding's edge is a line beside another, and a point is where two lines meet. No formula of a miter
 * stands here.
 */
export type Point = readonly [x: number, y: number];

/** A point on it, and the way it runs. */
export interface Line {
  readonly through: Point;
  readonly along: Point;
}

export const minus = ([a, b]: Point, [c, d]: Point): Point => [a - c, b - d];
export const plus = ([a, b]: Point, [c, d]: Point, times = 1): Point => [
  a + times * c,
  b + times * d,
];
export const dot = ([a, b]: Point, [c, d]: Point): number => a * c + b * d;
export const lengthOf = (one: Point): number => Math.hypot(...one);

export function unit(one: Point): Point {
  const size = lengthOf(one);
  return [one[0] / size, one[1] / size];
}

/** Turned to the left by so many degrees. */
export function turned([x, y]: Point, degrees: number): Point {
  const turn = (degrees * Math.PI) / 180;
  return [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
}

/** The line beside another, so far to its left. */
export function beside({ through, along }: Line, left: number): Line {
  return { through: plus(through, turned(unit(along), 90), left), along };
}

export function meet(one: Line, other: Line): Point {
  const [a, b] = one.along;
  const [c, d] = other.along;
  const [x, y] = minus(other.through, one.through);
  return plus(one.through, one.along, (x * d - y * c) / (a * d - b * c));
}

/** How far along a line a point lies, counted from the point that the line is given by. */
export function reach({ through, along }: Line, point: Point): number {
  return dot(minus(point, through), unit(along));
}
