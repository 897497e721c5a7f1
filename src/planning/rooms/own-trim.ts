/** A room's own row of Trim goes before one for all rooms. */
import { own, phrase } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { nameKey } from '../job.ts';
import { type TrimRow } from '../room-rows.ts';
import type { WalledRoom } from './list-rooms.ts';
import { wallsOf } from './named-walls.ts';

/**
 * The rows that a room goes by: where it has some of its own for a profile at a place (at whatever height),
 * those alone. That others are left out is told, with the walls that none of its own runs along.
 *
 * @param rows all that are meant for it, in the order of Trim
 */
export function chooseRows(
  room: WalledRoom,
  rows: readonly TrimRow[],
): { readonly rows: readonly TrimRow[]; readonly cautions: readonly Caution[] } {
  const isOwn = (row: TrimRow): boolean => row.room !== undefined;
  const ownOf = new Map<string, TrimRow[]>();
  for (const row of rows.filter(isOwn)) {
    ownOf.set(trimKey(row), [...(ownOf.get(trimKey(row)) ?? []), row]);
  }
  const isLeft = (row: TrimRow): boolean => !isOwn(row) && ownOf.has(trimKey(row));
  const left = new Set(rows.filter(isLeft).map(trimKey));
  const cautions = [...left].flatMap((key): Caution[] => {
    const ours = ownOf.get(key) ?? [];
    const [first] = ours;
    if (first === undefined) return [];
    const along = new Set(ours.flatMap((row) => wallsOf(row, room)));
    const bare = room.rows.flatMap(({ wall }, at) => (along.has(at) ? [] : [wall]));
    const details = { at: first.at, bare: bare.join(', ') };
    const argument = phrase('roomNamed', { room: own(room.name) });
    const one = fault('room.own-row-first', argument, first.profile, { details });
    return [placeFault(one, first.cells.room)];
  });
  return { rows: rows.filter((row) => !isLeft(row)), cautions };
}

function trimKey({ profile, at }: TrimRow): string {
  return JSON.stringify([nameKey(profile), at]);
}
