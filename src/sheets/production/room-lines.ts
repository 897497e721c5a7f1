/** Lines by room, with what each of their cells comes to. */
import type { JobPlan, ProfilePlan, RoomLine } from '../../planning/job-plan.ts';
import { hoursOf } from '../../planning/work/hours.ts';
import { volumeIn } from '../words/lumber-volume.ts';
import { numberIn } from '../words/print-length.ts';

/** Figures that are added up by room and in all. */
export type Figure =
  | 'pieces'
  | 'passes'
  | 'length'
  | 'boardFeet'
  | 'boardFeetWithAllowance'
  | 'boardFeetBought'
  | 'hours';

/** A line with all that its row shows. */
export interface Line {
  readonly line: RoomLine;
  readonly number: number;
  readonly planned: ProfilePlan;
  readonly values: Readonly<Record<Figure, number>>;
  /** The No. of its profile in the tables by profile. */
  readonly profileNumber: number;
}

export function linesOf(plan: JobPlan): Line[] {
  const { unit } = plan.job.shop;
  const plans = new Map(plan.profiles.map((planned) => [planned.profile.name, planned]));
  return plan.rooms.map((line, at) => {
    const planned = plans.get(line.profile);
    if (planned === undefined) throw new RangeError(`Nothing is planned of ${line.profile}.`);
    const { tally } = planned;
    const share = Number(line.lengthNet) / Number(tally.lengthNet);
    return {
      line,
      number: at + 1,
      planned,
      profileNumber: plan.profiles.indexOf(planned) + 1,
      values: {
        pieces: line.pieces,
        passes: tally.passes * share,
        length: numberIn(line.lengthNet, unit),
        boardFeet: volumeIn(tally.boardFeetNet ?? 0, unit) * share,
        boardFeetWithAllowance: volumeIn(tally.boardFeetWithAllowance ?? 0, unit) * share,
        boardFeetBought: volumeIn(tally.boardFeetBought ?? 0, unit) * share,
        hours: hoursOf(tally.hours) * share,
      },
    };
  });
}
