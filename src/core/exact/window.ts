/**
 * The window of a set-up: how far approach, tilt and height may all be off at once, each either way, with the
 * outline nowhere farther than a tolerance from what was aimed at.
 * Derived: a point of the outline moves square to itself by slope · change, to first order (outline-of.ts gives
 * the slopes). What moves the whole cove sideways is taken out: the middle of its face stays. In a box of
 * half-widths a, b, h the farthest move is |slope a| a + |slope b| b + |slope h| h, at a corner of the box; so
 * each point of the outline is one straight limit, and the boxes that keep them all are the solutions of a
 * linear program whose entries are all 0 or more. Of them the one is taken that grows evenly in the three
 * until a limit is met, then in height, tilt and approach, one after the other, as far as the limits leave.
 */
import { computeCut } from '../cove/cut.ts';
import type { Blade, Setting } from '../cove/cove.ts';
import { computeOutline } from '../cove/outline.ts';
import { outlineOf, placeBlade } from '../match/outline-of.ts';
import { degrees, radians, toDegrees, toRadians, type Degrees } from '../units/angle.ts';

export interface Window {
  /** Either way, all three at once. */
  readonly approach: Degrees;
  readonly tilt: Degrees;
  /** Inches. */
  readonly height: number;
}

export const WINDOW_TOLERANCE_INCHES = 1 / 64;
/** They grow in this proportion: half a degree to a sixty-fourth. */
const EVEN = [toRadians(degrees(0.5)), toRadians(degrees(0.5)), 1 / 64] as const;
/** No scale is read wrong by more, no height set so: past it the first order says nothing. */
const MOST = [toRadians(degrees(2)), toRadians(degrees(2)), 1 / 16] as const;
const OUTLINE_STEPS = 60;
const STEP = 1e-6;

/** @param tolerance inches, square to the outline */
export function computeWindow(
  setting: Setting,
  blade: Blade,
  tolerance = WINDOW_TOLERANCE_INCHES,
): Window {
  const limits = limitsOf(setting, blade);
  const sum = (box: readonly number[], limit: readonly number[]): number =>
    box.reduce((all, half, at) => all + half * (limit[at] ?? 0), 0);
  const even = Math.min(
    ...limits.map((limit) => tolerance / sum(EVEN, limit)),
    ...MOST.map((most, at) => most / (EVEN[at] ?? 1)),
  );
  const box = EVEN.map((half) => half * even);
  for (const at of [2, 1, 0]) {
    const room = limits.map((limit) => (tolerance - sum(box, limit)) / (limit[at] ?? 0));
    const more = Math.max(0, Math.min(...room));
    box[at] = Math.min(MOST[at] ?? 0, (box[at] ?? 0) + more);
  }
  const [approach = 0, tilt = 0, height = 0] = box;
  return { approach: toDegrees(radians(approach)), tilt: toDegrees(radians(tilt)), height };
}

/** For points along the outline, how far each moves for a radian of approach, of tilt, for an inch of height. */
function limitsOf(setting: Setting, blade: Blade): (readonly [number, number, number])[] {
  const placed = placeBlade(setting, blade);
  const off = outlineOf(blade, placed);
  const cosB = Math.cos(setting.tilt);
  const middleAt = (moved: Partial<Setting>): number => {
    const { near, far } = computeCut(blade, { ...setting, ...moved });
    return (near + far) / 2;
  };
  const middle = middleAt({});
  const sideways = [
    (middleAt({ approach: radians(setting.approach + STEP) }) - middle) / STEP,
    (middleAt({ tilt: radians(setting.tilt + STEP) }) - middle) / STEP,
    (middleAt({ height: setting.height + STEP }) - middle) / STEP,
  ] as const;
  // Slope height at a height held still grows with the tilt: s = (h - (t / 2) sin b) / cos b.
  const slopeByTilt = placed.slopeHeight * Math.tan(setting.tilt) - blade.kerf / 2;
  return computeOutline(blade, setting, OUTLINE_STEPS).map((point) => {
    const [byApproach, byLean, bySlopeHeight, byShift] = off(point).slopes;
    return [
      Math.abs(byApproach - byShift * sideways[0]),
      Math.abs(byLean + bySlopeHeight * slopeByTilt - byShift * sideways[1]),
      Math.abs(bySlopeHeight / cosB - byShift * sideways[2]),
    ] as const;
  });
}
