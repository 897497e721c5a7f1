/** What goes up in each room of Walls, in the order in which it does: for whoever fits it. */
import type { Where } from '../../core/faults/fault.ts';
import type { Room } from '../../core/room/wall.ts';
import { nameKey, sameName, type Job, type Profile, type RunEnd } from '../job.ts';
import { type WallPlace } from '../room-rows.ts';
import { type TrimRow } from '../room-rows.ts';
import type { JobPlan } from '../job-plan.ts';
import type { Piece } from '../piece.ts';
import { listPieces } from '../pieces/list-pieces.ts';
import { listSides, type OpeningSide } from '../pieces/opening-sides.ts';
import { listRooms, roomOf, type WalledRoom } from './list-rooms.ts';

export interface FittedPiece {
  readonly piece: Piece;
  /** The wall, from 0. */
  readonly wall: number;
  /** The how-many-eth it goes up of its trim, from 1. */
  readonly order: number;
  /** Which way round the room one has come with it; absent for a first and a last piece of all. */
  readonly goesOn?: 'left' | 'right';
  /** The walls, from 0, whose pieces go up together with it, joined at outside corners. */
  readonly joinedTo: readonly number[];
}

/** The pieces of one row of Trim in a room, in the order of fitting. */
export interface FittedTrim {
  readonly row: TrimRow;
  readonly place: WallPlace;
  readonly pieces: readonly FittedPiece[];
}

export interface RoomFittings {
  readonly room: Room;
  /** In the order of Trim. */
  readonly trims: readonly FittedTrim[];
  /** Sides of openings on its walls, each with its wall, from 0. */
  readonly openings: readonly { readonly wall: number; readonly side: OpeningSide }[];
  /** Casing, aprons and stools. */
  readonly aroundOpenings: readonly Piece[];
  /** Of runs that somebody typed, but where each stands in place of a made one: nobody said when they go up. */
  readonly typed: readonly Piece[];
}

/** Room by room as Walls has them; each piece of such a room stands in one of its lists, once. */
export function listRoomFittings({ job, pieces }: Pick<JobPlan, 'job' | 'pieces'>): RoomFittings[] {
  const { rooms } = listRooms(job.walls, new Set());
  const piecesOf = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const key = nameKey(piece.room);
    const known = piecesOf.get(key);
    if (known === undefined) piecesOf.set(key, [piece]);
    else known.push(piece);
  }
  const sides = sidesOf(job, rooms);
  const openingsAt = new Set(job.openings.map(({ where }) => whereKey(where)));
  return [...rooms].map(([key, room]): RoomFittings => {
    const here = piecesOf.get(key) ?? [];
    const isAround = ({ where, made }: Piece): boolean =>
      made === undefined && openingsAt.has(whereKey(where));
    return {
      room: roomOf(room.name, room.rows),
      trims: listTrims(job.trim, room, here),
      openings: sides.flatMap((side) => {
        const wall = room.places.get(nameKey(side.wall));
        return nameKey(side.room) === key && wall !== undefined ? [{ wall, side }] : [];
      }),
      aroundOpenings: here.filter(isAround),
      typed: here.filter((piece) => orderOf(piece) === undefined && !isAround(piece)),
    };
  });
}

/**
 * Of one room alone, as it is being typed: what of a job has nothing to do with the room isn't looked at.
 * @returns undefined where Walls has no such room
 */
export function fitRoom(job: Job, room: string): RoomFittings | undefined {
  const isHere = (one: { readonly room: string }): boolean => sameName(one.room, room);
  const inRoom: Job = {
    ...job,
    runs: job.runs.filter(isHere),
    walls: job.walls.filter(isHere),
    openings: job.openings.filter(
      (one) => isHere(one) || (one.otherRoom !== undefined && sameName(one.otherRoom, room)),
    ),
  };
  const pieces = listPieces(inRoom).pieces.filter(isHere);
  return listRoomFittings({ job: inRoom, pieces }).find(({ room: { name } }) =>
    sameName(name, room),
  );
}

function sidesOf({ openings, profiles }: Job, rooms: ReadonlyMap<string, WalledRoom>) {
  const byName = new Map(profiles.map((one) => [nameKey(one.name), one]));
  const profileOf = (name: string): Profile | undefined => byName.get(nameKey(name));
  const named = [...rooms.values()].map(({ name }) => ({ room: name }));
  return listSides(openings, named, profileOf);
}

