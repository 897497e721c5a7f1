/**
 * Can this cove be made with this blade, on this saw, from this board? Every reason against it is
 * found, not the first, each with the number that breaks the limit and what would help.
 */
import { fault, type Caution, type Fault } from '../faults/fault.ts';
import {
  degrees,
  radians,
  toDegrees,
  toRadians,
  type Degrees,
  type Radians,
} from '../units/angle.ts';
import { LIMIT_SLACK_INCHES, STOP_SLACK_RADIANS } from '../units/tolerance.ts';
import type { Blade, Cove, Setting } from './cove.ts';
import { COVE_SIZES } from './cove-sizes.ts';
import { computeUndercut } from './outline.ts';
import {
  computeWidestUpTo,
  greatestOffCenter,
  greatestTiltFor,
  tiltOfCorner,
} from './search-setting.ts';
import { solveSetting } from './set-up.ts';
import { checkSizes } from './check-sizes.ts';
import { checkStock, type CoveStock } from './stock.ts';

export interface SawLimits {
  /** Highest tooth above the table, blade upright; inches. */
  readonly greatestHeightUpright?: number;
  /** The same at a tilt of 45°. */
  readonly greatestHeightAt45?: number;
  /** Most tilt from upright; 45° where absent. */
  readonly tiltStop?: Degrees;
}

