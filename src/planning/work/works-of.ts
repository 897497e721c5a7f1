/** Which rows of Work hold for a profile. */
import { nameKey, sameName, type Profile } from '../job.ts';
import { isOfTheJob, type JobPer, type WorkRow } from './work-row.ts';

/** How nearly a row is for a profile: its own before its make's, before all, before what nobody typed. */
function nearness({ for: whom, typed }: WorkRow, profile: Profile): number {
  if (typed === undefined) return 1;
  if (whom === undefined) return 2;
  if ('make' in whom) return whom.make === profile.make ? 3 : 0;
  return sameName(whom.profile, profile.name) ? 4 : 0;
}

/** Of each kind of work the one row that holds for the profile, in the order of their first rows. */
export function worksOf(profile: Profile, works: readonly WorkRow[]): WorkRow[] {
  const nearest = new Map<string, WorkRow>();
  for (const row of works) {
    if (isOfTheJob(row.per)) continue;
    const key = nameKey(row.work);
    const other = nearest.get(key);
    const near = nearness(row, profile);
    if (near > (other === undefined ? 0 : nearness(other, profile))) nearest.set(key, row);
  }
  return [...nearest.values()];
}

/** Those that hold for the whole job: a usual one where nobody typed a row of its name. */
export function jobRows(works: readonly WorkRow[]): (WorkRow & { readonly per: JobPer })[] {
  const typed = new Set(
    works.flatMap(({ typed: by, work }) => (by === undefined ? [] : nameKey(work))),
  );
  return works.flatMap((row) => {
    const { per } = row;
    const isReplaced = row.typed === undefined && typed.has(nameKey(row.work));
    // The very row: others know it by itself.
    return isOfTheJob(per) && !isReplaced ? [row as WorkRow & { readonly per: JobPer }] : [];
  });
}

/** What the hours of work by the foot, such as installing, are times for a profile: its factors together. */
export function factorFor(works: readonly WorkRow[]): number {
  return works.reduce(
    (all, { per, isOurs, minutes }) => (per === 'factor' && isOurs ? all * minutes : all),
    1,
  );
}
