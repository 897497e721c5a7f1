/**
 * Inverse: the approach and tilt that cut a drawn cove.
 *
 * Upright (off-center 0), derived: width = C sin a + t cos a = sqrt(C² + t²) sin(a + atan(t / C)),
 * C the blade's chord at the table, t the kerf; the smaller root.
 * Tilted: Newton on both unknowns with the exact slopes of width and off-center. By the envelope
 * theorem an edge's slope is taken with its offset n held still, so each step costs a few square
 * roots. Where that strays, two nested roots: for each tilt the smaller approach that gives the
 * width, along which off-center grows with the tilt. (Within some degrees of straight across a thick
 * blade can cut the same cove at two tilts; either is an answer.)
 * An answer must satisfy the forward model (cut.ts) to SETUP_RESIDUAL_INCHES.
 */
import { QUARTER_TURN, radians, type Radians } from '../units/angle.ts';
import {
  FLAT_BLADE_MARGIN_RADIANS,
  SETUP_RESIDUAL_INCHES,
  TILT_MARGIN_RADIANS,
} from '../units/tolerance.ts';
import { bisect, bisectLast } from './bisect.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { clamp, computeCut } from './cut.ts';
import { approachForWidth, computeWidestCove } from './widest.ts';

const NEWTON_STEPS = 24;

/**
 * The setting that cuts `cove` with `blade`, of any tilt at which the blade's middle stays below
 * the table, or undefined when there is none. Sizes must be sound (see checkSizes); limits of the
 * saw are feasibility.ts's business.
 */
export function solveSetting(cove: Cove, blade: Blade): Setting | undefined {
  if (cove.depth >= blade.diameter / 2) return undefined;
  if (cove.offCenter === 0) return solveUpright(cove, blade);
  return solveByNewton(cove, blade) ?? solveNested(cove, blade);
}

function solveUpright(cove: Cove, blade: Blade): Setting | undefined {
  const chord = 2 * Math.sqrt(cove.depth * (blade.diameter - cove.depth));
  const sine = cove.width / Math.hypot(chord, blade.kerf);
  if (sine > 1 || cove.width <= blade.kerf) return undefined;
  const approach = Math.asin(sine) - Math.atan2(blade.kerf, chord);
  return { approach: radians(approach), tilt: radians(0), height: cove.depth };
}

/** The largest tilt at which the blade's middle still lies below the table: h = R cos b + (t/2) sin b. */
export function greatestTilt(blade: Blade, height: number): Radians {
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const tilt = Math.atan2(half, radius) + Math.acos(height / Math.hypot(radius, half));
  return radians(Math.min(tilt, QUARTER_TURN - FLAT_BLADE_MARGIN_RADIANS) - TILT_MARGIN_RADIANS);
}

/**
 * The largest tilt worth trying for a cove: below greatestTilt, and below the one at which the blade
 * lying along the feed already cuts as wide as the cove. Only a cove little wider than the kerf
 * meets the second.
 */
export function greatestTiltFor(cove: Pick<Cove, 'width' | 'depth'>, blade: Blade): Radians {
  const most = greatestTilt(blade, cove.depth);
  const cutsLess = (tilt: number): boolean =>
    computeCut(blade, { approach: radians(0), tilt: radians(tilt), height: cove.depth }).width <
    cove.width;
  return cutsLess(most) ? most : radians(bisectLast(cutsLess, 0, most) - TILT_MARGIN_RADIANS);
}

function solveByNewton(cove: Cove, blade: Blade): Setting | undefined {
  const { width, depth: height, offCenter } = cove;
  const radius = blade.diameter / 2;
  const half = blade.kerf / 2;
  const mostTilt = greatestTilt(blade, height);
  const chord = 2 * Math.sqrt(height * (blade.diameter - height));
  let approach = Math.asin(Math.min(0.98, width / Math.hypot(chord, blade.kerf)));
  let tilt = Math.min(Math.atan2(offCenter, height * Math.cos(approach)), mostTilt * 0.9);
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
    const missCenter = slope * sinB * cosA - (far + near) / 2 - offCenter;
    const widthByApproach = farByApproach - nearByApproach;
    const isClose = Math.abs(missWidth) + Math.abs(missCenter) < SETUP_RESIDUAL_INCHES;
    // One step more from close by squares what is still missing: down to a double's own noise.
    if (isClose && close) {
      // On the far side of the widest cove the larger of the two approaches was met.
      if (widthByApproach <= 0) return undefined;
      return { approach: radians(approach), tilt: radians(tilt), height };
    }
    close = isClose;
    const widthByTilt = farByTilt - nearByTilt;
    const centerByApproach = -slope * sinB * sinA - (farByApproach + nearByApproach) / 2;
    const centerByTilt = (slopeByTilt * sinB + slope * cosB) * cosA - (farByTilt + nearByTilt) / 2;
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

/** Slow and sure: halving on the tilt, and on the approach within it. */
export function solveNested(cove: Cove, blade: Blade): Setting | undefined {
  const { width, depth: height, offCenter } = cove;
  const most = greatestTiltFor(cove, blade);
  if (computeWidestCove(blade, height, most) < width) return undefined;
  // A tilt too small for the width is too small for the off-center too.
  const isTooSmall = (tilt: number): boolean => {
    const reached = offCenterAtTilt(cove, blade, radians(tilt));
    return reached === undefined || reached < offCenter;
  };
  const tilt = radians(bisect(isTooSmall, 0, most).fails);
  const approach = approachForWidth(blade, height, tilt, width);
  if (approach === undefined) return undefined;
  const setting = { approach, tilt, height };
  const cut = computeCut(blade, setting);
  const miss = Math.abs(cut.width - width) + Math.abs(cut.offCenter - offCenter);
  return miss <= SETUP_RESIDUAL_INCHES ? setting : undefined;
}

/** The off-center that this tilt gives a cove of that width and depth; undefined when too wide for it. */
export function offCenterAtTilt(
  cove: Pick<Cove, 'width' | 'depth'>,
  blade: Blade,
  tilt: Radians,
): number | undefined {
  const approach = approachForWidth(blade, cove.depth, tilt, cove.width);
  if (approach === undefined) return undefined;
  return computeCut(blade, { approach, tilt, height: cove.depth }).offCenter;
}
