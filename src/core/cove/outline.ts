/** The cove's outline in the board's end, and what follows from it: area, arc length. */
import type { Blade, Setting } from './cove.ts';
import { edgesOf } from './cut.ts';

export interface OutlinePoint {
  /** Across the feed, toward the far rail. */
  readonly u: number;
  /** Above the face, into the board. */
  readonly depth: number;
}

/** Fine enough that arc length and area are true to 1e-5 of their size on everyday coves. */
const STEPS = 256;

/**
 * Points of the outline from the near edge over the deepest line to the far edge,
 * 2 · steps + 2 of them, closest together near the top, where the outline turns.
 */
export function computeOutline(blade: Blade, setting: Setting, steps = STEPS): OutlinePoint[] {
  const near: OutlinePoint[] = [];
  const far: OutlinePoint[] = [];
  const edgesAtLevel = edgesOf(blade, setting);
  for (let step = 0; step <= steps; step++) {
    const toTop = 1 - step / steps;
    const depth = setting.height * (1 - toTop * toTop);
    const edges = edgesAtLevel(depth);
    near.push({ u: edges.near, depth });
    far.push({ u: edges.far, depth });
  }
  return [...near, ...far.reverse()];
}

/** Length along the outline from edge to edge: times the run's length, the surface to finish. */
export function computeArcLength(blade: Blade, setting: Setting): number {
  let length = 0;
  let before: OutlinePoint | undefined;
  for (const point of computeOutline(blade, setting)) {
    if (before !== undefined) length += Math.hypot(point.u - before.u, point.depth - before.depth);
    before = point;
  }
  return length;
}

/**
 * Area of the cove's section. Derived: the integral of far - near over the depth, with
 * depth = h (1 - v²) so that the integrand is smooth at the top, by Simpson's rule.
 */
export function computeSectionArea(blade: Blade, setting: Setting): number {
  const steps = 64;
  const edgesAtLevel = edgesOf(blade, setting);
  const at = (v: number): number => {
    const edges = edgesAtLevel(setting.height * (1 - v * v));
    return (edges.far - edges.near) * 2 * setting.height * v;
  };
  let sum = at(0) + at(1);
  for (let step = 1; step < steps; step++) sum += at(step / steps) * (step % 2 === 1 ? 4 : 2);
  return sum / (3 * steps);
}
