/** The set-up of one cove profile on the shop's saw: everything that its page needs. */
import type { Caution, Fault } from '../core/faults/fault.ts';
import { fault, placeFault } from '../core/faults/fault.ts';
import type { Blade, Cove, Setting } from '../core/cove/cove.ts';
import { bladeOf } from '../core/cove/cove-sizes.ts';
import { computeCut, type CutCove } from '../core/cove/cut.ts';
import { checkRails } from '../core/cove/rail-hold.ts';
import type { SawLimits } from '../core/cove/saw-limits.ts';
import { checkCove } from '../core/cove/feasibility.ts';
import { computeLeastRadius } from '../core/cove/least-radius.ts';
import { computeArcLength } from '../core/cove/outline.ts';
import { METRIC_GRID_INCHES, planPasses } from '../core/cove/passes.ts';
import { layOutRails, USUAL_HALF_TABLE_INCHES, type RailLayout } from '../core/cove/rails.ts';
import { computeScaleEffect, type ScaleEffect } from '../core/cove/scale-rounding.ts';
import { computeFlats } from '../core/cove/stock.ts';
import { checkBevels, computeBevelWood, type BevelWood } from '../core/crown/bevel-wood.ts';
import { computeBackBevels, type BackBevels } from '../core/crown/crown-size.ts';
import { degrees, toRadians } from '../core/units/angle.ts';
import { cellOfCoveFault } from './cell-of-cove-fault.ts';
import type { CoveProfile } from './job.ts';
import type { SawShop, ShopCells } from './shop.ts';
import { tableSizeOf } from './table-size.ts';

/** The board that a cove is cut on, in inches. */
export interface CoveBlank {
  readonly width: number;
  readonly thickness: number;
  /** Absent: the cove sits midway. */
  readonly nearFlat?: number;
}

export interface SetUp {
  readonly cove: Cove;
  readonly blank: CoveBlank;
  readonly blade: Blade;
  readonly setting: Setting;
  readonly cut: CutCove;
  readonly passHeights: readonly number[];
  readonly scale: ScaleEffect;
  /** Absent where the shop gives no table. */
  readonly rails?: RailLayout;
  readonly flats: { readonly near: number; readonly far: number };
  readonly web: number;
  /** Of a crown, left between the cove and the bevels of its back. */
  readonly bevelWood?: BevelWood;
  /** Along the cove's outline, for smoothing; inches. */
  readonly arcLength: number;
  /** The tightest curve of the cove's outline: what smooths it everywhere is no rounder; inches. */
  readonly leastRadius: number;
  /** Of this cove alone, whichever size or setting each stands at. */
  readonly cautions: readonly Caution[];
}

