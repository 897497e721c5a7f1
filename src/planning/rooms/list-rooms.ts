/** Rooms out of the rows of Walls, each checked by itself. */
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import { checkRoom } from '../../core/room/check-room.ts';
import type { Closure } from '../../core/room/closure.ts';
import type { PlanWall } from '../../core/room/room-plan.ts';
import { roomArgument, wallArgument, type Room, type WallFault } from '../../core/room/wall.ts';
import { toDegrees, toRadians } from '../../core/units/angle.ts';
import { nameKey } from '../job.ts';
import { type WallRow } from '../room-rows.ts';

export interface WalledRoom {
  /** As its first row writes it. */
  readonly name: string;
  readonly rows: readonly WallRow[];
  /** Where each wall stands among the rows, by its name's key. */
  readonly places: ReadonlyMap<string, number>;
  /** Absent where something is at fault: nothing is made then. */
  readonly plan?: readonly PlanWall[];
}

export interface WalledRooms {
  /** By the key of its name, in the order of Walls. */
  readonly rooms: ReadonlyMap<string, WalledRoom>;
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** Smaller ones are no tape's. */
const LEAST_GAP_INCHES = 1 / 16;
const LEAST_MISS_DEGREES = 0.1;

/** @param unread keys of rooms of which a row can't be read: they can't be checked */
export function listRooms(walls: readonly WallRow[], unread: ReadonlySet<string>): WalledRooms {
  const rowsOf = new Map<string, WallRow[]>();
  for (const row of walls) {
    const key = nameKey(row.room);
    const known = rowsOf.get(key);
    if (known === undefined) rowsOf.set(key, [row]);
    else known.push(row);
  }
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const rooms = new Map<string, WalledRoom>();
  for (const [key, rows] of rowsOf) {
    const name = rows[0]?.room ?? '';
    const room = { name, rows, places: placesOf(rows) };
    if (unread.has(key)) {
      rooms.set(key, room);
      continue;
    }
    const twice = namedTwice(rows, room.places);
    const asTyped = roomOf(name, rows);
    const check = checkRoom(asTyped);
    const found = check.faults.map((one) => placeAt(one, rows));
    faults.push(...twice, ...found);
    const isSound = twice.length + found.length === 0;
    cautions.push(...check.cautions.map((one) => placeAt(one, rows)));
    // Where the room is doubted, that says the gap too.
    if (isSound && check.closure !== undefined && check.cautions.length === 0) {
      cautions.push(...sayGap(asTyped, check.closure, rows));
    }
    rooms.set(key, isSound && check.plan !== undefined ? { ...room, plan: check.plan } : room);
  }
  return { rooms, faults, cautions };
}

function placeAt({ fault: one, wall, cell }: WallFault, rows: readonly WallRow[]): Fault {
  const row = rows[wall];
  if (row === undefined) return one;
  return placeFault(one, cell === 'length' ? row.where : row.cells[cell]);
}

function placesOf(rows: readonly WallRow[]): Map<string, number> {
  const places = new Map<string, number>();
  rows.forEach(({ wall }, at) => {
    if (!places.has(nameKey(wall))) places.set(nameKey(wall), at);
  });
  return places;
}

/** As `checkRoom` and drawings take it. */
export function roomOf(name: string, rows: readonly WallRow[]): Room {
  const walls = rows.map(({ wall, length, corner, turn }) => ({
    name: wall,
    length: Number(length),
    cornerAtRight: toRadians(corner),
    turn,
  }));
  return { name, walls };
}

/** An opening or a row of Trim that names it could mean either. */
function namedTwice(rows: readonly WallRow[], places: ReadonlyMap<string, number>): Fault[] {
  const room = roomOf(rows[0]?.room ?? '', rows);
  return rows.flatMap((row, at) => {
    const wall = room.walls[at];
    if (wall === undefined || places.get(nameKey(row.wall)) === at) return [];
    return [
      placeFault(fault('room.wall-twice', wallArgument(wall, room), row.wall), row.cells.wall),
    ];
  });
}

/** What is accepted is shown, and no length is changed by it. */
function sayGap(room: Room, closure: Closure, rows: readonly WallRow[]): Caution[] {
  const { gap, gapAllowed, angleMiss } = closure;
  const missed = Math.abs(toDegrees(angleMiss));
  if (gap < LEAST_GAP_INCHES && missed < LEAST_MISS_DEGREES) return [];
  const details = {
    allowed: { inches: Math.round(gapAllowed * 16) / 16 },
    ...(missed < LEAST_MISS_DEGREES ? {} : { missed: { degrees: Math.round(missed * 10) / 10 } }),
  };
  const given = { inches: Math.round(gap * 16) / 16 };
  const one = fault('room.gap', roomArgument(room), given, { details });
  const last = rows[rows.length - 1];
  return [last === undefined ? one : placeFault(one, last.where)];
}
