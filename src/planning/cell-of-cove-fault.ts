/** Which cell must change where a cove can't be set up: a size on Profiles, or a setting on Shop. */
import { COVE_SIZES } from '../core/cove/cove-sizes.ts';
import type { Fault, FaultCode, Where } from '../core/faults/fault.ts';
import type { CoveProfile, ProfileCell, ShopCells } from './job.ts';
import type { SettingKey } from './shop.ts';

const { width, depth, offCenter, blankWidth, blankThickness, nearFlat } = COVE_SIZES;

/** What no argument names: the size whose change is the nearest way out. */
const SIZE_BY_CODE: Readonly<Partial<Record<FaultCode, ProfileCell>>> = {
  'cove.too-wide': width.label,
  'cove.no-wider-than-kerf': width.label,
  'cove.too-deep-for-blade': depth.label,
  'cove.off-center-negative': offCenter.label,
  'cove.off-center-beyond-half': offCenter.label,
  'cove.no-tilt-enough': offCenter.label,
  'cove.corner-alone': offCenter.label,
  'cove.tilt-beyond-stop': offCenter.label,
  'cove.blade-cannot-rise': depth.label,
  'cove.blade-cannot-rise-unstated-saw': depth.label,
  'cove.web-too-thin': blankThickness.label,
  'cove.undercut-eats-flat': blankWidth.label,
  'cove.undercut-meets-rail': blankWidth.label,
  'crown.bevel-too-near': blankWidth.label,
  'cove.undercut': width.label,
  'cove.steep-approach': width.label,
};

const SETTING_BY_CODE: Readonly<Partial<Record<FaultCode, SettingKey>>> = {
  'cove.kerf-too-thick': 'kerf',
  'cove.thin-kerf': 'kerf',
  'cove.too-many-passes': 'step',
  'rails.off-usual-table': 'tableWidth',
};

/** Settings that faults name by a word of their own. */
const SETTING_BY_ARGUMENT: ReadonlyMap<string, SettingKey> = new Map([
  ['First pass', 'firstPass'],
  ['Step', 'step'],
  ['Last pass', 'lastPass'],
  [COVE_SIZES.bladeDiameter.label, 'bladeDiameter'],
  [COVE_SIZES.kerf.label, 'kerf'],
]);

/** The cell; the profile's name where the fault is of no one size. */
export function cellOfCoveFault(
  { code, argument }: Fault,
  profile: CoveProfile,
  shopCells: ShopCells,
): Where {
  const setting = SETTING_BY_CODE[code] ?? SETTING_BY_ARGUMENT.get(argument);
  if (setting !== undefined) return shopCells[setting] ?? profile.where;
  const { cells } = profile;
  const byCode = SIZE_BY_CODE[code];
  if (byCode !== undefined) return cells[byCode];
  // A flat beside the cove is as wide as the blank leaves it, but the near one where it is given.
  const isNear = argument === nearFlat.label && profile.nearFlat !== undefined;
  if (isNear) return cells[nearFlat.label];
  if (code === 'cove.flat-too-narrow' || code.startsWith('rails.')) return cells[blankWidth.label];
  const size = Object.values(COVE_SIZES).find(({ label }) => label === argument)?.label;
  return size === undefined || !(size in cells) ? profile.where : cells[size as ProfileCell];
}