export interface SetUpReading {
  readonly setUp?: SetUp;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** The set-up, or every reason against it, each at the size or the setting that must change. */
export function planSetUp(
  profile: CoveProfile,
  shop: SawShop,
  shopCells: ShopCells = {},
): SetUpReading {
  const { cove } = profile;
  const blade = bladeOf(shop);
  const blank = coveBlankOf(profile);
  const { width: blankWidth, thickness: blankThickness, ...nearFlat } = blank;
  const stock = {
    blankWidth,
    blankThickness,
    ...nearFlat,
    leastWeb: Number(shop.leastWeb),
    leastFlat: Number(shop.leastFlat),
  };
  const { setting, ...judged } = checkCove(cove, blade, sawOf(shop), stock);
  const passes = planPasses(cove.depth, {
    first: Number(shop.firstPass),
    step: Number(shop.step),
    last: Number(shop.lastPass),
    ...(shop.unit === 'mm' ? { grid: METRIC_GRID_INCHES } : {}),
  });
  const place = (one: Fault): Fault => placeFault(one, cellOfCoveFault(one, profile, shopCells));
  const faults = [...judged.faults, ...passes.faults].map(place);
  const cautions = [...judged.cautions, ...passes.cautions].map(place);
  if (setting === undefined || faults.length > 0) return { faults, cautions };
  const flats = computeFlats(cove.width, stock);
  const cut = computeCut(blade, setting);
  const table = tableSizeOf(shop);
  const beside = { ...flats, midway: blank.nearFlat === undefined };
  const unheld = table === undefined ? [] : checkRails(blade, setting, cut, beside, table);
  const bevels = backBevelsOf(profile);
  const bevelled =
    bevels === undefined ? undefined : checkBevels(blade, setting, beside, bevels, stock.leastFlat);
  cautions.push(...(bevelled?.cautions ?? []).map(place));
  const against = [...unheld, ...(bevelled?.faults ?? [])];
  if (against.length > 0) return { faults: against.map(place), cautions };
  const rails = railsOf(setting, cut, flats, shop);
  cautions.push(...offTable(rails.rails, tableSizeOf(shop)?.width).map(place));
  const setUp: SetUp = {
    cove,
    blank,
    blade,
    setting,
    cut,
    passHeights: passes.heights,
    scale: computeScaleEffect(
      blade,
      setting,
      { approach: degrees(shop.angleScaleStep), tilt: degrees(shop.tiltScaleStep) },
      cove,
    ),
    flats,
    web: blank.thickness - cove.depth,
    arcLength: computeArcLength(blade, setting),
    leastRadius: computeLeastRadius(blade, setting),
    ...(bevels === undefined ? {} : { bevelWood: computeBevelWood(blade, setting, flats, bevels) }),
    ...rails,
    cautions,
  };
  return { setUp, faults, cautions };
}

export function coveBlankOf({ blankWidth, blankThickness, nearFlat }: CoveProfile): CoveBlank {
  return {
    width: Number(blankWidth),
    thickness: Number(blankThickness),
    ...(nearFlat === undefined ? {} : { nearFlat: Number(nearFlat) }),
  };
}

/** The bevels of a crown's back; undefined for a cove that lies flat. */
function backBevelsOf(profile: CoveProfile): BackBevels | undefined {
  if (profile.spring === undefined) return undefined;
  const bevels = computeBackBevels({ spring: toRadians(profile.spring) });
  return bevels.ok ? bevels.value : undefined;
}

function sawOf(shop: SawShop): SawLimits {
  const { greatestHeightUpright: upright, greatestHeightAt45: at45 } = shop;
  const { heightsMeasuredWith: measuredWith } = shop;
  return {
    tiltStop: degrees(shop.tiltStop),
    steepestApproach: degrees(shop.steepestApproach),
    ...(upright === undefined ? {} : { greatestHeightUpright: Number(upright) }),
    ...(at45 === undefined ? {} : { greatestHeightAt45: Number(at45) }),
    ...(measuredWith === undefined ? {} : { heightsMeasuredWith: Number(measuredWith) }),
  };
}

function railsOf(
  setting: Setting,
  cut: CutCove,
  flats: SetUp['flats'],
  shop: SawShop,
): { rails?: RailLayout } {
  const table = tableSizeOf(shop);
  if (table === undefined) return {};
  return { rails: layOutRails(setting.approach, cut, flats, table, shop.tiltSide) };
}

/**
 * A rail mark beyond the table's sides can't be taped: the side edges are marked instead, which takes
 * the table's width.
 */
function offTable(rails: RailLayout | undefined, width: number | undefined): Caution[] {
  if (rails === undefined) return [];
  const code = width === undefined ? 'rails.off-usual-table' : 'rails.off-table';
  const limit = { inches: width === undefined ? USUAL_HALF_TABLE_INCHES : width / 2 };
  return (['near', 'far'] as const).flatMap((rail) =>
    (['front', 'back'] as const).flatMap((edge) => {
      const mark = rails[rail][edge];
      if (mark.onTable) return [];
      return [fault(code, `rail.${rail}.${edge}`, { inches: Math.abs(mark.fromBlade) }, { limit })];
    }),
  );
}
