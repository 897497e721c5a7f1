/** The whole job's lines and totals, added up from its profiles. */
import Fraction from 'fraction.js';
import type { Job } from './job.ts';
import { hoursOf, type ProfilePlan, type RoomLine, type Totals } from './job-plan.ts';
import { cents, shareCents } from './money.ts';
import type { Piece } from './piece.ts';

/** The price of a profile is shared among its rooms by net length, to the cent. */
export function roomLines(pieces: readonly Piece[], profiles: readonly ProfilePlan[]): RoomLine[] {
  const rooms = [...new Set(pieces.map((piece) => piece.room))];
  const lines = profiles.flatMap(({ profile, money }) => {
    const parts = rooms.flatMap((room) => {
      const here = pieces.filter(
        (one) => !one.done && one.room === room && one.profile === profile.name,
      );
      if (here.length === 0) return [];
      const lengthNet = here.reduce((sum, one) => sum.add(one.cutLength), new Fraction(0));
      return [{ room, profile: profile.name, pieces: here.length, lengthNet }];
    });
    const shares = shareCents(
      money.priceCents,
      parts.map((part) => Number(part.lengthNet)),
    );
    return parts.map((part, index): RoomLine => ({ ...part, priceCents: shares[index] ?? 0 }));
  });
  return rooms.flatMap((room) => lines.filter((line) => line.room === room));
}

export function sumUp(
  job: Job,
  pieces: readonly Piece[],
  profiles: readonly ProfilePlan[],
): Totals {
  const sum = (value: (plan: ProfilePlan) => number): number =>
    profiles.reduce((all, plan) => all + value(plan), 0);
  const exact = (value: (plan: ProfilePlan) => Fraction): Fraction =>
    profiles.reduce((all, plan) => all.add(value(plan)), new Fraction(0));
  const priceCents = sum(({ money }) => money.priceCents);
  return {
    pieces: sum(({ tally }) => tally.pieces),
    done: pieces.filter((piece) => piece.done).length,
    sticks: sum(({ tally }) => tally.sticks),
    lengthNet: exact(({ tally }) => tally.lengthNet),
    lengthBought: exact(({ tally }) => tally.lengthBought),
    boardFeetNet: sum(({ tally }) => tally.boardFeetNet ?? 0),
    boardFeetWithAllowance: sum(({ tally }) => tally.boardFeetWithAllowance ?? 0),
    passes: sum(({ tally }) => tally.passes),
    hours: sum(({ tally }) => hoursOf(tally.hours)),
    costCents: sum(({ money }) => money.costCents),
    priceCents,
    taxCents: cents((priceCents * job.shop.tax) / 100),
    currency: job.shop.currency,
  };
}
