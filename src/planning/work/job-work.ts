/** Work for the whole job, such as delivering: no profile or room bears it. */
import type { Job } from '../job.ts';
import type { JobWork, RoomLine } from '../job-plan.ts';
import { priceLines } from '../money.ts';
import { jobLines, moneyOfLines } from './work-lines.ts';
import type { JobPer } from './work-row.ts';

/** A job of which nothing is left has none of it. */
export function planJobWork(
  { shop, work, openings }: Pick<Job, 'shop' | 'work' | 'openings'>,
  rooms: readonly RoomLine[],
): JobWork {
  if (rooms.length === 0) return { lines: [], hours: 0 };
  const lines = jobLines(work, countJob(openings, rooms));
  if (lines.length === 0) return { lines, hours: 0 };
  const hours = lines.reduce((sum, line) => sum + line.hours, 0);
  return { lines, hours, money: priceLines(0, 0, { hours, money: moneyOfLines(lines) }, shop) };
}

/** Rooms are those with pieces to cut; openings are all of the job, each as often as it is asked for. */
export function countJob(
  openings: Job['openings'],
  rooms: readonly RoomLine[],
): Readonly<Record<JobPer, number>> {
  if (rooms.length === 0) return { job: 0, room: 0, opening: 0 };
  return {
    job: 1,
    room: new Set(rooms.map(({ room }) => room)).size,
    opening: openings.reduce((sum, { quantity }) => sum + quantity, 0),
  };
}
