/** All runs of a job as they are planned from, typed and made alike, in one list. */
import type { Where } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import { nameKey, type Job, type Profile, type Run, type RunEnd } from './job.ts';
import { cutAway, type CutAway } from './pieces/cut-away.ts';
import { listSides } from './pieces/opening-sides.ts';

export interface ListedRun {
  readonly run: Run;
  /** Where it comes from: a row of Runs, or the wall and the row of Trim; both where it was taken over. */
  readonly from: {
    readonly row?: Where;
    readonly made?: { readonly wall: Where; readonly trim: Where };
  };
  /** Of a run that openings cut: what each takes, and what stays of it, from left to right. */
  readonly cut?: { readonly taken: readonly CutAway[]; readonly parts: readonly RunPart[] };
}

interface RunPart {
  readonly length: ExactInches;
  readonly left: RunEnd;
  readonly right: RunEnd;
}

/** In the order of `Job.runs`. What stands round openings is no run: it comes from Openings. */
export function listRuns(job: Job): ListedRun[] {
  const byName = new Map(job.profiles.map((one) => [nameKey(one.name), one]));
  const profileOf = (name: string): Profile | undefined => byName.get(nameKey(name));
  const sides = listSides(job.openings, job.runs, profileOf);
  const { byRun } = cutAway(job.runs, sides, profileOf, job.walls);
  return byRun.map(({ run, runs, cutAways }): ListedRun => {
    const { made, where } = run;
    const parts = runs.map(({ length, left, right }) => ({ length, left, right }));
    return {
      run,
      from: {
        ...(made === undefined || made.isTakenOver === true ? { row: where } : {}),
        ...(made === undefined ? {} : { made: { wall: made.wall, trim: made.trim } }),
      },
      ...(cutAways.length === 0 ? {} : { cut: { taken: cutAways, parts } }),
    };
  });
}
