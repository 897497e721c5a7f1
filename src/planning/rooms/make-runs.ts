/** Walls and Trim become runs, as if somebody had typed each. */
import { own, phrase } from '../../core/faults/argument.ts';
import { fault, placeFault, type Caution, type Fault } from '../../core/faults/fault.ts';
import { keptSpans, type Span } from '../../core/room/wall-spans.ts';
import { degrees } from '../../core/units/angle.ts';
import type { ExactInches } from '../../core/units/length.ts';
import Fraction from 'fraction.js';
import {
  nameKey,
  type EndKind,
  type Opening,
  type Profile,
  type Run,
  type RunEnd,
} from '../job.ts';
import { ENDS_WITHOUT_CORNER } from '../pieces/cut-length.ts';
import type { TrimRow, WallPlace, WallRow } from '../room-rows.ts';
import { listSides, outsideWidth, type OpeningSide } from '../pieces/opening-sides.ts';
import { judgeCut } from '../pieces/what-it-cuts.ts';
import { planFitting, type FittedWall, type WallToFit } from './fitting-plan.ts';
import { listRooms, type WalledRoom } from './list-rooms.ts';
import { asWritten, type Choose } from '../options/choose.ts';
import { checkNamedWalls, wallsOf } from './named-walls.ts';
import { placeOpenings } from './openings-on-walls.ts';
import { noteCeiling } from './ceiling-notes.ts';
import { chooseRows } from './own-trim.ts';
import { joinRuns } from './typed-runs.ts';
import { doorAlong, findDoor, type RoomDoor } from './room-door.ts';
import { findWallAcross } from './wall-across.ts';

export interface RoomsOfJob {
  readonly walls: readonly WallRow[];
  readonly trim: readonly TrimRow[];
  readonly openings: readonly Opening[];
  /** Those of Runs. */
  readonly typed: readonly Run[];
  readonly profiles: readonly Profile[];
  /** Keys of rooms with walls that can't be read. */
  readonly unread: ReadonlySet<string>;
  /** Whether all of Walls could be read: else a room that isn't there may be among the rest. */
  readonly isWallsSound: boolean;
  /** Whether Trim has any rows: else that no room has trim is told once, for all. */
  readonly isTrimmed: boolean;
  /** By the options that are taken up. Absent: as Trim has it. */
  readonly choose?: Choose;
}

export interface MadeRuns {
  /** Made ones room by room, in each in the order of Trim and then to the right; and those that are typed. */
  readonly runs: readonly Run[];
  readonly faults: readonly Fault[];
  readonly cautions: readonly Caution[];
}

/** With every fault of Walls, of Trim, and of Openings on walls. A room at fault has no runs. */
export function makeRuns(job: RoomsOfJob): MadeRuns {
  const { walls, trim, openings, typed, profiles, unread, isWallsSound, isTrimmed } = job;
  const { choose = asWritten } = job;
  const byName = new Map(profiles.map((one) => [nameKey(one.name), one]));
  const profileOf = (name: string): Profile | undefined => byName.get(nameKey(name));
  const { rooms, faults: ofRooms, cautions: ofGaps } = listRooms(walls, unread);
  const named = [...rooms.values()].map(({ name }) => ({ room: name }));
  const sides = listSides(openings, named, profileOf);
  const { sidesOn, faults: ofOpenings, cautions: ofOpen } = placeOpenings(rooms, sides, typed);
  const faults = [...ofRooms, ...ofOpenings];
  const cautions = [...ofGaps, ...ofOpen];
  const trimOf = new Map<WalledRoom, TrimRow[]>();
  for (const row of trim) {
    const found = roomsOf(row, rooms);
    const isUnknown = row.room !== undefined && found.length === 0;
    if (isUnknown && isWallsSound) faults.push(roomNotListed(row, rooms));
    if (found.length === 0) continue;
    if (isWallsSound) faults.push(...checkNamedWalls(row, found));
    for (const room of found) trimOf.set(room, [...(trimOf.get(room) ?? []), row]);
  }
  const bare = [...rooms.values()].filter((room) => isTrimmed && !trimOf.has(room));
  for (const room of bare) cautions.push(withoutTrim(room));
  const runs: Run[] = [];
  for (const [room, meant] of trimOf) {
    const { rows: all, cautions: ofOwn } = chooseRows(room, meant);
    const rows = all.flatMap((row): TrimRow[] => {
      const profile = choose(room.name, row.profile);
      return profile === undefined ? [] : [profile === row.profile ? row : { ...row, profile }];
    });
    cautions.push(...ofOwn);
    faults.push(...checkTwice(room, rows), ...rows.flatMap((row) => checkHeight(room, row)));
    const door = findDoor(room, (wall) => sidesOn(room, wall));
    for (const row of rows) {
      const profile = profileOf(row.profile);
      if (profile === undefined || room.plan === undefined) continue;
      const place = placeOf(row, profile);
      const cutting = (wall: number): readonly OpeningSide[] =>
        sidesOn(room, wall).filter(
          (side) => judgeCut(side, { ...profile, place }, profileOf).is === 'cut',
        );
      runs.push(...runsOf(room, row, place, cutting, door));
      if (row.at === 'ceiling') cautions.push(...noteCeiling(room, row, profile, sidesOn));
    }
  }
  const joined = joinRuns(runs, typed);
  return { ...joined, faults, cautions: [...cautions, ...joined.cautions] };
}

function roomsOf({ room }: TrimRow, rooms: ReadonlyMap<string, WalledRoom>): WalledRoom[] {
  if (room === undefined) return [...rooms.values()];
  const found = rooms.get(nameKey(room));
  return found === undefined ? [] : [found];
}

