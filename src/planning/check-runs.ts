/** A part of the independent look at a plan: pieces and cut-aways make up the runs, in plain inches. */
import { nameKey } from './job.ts';
import type { JobPlan } from './job-plan.ts';
import { CHECK_SLACK_INCHES, CHECK_SLACK_ROUNDED_INCHES } from './tolerance.ts';

interface Lengths {
  asked: number;
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
    const none = { asked: 0, taken: 0, cut: 0, pieces: 0, quantities: new Set<number>() };
    const known = runs.get(key) ?? none;
    runs.set(key, known);
    known.asked += Number(length) * quantity;
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
    run.cut += Number(piece.cutLength) - Number(piece.left.added) - Number(piece.right.added);
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

/** A run may write its profile's name in another case, with other spaces, or é in two signs. */
function keyOf({
  room,
  run,
  profile,
}: Readonly<Record<'room' | 'run' | 'profile', string>>): string {
  return JSON.stringify([room, run, nameKey(profile)]);
}
