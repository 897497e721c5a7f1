/** The pieces of a plan for machines, in inches. */
import type { JobPlan } from './job-plan.ts';
import type { Joint } from './joint-places.ts';
import { listJoints } from './joints.ts';
import type { Piece } from './piece.ts';

export function piecesToJson(plan: JobPlan) {
  const joints = listJoints(plan);
  return plan.pieces.map((piece) => pieceOf(piece, joints.get(piece.id) ?? []));
}

function pieceOf(piece: Piece, joints: readonly Joint[]) {
  const end = (side: Piece['left']) => ({
    end: side.kind,
    cornerDeg: side.cornerDeg,
    point: side.point,
  });
  return {
    id: piece.id,
    mark: piece.mark,
    room: piece.room,
    run: piece.run,
    profile: piece.profile,
    length: Number(piece.cutLength),
    left: end(piece.left),
    right: end(piece.right),
    done: piece.done,
    /** What the length has more than its wall, to be sprung in between two. */
    sprungIn: Number(piece.sprungIn ?? 0),
    /** From left to right; places are those of the laps' middles, from the wall's left corner. */
    joints: joints.map(({ at, stud, front }) => ({
      at: at === undefined ? null : Number(at),
      stud: stud ?? null,
      front,
    })),
    madeFrom: madeFrom(piece),
  };
}

/** Null where Runs alone has the run. */
function madeFrom({ made, left, right }: Piece) {
  if (made === undefined) return null;
  const { wall, trim, order, isTakenOver = false } = made;
  const joined = { left, right };
  return {
    wall,
    trim,
    /** The how-many-eth it goes up in its room, of its row of Trim; one part has one turn. */
    order: order?.left ?? null,
    /** Whether a row of Runs stands in its place. */
    isTakenOver,
    /** Ends at which it is joined to its neighbor before both go up. */
    joined: (['left', 'right'] as const).filter((end) => joined[end].kind === 'outside miter'),
  };
}
