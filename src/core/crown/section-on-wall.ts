/** The section of a molding with a cove as it stands on the wall: back bevels cut, or its back on the wall. */
import { QUARTER_TURN, type Radians } from '../units/angle.ts';
import type { ProfilePoint } from './raked-profile.ts';

/** A point of the section as the blank lies: along its face from one edge, and from the face toward the back. */
export interface BlankPoint {
  /** From the edge that goes down on the wall, inches. */
  readonly along: number;
  /** Inches. */
  readonly deep: number;
}

export interface SectionOnWall {
  /** All round, from the edge that lies down on the wall along the cove; closed, inches. */
  readonly around: readonly ProfilePoint[];
  /** The cove alone, from that edge's side to the other. */
  readonly cove: readonly ProfilePoint[];
}

/**
 * Places the section of a blank on the wall. At a spring angle the edges of its face are the edges on wall
 * and ceiling, and the back is cut off along both; without one its back lies on the wall.
 *
 * Derived: up along the face runs (sin s, cos s), into the wood (-cos s, sin s), out from the wall and
 * up, so a point so far along and deep stands out by along · sin s - deep · cos s and up by
 * along · cos s + deep · sin s. The wall is where the first is 0, that is deep = along · tan s; the ceiling where the
 * second is F cos s, that is deep = (F - along) / tan s. The two meet F sin s cos s deep: a
 * blank thicker than that keeps nothing of its back.
 * @param cove from the lower edge's side to the other, within the blank.
 * @param blank inches, above 0.
 * @param spring between back and wall, above 0 and below a right angle; absent for what stands upright.
 */
export function placeOnWall(
  cove: readonly BlankPoint[],
  blank: { readonly width: number; readonly thickness: number },
  spring: Radians | undefined,
): SectionOnWall {
  const { width, thickness } = blank;
  const corners = (points: readonly BlankPoint[]): BlankPoint[] => [
    { along: 0, deep: 0 },
    ...cove,
    { along: width, deep: 0 },
    ...points,
  ];
  if (spring === undefined) {
    const place = ({ along, deep }: BlankPoint) => ({ out: thickness - deep, up: along });
    const back = [
      { along: width, deep: thickness },
      { along: 0, deep: thickness },
    ];
    return { around: corners(back).map(place), cove: cove.map(place) };
  }
  const [sine, cosine] = [Math.sin(spring), Math.cos(spring)];
  const place = ({ along, deep }: BlankPoint) => ({
    out: along * sine - deep * cosine,
    up: along * cosine + deep * sine,
  });
  const deepest = width * sine * cosine;
  const back =
    thickness < deepest
      ? [
          { along: width - thickness * Math.tan(spring), deep: thickness },
          { along: thickness * Math.tan(QUARTER_TURN - spring), deep: thickness },
        ]
      : [{ along: width * cosine * cosine, deep: deepest }];
  return { around: corners(back).map(place), cove: cove.map(place) };
}