function roomNotListed(row: TrimRow, rooms: ReadonlyMap<string, WalledRoom>): Fault {
  const known = [...rooms.values()].map(({ name }) => name).join(', ');
  const one = fault('room.not-listed', 'room', row.room ?? '', { details: { known } });
  return placeFault(one, row.cells.room);
}

function withoutTrim({ name, rows }: WalledRoom): Caution {
  const argument = phrase('roomNamed', { room: own(name) });
  const one = fault('room.without-trim', argument, rows.length);
  const [first] = rows;
  return first === undefined ? one : placeFault(one, first.cells.wall);
}

/** Blank, the height of what is at a height is that of its profile. */
function placeOf({ at, height, cells }: TrimRow, profile: Profile): WallPlace {
  const known = at === 'height' ? (height ?? profile.place.height) : undefined;
  return {
    at,
    isSaid: true,
    ...(known === undefined ? {} : { height: known }),
    cell: at === 'height' ? cells.height : cells.where,
  };
}

/** A profile twice at one place of a wall would be planned, and paid for, twice. */
function checkTwice(room: WalledRoom, rows: readonly TrimRow[]): Fault[] {
  const seen = new Map<string, Set<number>>();
  return rows.flatMap((row) => {
    const height = row.height === undefined ? '' : row.height.toFraction();
    const key = JSON.stringify([nameKey(row.profile), row.at, height]);
    const before = seen.get(key);
    const walls = wallsOf(row, room);
    seen.set(key, new Set([...(before ?? []), ...walls]));
    const wall = room.rows[walls.find((at) => before?.has(at)) ?? -1];
    if (wall === undefined) return [];
    const details = { room: room.name, wall: wall.wall, at: row.at };
    return [placeFault(fault('room.trim-twice', 'profile', row.profile, { details }), row.where)];
  });
}

function checkHeight(room: WalledRoom, row: TrimRow): Fault[] {
  const { height } = row;
  if (height === undefined) return [];
  const low = wallsOf(row, room)
    .flatMap((at) => room.rows[at] ?? [])
    .find((wall) => wall.height?.lte(height) === true);
  if (low?.height === undefined) return [];
  const argument = phrase('wallIn', { wall: own(low.wall), room: own(room.name) });
  const limit = { inches: Number(low.height) };
  const one = fault('room.trim-above-ceiling', argument, { inches: Number(height) }, { limit });
  return [placeFault(one, row.cells.height)];
}

const ZERO = new Fraction(0);

function runsOf(
  room: WalledRoom,
  row: TrimRow,
  place: WallPlace,
  cutting: (wall: number) => readonly OpeningSide[],
  door: RoomDoor | undefined,
): Run[] {
  const chosen = new Set(wallsOf(row, room));
  const walls = room.rows.map((wall, at) => toFit(wall, chosen.has(at), cutting(at)));
  const starts = row.starts === undefined ? undefined : room.places.get(nameKey(row.starts));
  const across =
    door === undefined ? undefined : findWallAcross(room.plan ?? [], door.wall, door.along);
  const first = starts !== undefined && chosen.has(starts) ? starts : across;
  const fitted = planFitting(walls, row.insideCorners, first);
  return room.rows.flatMap((wall, at) => {
    const plan = fitted[at];
    return plan === undefined ? [] : runOf(room, at, wall, row, place, plan, door);
  });
}

function toFit(wall: WallRow, hasTrim: boolean, cutting: readonly OpeningSide[]): WallToFit {
  const { turn, length } = wall;
  const spans = cutting.flatMap((side) => {
    const { position, margin, opening } = side;
    if (position === undefined || opening.quantity > 1) return [];
    const from = position.sub(margin);
    return [{ from, to: from.add(outsideWidth(side)) }];
  });
  return {
    hasTrim,
    isParted: cutting.length > 0,
    reachesLeft: spans.every(({ from }) => from.gt(ZERO)),
    reachesRight: spans.every(({ to }) => to.lt(length)),
    between: spans.length === cutting.length ? countBetween(length, spans) : 0,
    turn,
    length: Number(length),
  };
}

function countBetween(length: ExactInches, spans: readonly Span[]): number {
  return keptSpans(length, spans).filter(({ from, to }) => from.gt(ZERO) && to.lt(length)).length;
}

function runOf(
  { name, rows, plan = [] }: WalledRoom,
  at: number,
  wall: WallRow,
  row: TrimRow,
  place: WallPlace,
  { left, right, order }: FittedWall,
  door: RoomDoor | undefined,
): Run {
  const seen = door === undefined ? undefined : doorAlong(plan, door, at);
  const before = rows[(at + rows.length - 1) % rows.length];
  const endAt = (kind: EndKind, corner: WallRow | undefined): RunEnd => {
    const isSquare = corner === undefined || corner.turn === 'end' || ENDS_WITHOUT_CORNER.has(kind);
    return { kind, corner: isSquare ? degrees(90) : corner.corner };
  };
  return {
    room: name,
    run: wall.wall,
    profile: row.profile,
    length: wall.length,
    measuredAs: 'wall',
    reveal: ZERO,
    quantity: 1,
    left: endAt(left, before),
    right: endAt(right, wall),
    onePiece: false,
    match: '',
    done: false,
    note: row.note,
    where: wall.where,
    cells: {
      profile: row.where,
      measuredAs: wall.where,
      quantity: wall.where,
      match: wall.where,
    },
    made: {
      wall: wall.where,
      trim: row.where,
      place,
      ...(order === undefined ? {} : { order }),
    },
    onWall: {
      at: row.at,
      leftTurn: before?.turn ?? 'end',
      rightTurn: wall.turn,
      lies: { from: ZERO, to: wall.length, isWhole: true },
      ...(seen === undefined ? {} : { door: seen }),
    },
  };
}
