/** The whole job's lines and totals, added up from its profiles. */
import Fraction from 'fraction.js';
import type { ExactInches } from '../core/units/length.ts';
import type { Job } from './job.ts';
import type { JobWork, ProfilePlan, RoomLine, Totals } from './job-plan.ts';
import { hoursOf } from './work/hours.ts';
import { cents } from './money.ts';
import type { Piece } from './piece.ts';
import { priceJob } from './price-job.ts';
import type { WorkLine } from './work/work-row.ts';

/**
 * A line for each room and profile with pieces to cut, rooms in the order in which they first come up,
 * profiles in that of Profiles. A profile's price is shared by net length. The running sum of the
 * shares is rounded to the cent, and a line has what it adds to that sum. So the shares sum to the
 * price, each within a cent of its part (derived).
 */
export function roomLines(pieces: readonly Piece[], profiles: readonly ProfilePlan[]): RoomLine[] {
  const rooms = new Map<string, Map<string, { pieces: number; lengthNet: ExactInches }>>();
  for (const { room, profile, done, cutLength } of pieces) {
    const lines = rooms.get(room) ?? new Map<string, { pieces: number; lengthNet: ExactInches }>();
    rooms.set(room, lines);
    if (done) continue;
    const line = lines.get(profile) ?? { pieces: 0, lengthNet: new Fraction(0) };
    lines.set(profile, {
      pieces: line.pieces + 1,
      lengthNet: line.lengthNet.add(cutLength),
    });
  }
  const running = new Map<string, { length: ExactInches; cents: number }>();
  return [...rooms].flatMap(([room, lines]) =>
    profiles.flatMap(({ profile: { name }, tally, money }): RoomLine[] => {
      const line = lines.get(name);
      if (line === undefined) return [];
      const before = running.get(name) ?? { length: new Fraction(0), cents: 0 };
      const length = before.length.add(line.lengthNet);
      const share = Number(length) / Number(tally.lengthNet);
      const upToHere = cents(money.priceCents * share);
      running.set(name, { length, cents: upToHere });
      return [{ room, profile: name, ...line, priceCents: upToHere - before.cents }];
    }),
  );
}

export function sumUp(
  job: Job,
  pieces: readonly Piece[],
  profiles: readonly ProfilePlan[],
  jobWork: JobWork,
): Totals {
  const sum = (value: (plan: ProfilePlan) => number): number =>
    profiles.reduce((all, plan) => all + value(plan), 0);
  const exact = (value: (plan: ProfilePlan) => Fraction): Fraction =>
    profiles.reduce((all, plan) => all.add(value(plan)), new Fraction(0));
  const made = profiles.filter(({ profile }) => profile.make !== 'buy');
  const bought = made.reduce((all, { tally }) => all + (tally.boardFeetBought ?? Number.NaN), 0);
  return {
    pieces: sum(({ tally }) => tally.pieces),
    done: pieces.filter((piece) => piece.done).length,
    sticks: sum(({ tally }) => tally.sticks),
    sticksCut: sum(({ sticks }) => sticks.filter(({ isCut }) => isCut === true).length),
    lengthNet: exact(({ tally }) => tally.lengthNet),
    lengthBought: exact(({ tally }) => tally.lengthBought),
    boardFeetNet: sum(({ tally }) => tally.boardFeetNet ?? 0),
    boardFeetWithAllowance: sum(({ tally }) => tally.boardFeetWithAllowance ?? 0),
    ...(Number.isNaN(bought) ? {} : { boardFeetBought: bought }),
    passes: sum(({ tally }) => tally.passes),
    joints: sum(({ tally }) => tally.joints),
    jointCostCents: sum(({ byPlan }) =>
      cents(costOfJoints(byPlan.work, job.shop.hourlyRate) * 100),
    ),
    hours: sum(({ tally }) => hoursOf(tally.hours)) + jobWork.hours,
    costCents: sum(({ money }) => money.costCents) + (jobWork.money?.costCents ?? 0),
    contingencyCents:
      sum(({ money }) => money.contingencyCents) + (jobWork.money?.contingencyCents ?? 0),
    markupCents: sum(({ money }) => money.markupCents) + (jobWork.money?.markupCents ?? 0),
    ...priceJob(profiles, jobWork, job.shop),
    currency: job.shop.currency,
  };
}

function costOfJoints(work: readonly WorkLine[], hourlyRate: number): number {
  return work.reduce(
    (sum, { row, hours, money }) => (row.per === 'joint' ? sum + hours * hourlyRate + money : sum),
    0,
  );
}
