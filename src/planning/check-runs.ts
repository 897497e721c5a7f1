/** A part of the independent look at a plan: pieces and cut-aways make up the runs, in plain inches. */
import { nameKey } from './job.ts';
import type { JobPlan } from './job-plan.ts';
import type { Piece } from './piece.ts';
import { CHECK_SLACK_INCHES, CHECK_SLACK_ROUNDED_INCHES } from './tolerance.ts';

interface Lengths {
  asked: number;
  rows: number;
  taken: number;
  cut: number;
  pieces: number;
  readonly quantities: Set<number>;
}

/**
 * Of each profile of each run: its length less what openings take out of it is what its pieces are
 * without what their ends add, and each may be rounded up by less than the shop's precision.
 */
export function checkRuns({ job, pieces, cutAways }: JobPlan): string[] {
  const wrong: string[] = [];
  const runs = new Map<string, Lengths>();
  for (const one of job.runs) {
    const { length, quantity } = one;
    const key = keyOf(one);
    const none = { asked: 0, rows: 0, taken: 0, cut: 0, pieces: 0, quantities: new Set<number>() };
    const known = runs.get(key) ?? none;
    runs.set(key, known);
    known.asked += Number(length) * quantity;
    known.rows += quantity;
    known.quantities.add(quantity);
  }
  for (const one of cutAways) {
    const run = runs.get(keyOf(one));
    if (run === undefined) wrong.push(`${one.opening} is cut out of ${one.run}, which is no run.`);
    if (!(Number(one.taken) > 0)) wrong.push(`${one.opening} takes nothing out of ${one.run}.`);
    // Of rows that differ in quantity it isn't said which of them lost how much.
    if (run?.quantities.size === 1) run.taken += Number(one.taken) * Math.max(...run.quantities);
  }
  for (const piece of pieces) {
    const run = runs.get(keyOf(piece));
    if (run === undefined || piece.kind === 'return') continue;
    const sprung = dueSpring(job, run, piece);
    if (Math.abs(Number(piece.sprungIn ?? 0) - sprung) > CHECK_SLACK_INCHES) {
      wrong.push(`${piece.id} is not as much longer than its wall as the shop springs in.`);
    }
    const ends = Number(piece.left.added) + Number(piece.right.added);
    run.cut += Number(piece.cutLength) - ends - sprung;
    run.pieces += 1;
  }
  const precision = Number(job.shop.lengthPrecision);
  for (const [key, { asked, taken, cut, pieces: count, quantities }] of runs) {
    if (quantities.size > 1 && cutAways.length > 0) continue;
    const over = cut - (asked - taken);
    const slack = CHECK_SLACK_INCHES + count * CHECK_SLACK_ROUNDED_INCHES;
    if (over > -slack && over < count * precision + slack) continue;
    wrong.push(`The pieces of ${key} are not its length less what openings take.`);
  }
  return wrong;
}

/** Of trim at the floor, square or coped from inside corner to inside corner on a wall over 4 ft, none of it cut away. */
function dueSpring(job: JobPlan['job'], { asked, rows }: Lengths, piece: Piece): number {
  const room = job.walls.filter((one) => nameKey(one.room) === nameKey(piece.room));
  const at = room.findIndex((one) => nameKey(one.wall) === nameKey(piece.run));
  const [wall, before] = [room[at], room[(at + room.length - 1) % room.length]];
  if (wall === undefined || piece.onWall?.at !== 'floor') return 0;
  const isBetween = wall.turn === 'inside' && before?.turn === 'inside';
  const isButted = [piece.left, piece.right].every(({ kind }) => ['square', 'cope'].includes(kind));
  const ends = Number(piece.left.added) + Number(piece.right.added);
  const isWhole = Number(piece.cutLength) - ends > asked / rows - CHECK_SLACK_INCHES;
  return isBetween && isButted && isWhole && asked / rows > 48 ? Number(job.shop.springIn) : 0;
}

/** A run may write its profile's name in another case, with other spaces, or é in two signs. */
function keyOf({
  room,
  run,
  profile,
}: Readonly<Record<'room' | 'run' | 'profile', string>>): string {
  return JSON.stringify([room, run, nameKey(profile)]);
}
