/** One profile's plan: its sticks, counted and priced; and its price by the offcut allowance. */
import { allowedLumber } from './allowed-lumber.ts';
import type { Job, Profile } from './job.ts';
import type { Costing, CutStick, ProfilePlan } from './job-plan.ts';
import { hoursOf } from './work/hours.ts';
import { priceLines } from './money.ts';
import type { Piece } from './piece.ts';
import type { SetUp } from './plan-setup.ts';
import { tallyProfile } from './tally.ts';
import { countAllowedWork } from './work/allowed-counts.ts';
import { countWork, shareBoards } from './work/counts.ts';
import { hoursOfLines, moneyOfLines, profileLines } from './work/work-lines.ts';
import type { Counts } from './work/work-row.ts';
import { worksOf } from './work/works-of.ts';

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
 * Plans of a group's profiles, or of a whole job's: boards that several are cut from are counted once.
 *
 * @throws RangeError for a cove without a set-up: its faults allow no plan
 */
export function planProfiles(
  cuts: readonly ProfileCut[],
  setUps: ReadonlyMap<Profile, SetUp>,
  job: Job,
): ProfilePlan[] {
  const boards = shareBoards(cuts);
  return cuts.map((cut) =>
    planProfile(cut, setUps.get(cut.profile), boards.get(cut.profile) ?? 0, job),
  );
}

function planProfile(
  cut: ProfileCut,
  setUp: SetUp | undefined,
  boards: number,
  job: Job,
): ProfilePlan {
  const { shop } = job;
  const { profile, pieces, sticks, lumberCents, offcutCreditCents, boardFeetBought } = cut;
  const counted = tallyProfile(profile, pieces, sticks, setUp, shop, boardFeetBought);
  const { lengthNet, boardFeetWithAllowance } = counted;
  const asked = { profile, pieces, setUp, lengthNet, boardFeetWithAllowance };
  const works = worksOf(profile, job.work);
  const cost = (counts: Counts, lumber: number, credit: number): Costing => {
    const work = profileLines(works, counts);
    const hours = hoursOfLines(work);
    const labor = { hours: hoursOf(hours), money: moneyOfLines(work) };
    return { counts, work, hours, money: priceLines(lumber, credit, labor, shop) };
  };
  const byPlan = cost(countWork({ ...asked, sticks, boards }), lumberCents, offcutCreditCents);
  const lumber = allowedLumber(profile, counted, job);
  const byAllowance = { ...cost(countAllowedWork(asked, lumber, shop), lumber.cents, 0), lumber };
  const { work, money } = { plan: byPlan, allowance: byAllowance }[shop.priceBasis];
  const tally = { ...counted, hours: byPlan.hours };
  const planned = { sticks, tally, work, money, byPlan, byAllowance };
  if (profile.make === 'buy') return { profile, ...planned };
  if (setUp === undefined) throw new RangeError(`${profile.name} is planned without a set-up.`);
  return { profile, setUp, ...planned };
}
