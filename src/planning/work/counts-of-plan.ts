/** How many there are of whatever work is counted by, in a plan: for work in its price or not. */
import { sameName } from '../job.ts';
import type { JobPlan, ProfilePlan } from '../job-plan.ts';
import { countWork, shareBoards, type Counts } from './counts.ts';

export function countsOfPlan({ profiles, pieces }: JobPlan): ReadonlyMap<ProfilePlan, Counts> {
  const boards = shareBoards(profiles);
  return new Map(
    profiles.map((planned) => {
      const { profile, sticks, setUp, tally } = planned;
      const { lengthNet, boardFeetWithAllowance } = tally;
      const own = pieces.filter((one) => !one.done && sameName(one.profile, profile.name));
      const counts = countWork({
        ...{ profile, pieces: own, sticks, setUp, lengthNet, boardFeetWithAllowance },
        boards: boards.get(profile) ?? 0,
      });
      return [planned, counts];
    }),
  );
}
