/** How a piece lies when its ends are cut. */
import type { CoveProfile, Profile } from '../../planning/job.ts';

/** What tells one edge of a cove from the other: one of them goes up the wall, on every piece alike. */
export type EdgeMark = 'deep side' | 'wide flat';

/** Below any tape's finest mark, above what sums of doubles lose: flats of a ripped blank are equal. */
const EQUAL_INCHES = 1 / 128;

/**
 * Left and right are as one faces the molding on its wall, so it lies face up with the edge that goes
 * up the wall away: derived, tipping it backward off the wall keeps left at the left. A crown at a
 * spring angle lies flat on its back, as its two angles on Set-ups are for.
 *
 * @param ticked Where the shop ticks which edge goes up the wall.
 */
export function sayLie(profile: Profile, ticked = 'above'): string {
  const lie = profile.spring === undefined ? 'face up' : 'flat on its back, face up';
  const mark = edgeMark(profile);
  return mark === undefined ? lie : `${lie}, ${mark} as ticked ${ticked}`;
}

/**
 * Which edge goes up the wall is the shop's to decide: the deep side of an off-center cove, or the wide
 * flat of a centered one whose flats differ. Nothing where both edges are alike.
 */
export function edgeMark(profile: Profile): EdgeMark | undefined {
  if (profile.make === 'buy') return undefined;
  if (profile.cove.offCenter !== 0) return 'deep side';
  return flatsDiffer(profile) === 0 ? undefined : 'wide flat';
}

/** Where that edge ran at the saw. */
export function railOf(profile: Profile): 'far' | 'near' {
  const isNear = profile.make !== 'buy' && profile.cove.offCenter === 0 && flatsDiffer(profile) < 0;
  return isNear ? 'near' : 'far';
}

/** Above 0 where the flat by the far rail is the wider one, below 0 where that by the near rail is. */
function flatsDiffer({ cove, nearFlat, blankWidth }: CoveProfile): number {
  if (nearFlat === undefined) return 0;
  const more = Number(blankWidth) - cove.width - 2 * Number(nearFlat);
  return Math.abs(more) < EQUAL_INCHES ? 0 : more;
}
