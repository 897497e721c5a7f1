/** A room's walls against each other. */
import { fault } from '../faults/fault.ts';
import { toDegrees } from '../units/angle.ts';
import { computeClosure, type Closure } from './closure.ts';
import { layOutWalls, type PlanWall } from './room-plan.ts';
import { refuseOpenGap } from './refuse-open-gap.ts';
import { listSuspects, type Suspects } from './suspects.ts';
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
  /** Absent where a length or a corner is no measure of a room. */
  readonly plan?: readonly PlanWall[];
  /** Of a closed room with a plan: how far it misses, to be shown where it is accepted too. */
  readonly closure?: Closure;
  /** Of a room that doesn't close. */
  readonly suspects?: Suspects;
}

/** Turns that add up to a full turn to the left, but for what a gauge may be off. */
const TURNED_ABOUT_WITHIN_DEGREES = 10;

/**
 * Checks one room, its walls in order to the right: every measure by itself, the closure of a room
 * without an `end`, and walls that cross.
 * @returns faults as `checkWalls`; else `room.turned-about` or `room.not-closed`, or `room.walls-cross`,
 * each at the cell that most likely must change.
 */
export function checkRoom(room: Room): RoomCheck {
  const faults = checkWalls(room);
  if (faults.length > 0) return { faults };
  const plan = layOutWalls(room.walls);
  if (isOpenRoom(room)) return { faults: checkCrossing(room, plan), plan };
  const closure = computeClosure(room.walls);
  if (closure.isAccepted) return { faults: checkCrossing(room, plan, closure), plan, closure };
  const turned = toDegrees(closure.angleMiss) + 360;
  if (Math.abs(turned + 360) <= TURNED_ABOUT_WITHIN_DEGREES) {
    const given = { degrees: Math.round(turned) };
    const about = fault('room.turned-about', roomArgument(room), given);
    return { faults: [{ fault: about, wall: 0, cell: 'turn' }], plan, closure };
  }
  const suspects = listSuspects(room.walls);
  return { faults: [refuseOpenGap(room, closure, suspects)], plan, closure, suspects };
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