export interface Feasibility {
  /** Present when an angle and a tilt exist, even where a limit of the saw or the stock forbids them. */
  readonly setting?: Setting;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** Kept for flange and arbor where the saw's own heights aren't given. Common practice [C]. */
export const FLANGE_ALLOWANCE_INCHES = 1 + 3 / 16;
const USUAL_TILT_STOP = degrees(45);
const HALF_RIGHT_ANGLE = Math.PI / 4;
/** Steeper than this from the blade line the cut loads the blade from the side. Common practice [C]. */
const STEEP_APPROACH = degrees(60);
/** A full kerf. Trade guides give 1/8 full and 3/32 thin. */
const FULL_KERF_INCHES = 1 / 8;

/** Judges a cove. Lengths in inches; the saw's limits and the board are optional. */
export function checkCove(
  cove: Cove,
  blade: Blade,
  saw: SawLimits = {},
  stock?: CoveStock,
): Feasibility {
  const stockFaults = stock === undefined ? [] : checkStock(cove, stock);
  const sizeFaults = checkSizes(cove, blade);
  if (sizeFaults.length > 0) return { faults: [...sizeFaults, ...stockFaults], cautions: [] };
  const stop = toRadians(saw.tiltStop ?? USUAL_TILT_STOP);
  const { setting, faults } = findSetting(cove, blade, stop);
  faults.push(...checkRise(cove.depth, setting?.tilt ?? radians(0), blade, saw));
  const cautions = setting === undefined ? [] : cautionsOf(blade, setting);
  if (blade.kerf < FULL_KERF_INCHES - LIMIT_SLACK_INCHES) {
    cautions.push(
      fault(
        'cove.thin-kerf',
        COVE_SIZES.kerf.label,
        { inches: blade.kerf },
        { limit: { inches: FULL_KERF_INCHES } },
      ),
    );
  }
  return {
    ...(setting === undefined ? {} : { setting }),
    faults: [...faults, ...stockFaults],
    cautions,
  };
}

function findSetting(
  cove: Cove,
  blade: Blade,
  stop: Radians,
): { setting?: Setting; faults: Fault[] } {
  const radius = blade.diameter / 2;
  if (cove.depth >= radius) {
    const given = { inches: cove.depth };
    return {
      faults: [
        fault('cove.too-deep-for-blade', COVE_SIZES.depth.label, given, {
          limit: { inches: radius },
        }),
      ],
    };
  }
  if (cove.width <= blade.kerf) {
    const limit = { inches: blade.kerf };
    return {
      faults: [
        fault('cove.no-wider-than-kerf', COVE_SIZES.width.label, { inches: cove.width }, { limit }),
      ],
    };
  }
  const setting = solveSetting(cove, blade, stop);
  const mostTilt = radians(Math.min(stop, greatestTiltFor(cove, blade)));
  if (setting !== undefined) {
    if (setting.tilt <= stop + STOP_SLACK_RADIANS) return { setting, faults: [] };
    const atStop = greatestOffCenter(cove, blade, mostTilt)?.offCenter;
    const faults = [
      atStop === undefined
        ? tooWide(cove, blade, mostTilt)
        : fault(
            'cove.tilt-beyond-stop',
            'Tilt',
            { degrees: toDegrees(setting.tilt) },
            {
              limit: { degrees: toDegrees(stop) },
              details: { offCenterAtStop: { inches: atStop } },
            },
          ),
    ];
    return { setting, faults };
  }
  const most = cove.offCenter === 0 ? undefined : greatestOffCenter(cove, blade, mostTilt);
  if (most === undefined) return { faults: [tooWide(cove, blade, mostTilt)] };
  // A blade thick against the depth would cut with a corner alone before it leans enough.
  const isCorner = tiltOfCorner(blade, cove.depth) < stop;
  return {
    faults: [
      fault(
        isCorner ? 'cove.corner-alone' : 'cove.no-tilt-enough',
        COVE_SIZES.offCenter.label,
        { inches: cove.offCenter },
        {
          limit: { inches: most.offCenter },
          details: { tiltStop: { degrees: toDegrees(mostTilt) } },
        },
      ),
    ],
  };
}

/** Derived: upright, width² = chord² + kerf² with chord² = 4 h (D - h), solved for h and for D. */
function tooWide(cove: Cove, blade: Blade, mostTilt: Radians): Fault {
  const most = cove.offCenter === 0 ? radians(0) : mostTilt;
  const widest = computeWidestUpTo(blade, cove.depth, most);
  const radius = blade.diameter / 2;
  const halfChordSquared = (cove.width ** 2 - blade.kerf ** 2) / 4;
  const reachable = halfChordSquared < radius ** 2;
  const depthThatWould = radius - Math.sqrt(Math.max(0, radius ** 2 - halfChordSquared));
  const bladeThatWould = cove.depth + halfChordSquared / cove.depth;
  return fault(
    'cove.too-wide',
    COVE_SIZES.width.label,
    { inches: cove.width },
    {
      limit: { inches: widest },
      details: {
        ...(reachable ? { depthThatWould: { inches: upTo(depthThatWould, 64) } } : {}),
        bladeThatWould: { inches: upTo(bladeThatWould, 8) },
      },
    },
  );
}

/**
 * The fault of a height that the blade can't rise to, if it is one; inches. The saw's heights become
 * slope heights (height / cos of the tilt), interpolated by the tilt.
 */
export function checkRise(height: number, tilt: Radians, blade: Blade, saw: SawLimits): Fault[] {
  const needed = height / Math.cos(tilt);
  const { greatestHeightUpright: upright, greatestHeightAt45: at45 } = saw;
  if (upright === undefined) {
    const most = blade.diameter / 2 - FLANGE_ALLOWANCE_INCHES;
    if (needed <= most + LIMIT_SLACK_INCHES) return [];
    const limit = { inches: Math.max(0, most) };
    return [
      fault(
        'cove.blade-cannot-rise-unstated-saw',
        COVE_SIZES.depth.label,
        { inches: needed },
        { limit },
      ),
    ];
  }
  const slope45 = at45 === undefined ? upright : at45 / Math.cos(HALF_RIGHT_ANGLE);
  const most = upright + (tilt / HALF_RIGHT_ANGLE) * (slope45 - upright);
  if (needed <= most + LIMIT_SLACK_INCHES) return [];
  return [
    fault(
      'cove.blade-cannot-rise',
      COVE_SIZES.depth.label,
      { inches: needed },
      {
        limit: { inches: Math.max(0, most) },
      },
    ),
  ];
}

function cautionsOf(blade: Blade, setting: Setting): Caution[] {
  const cautions: Caution[] = [];
  const undercut = computeUndercut(blade, setting);
  if (undercut !== undefined) {
    cautions.push(
      fault(
        'cove.undercut',
        'Cove',
        { inches: undercut.beyondFace },
        {
          limit: { inches: undercut.widestInside },
        },
      ),
    );
  }
  const approach = toDegrees(setting.approach);
  if (approach > STEEP_APPROACH) {
    cautions.push(
      fault(
        'cove.steep-approach',
        'Approach',
        { degrees: approach },
        {
          limit: { degrees: STEEP_APPROACH },
        },
      ),
    );
  }
  return cautions;
}

function upTo(inches: number, parts: number): number {
  return Math.ceil(inches * parts - LIMIT_SLACK_INCHES) / parts;
}
