/** What is at the ceiling is never cut away: where a head casing reaches into it, that is told. */
import { fault, placeFault, type Caution } from '../../core/faults/fault.ts';
import { crownSizeOf } from '../crown-size-of.ts';
import type { Profile } from '../job.ts';
import type { TrimRow } from '../room-rows.ts';
import { sideArgument, type OpeningSide } from '../pieces/opening-sides.ts';
import type { WalledRoom } from './list-rooms.ts';
import { wallsOf } from './named-walls.ts';

/** A caution for each opening whose casing leaves no room; none where a Height or the molding's size isn't known. */
export function noteCeiling(
  room: WalledRoom,
  row: TrimRow,
  profile: Profile,
  sidesOn: (room: WalledRoom, wall: number) => readonly OpeningSide[],
): Caution[] {
  const drop = profile.spring === undefined ? profile.blankWidth : crownSizeOf(profile).drop;
  if (drop === undefined) return [];
  return wallsOf(row, room).flatMap((wall) => {
    const height = room.rows[wall]?.height;
    if (height === undefined) return [];
    return sidesOn(room, wall).flatMap((side) => {
      const { kind, sill, height: high, cells } = side.opening;
      if (kind === 'window' && sill === undefined) return [];
      const top = Number((sill?.add(high) ?? high).add(side.margin));
      const by = top - (Number(height) - Number(drop));
      if (by <= 0) return [];
      const details = { profile: profile.name };
      const laps = fault(
        'room.casing-laps-ceiling',
        sideArgument(side),
        { inches: by },
        { details },
      );
      return [placeFault(laps, cells.height)];
    });
  });
}
