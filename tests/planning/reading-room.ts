import type { Piece } from '../../src/planning/piece.ts';
import { PLAIN, type Tables } from './make-job.ts';

/** The reading room of an invented library: an L, whose outside corner stands between walls 3 and 4. */
export const READING_ROOM = {
  runs: 'Room,Run,Profile,Length',
  walls: `Room,Wall,Length,Corner,Turn
Reading room,1,18',90,inside
Reading room,2,10',,
Reading room,3,8',90,outside
Reading room,4,6',,
Reading room,5,10',,
Reading room,6,16',,`,
  trim: `Room,Profile,Where,Height
all,Base,floor,
reading room,Rail,height,32
Reading room,Crown,ceiling,`,
  openings: `Room,Wall,Kind,Width,Height,Casing,Position,Sill
Reading room,5,door,36,80,Casing,42,
Reading room,1,window,60,48,Casing,78,32
Reading room,2,cased opening,48,84,Casing,36,`,
  profiles: `${PLAIN.profiles}\nRail,buy,2 1/2,3/4,,Poplar,,,`,
  stock: `${PLAIN.stock}\nRail,stick,,,16',2,foot,,`,
} as const satisfies Tables;

/** Wall, length, left end, right end, and which it goes up. */
export function saidOf(pieces: readonly Piece[], profile: string): string[] {
  return pieces
    .filter((one) => one.profile === profile && one.made !== undefined)
    .map(
      ({ run, cutLength, left, right, made }) =>
        `${run}: ${cutLength.toFraction(true)} ${left.kind}/${right.kind} ${made?.order?.left ?? '-'}`,
    );
}
