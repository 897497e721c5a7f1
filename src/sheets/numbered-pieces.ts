/** The pieces in the order in which Pieces lists them: there each has its No., by which sheets find it. */
import type { JobPlan } from '../planning/job-plan.ts';
import type { Piece } from '../planning/piece.ts';

/** By room as they first come up, then by profile as Profiles has them, then by run; a No. is the place, from 1. */
export function piecesInOrder({ pieces, job }: JobPlan): readonly Piece[] {
  const profiles = new Map(job.profiles.map(({ name }, at) => [name, at]));
  const rooms = new Map<string, number>();
  for (const { room } of pieces) if (!rooms.has(room)) rooms.set(room, rooms.size);
  const place = (at: number | undefined): number => at ?? 0;
  return [...pieces].sort(
    (one, other) =>
      place(rooms.get(one.room)) - place(rooms.get(other.room)) ||
      place(profiles.get(one.profile)) - place(profiles.get(other.profile)),
  );
}

/** Each piece's No. by its id. */
export function pieceNumbers(plan: JobPlan): ReadonlyMap<string, number> {
  return new Map(piecesInOrder(plan).map(({ id }, at) => [id, at + 1]));
}
