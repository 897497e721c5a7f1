/** Which cell must change where a cove can't be set up: a size on Profiles, or a setting on Shop. */
import { COVE_SIZES } from '../core/cove/cove-sizes.ts';
import type { Argument } from '../core/faults/argument.ts';
import type { Fault, FaultCode, Where } from '../core/faults/fault.ts';
import type { CoveProfile, ProfileCell } from './job.ts';
import type { SettingKey, ShopCells } from './shop.ts';

const { width, depth, offCenter, blankWidth, blankThickness, nearFlat } = COVE_SIZES;

/** What no argument names: the size whose change is the nearest way out. */
const SIZE_BY_CODE: Readonly<Partial<Record<FaultCode, ProfileCell>>> = {
  'cove.too-wide': width.key,
  'cove.no-wider-than-kerf': width.key,
  'cove.too-deep-for-blade': depth.key,
  'cove.off-center-negative': offCenter.key,
  'cove.off-center-beyond-half': offCenter.key,
  'cove.no-tilt-enough': offCenter.key,
  'cove.corner-alone': offCenter.key,
  'cove.tilt-beyond-stop': offCenter.key,
  'cove.blade-cannot-rise': depth.key,
  'cove.blade-cannot-rise-unstated-saw': depth.key,
  'cove.web-too-thin': blankThickness.key,
  'cove.undercut-eats-flat': blankWidth.key,
  'cove.undercut-meets-rail': blankWidth.key,
  'crown.bevel-too-near': blankWidth.key,
  'cove.undercut': width.key,
  'cove.steep-approach': width.key,
};

const SETTING_BY_CODE: Readonly<Partial<Record<FaultCode, SettingKey>>> = {
  'cove.kerf-too-thick': 'kerf',
  'cove.thin-kerf': 'kerf',
  'cove.too-many-passes': 'step',
  'rails.off-usual-table': 'tableWidth',
};

/** Settings that faults name by a key of their own. */
const SETTING_BY_ARGUMENT: ReadonlyMap<Argument, SettingKey> = new Map([
  ['firstPass', 'firstPass'],
  ['step', 'step'],
  ['lastPass', 'lastPass'],
  [COVE_SIZES.bladeDiameter.key, 'bladeDiameter'],
  [COVE_SIZES.kerf.key, 'kerf'],
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
  const isNear = argument === nearFlat.key && profile.nearFlat !== undefined;
  if (isNear) return cells[nearFlat.key];
  if (code === 'cove.flat-too-narrow' || code.startsWith('rails.')) return cells[blankWidth.key];
  const size = Object.values(COVE_SIZES).find(({ key }) => key === argument)?.key;
  return size === undefined || !(size in cells) ? profile.where : cells[size as ProfileCell];
}
