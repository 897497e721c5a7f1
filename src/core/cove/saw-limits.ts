/** What a saw allows: how high its blade rises, how far it tilts, how steeply it may be crossed. */
import { fault, type Fault } from '../faults/fault.ts';
import { degrees, toRadians, type Degrees, type Radians } from '../units/angle.ts';
import { LIMIT_SLACK_INCHES } from '../units/tolerance.ts';
import type { Blade } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';

export interface SawLimits {
  /** Highest tooth above the table, blade upright; inches. */
  readonly greatestHeightUpright?: number;
  /** The same at a tilt of 45°. */
  readonly greatestHeightAt45?: number;
  /** Diameter of the blade that both heights were measured with; the blade's own where absent. Inches. */
  readonly heightsMeasuredWith?: number;
  /** Most tilt from upright; 45° where absent. */
  readonly tiltStop?: Degrees;
  /** Most approach from the blade line; 75° where absent. */
  readonly steepestApproach?: Degrees;
}

/**
 * Kept below the table for flange and arbor where the saw's own heights aren't given: a 10 in saw then
 * rises 3 1/8, as such saws do, from memory [M] (3 to 3 1/2 in tables of saws).
 */
export const FLANGE_ALLOWANCE_INCHES = 1 + 7 / 8;
export const USUAL_TILT_STOP = degrees(45);
/** Nearer to straight across, the board meets the blade's flat side. Common practice [C]. */
export const USUAL_STEEPEST_APPROACH = degrees(75);
const HALF_RIGHT_ANGLE = Math.PI / 4;

export interface Rise {
  /** The most at this tilt, along the blade's slope; inches, 0 or more. */
  readonly most: number;
  /** Whether the saw's own height isn't given, so that one is assumed. */
  readonly assumed: boolean;
}

/**
 * How high a saw brings a blade. The saw's heights become slope heights (height / cos of the tilt),
 * interpolated by the tilt. Upright, a height that isn't given is the blade's radius less the allowance
 * for flange and arbor; at 45° it is as much along the slope as upright.
 * Derived: the arbor at its highest stays where it is whatever blade it carries, and the highest tooth
 * stands one radius from it along the slope. A blade smaller by d therefore rises d / 2 less along its
 * slope at every tilt: d / 2 less in height upright, d / 2 · cos 45° less at 45°.
 */
export function computeRise(tilt: Radians, blade: Blade, saw: SawLimits): Rise {
  const { greatestHeightUpright, greatestHeightAt45, heightsMeasuredWith = blade.diameter } = saw;
  const lower = (heightsMeasuredWith - blade.diameter) / 2;
  const assumed = blade.diameter / 2 - FLANGE_ALLOWANCE_INCHES;
  const upright = greatestHeightUpright === undefined ? assumed : greatestHeightUpright - lower;
  const at45 =
    greatestHeightAt45 === undefined
      ? upright
      : greatestHeightAt45 / Math.cos(HALF_RIGHT_ANGLE) - lower;
  const share = tilt / HALF_RIGHT_ANGLE;
  return {
    most: Math.max(0, upright + share * (at45 - upright)),
    assumed: greatestHeightUpright === undefined,
  };
}

/** The fault of a height that the blade can't rise to, if it is one; inches. */
export function checkRise(height: number, tilt: Radians, blade: Blade, saw: SawLimits): Fault[] {
  const needed = height / Math.cos(tilt);
  const { most, assumed } = computeRise(tilt, blade, saw);
  if (needed <= most + LIMIT_SLACK_INCHES) return [];
  return [
    fault(
      assumed ? 'cove.blade-cannot-rise-unstated-saw' : 'cove.blade-cannot-rise',
      COVE_SIZES.depth.key,
      { inches: needed },
      {
        limit: { inches: most },
        details: {
          allowance: { inches: FLANGE_ALLOWANCE_INCHES },
          // A shallower tilted cove takes more tilt: what would do isn't known by this alone.
          ...(tilt === 0 && most > 0 ? { depthThatWould: { inches: most } } : {}),
        },
      },
    ),
  ];
}

/** The saw's limits of angle, in radians, the usual ones standing in. */
export function angleLimits(saw: SawLimits): {
  readonly stop: Radians;
  readonly steepest: Radians;
} {
  return {
    stop: toRadians(saw.tiltStop ?? USUAL_TILT_STOP),
    steepest: toRadians(saw.steepestApproach ?? USUAL_STEEPEST_APPROACH),
  };
}
