/** How a piece lies when its ends are cut. */
import type { Profile } from '../../planning/job.ts';

/**
 * Left and right are as one faces the molding on its wall, so it lies face up with the edge that goes
 * up the wall away: derived, tipping it backward off the wall keeps left at the left. A crown at a
 * spring angle lies flat on its back, as its two angles on Set-ups are for.
 */
export function sayLie(profile: Profile): string {
  const lie = profile.spring === undefined ? 'face up' : 'flat on its back, face up';
  return hasDeepSide(profile) ? `${lie}, deep side as ticked above` : lie;
}

/** Which edge of an off-center cove goes up the wall is the shop's to decide. */
export function hasDeepSide({ cove }: Profile): boolean {
  return cove !== undefined && cove.offCenter !== 0;
}
