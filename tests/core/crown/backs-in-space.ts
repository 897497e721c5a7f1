/** The backs of crowns as planes in space, and the cut between two of them; none of the core's formulas. */
export type Vector = readonly [number, number, number];

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const less = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const unit = (a: Vector): Vector => {
  const size = Math.sqrt(dot(a, a));
  return [a[0] / size, a[1] / size, a[2] / size];
};

/** The angle between two directions, sign left aside, in degrees; exact for small ones too. */
export const between = (a: Vector, b: Vector): number => {
  const [p, q] = [unit(a), unit(b)];
  const sine = cross(p, q);
  return (Math.atan2(Math.sqrt(dot(sine, sine)), Math.abs(dot(p, q))) * 180) / Math.PI;
};

export interface Back {
  readonly along: Vector;
  /** Over the back's width, square to along. */
  readonly across: Vector;
}

/** A back that leans off its wall by the spring, in degrees; up lies in the wall, square to along. */
export function leaningBack(along: Vector, intoRoom: Vector, up: Vector, spring: number): Back {
  const s = (spring * Math.PI) / 180;
  const lean = (at: 0 | 1 | 2): number => intoRoom[at] * Math.sin(s) + up[at] * Math.cos(s);
  return { along, across: [lean(0), lean(1), lean(2)] };
}

/** Miter and bevel in degrees: the line where two backs meet, and the plane that mirrors one to the other. */
export function cutBetween(first: Back, second: Back): readonly [miter: number, bevel: number] {
  const normal = cross(first.along, first.across);
  const meeting = cross(normal, cross(second.along, second.across));
  // The plane that mirrors one run onto the other holds the cut.
  const mirror = less(first.along, second.along);
  return [between(meeting, first.across), between(mirror, cross(meeting, normal))];
}
