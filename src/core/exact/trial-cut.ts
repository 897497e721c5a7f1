/**
 * From the measured trial cut to what to move. Three sizes were measured and three things are set, so one
 * setting cuts just that: solveSetting finds it. What the scales missed by is what it differs by from the
 * setting that was aimed at, and the next setting takes that back. Which single thing may have been wrong
 * is told by trying each alone: one is likely whose best amount leaves no size off by more than was
 * measured to. How sure the moves are follows from the slopes of the sizes, inverted.
 */
import { checkSizes } from '../cove/check-sizes.ts';
import type { Blade, Cove, Setting } from '../cove/cove.ts';
import { computeCut } from '../cove/cut.ts';
import { solveSetting } from '../cove/set-up.ts';
import { failed, fault, ok, type Outcome } from '../faults/fault.ts';
import { degrees, radians, toDegrees, type Degrees } from '../units/angle.ts';
import { moveCause, type Cause, type Sizes } from './sensitivity.ts';

/** What to move, or how sure that is. */
export interface Moves {
  readonly approach: Degrees;
  readonly tilt: Degrees;
  /** Inches. */
  readonly height: number;
}

/** One thing that alone explains what was measured. */
export interface LikelyCause {
  readonly cause: Cause;
  /** How much more than was thought it was; degrees of an angle, inches of the rest. */
  readonly by: number;
  /** The farthest that a size is still off by then; inches. */
  readonly left: number;
}

export interface TrialAnswer {
  /** What the set-up was for. */
  readonly aimed: Setting;
  /** The setting that cuts what was measured, with this blade; its tilt below 0 where the deep side is the near one. */
  readonly cut: Setting;
  /** To be added to what approach, tilt and height read now. */
  readonly moves: Moves;
  /** One standard deviation of each, by a measuring that is off by `measuredTo`. */
  readonly sure: Moves;
  /** What approach, tilt and height are to read next; tilt below 0 leans to the other side. */
  readonly next: Setting;
  /** The likeliest first; none where it takes more than one. */
  readonly likely: readonly LikelyCause[];
  /** All sizes are right to what they were measured to: nothing need be moved. */
  readonly isRight: boolean;
}

/** A rule or calipers on wood: common practice [C]. */
export const MEASURED_TO_INCHES = 1 / 64;
/** Past these it isn't this cove that was cut, or not on this set-up. */
const MOST_TURN = degrees(6);
const MOST_TILT = degrees(10);
const MOST_HEIGHT_INCHES = 1 / 4;
const CAUSES: readonly (readonly [Cause, number])[] = [
  ['approach', 6],
  ['tilt', 10],
  ['height', 1 / 4],
  ['blade diameter', 1],
  ['kerf', 1 / 16],
];
const SMALL = 1e-5;
const STEPS = 30;

/**
 * @param cove that the set-up is for
 * @param measured of the trial piece; off-center below 0 where the deep side lies toward the near rail
 */
export function judgeTrial(
  cove: Cove,
  blade: Blade,
  measured: Sizes,
  measuredTo = MEASURED_TO_INCHES,
): Outcome<TrialAnswer> {
  const size = { ...measured, offCenter: Math.abs(measured.offCenter) };
  const wrong = [...checkSizes(cove, blade), ...checkSizes(size, blade)];
  if (wrong.length > 0) return failed(...wrong);
  const aimed = solveSetting(cove, blade);
  if (aimed === undefined) return failed(fault('trial.no-set-up', 'cove', null));
  const found = solveSetting({ ...size, ...offCenterTo(cove) }, blade);
  if (found === undefined) return failed(fault('trial.not-this-blade', 'measured', null));
  const lean = measured.offCenter < 0 ? -1 : 1;
  const cut = { ...found, tilt: radians(lean * found.tilt) };
  const off = {
    approach: toDegrees(radians(cut.approach - aimed.approach)),
    tilt: toDegrees(radians(cut.tilt - aimed.tilt)),
    height: cut.height - aimed.height,
  };
  const isFar =
    Math.abs(off.approach) > MOST_TURN ||
    Math.abs(off.tilt) > MOST_TILT ||
    Math.abs(off.height) > MOST_HEIGHT_INCHES;
  if (isFar) {
    const details = { tilt: { degrees: off.tilt }, height: { inches: off.height } };
    return failed(fault('trial.another-cove', 'measured', { degrees: off.approach }, { details }));
  }
  const sizes = sizesOf(aimed, blade);
  return ok({
    aimed,
    cut,
    moves: {
      approach: degrees(0 - off.approach),
      tilt: degrees(0 - off.tilt),
      height: 0 - off.height,
    },
    sure: sureOf(aimed, blade, measuredTo),
    next: {
      approach: radians(2 * aimed.approach - cut.approach),
      tilt: radians(2 * aimed.tilt - cut.tilt),
      height: 2 * aimed.height - cut.height,
    },
    likely: likelyCauses(aimed, blade, measured, measuredTo),
    isRight: farthest(sizes, measured) <= measuredTo,
  });
}

