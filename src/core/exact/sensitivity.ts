/** How much a cove changes for a little more of each thing that is set or taken as known. */
import { computeCut } from '../cove/cut.ts';
import type { Blade, Setting } from '../cove/cove.ts';
import { degrees, radians, toRadians } from '../units/angle.ts';

/** The cove's three sizes, or changes of them; inches. */
export interface Sizes {
  readonly width: number;
  readonly depth: number;
  readonly offCenter: number;
}

export type Cause = 'approach' | 'tilt' | 'height' | 'blade diameter' | 'kerf';

export interface Sensitivity {
  readonly cause: Cause;
  /** Degrees of an angle, inches of the rest. */
  readonly by: number;
  readonly change: Sizes;
}

/** Half a degree is what a scale is read to, 1/64 what a height is set to, 1/8 a sharpening or two. */
const STEPS: readonly (readonly [Cause, number])[] = [
  ['approach', 0.5],
  ['tilt', 0.5],
  ['height', 1 / 64],
  ['blade diameter', -1 / 8],
  ['kerf', -1 / 32],
];

/** What each step changes, exactly: the cut after it less the cut before. */
export function computeSensitivities(setting: Setting, blade: Blade): Sensitivity[] {
  const before = computeCut(blade, setting);
  return STEPS.filter(([cause, by]) => cause !== 'kerf' || blade.kerf + by >= 0).map(
    ([cause, by]) => {
      const moved = moveCause(setting, blade, cause, by);
      const after = computeCut(moved.blade, moved.setting);
      return {
        cause,
        by,
        change: {
          width: after.width - before.width,
          depth: after.depth - before.depth,
          offCenter: after.offCenter - before.offCenter,
        },
      };
    },
  );
}

/** Setting and blade with one thing different: degrees of an angle, inches of the rest. */
export function moveCause(
  setting: Setting,
  blade: Blade,
  cause: Cause,
  by: number,
): { setting: Setting; blade: Blade } {
  const turn = toRadians(degrees(by));
  switch (cause) {
    case 'approach':
      return { setting: { ...setting, approach: radians(setting.approach + turn) }, blade };
    case 'tilt':
      return { setting: { ...setting, tilt: radians(setting.tilt + turn) }, blade };
    case 'height':
      return { setting: { ...setting, height: setting.height + by }, blade };
    case 'blade diameter':
      // At the same height above the table, which is measured.
      return { setting, blade: { ...blade, diameter: blade.diameter + by } };
    case 'kerf':
      return { setting, blade: { ...blade, kerf: blade.kerf + by } };
  }
}

/**
 * How far a rail turns whose mark on one edge of the table is missed: the approach changes by as much.
 * Derived: the rail meets the front and back edge where it is measured, `tableDepth` apart along the
 * blade line; one of both a little to the side turns it by miss · cos² a / depth, a the approach (small miss).
 *
 * @param miss along the table's edge; inches. @returns degrees
 */
export function turnOfMissedMark(setting: Setting, tableDepth: number, miss: number): number {
  const turn = (miss * Math.cos(setting.approach) ** 2) / tableDepth;
  return (turn * 180) / Math.PI;
}
