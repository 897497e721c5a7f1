/** Lines by room, with what each of their cells comes to. */
import Fraction from 'fraction.js';
import { hoursOf, type JobPlan, type ProfilePlan, type RoomLine } from '../../planning/job-plan.ts';
import { money } from '../plan-cells.ts';
import { numberIn } from '../words/print-length.ts';

/** Columns that are added up by room and in all. */
export type Added = 'D' | 'E' | 'G' | 'H' | 'I' | 'J' | 'K';

/** A line with all that its row shows. */
export interface Line {
  readonly line: RoomLine;
  readonly number: number;
  /** Of its profile, in the order of the plan. */
  readonly index: number;
  readonly planned: ProfilePlan;
  readonly values: Readonly<Record<Added, number>>;
  readonly upToHere: number;
}

export function linesOf(plan: JobPlan): Line[] {
  const { unit } = plan.job.shop;
  const places = new Map(plan.profiles.map(({ profile }, index) => [profile.name, index]));
  const running = new Map<string, Fraction>();
  return plan.rooms.map((line, at) => {
    const index = places.get(line.profile) ?? 0;
    const planned = plan.profiles[index];
    if (planned === undefined) throw new RangeError(`Nothing is planned of ${line.profile}.`);
    const { tally } = planned;
    const upToHere = line.lengthNet.add(running.get(line.profile) ?? new Fraction(0));
    running.set(line.profile, upToHere);
    const share = Number(line.lengthNet) / Number(tally.lengthNet);
    return {
      line,
      number: at + 1,
      index,
      planned,
      upToHere: numberIn(upToHere, unit),
      values: {
        D: line.pieces,
        E: tally.passes * share,
        G: numberIn(line.lengthNet, unit),
        H: (tally.boardFeetNet ?? 0) * share,
        I: (tally.boardFeetWithAllowance ?? 0) * share,
        J: hoursOf(tally.hours) * share,
        K: money(line.priceCents),
      },
    };
  });
}
