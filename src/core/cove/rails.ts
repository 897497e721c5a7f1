/**
 * Where the two rails sit on the table. Derived: a rail lies along a line u = const; with u across
 * the feed, feeding left to right u = x sin a - y cos a, right to left u = x sin a + y cos a, so at
 * a distance x behind the arbor the rail is y to the right of the blade line.
 */
import type { Radians } from '../units/angle.ts';
import type { CoveEdges } from './cut.ts';

/** The side to which the top of the blade leans, and with it the feed that puts the deep side far. */
export type TiltSide = 'left' | 'right';
export type Feed = 'left to right' | 'right to left';

export interface TableSize {
  /** From the arbor line (x = 0) to the table's front edge, and to its back edge; inches. */
  readonly front: number;
  readonly back: number;
  /** Side to side, the blade taken to stand midway. */
  readonly width?: number;
  /** From the miter slot, left of the blade, to the blade line. */
  readonly slotToBlade?: number;
}

export interface RailMark {
  /** To the right of the blade line; negative is to the left. Inches. */
  readonly fromBlade: number;
  /** To the right of the miter slot, where its distance is given. */
  readonly fromSlot?: number;
  readonly onTable: boolean;
}

export interface Rail {
  /** On the table's front edge and on its back edge. */
  readonly front: RailMark;
  readonly back: RailMark;
  /**
   * Where it crosses the table's left and right edges, from the arbor line toward the back; when it
   * does within the table, and the table's width is given.
   */
  readonly left?: number;
  readonly right?: number;
}

export interface RailLayout {
  readonly feed: Feed;
  readonly near: Rail;
  readonly far: Rail;
  /** Between the rails' faces: the blank's width. */
  readonly spacing: number;
  /** So that a rail reaches past both edges of the table by the clamp's lip at each end. */
  readonly railLength: number;
}

/** Half of the widest saw table with its extensions, where the shop gives no width. Common practice [C]. */
export const USUAL_HALF_TABLE_INCHES = 36;

/** Lip for the clamp at each end of a rail: 2 in, 4 to 6 better. Common practice [C]. */
export const CLAMP_LIP_INCHES = 4;

/** Left-tilt saws feed left to right, right-tilt saws right to left. Common practice [C]. */
export function feedFor(tiltSide: TiltSide): Feed {
  return tiltSide === 'left' ? 'left to right' : 'right to left';
}

/** Tape marks for both rails. `edges` is the cut at the table, `flats` what rides beside it. */
export function layOutRails(
  approach: Radians,
  edges: CoveEdges,
  flats: { readonly near: number; readonly far: number },
  table: TableSize,
  tiltSide: TiltSide,
): RailLayout {
  const feed = feedFor(tiltSide);
  const near = edges.near - flats.near;
  const far = edges.far + flats.far;
  const rail = (u: number): Rail => placeRail(u, approach, feed, table);
  return {
    feed,
    near: rail(near),
    far: rail(far),
    spacing: far - near,
    railLength: acrossTable(approach, table) + 2 * CLAMP_LIP_INCHES,
  };
}

/** Along the feed from edge to edge: front to back, or side to side where that comes first. */
function acrossTable(approach: Radians, { front, back, width }: TableSize): number {
  const sides = (width ?? 2 * USUAL_HALF_TABLE_INCHES) / Math.sin(approach);
  return Math.min((front + back) / Math.cos(approach), sides);
}

function placeRail(u: number, approach: Radians, feed: Feed, table: TableSize): Rail {
  const sine = Math.sin(approach);
  const cosine = Math.cos(approach);
  const hand = feed === 'left to right' ? 1 : -1;
  const { front, back, slotToBlade } = table;
  const half = (table.width ?? 2 * USUAL_HALF_TABLE_INCHES) / 2;
  const markAt = (x: number): RailMark => {
    const fromBlade = (hand * (x * sine - u)) / cosine;
    return {
      fromBlade,
      ...(slotToBlade === undefined ? {} : { fromSlot: fromBlade + slotToBlade }),
      onTable: Math.abs(fromBlade) <= half,
    };
  };
  const crossing = (y: number): number => (u + hand * y * cosine) / sine;
  const within = (x: number): boolean => table.width !== undefined && x >= -front && x <= back;
  const left = crossing(-half);
  const right = crossing(half);
  return {
    front: markAt(-front),
    back: markAt(back),
    ...(within(left) ? { left } : {}),
    ...(within(right) ? { right } : {}),
  };
}
