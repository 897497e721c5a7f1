/** Openings on the walls of Walls. */
import { sayArgument } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import { checkOpeningsOnWall, type OpeningOnWall } from '../../core/room/wall-spans.ts';
import { nameKey, type Run } from '../job.ts';
import { sideArgument, type OpeningSide } from '../pieces/opening-sides.ts';
import type { WalledRoom } from './list-rooms.ts';
import { wallNotListed } from './named-walls.ts';

export interface OpeningsOnWalls {
  /** Sides on each room's walls, in the order of Openings. */
  readonly sidesOn: (room: WalledRoom, wall: number) => readonly OpeningSide[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

const nameOf = (room: string, run: string): string => JSON.stringify([nameKey(room), nameKey(run)]);

/**
 * An opening may lie on a run that somebody typed beside the walls: it is cut out of that one.
 * @returns faults at the cells of Openings: those of `checkOpeningsOnWall`, `room.wall-not-listed`,
 * `room.above-ceiling`.
 */
export function placeOpenings(
  rooms: ReadonlyMap<string, WalledRoom>,
  sides: readonly OpeningSide[],
  typed: readonly Run[],
): OpeningsOnWalls {
  const typedRuns = new Set(typed.map(({ room, run }) => nameOf(room, run)));
  const faults: Fault[] = [];
  const cautions: Caution[] = [];
  const onWall = new Map<WalledRoom, Map<number, OpeningSide[]>>();
  for (const side of sides) {
    const room = rooms.get(nameKey(side.room));
    if (room === undefined) continue;
    const cell = side.side === 2 ? 'otherWall' : 'wall';
    const cellAt = side.opening.cells[cell];
    if (side.wall === '') {
      if (side.opening.kind === 'window' || side.side === 2) continue;
      const open = fault('room.opening-on-no-wall', sideArgument(side), side.opening.kind);
      cautions.push(placeFault(open, cellAt));
      continue;
    }
    const at = room.places.get(nameKey(side.wall));
    if (at === undefined) {
      if (typedRuns.has(nameOf(side.room, side.wall))) continue;
      faults.push(placeFault(wallNotListed(cell, side.wall, [room]), cellAt));
      continue;
    }
    const walls = onWall.get(room) ?? new Map<number, OpeningSide[]>();
    onWall.set(room, walls);
    walls.set(at, [...(walls.get(at) ?? []), side]);
  }
  for (const [room, walls] of onWall) {
    for (const [at, here] of walls) faults.push(...checkWall(room, at, here));
  }
  return { sidesOn: (room, wall) => onWall.get(room)?.get(wall) ?? [], faults, cautions };
}

function checkWall(room: WalledRoom, at: number, sides: readonly OpeningSide[]): Fault[] {
  const row = room.rows[at];
  if (row === undefined) return [];
  const { length, height } = row;
  const listed = sides.flatMap((side) =>
    Array.from({ length: side.opening.quantity }, () => ({ side, one: asOnWall(side) })),
  );
  const found = checkOpeningsOnWall(
    { name: row.wall, length },
    listed.map(({ one }) => one),
  ).flatMap(({ fault: one, opening, cell }) => {
    const side = listed[opening]?.side;
    if (side === undefined) return [];
    const { cells, where } = side.opening;
    const position = side.side === 2 ? cells.otherPosition : cells.position;
    return [placeFault(one, cell === 'width' ? where : position)];
  });
  const high = sides.flatMap((side) => {
    const { opening } = side;
    const top = opening.sill === undefined ? opening.height : opening.sill.add(opening.height);
    if (height === undefined || top.lte(height)) return [];
    const more = {
      limit: { inches: Number(height) },
      details: { wall: row.wall, cells: openingCells(opening.sill !== undefined) },
    };
    const one = fault('room.above-ceiling', sideArgument(side), { inches: Number(top) }, more);
    return [placeFault(one, opening.cells.height)];
  });
  return [...eachOnce(found), ...high];
}

function openingCells(hasSill: boolean): string {
  return hasSill ? `${sayArgument('height')}, ${sayArgument('sill')}` : sayArgument('height');
}

/** One row of several has one position at most, which is none's. */
function asOnWall(side: OpeningSide): OpeningOnWall {
  const { opening, position } = side;
  const isPlaced = position !== undefined && opening.quantity === 1;
  return {
    argument: sideArgument(side),
    width: opening.width,
    ...(isPlaced ? { position } : {}),
  };
}

/** A row of several is told once. */
function eachOnce(faults: readonly Fault[]): Fault[] {
  const byCell = new Map(faults.map((one) => [JSON.stringify([one.where, one.message]), one]));
  return [...byCell.values()];
}
