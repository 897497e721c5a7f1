/** One profile's plan: its sticks, counted and priced. */
import type { Profile } from './job.ts';
import type { CutStick, ProfilePlan } from './job-plan.ts';
import { priceProfile } from './money.ts';
import type { Piece } from './piece.ts';
import type { SetUp } from './plan-setup.ts';
import type { Shop } from './shop.ts';
import { tallyProfile } from './tally.ts';

/** What a group's plan comes to for one of its profiles. */
export interface ProfileCut {
  readonly profile: Profile;
  readonly pieces: readonly Piece[];
  readonly sticks: readonly CutStick[];
  readonly lumberCents: number;
  readonly offcutCreditCents: number;
  /** Absent for what is bought ready made, and where it isn't known. */
  readonly boardFeetBought?: number;
}

/**
 * @param setUp of a cove; undefined for what is bought
 * @throws RangeError for a cove without one: its faults allow no plan
 */
export function planProfile(cut: ProfileCut, setUp: SetUp | undefined, shop: Shop): ProfilePlan {
  const { profile, pieces, sticks, lumberCents, offcutCreditCents, boardFeetBought } = cut;
  const tally = tallyProfile(profile, pieces, sticks, setUp, shop, boardFeetBought);
  const money = priceProfile(lumberCents, offcutCreditCents, tally.hours, shop);
  const planned = { sticks, tally, money };
  if (profile.make === 'buy') return { profile, ...planned };
  if (setUp === undefined) throw new RangeError(`${profile.name} is planned without a set-up.`);
  return { profile, setUp, ...planned };
}
