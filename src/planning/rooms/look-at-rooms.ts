/** Rooms as they are being typed, to be drawn before anything is planned: also such as don't close. */
import { checkRoom } from '../../core/room/check-room.ts';
import type { Suspect } from '../../core/room/suspects.ts';
import type { Room } from '../../core/room/wall.ts';
import { nameKey, type Opening, type OpeningKind } from '../job.ts';
import { type WallRow } from '../room-rows.ts';
import { listSides } from '../pieces/opening-sides.ts';
import { listRooms, roomOf, type WalledRoom } from './list-rooms.ts';

export interface RoomLook {
  readonly name: string;
  readonly isAtFault: boolean;
  /** Absent where a wall can't be read, or is no measure of a room: that is a fault at its cell. */
  readonly drawn?: {
    readonly room: Room;
    readonly openings: readonly OpeningLook[];
    /** What may be wrong, and is to be marked. */
    readonly suspects: readonly Pick<Suspect, 'is' | 'wall'>[];
  };
}

interface OpeningLook {
  /** Its wall, from 0. */
  readonly wall: number;
  readonly kind: OpeningKind;
  /** Inches from the wall's left corner. */
  readonly from: number;
  readonly to: number;
}

/** @param unread keys of rooms of which a row can't be read */
export function lookAtRooms(
  walls: readonly WallRow[],
  unread: ReadonlySet<string>,
  openings: readonly Opening[],
): RoomLook[] {
  const { rooms } = listRooms(walls, unread);
  const openingsOf = placeOpenings(openings, rooms);
  return [...rooms].map(([key, { name, rows, plan }]): RoomLook => {
    const isAtFault = plan === undefined;
    if (unread.has(key)) return { name, isAtFault };
    const room = roomOf(name, rows);
    const check = checkRoom(room);
    if (check.plan === undefined) return { name, isAtFault };
    const mayBe = check.suspects?.mayBe;
    // Where nothing is computed, the wall whose cell is at fault.
    const suspects =
      mayBe ??
      check.faults.map(({ wall, cell }) => ({
        is: cell === 'length' ? ('length' as const) : ('corner' as const),
        wall,
      }));
    return { name, isAtFault, drawn: { room, openings: openingsOf.get(key) ?? [], suspects } };
  });
}

/** Those that are known to lie within their walls. */
function placeOpenings(
  openings: readonly Opening[],
  rooms: ReadonlyMap<string, WalledRoom>,
): Map<string, OpeningLook[]> {
  const found = new Map<string, OpeningLook[]>();
  const named = [...rooms.values()].map(({ name }) => ({ room: name }));
  for (const side of listSides(openings, named, () => undefined)) {
    const key = nameKey(side.room);
    const room = rooms.get(key);
    const wall = room?.places.get(nameKey(side.wall));
    const { position, opening } = side;
    if (room === undefined || wall === undefined || position === undefined) continue;
    const to = position.add(opening.width);
    const isWithin = position.gte(0) && room.rows[wall]?.length.gte(to) === true;
    if (!isWithin || opening.quantity > 1) continue;
    const look = { wall, kind: opening.kind, from: Number(position), to: Number(to) };
    const known = found.get(key);
    if (known === undefined) found.set(key, [look]);
    else known.push(look);
  }
  return found;
}
