/**
 * A cove that is too wide: no approach up to the steepest cuts its width at its depth. One rule for
 * upright and tilted blades, so that a cove a hair off center is judged as the centered one is. (Near
 * straight across a thick blade's lean alone would widen a cove that nobody wants to lean.)
 */
import { fault, type Fault } from '../faults/fault.ts';
import { toDegrees, radians, type Radians } from '../units/angle.ts';
import { STOP_SLACK_RADIANS } from '../units/tolerance.ts';
import { bisectLast } from './bisect.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';
import { computeCut } from './cut.ts';
import { offCenterAsAsked } from './deepest-line.ts';
import { angleLimits, checkRise, computeRise, type SawLimits } from './saw-limits.ts';
import { greatestTiltFor } from './search-setting.ts';
import { solveSetting } from './set-up.ts';
import { approachOfWidest } from './widest.ts';

/** The sizes that are tried as ways on: finer is never said. */
const WIDTH_STEP_INCHES = 1 / 64;
const DEPTH_STEP_INCHES = 1 / 64;
const DIAMETER_STEP_INCHES = 1 / 8;
/** Diameters that blades of table saws are sold in. Common practice [C]. */
const SOLD_DIAMETERS_INCHES = [7 + 1 / 4, 8 + 1 / 4, 10, 12, 14, 16];

/** Whether the approach is steeper than the saw's limit. */
export function isTooSteep({ approach }: Setting, saw: SawLimits): boolean {
  return approach > angleLimits(saw).steepest + STOP_SLACK_RADIANS;
}

/**
 * The widest cove of this depth and off-center that an approach up to the steepest cuts; inches. Where
 * no tilt up to the stop brings it so far off center, the widest at that stop.
 */
export function widestUpTo(cove: Cove, blade: Blade, saw: SawLimits): number {
  const { stop, steepest } = angleLimits(saw);
  const cutAt = (tilt: Radians): ReturnType<typeof computeCut> => {
    const approach = approachOfWidest(blade, cove.depth, tilt, steepest);
    return computeCut(blade, { approach, tilt, height: cove.depth });
  };
  if (cove.offCenter === 0) return cutAt(radians(0)).width;
  const most = Math.min(stop, greatestTiltFor(cove, blade));
  const isTooNear = (one: number): boolean =>
    offCenterAsAsked(cutAt(radians(one)), cove) < cove.offCenter;
  const tilt = bisectLast(isTooNear, 0, most);
  return cutAt(radians(tilt)).width;
}

/**
 * The largest blade that the saw is known to take: a sharpened one came in the next size that is sold,
 * and the saw's heights may have been measured with a larger one.
 */
function largestBlade({ diameter }: Blade, { heightsMeasuredWith = 0 }: SawLimits): number {
  const asSold = SOLD_DIAMETERS_INCHES.find((sold) => sold >= diameter) ?? diameter;
  return Math.max(asSold, heightsMeasuredWith);
}

/** The fault, with a width, a depth and a blade that would do: each tried by the saw's own limits. */
export function tooWide(cove: Cove, blade: Blade, saw: SawLimits): Fault {
  const depth = leastThat(
    (inches) => isInReach({ ...cove, depth: inches }, blade, saw),
    cove.depth,
    Math.min(blade.diameter / 2 - DEPTH_STEP_INCHES, computeRise(radians(0), blade, saw).most),
    DEPTH_STEP_INCHES,
  );
  const diameter = leastThat(
    (inches) => isInReach(cove, { ...blade, diameter: inches }, saw),
    blade.diameter,
    largestBlade(blade, saw),
    DIAMETER_STEP_INCHES,
  );
  const widest = widestUpTo(cove, blade, saw);
  const width = Math.floor(widest / WIDTH_STEP_INCHES) * WIDTH_STEP_INCHES;
  return fault(
    'cove.too-wide',
    COVE_SIZES.width.key,
    { inches: cove.width },
    {
      limit: { inches: widest },
      details: {
        ...(width > blade.kerf && width >= 2 * cove.offCenter
          ? { widthThatWould: { inches: width } }
          : {}),
        steepest: { degrees: toDegrees(angleLimits(saw).steepest) },
        ...(depth !== undefined && isInRise({ ...cove, depth }, blade, saw)
          ? { depthThatWould: { inches: depth } }
          : {}),
        ...(diameter !== undefined && isInRise(cove, { ...blade, diameter }, saw)
          ? { bladeThatWould: { inches: diameter } }
          : {}),
      },
    },
  );
}

/** Whether the saw's angles reach the cove. Once they do they go on to, the deeper it is, or the larger the blade. */
function isInReach(cove: Cove, blade: Blade, saw: SawLimits): boolean {
  const { stop } = angleLimits(saw);
  const setting = solveSetting(cove, blade, stop);
  if (setting === undefined || isTooSteep(setting, saw)) return false;
  return setting.tilt <= stop + STOP_SLACK_RADIANS;
}

/** Whether angles and rise reach a cove of sound sizes. The stock isn't looked at. */
export function isReached(cove: Cove, blade: Blade, saw: SawLimits): boolean {
  const { stop } = angleLimits(saw);
  const setting = solveSetting(cove, blade, stop);
  if (setting === undefined || isTooSteep(setting, saw)) return false;
  if (setting.tilt > stop + STOP_SLACK_RADIANS) return false;
  return checkRise(cove.depth, setting.tilt, blade, saw).length === 0;
}

/** Whether the blade rises to the cove's depth, leaning as it takes. */
function isInRise(cove: Cove, blade: Blade, saw: SawLimits): boolean {
  const setting = solveSetting(cove, blade, angleLimits(saw).stop);
  return setting !== undefined && checkRise(cove.depth, setting.tilt, blade, saw).length === 0;
}

/** The least multiple of the step, up to `most`, from which on the condition holds; undefined where none does. */
function leastThat(
  holds: (inches: number) => boolean,
  from: number,
  most: number,
  step: number,
): number | undefined {
  let fails = Math.floor(from / step);
  let enough = Math.floor(most / step);
  if (enough <= fails || !holds(enough * step)) return undefined;
  while (enough - fails > 1) {
    const middle = Math.floor((fails + enough) / 2);
    if (holds(middle * step)) enough = middle;
    else fails = middle;
  }
  return enough * step;
}
