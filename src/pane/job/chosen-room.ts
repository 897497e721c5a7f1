/** Which room of Walls is drawn, and what is said of it. */
import { sameName } from '../../planning/job.ts';
import type { RoomLook } from '../../planning/rooms/look-at-rooms.ts';

/** The one that somebody chose, while it is there; else the first at fault, else the first. */
export function chosenRoom(
  rooms: readonly RoomLook[],
  chosen: string | undefined,
): RoomLook | undefined {
  const asked = chosen === undefined ? undefined : rooms.find(({ name }) => sameName(name, chosen));
  return asked ?? rooms.find(({ isAtFault }) => isAtFault) ?? rooms[0];
}

export function optionOf({ name, isAtFault }: RoomLook): string {
  return isAtFault ? `${name}: not right yet` : name;
}

export const NOT_DRAWN =
  'Not drawn yet: one of its walls can’t be read, or is no measure of a room. See Problems.';
