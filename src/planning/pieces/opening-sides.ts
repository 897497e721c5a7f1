/** The sides of openings: each belongs to a room, may lie on a wall there, and has a name of its own. */
import Fraction from 'fraction.js';
import { own, phrase, type Argument } from '../../core/faults/argument.ts';
import type { ExactInches } from '../../core/units/length.ts';
import { nameKey, sameName, type Opening, type Profile, type Run } from '../job.ts';

export interface OpeningSide {
  readonly opening: Opening;
  /** The second one is listed by itself where its own room is named. */
  readonly side: 1 | 2;
  readonly room: string;
  /** Empty where nothing is cut away. */
  readonly wall: string;
  /** Among those of its kind on that wall: door, window 2. */
  readonly name: string;
  /** From the left corner of its wall to the opening's left edge, as seen in its room. */
  readonly position?: ExactInches;
  /** Reveal and casing beside the opening. */
  readonly margin: ExactInches;
}

/**
 * Sides in the order of the rows of Openings: the first in the opening's room, then the second where
 * Other room names its room. A room is written as in the runs, however its case is typed.
 */
export function listSides(
  openings: readonly Opening[],
  runs: readonly Pick<Run, 'room'>[],
  profileOf: (name: string) => Profile | undefined,
): OpeningSide[] {
  const rooms = roomsOf(runs);
  const seen = new Map<string, number>();
  const nameOf = (room: string, wall: string, kind: string): string => {
    const key = JSON.stringify([nameKey(room), nameKey(`${wall} ${kind}`)]);
    const number = (seen.get(key) ?? 0) + 1;
    seen.set(key, number);
    return number === 1 ? kind : `${kind} ${number}`;
  };
  return openings.flatMap((opening) => {
    const { wall, kind, position, otherRoom, otherWall, otherPosition, sidesCased } = opening;
    const casing = opening.casing === undefined ? undefined : profileOf(opening.casing);
    const room = rooms(opening.room);
    const first: OpeningSide = {
      opening,
      side: 1,
      room,
      wall,
      name: nameOf(room, wall, kind),
      ...(position === undefined ? {} : { position }),
      margin: outsideMargin(opening, casing),
    };
    if (otherRoom === undefined) return [first];
    const other = rooms(otherRoom);
    const second: OpeningSide = {
      opening,
      side: 2,
      room: other,
      wall: otherWall,
      name: nameOf(other, otherWall, kind),
      ...(otherPosition === undefined ? {} : { position: otherPosition }),
      margin: sidesCased === 2 ? outsideMargin(opening, casing) : new Fraction(0),
    };
    return [first, second];
  });
}

/** From outside to outside of the casing: what the opening takes out of a wall on this side. */
export function outsideWidth({ opening, margin }: OpeningSide): ExactInches {
  return opening.width.add(margin.mul(2));
}

/** What its pieces are called in its room. */
export function nameOnWall({ wall, name }: OpeningSide): string {
  return `${wall} ${name}`.trim();
}

/** What faults call it. */
export function sideArgument({ opening, room, wall }: OpeningSide): Argument {
  const slots = { kind: own(opening.kind), room: own(room) };
  return wall === ''
    ? phrase('openingOnNoWall', slots)
    : phrase('openingOnWall', { ...slots, wall: own(wall) });
}

/** What faults call a run. */
export function runArgument({ run, room }: Run): Argument {
  return phrase('runIn', { run: own(run), room: own(room) });
}

function outsideMargin(opening: Opening, casing: Profile | undefined): ExactInches {
  if (casing === undefined) return new Fraction(0);
  return opening.reveal.add(casing.blankWidth ?? 0);
}

/** A room's name as the runs write it: the very same, or else the first that differs in case alone. */
function roomsOf(runs: readonly Pick<Run, 'room'>[]): (room: string) => string {
  const exact = new Set(runs.map(({ room }) => room));
  return (room) =>
    exact.has(room) ? room : (runs.find((run) => sameName(run.room, room))?.room ?? room);
}
