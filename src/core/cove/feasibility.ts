/**
 * Can this cove be made with this blade, on this saw, from this board? Every reason against it is
 * found, not the first, each with the number that breaks the limit and what would help.
 */
import { fault, type Caution, type Fault, type FaultCode } from '../faults/fault.ts';
import { degrees, radians, toDegrees, type Radians } from '../units/angle.ts';
import { LIMIT_SLACK_INCHES, STOP_SLACK_RADIANS } from '../units/tolerance.ts';
import { checkSizes } from './check-sizes.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';
import { angleLimits, checkRise, type SawLimits } from './saw-limits.ts';
import { greatestOffCenter, greatestTiltFor, tiltOfCorner } from './search-setting.ts';
import { solveSetting } from './set-up.ts';
import { checkStock, leastFlatOf, upTo64th, type CoveStock } from './stock.ts';
import { isTooSteep, tooWide, widestUpTo } from './too-wide.ts';
import { computeUndercut, type Undercut } from './undercut.ts';

export interface Feasibility {
  /** Present when an angle and a tilt exist, even where a limit of the saw or the stock forbids them. */
  readonly setting?: Setting;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** Steeper than this from the blade line the cut loads the blade from the side. Common practice [C]. */
const STEEP_APPROACH = degrees(60);
/** A full kerf. Trade guides give 1/8 full and 3/32 thin. */
const FULL_KERF_INCHES = 1 / 8;

/**
 * Judges a cove. Lengths in inches; the saw's limits and the board are optional. Without a board the
 * flat that an undercut needs is said as a caution; with one, its faults name the blank that would do.
 */
export function checkCove(
  cove: Cove,
  blade: Blade,
  saw: SawLimits = {},
  stock?: CoveStock,
): Feasibility {
  const sizeFaults = checkSizes(cove, blade);
  if (sizeFaults.length > 0) {
    const stockFaults = stock === undefined ? [] : checkStock(cove, stock, 0);
    return { faults: [...sizeFaults, ...stockFaults], cautions: [] };
  }
  const { setting, faults } = findSetting(cove, blade, saw);
  // By angles that are refused nothing is cut: they say nothing of the wood.
  const undercut =
    setting === undefined || faults.length > 0 ? undefined : computeUndercut(blade, setting);
  // A cove too wide to cut leans by no tilt that says anything of its depth.
  const isTooWide = faults.some(({ code }) => code === 'cove.too-wide');
  const tilt = setting === undefined || isTooWide ? radians(0) : setting.tilt;
  faults.push(...checkRise(cove.depth, tilt, blade, saw));
  if (stock !== undefined) faults.push(...checkStock(cove, stock, undercut?.beyondFace ?? 0));
  const cautions = setting === undefined ? [] : cautionsOf(setting, undercut, faults, stock);

  if (blade.kerf < FULL_KERF_INCHES - LIMIT_SLACK_INCHES) {
    const given = { inches: blade.kerf };
    const limit = { inches: FULL_KERF_INCHES };
    cautions.push(fault('cove.thin-kerf', COVE_SIZES.kerf.key, given, { limit }));
  }
  return { ...(setting === undefined ? {} : { setting }), faults, cautions };
}

function findSetting(
  cove: Cove,
  blade: Blade,
  saw: SawLimits,
): { setting?: Setting; faults: Fault[] } {
  const radius = blade.diameter / 2;
  const { width, depth } = COVE_SIZES;
  if (cove.depth >= radius) {
    const limit = { inches: radius };
    return {
      faults: [fault('cove.too-deep-for-blade', depth.key, { inches: cove.depth }, { limit })],
    };
  }
  if (cove.width <= blade.kerf) {
    const limit = { inches: blade.kerf };
    return {
      faults: [fault('cove.no-wider-than-kerf', width.key, { inches: cove.width }, { limit })],
    };
  }
  const { stop } = angleLimits(saw);
  const setting = solveSetting(cove, blade, stop);
  if (setting === undefined) {
    const isTooWide = cove.width > widestUpTo(cove, blade, saw);
    const tooFarOff = isTooWide ? undefined : noTiltEnough(cove, blade, saw);
    return { faults: [tooFarOff ?? tooWide(cove, blade, saw)] };
  }
  if (isTooSteep(setting, saw)) return { setting, faults: [tooWide(cove, blade, saw)] };
  const faults: Fault[] = [];
  if (setting.tilt > stop + STOP_SLACK_RADIANS) {
    const most = greatestOffCenter(cove, blade, greatestTiltOf(cove, blade, saw));
    if (most === undefined) return { setting, faults: [tooWide(cove, blade, saw)] };
    const limit = { degrees: toDegrees(stop) };
    const details = { offCenterAtStop: { inches: most.offCenter } };
    const given = { degrees: toDegrees(setting.tilt) };
    faults.push(fault('cove.tilt-beyond-stop', 'tilt', given, { limit, details }));
  }
  return { setting, faults };
}

/** The fault of a cove further off center than any tilt brings it, if that is what stands against it. */
function noTiltEnough(cove: Cove, blade: Blade, saw: SawLimits): Fault | undefined {
  if (cove.offCenter === 0) return undefined;
  const mostTilt = greatestTiltOf(cove, blade, saw);
  const most = greatestOffCenter(cove, blade, mostTilt);
  if (most === undefined) return undefined;
  // A blade thick against the depth would cut with a corner alone before it leans enough.
  const isCorner = tiltOfCorner(blade, cove.depth) < angleLimits(saw).stop;
  const code = isCorner ? 'cove.corner-alone' : 'cove.no-tilt-enough';
  const limit = { inches: most.offCenter };
  const details = { tiltStop: { degrees: toDegrees(mostTilt) } };
  const given = { inches: cove.offCenter };
  return fault(code, COVE_SIZES.offCenter.key, given, { limit, details });
}

function greatestTiltOf(cove: Cove, blade: Blade, saw: SawLimits): Radians {
  return radians(Math.min(angleLimits(saw).stop, greatestTiltFor(cove, blade)));
}

function cautionsOf(
  setting: Setting,
  undercut: Undercut | undefined,
  faults: readonly Fault[],
  stock: CoveStock | undefined,
): Caution[] {
  const cautions: Caution[] = [];
  // What a fault says already needs no caution.
  const isRefused = (...codes: readonly FaultCode[]): boolean =>
    faults.some(({ code }) => codes.includes(code));
  if (undercut !== undefined && !isRefused('cove.undercut-eats-flat', 'cove.undercut-meets-rail')) {
    const { beyondFace, widestInside } = undercut;
    const least = leastFlatOf(stock);
    const details = {
      leastFlat: { inches: least },
      farFlat: { inches: upTo64th(least + beyondFace) },
    };
    const limit = { inches: widestInside };
    cautions.push(fault('cove.undercut', 'cove', { inches: beyondFace }, { limit, details }));
  }
  const approach = toDegrees(setting.approach);
  if (approach > STEEP_APPROACH && !isRefused('cove.too-wide')) {
    const limit = { degrees: STEEP_APPROACH };
    cautions.push(fault('cove.steep-approach', 'approach', { degrees: approach }, { limit }));
  }
  return cautions;
}
