/** A room's walls against each other. */
import { fault } from '../faults/fault.ts';
import { toDegrees } from '../units/angle.ts';
import { computeClosure, type Closure } from './closure.ts';
import { doubtClosure } from './doubt-closure.ts';
import { layOutWalls, type PlanWall } from './room-plan.ts';
import { listSuspects, weighMiss, type Suspects } from './suspects.ts';
import {
  checkWalls,
  isOpenRoom,
  roomArgument,
  wallArgument,
  type Room,
  type WallFault,
} from './wall.ts';
import { findCrossing } from './walls-that-cross.ts';

export interface RoomCheck {
  readonly faults: readonly WallFault[];
  readonly cautions: readonly WallFault[];
  /** Absent where a length or a corner is no measure of a room. */
  readonly plan?: readonly PlanWall[];
  /** Of a closed room with a plan: how far it misses, to be shown where it is accepted too. */
  readonly closure?: Closure;
  /** Of a room that doesn't close, or closes worse than by honest errors. */
  readonly suspects?: Suspects;
}

/** Turns that add up to a full turn to the left, but for what a gauge may be off. */
const TURNED_ABOUT_WITHIN_DEGREES = 10;

/**
 * A miss beyond this, as `weighMiss` has it, comes of honest errors in fewer than 1 of 100 rooms: the square
 * of three of them, as the usual tables of chi-square have it. Large rooms may miss by more and be accepted.
 */
const HONEST_MISS = 11.34;

/**
 * Checks one room, its walls in order to the right: every measure by itself, the closure of a room
 * without an `end`, and walls that cross.
 * @returns faults as `checkWalls`; else `room.turned-about` or `room.not-closed`, or `room.walls-cross`;
 * the caution `room.closes-badly`; each at the cell that most likely must change.
 */
export function checkRoom(room: Room): RoomCheck {
  const { walls } = room;
  const unsound = checkWalls(room);
  if (unsound.length > 0) return { faults: unsound, cautions: [] };
  const plan = layOutWalls(walls);
  if (isOpenRoom(room)) return { faults: checkCrossing(room, plan), cautions: [], plan };
  const closure = computeClosure(walls);
  if (closure.isAccepted) {
    const faults = checkCrossing(room, plan, closure);
    if (faults.length > 0 || weighMiss(walls) <= HONEST_MISS) {
      return { faults, cautions: [], plan, closure };
    }
    const suspects = listSuspects(walls);
    return { faults, cautions: [doubtClosure(room, closure, suspects)], plan, closure, suspects };
  }
  const turned = toDegrees(closure.angleMiss) + 360;
  if (Math.abs(turned + 360) <= TURNED_ABOUT_WITHIN_DEGREES) {
    const given = { degrees: Math.round(turned) };
    const about = fault('room.turned-about', roomArgument(room), given);
    return { faults: [{ fault: about, wall: 0, cell: 'turn' }], cautions: [], plan, closure };
  }
  const suspects = listSuspects(walls);
  return { faults: [doubtClosure(room, closure, suspects)], cautions: [], plan, closure, suspects };
}

function checkCrossing(room: Room, plan: readonly PlanWall[], closure?: Closure): WallFault[] {
  const crossing = findCrossing(plan, closure !== undefined, closure?.gap ?? 0);
  if (crossing === undefined) return [];
  const [one, other] = crossing.map((at) => room.walls[at]);
  if (one === undefined || other === undefined) return [];
  const details = { other: `wall ${one.name}` };
  const cross = fault('room.walls-cross', wallArgument(other, room), other.name, { details });
  return [{ fault: cross, wall: crossing[1], cell: 'length' }];
}
