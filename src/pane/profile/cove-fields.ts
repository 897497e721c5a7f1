/** The fields of a cove of one's own, as typed. */
import { bladeOf, COVE_SIZES, type SizeKey } from '../../core/cove/cove-sizes.ts';
import type { Blade, Cove } from '../../core/cove/cove.ts';
import { computeCut } from '../../core/cove/cut.ts';
import { checkCove } from '../../core/cove/feasibility.ts';
import { formatInches, formatMillimetres } from '../../core/units/format-length.ts';
import { formatNumber } from '../../core/units/format-number.ts';
import type { ExactInches, LengthReading } from '../../core/units/length.ts';
import type { CoveProfile } from '../../planning/job.ts';
import type { Shop } from '../../planning/shop.ts';

/** In the order in which they are asked for. */
export const COVE_FIELDS = Object.keys(COVE_SIZES) as SizeKey[];

export type TypedCove = Readonly<Record<SizeKey, string>>;

/** The choice that stands for a cove of one's own; no profile can have it as its name. */
export const OWN_COVE = '';

const USUAL_SIZES = {
  in: {
    width: '3 1/2"',
    depth: '5/8"',
    offCenter: '0"',
    blankWidth: '4 1/2"',
    blankThickness: '1 1/4"',
  },
  mm: {
    width: '90 mm',
    depth: '16 mm',
    offCenter: '0 mm',
    blankWidth: '115 mm',
    blankThickness: '32 mm',
  },
} as const;

/**
 * Something to begin with, for the shop's own blade. The near flat is left out: then the cove sits
 * midway in its blank.
 */
export function usualCove(shop: Shop): TypedCove {
  return {
    ...USUAL_SIZES[shop.unit],
    nearFlat: '',
    bladeDiameter: typeLength(Number(shop.bladeDiameter), shop),
    kerf: typeLength(Number(shop.kerf), shop),
  };
}

/**
 * A profile of the job, with the shop's blade, as a person would type it. The fields know the deepest
 * line alone: where the off-center leads to the blade's middle, the line that it then cuts stands there.
 */
export function typeProfile(profile: CoveProfile, shop: Shop): TypedCove {
  const { cove, blankWidth, blankThickness, nearFlat } = profile;
  const type = (length: number | ExactInches): string => typeLength(Number(length), shop);
  return {
    width: type(cove.width),
    depth: type(cove.depth),
    offCenter: type(deepestLineOf(cove, bladeOf(shop))),
    blankWidth: type(blankWidth),
    blankThickness: type(blankThickness),
    nearFlat: nearFlat === undefined ? '' : type(nearFlat),
    bladeDiameter: type(shop.bladeDiameter),
    kerf: type(shop.kerf),
  };
}

function deepestLineOf(cove: Cove, blade: Blade): number {
  if (cove.offCenterTo !== 'blade middle') return cove.offCenter;
  const { setting } = checkCove(cove, blade);
  return setting === undefined ? cove.offCenter : computeCut(blade, setting).offCenter;
}

const FINEST = 64;
const DECIMALS = 4;

/** With its unit, so that it reads back the same whatever the shop's own is. */
export function typeLength(inches: number, { unit, decimalSign }: LengthReading): string {
  if (unit === 'in' && Number.isInteger(inches * FINEST)) {
    return formatInches(inches, { denominator: FINEST, marks: 'inch mark' });
  }
  return unit === 'mm'
    ? formatMillimetres(inches, 3, decimalSign)
    : `${formatNumber(inches, DECIMALS, decimalSign)}"`;
}
