/** A room that doesn't close, or hardly, as a fault or caution that names which measure to look at again. */
import { fault } from '../faults/fault.ts';
import type { Quantity } from '../faults/quantity.ts';
import { radians, toDegrees } from '../units/angle.ts';
import type { Closure } from './closure.ts';
import type { Suspect, Suspects } from './suspects.ts';
import { roomArgument, type Room, type Wall, type WallFault } from './wall.ts';

/** So many are said with their change, as the wording has them; the others by name. */
const MOST_SAID = 4;

type Details = Readonly<Record<string, Quantity>>;

/**
 * The fault `room.not-closed`, or the caution `room.closes-badly` of a room that is accepted, at the cell of
 * the measure that is likeliest wrong: how far the room misses, that measure with what it would have to be, those
 * that can't be told from it, and the best of the other kind where it would close the room too. Changes are
 * said to 1/16 in and 1/10°.
 */
export function doubtClosure(room: Room, closure: Closure, suspects: Suspects): WallFault {
  const { mayBe, length, corner } = suspects;
  const [best] = mayBe;
  const other = best?.is === 'length' ? corner : length;
  const isOtherSaid = closure.isAccepted ? false : other?.closes === true && !mayBe.includes(other);
  const said = mayBe.slice(0, MOST_SAID).map((one, at) => detailsOf(one, at + 1, room));
  const details: Details = {
    ...missOf(closure),
    ...(best?.closes === true ? {} : { none: 'no single one' }),
    ...said.reduce((all, one) => ({ ...all, ...one }), {}),
    ...(mayBe.length > MOST_SAID ? { others: namesOf(mayBe.slice(MOST_SAID), room) } : {}),
    ...(isOtherSaid && other !== undefined ? detailsOf(other, 0, room) : {}),
  };
  const code = closure.isAccepted ? 'room.closes-badly' : 'room.not-closed';
  const open = fault(code, roomArgument(room), sixteenths(closure.gap), { details });
  if (best === undefined) return { fault: open, wall: 0, cell: 'length' };
  const isFlipped = best.is === 'corner' && room.walls[best.wall]?.turn !== best.turnWouldBe;
  const cell = best.is === 'length' ? 'length' : isFlipped ? 'turn' : 'corner';
  return { fault: open, wall: best.wall, cell };
}

/** What is beyond the allowed; or, of a room that is accepted, all by which it misses. */
function missOf({ isAccepted, angleMiss, angleAllowed, gap, gapAllowed }: Closure): Details {
  const miss = Math.abs(angleMiss);
  const isAngleSaid = miss > angleAllowed || (isAccepted && tenths(miss).degrees > 0);
  const isGapSaid = isAccepted || gap > gapAllowed;
  return {
    ...(isAngleSaid
      ? {
          turned: tenths(2 * Math.PI + angleMiss),
          angleMiss: tenths(miss),
          angleAllowed: tenths(angleAllowed),
        }
      : {}),
    ...(isGapSaid ? { gapAllowed: sixteenths(gapAllowed) } : {}),
  };
}

/** What the wording says of a suspect, under its number: 0 for the best of the other kind. */
function detailsOf(one: Suspect, number: number, { walls }: Room): Details {
  const wall = walls[one.wall];
  if (wall === undefined) return {};
  const as = (of: Details): Details =>
    Object.fromEntries(Object.entries(of).map(([name, value]) => [`${name} ${number}`, value]));
  if (one.is === 'length') {
    const change = sixteenths(Math.abs(one.change));
    const wouldBe = { inches: wall.length + Math.sign(one.change) * change.inches };
    return as({ length: wall.name, wouldBe, change, way: one.change > 0 ? 'longer' : 'shorter' });
  }
  const { turnWouldBe } = one;
  const wouldBe = tenths(one.wouldBe);
  if (turnWouldBe !== wall.turn) {
    return as({ corner: wall.name, wouldBe, turn: turnWouldBe, notTurn: wall.turn });
  }
  const more = one.wouldBe - wall.cornerAtRight;
  const change = tenths(Math.abs(more));
  return as({ corner: wall.name, wouldBe, change, way: more > 0 ? 'more' : 'less' });
}

function namesOf(suspects: readonly Suspect[], { walls }: Room): string {
  const nameOf = (one: Suspect, { name }: Wall): string =>
    one.is === 'length' ? `wall ${name}` : `the corner at the right of wall ${name}`;
  return suspects
    .flatMap((one) => {
      const wall = walls[one.wall];
      return wall === undefined ? [] : [nameOf(one, wall)];
    })
    .join(', ');
}

const sixteenths = (inches: number): { readonly inches: number } => ({
  inches: Math.round(inches * 16) / 16,
});

const tenths = (angle: number): { readonly degrees: number } => ({
  degrees: Math.round(toDegrees(radians(angle)) * 10) / 10,
});
