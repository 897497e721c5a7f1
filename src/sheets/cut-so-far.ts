/** What of a plan is cut when its sheets are written: so many boxes are ticked then. */
import type { CutStick, JobPlan } from '../planning/job-plan.ts';

/** How many of a stick's lengths are cut. */
export function countCut({ pieces }: CutStick): number {
  return pieces.filter(({ isCut }) => isCut).length;
}

/** Ids of the pieces that are cut, all parts of them. */
export function cutPieces({ profiles }: JobPlan): ReadonlySet<string> {
  const all = profiles.flatMap(({ sticks }) => sticks.flatMap(({ pieces }) => pieces));
  const own = all.filter(({ unneeded }) => unneeded === undefined);
  const left = new Set(own.filter(({ isCut }) => isCut !== true).map(({ id }) => id));
  return new Set(own.flatMap(({ id, isCut }) => (isCut === true && !left.has(id) ? [id] : [])));
}

/** How many pieces are done or cut. */
export function countDone(plan: JobPlan): number {
  const cut = cutPieces(plan);
  return plan.pieces.filter(({ id, done }) => done || cut.has(id)).length;
}

export interface LengthCount {
  readonly cut: number;
  readonly all: number;
}

/** How many lengths its sticks are cut into: pieces, parts of them, spares. */
export function countLengths({ profiles }: JobPlan): LengthCount {
  const sticks = profiles.flatMap((one) => one.sticks);
  return {
    cut: sticks.reduce((sum, stick) => sum + countCut(stick), 0),
    all: sticks.reduce((sum, { pieces }) => sum + pieces.length, 0),
  };
}