const offCenterTo = ({ offCenterTo: to }: Cove): Partial<Cove> =>
  to === undefined ? {} : { offCenterTo: to };

function sizesOf(setting: Setting, blade: Blade): Sizes {
  // Past upright the blade leans to the other side, and cuts the mirrored cove.
  const side = setting.tilt < 0 ? -1 : 1;
  const upright = { ...setting, tilt: radians(Math.abs(setting.tilt)) };
  const { width, depth, offCenter } = computeCut(blade, upright);
  return { width, depth, offCenter: side * offCenter };
}

const listOf = ({ width, depth, offCenter }: Sizes): number[] => [width, depth, offCenter];

function farthest(one: Sizes, other: Sizes): number {
  const others = listOf(other);
  return Math.max(...listOf(one).map((size, at) => Math.abs(size - (others[at] ?? 0))));
}

/** Each cause alone: the amount that brings the sizes nearest, by least squares in one unknown. */
function likelyCauses(
  aimed: Setting,
  blade: Blade,
  measured: Sizes,
  measuredTo: number,
): LikelyCause[] {
  const wanted = listOf(measured);
  return CAUSES.flatMap(([cause, most]): LikelyCause[] => {
    const at = (by: number): number[] => {
      const moved = moveCause(aimed, blade, cause, by);
      return listOf(sizesOf(moved.setting, moved.blade));
    };
    const least = cause === 'kerf' ? -Math.min(most, blade.kerf) : -most;
    let by = 0;
    for (let step = 0; step < STEPS; step++) {
      const here = at(by);
      const there = at(by + SMALL);
      const slopes = there.map((size, index) => (size - (here[index] ?? 0)) / SMALL);
      const misses = wanted.map((size, index) => size - (here[index] ?? 0));
      const up = slopes.reduce((sum, slope, index) => sum + slope * (misses[index] ?? 0), 0);
      const square = slopes.reduce((sum, slope) => sum + slope * slope, 0);
      if (square === 0) return [];
      const next = Math.min(most, Math.max(least, by + up / square));
      if (Math.abs(next - by) < SMALL * SMALL) break;
      by = next;
    }
    const moved = moveCause(aimed, blade, cause, by);
    const left = farthest(sizesOf(moved.setting, moved.blade), measured);
    return left <= measuredTo ? [{ cause, by, left }] : [];
  }).sort((one, other) => one.left - other.left);
}

function sureOf(setting: Setting, blade: Blade, measuredTo: number): Moves {
  const here = listOf(sizesOf(setting, blade));
  const columns = (['approach', 'tilt', 'height'] as const).map((cause) => {
    const moved = moveCause(setting, blade, cause, SMALL);
    return listOf(sizesOf(moved.setting, moved.blade)).map(
      (size, at) => (size - (here[at] ?? 0)) / SMALL,
    );
  });
  const inverse = invertThree(columns);
  const spread = (row: number): number =>
    measuredTo * Math.hypot(...[0, 1, 2].map((at) => inverse[row]?.[at] ?? Infinity));
  return { approach: degrees(spread(0)), tilt: degrees(spread(1)), height: spread(2) };
}

/** By Cramer's rule, from its columns. */
function invertThree(columns: readonly (readonly number[])[]): number[][] {
  const [a = [], b = [], c = []] = columns;
  const cross = (p: readonly number[], q: readonly number[]): number[] => {
    const [p0 = 0, p1 = 0, p2 = 0] = p;
    const [q0 = 0, q1 = 0, q2 = 0] = q;
    return [p1 * q2 - p2 * q1, p2 * q0 - p0 * q2, p0 * q1 - p1 * q0];
  };
  const rows = [cross(b, c), cross(c, a), cross(a, b)];
  const whole = (rows[0] ?? []).reduce((sum, entry, at) => sum + entry * (a[at] ?? 0), 0);
  return rows.map((row) => row.map((entry) => entry / whole));
}
