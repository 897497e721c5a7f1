/** Whether the faces are known that work is counted by. */
import { fault, placeFault, type Fault } from '../../core/faults/fault.ts';
import { nameKey, type Job } from '../job.ts';
import { isNotIncluded } from './work-row.ts';
import { worksOf } from './works-of.ts';

/** A molding whose width isn't known would be finished for nothing: that is a fault, at its width. */
export function checkFaces(job: Job): Fault[] {
  const asked = new Set(
    [
      ...job.runs.map(({ profile, done }) => (done ? undefined : profile)),
      ...job.openings.flatMap(({ casing, apron, stool }) => [casing, apron, stool]),
    ].flatMap((name) => (name === undefined ? [] : nameKey(name))),
  );
  return job.profiles.flatMap((profile) => {
    if (profile.blankWidth !== undefined || !asked.has(nameKey(profile.name))) return [];
    const row = worksOf(profile, job.work).find(
      (one) => one.per === 'square foot a coat' && !isNotIncluded(one),
    );
    if (row === undefined) return [];
    const details = { work: row.work };
    const one = fault('job.work-needs-width', 'blankWidth', profile.name, { details });
    return [placeFault(one, profile.cells.blankWidth)];
  });
}
