/** Walls of a room as someone measures them who goes round it to the right, facing them from inside. */
import { own, phrase, type Argument } from '../faults/argument.ts';
import { fault, type Fault } from '../faults/fault.ts';
import { inchesGiven } from '../faults/quantity.ts';
import { radians, toDegrees, type Radians } from '../units/angle.ts';

/**
 * How the next wall goes on at the right-hand end: into the room round an `inside` corner, away from it
 * round an `outside` one; at the `end` there is none, and the last wall doesn't come back to the first.
 */
export const TURNS = ['inside', 'outside', 'end'] as const;
export type Turn = (typeof TURNS)[number];

export interface Wall {
  /** As the room's list names it: 3, window wall. */
  readonly name: string;
  /** From corner to corner, inches, above 0. */
  readonly length: number;
  /**
   * What a bevel gauge reads between the faces of this wall and the next at its right-hand end, above
   * 0 and below a half turn, inside and outside corners alike. Not looked at where turn is `end`.
   */
  readonly cornerAtRight: Radians;
  readonly turn: Turn;
}

/** Walls in order to the right, clockwise seen from above; the last meets the first unless it ends. */
export interface Room {
  readonly name: string;
  readonly walls: readonly Wall[];
}

/** A fault with the wall, from 0, and the one of its cells that must change. */
export interface WallFault {
  readonly fault: Fault;
  readonly wall: number;
  readonly cell: 'length' | 'corner' | 'turn';
}

const LEAST_WALLS = 3;
/** More than any room has; each wall is compared with each. */
export const MOST_WALLS = 500;

/** What faults call a wall. */
export function wallArgument(wall: Wall, room: Room): Argument {
  return phrase('wallIn', { wall: own(wall.name), room: own(room.name) });
}

/** What faults call a room. */
export function roomArgument(room: Room): Argument {
  return phrase('roomNamed', { room: own(room.name) });
}

/** Whether the last wall has an end instead of a corner with the first. */
export function isOpenRoom({ walls }: Room): boolean {
  return walls[walls.length - 1]?.turn === 'end';
}

/** How far the heading turns at the right-hand end: to the right above 0, below a half turn each way. */
export function turnAngle({ turn, cornerAtRight }: Wall): Radians {
  if (turn === 'end') return radians(0);
  return radians((turn === 'inside' ? 1 : -1) * (Math.PI - cornerAtRight));
}

/**
 * What no room can have, wall by wall, before its corners are placed.
 * @returns faults `room.no-walls`, `room.too-many-walls`, `room.too-few-walls`, `length.not-positive`,
 * `length.unreadable`, `room.corner-out-of-range`, `room.end-before-last`.
 */
export function checkWalls(room: Room): readonly WallFault[] {
  const { walls } = room;
  const last = walls.length - 1;
  const argument = roomArgument(room);
  if (last < 0) {
    return [{ fault: fault('room.no-walls', argument, 0), wall: 0, cell: 'length' }];
  }
  if (walls.length > MOST_WALLS) {
    const tooMany = fault('room.too-many-walls', argument, walls.length, { limit: MOST_WALLS });
    return [{ fault: tooMany, wall: MOST_WALLS, cell: 'length' }];
  }
  const faults = walls.flatMap((wall, at) => checkWall(wall, at, room));
  if (walls.length < LEAST_WALLS && !isOpenRoom(room)) {
    const tooFew = fault('room.too-few-walls', argument, walls.length, { limit: LEAST_WALLS });
    faults.push({ fault: tooFew, wall: last, cell: 'turn' });
  }
  return faults;
}

function checkWall(wall: Wall, at: number, room: Room): WallFault[] {
  const { length, cornerAtRight: corner, turn } = wall;
  const found: WallFault[] = [];
  const name = wallArgument(wall, room);
  const sizeOf = (size: 'length' | 'corner'): Argument => phrase('sizeOf', { size, profile: name });
  if (!(Number.isFinite(length) && length > 0)) {
    const code = Number.isFinite(length) ? 'length.not-positive' : 'length.unreadable';
    const given = inchesGiven(length);
    found.push({ fault: fault(code, sizeOf('length'), given), wall: at, cell: 'length' });
  }
  if (turn === 'end') {
    if (at === room.walls.length - 1) return found;
    found.push({ fault: fault('room.end-before-last', name, turn), wall: at, cell: 'turn' });
    return found;
  }
  if (!(corner > 0 && corner < Math.PI)) {
    const given = Number.isFinite(corner) ? { degrees: toDegrees(corner) } : String(corner);
    const range = fault('room.corner-out-of-range', sizeOf('corner'), given);
    found.push({ fault: range, wall: at, cell: 'corner' });
  }
  return found;
}
