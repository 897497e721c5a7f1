/**
 * Inverse: the approach and tilt that cut a drawn cove.
 *
 * Upright (off-center 0), derived: width = C sin a + t cos a = sqrt(C² + t²) sin(a + atan(t / C)),
 * C the blade's chord at the table, t the kerf; the smaller root.
 * Tilted: Newton on both unknowns with the exact slopes of width and off-center. By the envelope
 * theorem an edge's slope is taken with its offset n held still, so each step costs a few square
 * roots. How far the line that the off-center leads to lies from the blade's middle toward its corner
 * is known from the start (deepest-line.ts), so that the unknowns stay smooth. Where the steps
 * stray, or meet a larger one of the approaches that cut the same width, the tilts are searched
 * (search-setting.ts). Within some degrees of straight across a thick blade can cut the same cove at
 * two tilts; either is an answer.
 * An answer must satisfy the forward model (cut.ts) to SETUP_RESIDUAL_INCHES.
 */
import { QUARTER_TURN, radians, type Radians } from '../units/angle.ts';
import { SETUP_RESIDUAL_INCHES, STOP_SLACK_RADIANS } from '../units/tolerance.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { clamp } from './cut.ts';
import { towardCorner } from './deepest-line.ts';
import { greatestTilt, greatestTiltFor, searchSetting } from './search-setting.ts';
import { isWhereFirstGrowing } from './widest.ts';

const NEWTON_STEPS = 24;

/**
 * The setting that cuts `cove` with `blade`, of any tilt at which the blade's middle stays below
 * the table and its middle plane above it, or undefined when there is none. Sizes must be sound (see
 * checkSizes); limits of the saw are feasibility.ts's business.
 *
 * @param stop most tilt that is wanted: a setting past it comes only where none up to it cuts the
 *   cove, and not always then
 */
export function solveSetting(
  cove: Cove,
  blade: Blade,
  stop: Radians = QUARTER_TURN,
): Setting | undefined {
  if (cove.depth >= blade.diameter / 2) return undefined;
  if (cove.offCenter === 0) return solveUpright(cove, blade);
  const met = solveByNewton(cove, blade);
  if (met?.isSmaller === true && met.setting.tilt <= stop + STOP_SLACK_RADIANS) return met.setting;
  const most = Math.min(stop, greatestTiltFor(cove, blade));
  return searchSetting(cove, blade, radians(most)) ?? met?.setting;
}

function solveUpright(cove: Cove, blade: Blade): Setting | undefined {
  const chord = 2 * Math.sqrt(cove.depth * (blade.diameter - cove.depth));
  const sine = cove.width / Math.hypot(chord, blade.kerf);
  if (sine > 1 || cove.width <= blade.kerf) return undefined;
  const approach = Math.asin(sine) - Math.atan2(blade.kerf, chord);
  return { approach: radians(approach), tilt: radians(0), height: cove.depth };
}

/** A setting that was met, and whether its approach is the smallest that cuts this width at its tilt. */
interface Met {
  readonly setting: Setting;
  readonly isSmaller: boolean;
}

function solveByNewton(cove: Cove, blade: Blade): Met | undefined {
  const { width, depth: height, offCenter } = cove;
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const mostTilt = greatestTilt(blade, height);
  const toCorner = towardCorner(cove, blade);
  const chord = 2 * Math.sqrt(height * (blade.diameter - height));
  let approach = Math.asin(Math.min(0.98, width / Math.hypot(chord, blade.kerf)));
  // As a blade without thickness would lean to cut the line where the middle is to top out.
  const middle = offCenter + toCorner * Math.cos(approach);
  let tilt = Math.min(Math.atan2(middle, height * Math.cos(approach)), mostTilt * 0.9);
  let close = false;
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const sinA = Math.sin(approach);
    const cosA = Math.cos(approach);
    const sinB = Math.sin(tilt);
    const cosB = Math.cos(tilt);
    const tanB = sinB / cosB;
    const slope = (height - half * sinB) / cosB;
    const slopeByTilt = slope * tanB - half;
    const base = radius - slope;
    const inner = (radius * cosA) / Math.sqrt(cosA * cosA + sinA * sinA * sinB * sinB);
    const farOffset = Math.max(-half, Math.min(half, (inner - base) / tanB));
    const nearOffset = Math.max(-half, Math.min(half, (-inner - base) / tanB));

    const farP = base + farOffset * tanB;
    const farReach = Math.sqrt((radius - farP) * (radius + farP));
    const farY = farOffset / cosB;
    const far = farY * cosA + farReach * sinA;
    const farByApproach = farReach * cosA - farY * sinA;
    const farByTilt = farY * tanB * cosA - (farP / farReach) * (farY / cosB - slopeByTilt) * sinA;

    const nearP = base + nearOffset * tanB;
    const nearReach = Math.sqrt((radius - nearP) * (radius + nearP));
    const nearY = nearOffset / cosB;
    const near = nearY * cosA - nearReach * sinA;
    const nearByApproach = -nearReach * cosA - nearY * sinA;
    const nearByTilt =
      nearY * tanB * cosA + (nearP / nearReach) * (nearY / cosB - slopeByTilt) * sinA;

    const missWidth = far - near - width;
    const line = slope * sinB - toCorner * cosB;
    const missCenter = line * cosA - (far + near) / 2 - offCenter;
    const widthByApproach = farByApproach - nearByApproach;
    const isClose = Math.abs(missWidth) + Math.abs(missCenter) < SETUP_RESIDUAL_INCHES;
    // One step more from close by squares what is still missing: down to a double's own noise.
    if (isClose && close) {
      const setting = { approach: radians(approach), tilt: radians(tilt), height };
      // On the far side of the widest cove a larger approach was met. While the far edge is cut by
      // the blade's upper face the width is one sine (widest.ts), and on its near side growing.
      const isSmaller =
        widthByApproach > 0 && (farOffset === half || isWhereFirstGrowing(blade, setting));
      return { setting, isSmaller };
    }
    close = isClose;
    const widthByTilt = farByTilt - nearByTilt;
    const lineByTilt = slopeByTilt * sinB + slope * cosB + toCorner * sinB;
    const centerByApproach = -line * sinA - (farByApproach + nearByApproach) / 2;
    const centerByTilt = lineByTilt * cosA - (farByTilt + nearByTilt) / 2;
    const determinant = widthByApproach * centerByTilt - widthByTilt * centerByApproach;
    const nextApproach =
      approach - (missWidth * centerByTilt - widthByTilt * missCenter) / determinant;
    const nextTilt =
      tilt - (widthByApproach * missCenter - missWidth * centerByApproach) / determinant;
    if (!Number.isFinite(nextApproach) || !Number.isFinite(nextTilt)) return undefined;
    // Never further than halfway to the limits in one step.
    approach = clamp(nextApproach, approach / 2, (approach + QUARTER_TURN) / 2);
    tilt = clamp(nextTilt, tilt / 2, (tilt + mostTilt) / 2);
  }
  return undefined;
}
