/**
 * A differently built reference: the blade as a solid of a general-purpose geometry library
 * (manifold-3d), tilted in the saw's own left and right, seen along the feed.
 * Axes of the saw here: X to the operator's right, Y to the back, Z up.
 */
import { beforeAll, describe, expect, test } from '@jest/globals';
import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { computeCut } from '../../../src/core/cove/cut.ts';
import { feedFor, layOutRails, type TiltSide } from '../../../src/core/cove/rails.ts';
import { degrees, toRadians } from '../../../src/core/units/angle.ts';
import { count } from '../../deep.ts';
import { seededNumbers } from '../../seeded-numbers.ts';

const SEGMENTS = 2880;
/** The library's disc is a polygon: its sides miss the circle by this at most, radius 7. */
const TOLERANCE = 2e-5;

let solid: ManifoldToplevel;
beforeAll(async () => {
  solid = await Module();
  solid.setup();
});

interface Case {
  readonly side: TiltSide;
  readonly diameter: number;
  readonly kerf: number;
  readonly approachDeg: number;
  readonly tiltDeg: number;
  readonly slope: number;
}

const BLADES = count(240, 48);

function cases(): Case[] {
  const next = seededNumbers(20_011);
  return Array.from({ length: BLADES }, (_, index) => {
    const diameter = 7 + 7 * next();
    return {
      side: index % 2 === 0 ? 'left' : 'right',
      diameter,
      kerf: 0.04 + 0.22 * next(),
      approachDeg: 8 + 78 * next(),
      tiltDeg: index % 6 < 2 ? 0 : 48 * next(),
      slope: diameter * (0.03 + 0.25 * next()),
    };
  });
}

/** A disc around the arbor as the blade stands in the saw, seen along the feed. */
function seeAlongFeed(one: Case, thickness: number): [number, number][] {
  const lean = one.side === 'left' ? -1 : 1;
  const radius = one.diameter / 2;
  const moves = [
    (blade: Manifold) => blade.rotate([0, 90, 0]),
    (blade: Manifold) => blade.translate([0, 0, one.slope - radius]),
    (blade: Manifold) => blade.rotate([0, lean * one.tiltDeg, 0]),
    // Turn the feed (front to back, toward the right on a left-tilt saw) into the view, then stand it up.
    (blade: Manifold) => blade.rotate([0, 0, -lean * one.approachDeg]),
    (blade: Manifold) => blade.trimByPlane([0, 0, 1], 0),
    (blade: Manifold) => blade.rotate([90, 0, 0]),
  ];
  // Each move makes a solid of its own, which the library keeps until it is told.
  let blade = solid.Manifold.cylinder(thickness, radius, radius, SEGMENTS, true);
  for (const move of moves) {
    const moved = move(blade);
    blade.delete();
    blade = moved;
  }
  const seen = blade.project();
  const points = seen.toPolygons().flat();
  blade.delete();
  seen.delete();
  return points;
}

interface Measured {
  readonly near: number;
  readonly far: number;
  readonly depth: number;
  /** Where a disc without thickness tops out in the middle of the blade. */
  readonly middleLine: number;
  /** Where the solid is deepest: of a blade that leans, one corner of its rim. */
  readonly deepestPoint: number;
}

/** Width at the table, greatest depth, and both edges, measured toward the far rail. */
function measureSolid(one: Case): Measured {
  const lean = one.side === 'left' ? -1 : 1;
  const seen = seeAlongFeed(one, one.kerf);
  // Far is to the left and back of a left-tilt saw, to the right and back of a right-tilt one.
  const atTable = seen.filter(([, y]) => Math.abs(y) < 1e-7).map(([x]) => lean * x);
  const topOf = (points: readonly (readonly [number, number])[]): number => {
    const highest = Math.min(...points.map(([, y]) => y));
    const top = points.filter(([, y]) => y < highest + 1e-7).map(([x]) => lean * x);
    return (Math.min(...top) + Math.max(...top)) / 2;
  };
  return {
    near: Math.min(...atTable),
    far: Math.max(...atTable),
    depth: -Math.min(...seen.map(([, y]) => y)),
    middleLine: topOf(seeAlongFeed(one, 1e-7)),
    deepestPoint: topOf(seen),
  };
}

