/** The door that a room is seen from. */
import { pointAlong, type PlanWall } from '../../core/room/room-plan.ts';
import type { OpeningSide } from '../pieces/opening-sides.ts';
import type { WalledRoom } from './list-rooms.ts';

export interface RoomDoor {
  /** From 0. */
  readonly wall: number;
  /** From the wall's left corner to the door's middle, inches; to the wall's middle where Position is blank. */
  readonly along: number;
}

/** The room's first door; else its first cased opening. */
export function findDoor(
  { rows }: WalledRoom,
  sidesOn: (wall: number) => readonly OpeningSide[],
): RoomDoor | undefined {
  for (const kind of ['door', 'cased opening'] as const) {
    for (const [wall, { length }] of rows.entries()) {
      const door = sidesOn(wall).find(({ opening }) => opening.kind === kind);
      if (door === undefined) continue;
      const middle = door.position?.add(door.opening.width.div(2)) ?? length.div(2);
      return { wall, along: Number(middle) };
    }
  }
  return undefined;
}

/** Where a wall has the door, seen square to it: from its left corner along it, inches; past its ends too. */
export function doorAlong(
  plan: readonly PlanWall[],
  door: RoomDoor,
  wall: number,
): number | undefined {
  const [own, doors] = [plan[wall], plan[door.wall]];
  if (own === undefined || doors === undefined) return undefined;
  const { x, y } = pointAlong(doors, door.along);
  return (x - own.from.x) * Math.cos(own.heading) + (y - own.from.y) * Math.sin(own.heading);
}