function listTrims(
  trim: readonly TrimRow[],
  room: WalledRoom,
  pieces: readonly Piece[],
): FittedTrim[] {
  const ofRow = new Map<string, Piece[]>();
  for (const piece of pieces) {
    if (piece.made === undefined || orderOf(piece) === undefined) continue;
    const key = whereKey(piece.made.trim);
    const known = ofRow.get(key);
    if (known === undefined) ofRow.set(key, [piece]);
    else known.push(piece);
  }
  return trim.flatMap((row): FittedTrim[] => {
    const made = ofRow.get(whereKey(row.where)) ?? [];
    const place = made[0]?.made?.place;
    return place === undefined ? [] : [{ row, place, pieces: inOrder(made, room) }];
  });
}

/** Pieces as they follow each other round the room, in the order in which they go up. */
function inOrder(pieces: readonly Piece[], room: WalledRoom): FittedPiece[] {
  const round = pieces.filter(({ kind }) => kind === 'run');
  const wallOf = ({ run }: Piece): number => room.places.get(nameKey(run)) ?? 0;
  const isBeside = (one: Piece, other: Piece, step: 1 | -1): boolean => {
    const walls = room.rows.length;
    return wallOf(other) === (wallOf(one) + step + walls) % walls;
  };
  /** The order of what stands beside a piece, and what is joined to it, past all that is joined. */
  const walk = (at: number, step: 1 | -1): { order?: number | undefined; joined: number[] } => {
    const joined: number[] = [];
    let [here, next] = [round[at], round[(at + step + round.length) % round.length]];
    for (let steps = 1; steps < round.length; steps++) {
      if (here === undefined || next === undefined) break;
      if (!isBeside(here, next, step) || !meet(here, next, step)) break;
      const order = orderOf(next);
      if (order !== orderOf(here)) return { order, joined };
      if (!isJoined(here, next, step)) break;
      joined.push(wallOf(next));
      here = next;
      next = round[(at + step * (steps + 1) + round.length * 2) % round.length];
    }
    return { joined };
  };
  const fitted = round.map((piece, at): FittedPiece => {
    const order = orderOf(piece) ?? 0;
    const [left, right] = [walk(at, -1), walk(at, 1)];
    const comesFrom = [left, right].map((one) => one.order !== undefined && one.order < order);
    const goesOn = comesFrom[0] === comesFrom[1] ? undefined : comesFrom[0] ? 'right' : 'left';
    return {
      piece,
      wall: wallOf(piece),
      order,
      ...(goesOn === undefined ? {} : { goesOn }),
      joinedTo: [...left.joined.reverse(), ...right.joined],
    };
  });
  const sorted = [...fitted].sort((one, other) => one.order - other.order);
  const returns = pieces.filter(({ kind }) => kind === 'return');
  return sorted.flatMap((one) => [
    one,
    ...returns
      .filter(({ id }) => id.startsWith(`${one.piece.id} return `))
      .map((piece): FittedPiece => {
        const { wall, order } = one;
        return { piece, wall, order, joinedTo: [] };
      }),
  ]);
}

function orderOf({ made }: Piece): number | undefined {
  return made?.order === undefined ? undefined : Math.min(made.order.left, made.order.right);
}

/** Whether two pieces beside each other touch in a corner: one of the ends there is cut to the other. */
function meet(here: Piece, next: Piece, step: 1 | -1): boolean {
  return endsBetween(here, next, step).some(({ kind }) => isCutToNext(kind));
}

/** Somebody may have typed another end for one of the two. */
function isJoined(here: Piece, next: Piece, step: 1 | -1): boolean {
  return endsBetween(here, next, step).every(({ kind }) => kind === 'outside miter');
}

function endsBetween(here: Piece, next: Piece, step: 1 | -1): Piece['left'][] {
  return step === 1 ? [here.right, next.left] : [here.left, next.right];
}

function isCutToNext(kind: RunEnd['kind']): boolean {
  return kind === 'cope' || kind === 'inside miter' || kind === 'outside miter';
}

function whereKey(where: Where): string {
  return JSON.stringify(where);
}
