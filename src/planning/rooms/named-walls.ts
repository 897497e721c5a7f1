/** Which walls of a room a row of Trim runs along. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import { fault, placeFault, type Fault } from '../../core/faults/fault.ts';
import { findNearNames } from '../../core/words/near-words.ts';
import { nameKey } from '../job.ts';
import { type NamedWalls, type TrimRow } from '../room-rows.ts';
import type { WalledRoom } from './list-rooms.ts';

/** The walls, from 0, in the order of the room. */
export function wallsOf({ walls }: TrimRow, room: WalledRoom): number[] {
  if (walls.names.length === 0) return room.rows.map((_, at) => at);
  const named = new Set(namesIn(walls, [room]).map((name) => room.places.get(nameKey(name))));
  return room.rows.flatMap((_, at) => (named.has(at) === (walls.are === 'these') ? [at] : []));
}

/** A wall may be called by a word that would part a list: the cell as a whole goes first. */
function namesIn({ names, text }: NamedWalls, rooms: readonly WalledRoom[]): readonly string[] {
  return rooms.some(({ places }) => places.has(nameKey(text))) ? [text] : names;
}

/**
 * Walls that a row names and none of its rooms has, and a start on a wall without its trim.
 * @param rooms of the row
 */
export function checkNamedWalls(row: TrimRow, rooms: readonly WalledRoom[]): Fault[] {
  const isThere = (name: string): boolean => rooms.some(({ places }) => places.has(nameKey(name)));
  const faults = namesIn(row.walls, rooms)
    .filter((name) => !isThere(name))
    .map((name) => placeFault(wallNotListed('walls', name, rooms), row.cells.walls));
  const { starts } = row;
  if (starts !== undefined && !isThere(starts)) {
    faults.push(placeFault(wallNotListed('starts', starts, rooms), row.cells.starts));
  }
  if (faults.length > 0) return faults;
  const count = rooms.reduce((sum, room) => sum + wallsOf(row, room).length, 0);
  if (count === 0) {
    return [placeFault(fault('room.trim-on-no-wall', 'walls', row.walls.text), row.cells.walls)];
  }
  const isOnTrim = (room: WalledRoom): boolean =>
    starts !== undefined && wallsOf(row, room).includes(room.places.get(nameKey(starts)) ?? -1);
  if (starts === undefined || rooms.some(isOnTrim)) return [];
  const details = { walls: row.walls.text };
  return [
    placeFault(fault('room.starts-without-trim', 'starts', starts, { details }), row.cells.starts),
  ];
}

/** @param rooms where it was looked for */
export function wallNotListed(
  heading: HeadingKey,
  name: string,
  rooms: readonly WalledRoom[],
): Fault {
  const [only] = rooms;
  const known = [...new Set(rooms.flatMap(({ rows }) => rows.map(({ wall }) => wall)))];
  const details = {
    room: rooms.length === 1 && only !== undefined ? only.name : '',
    known: known.join(', '),
    may: findNearNames(name, known).join(' or '),
  };
  return fault('room.wall-not-listed', heading, name, { details });
}