describe('the silhouette of a solid blade', () => {
  test(`agrees with ${BLADES} random blades, left and right tilt, in width, depth and both lines`, () => {
    const worst = { near: 0, far: 0, depth: 0, middleLine: 0, deepestPoint: 0 };
    let [corners, between] = [0, 0];
    for (const one of cases()) {
      const tilt = toRadians(degrees(one.tiltDeg));
      const height = one.slope * Math.cos(tilt) + (one.kerf / 2) * Math.sin(tilt);
      const setting = { approach: toRadians(degrees(one.approachDeg)), tilt, height };
      const ours = computeCut(one, setting);
      const theirs = measureSolid(one);
      for (const key of ['near', 'far', 'depth', 'middleLine', 'deepestPoint'] as const) {
        worst[key] = Math.max(worst[key], Math.abs(ours[key] - theirs[key]));
      }
      // The deepest line is the solid's own deepest from one kerf off center on; nearer to the middle
      // it lies on the flat, from that corner to the middle of the blade.
      if (ours.offCenter >= one.kerf) {
        corners++;
        expect(Math.abs(ours.deepestLine - theirs.deepestPoint)).toBeLessThan(TOLERANCE);
        const found = theirs.deepestPoint - (theirs.near + theirs.far) / 2;
        expect(Math.abs(ours.offCenter - found)).toBeLessThan(2 * TOLERANCE);
      } else {
        between++;
        expect(ours.deepestLine).toBeGreaterThan(theirs.deepestPoint - TOLERANCE);
        expect(ours.deepestLine).toBeLessThan(theirs.middleLine + TOLERANCE);
      }
    }
    for (const difference of Object.values(worst)) expect(difference).toBeLessThan(TOLERANCE);
    expect(corners).toBeGreaterThan(BLADES / 5);
    expect(between).toBeGreaterThan(BLADES / 5);
  });

  test.each(['left', 'right'] as const)(
    "a %s-tilt saw's blade leans to that side of the operator, and the deep side lies to the far rail",
    (side) => {
      const tilted = { side, diameter: 10, kerf: 0.125, approachDeg: 30, tiltDeg: 37, slope: 0.9 };
      const lean = side === 'left' ? -1 : 1;
      const box = solid.Manifold.cylinder(0.125, 5, 5, SEGMENTS, true)
        .rotate([0, 90, 0])
        .translate([0, 0, tilted.slope - 5])
        .rotate([0, lean * tilted.tiltDeg, 0])
        .trimByPlane([0, 0, 1], 0)
        .boundingBox();
      // The highest tooth stands on the side that the saw tilts to.
      expect(Math.sign(box.min[0] + box.max[0])).toBe(lean);
      const seen = measureSolid(tilted);
      expect(seen.deepestPoint).toBeGreaterThan((seen.near + seen.far) / 2 + 0.2);
      expect(feedFor(side)).toBe(side === 'left' ? 'left to right' : 'right to left');
    },
  );
});

describe('rail marks', () => {
  const table = { front: 11.5, back: 15.5, width: 40, slotToBlade: 4.5 };
  const flats = { near: 0.6, far: 0.4 };
  const approach = toRadians(degrees(31));
  const edges = { near: -1.2, far: 1.7 };

  test('mirror between left-tilt and right-tilt saws', () => {
    const left = layOutRails(approach, edges, flats, table, 'left');
    const right = layOutRails(approach, edges, flats, table, 'right');
    for (const rail of ['near', 'far'] as const) {
      for (const edge of ['front', 'back'] as const) {
        expect(left[rail][edge].fromBlade).toBeCloseTo(-right[rail][edge].fromBlade, 12);
      }
    }
  });

  test.each(['left', 'right'] as const)(
    'on a %s-tilt saw lie along the feed, the blank apart, the near rail before the blade',
    (side) => {
      const layout = layOutRails(approach, edges, flats, table, side);
      const lean = side === 'left' ? -1 : 1;
      // The feed as a vector of the saw: toward the back, and away from the lean.
      const feed = { x: -lean * Math.sin(approach), y: Math.cos(approach) };
      const toFar = { x: lean * Math.cos(approach), y: Math.sin(approach) };
      const across = (x: number, y: number): number => x * toFar.x + y * toFar.y;
      const points = (rail: 'near' | 'far') => [
        { x: layout[rail].front.fromBlade, y: -table.front },
        { x: layout[rail].back.fromBlade, y: table.back },
      ];
      for (const rail of ['near', 'far'] as const) {
        const [front, back] = points(rail);
        const run = { x: back!.x - front!.x, y: back!.y - front!.y };
        expect(run.x * feed.y - run.y * feed.x).toBeCloseTo(0, 9);
        const wanted = rail === 'near' ? edges.near - flats.near : edges.far + flats.far;
        expect(across(front!.x, front!.y)).toBeCloseTo(wanted, 12);
      }
      expect(layout.spacing).toBeCloseTo(3.9, 12);
      expect(layout.railLength).toBeCloseTo(27 / Math.cos(approach) + 8, 12);
    },
  );

  test('are told from the miter slot too, and off the table where they are', () => {
    const layout = layOutRails(approach, edges, flats, { ...table, width: 14 }, 'left');
    expect(layout.near.front.fromSlot).toBeCloseTo(layout.near.front.fromBlade + 4.5, 12);
    expect(layout.far.front.onTable).toBe(false);
    // It then crosses the table's left edge, 7 in from the blade, where its line says so.
    const crossing = layout.far.left!;
    const slope = (layout.far.back.fromBlade - layout.far.front.fromBlade) / 27;
    expect(layout.far.front.fromBlade + slope * (crossing + 11.5)).toBeCloseTo(-7, 9);
  });
});
