/** What one more stick or blank put to use costs in labor: the part of a profile's hours that its sticks decide. */
import type { StripLabor } from '../cutting/problem/problem.ts';
import type { Profile } from './job.ts';
import { backBevelsOf } from './work/counts.ts';
import { isNotIncluded, type ProfilePer, type WorkRow } from './work/work-row.ts';

/**
 * The trimming cut; of a cove its passes, carried round once each and fed over the blade by its length; of a
 * crown its back bevels. What a piece adds (its crosscut, its share of smoothing) is the same on any stick,
 * and so are joints, since parts are the fewest. Work by the board, or by the foot of a rip, is in the price
 * and doesn't steer the search. Overhead comes on lumber and labor alike, so it decides nothing and is left
 * out.
 *
 * @param works the rows that hold for the profile, see worksOf
 * @param passes over the blade that a blank takes; 0 for what is bought
 * @returns undefined where labor costs nothing
 */
export function laborOfStrip(
  profile: Profile,
  works: readonly WorkRow[],
  passes: number,
  hourlyRate: number,
  unitsPerInch: number,
): StripLabor | undefined {
  const centsFor = (per: ProfilePer): number =>
    works.reduce(
      (sum, row) =>
        row.per === per && !isNotIncluded(row)
          ? sum + ((row.minutes / 60) * hourlyRate + row.money) * 100
          : sum,
      0,
    );
  const centsPerFoot =
    passes * centsFor('foot a pass') + backBevelsOf(profile) * centsFor('foot a cut');
  const labor = {
    cents: centsFor('crosscut') + passes * centsFor('pass'),
    centsPerUnit: centsPerFoot / 12 / unitsPerInch,
  };
  return labor.cents > 0 || labor.centsPerUnit > 0 ? labor : undefined;
}
