/** What a job's labels say: one for each length still to be cut for a piece, and for each offcut to keep. */
import { sayEnd, sayPartEnds, type EndWords } from '../words/say-ends.ts';
import { lettersOf, listLots } from '../stock-lots.ts';
import { listKept, type Kept } from '../kept-offcuts.ts';
import type { Joint } from '../../planning/joint-places.ts';
import { listJoints } from '../../planning/joints.ts';
import type { Profile } from '../../planning/job.ts';
import { plansOf, type CutPiece, type CutStick, type JobPlan } from '../../planning/job-plan.ts';
import type { Piece } from '../../planning/piece.ts';
import type { ExactInches } from '../../core/units/length.ts';

/** Which edge the arrow on a label points to. */
export type ArrowEdge = 'up' | 'outer edge';

export interface PieceLabel {
  readonly kind: 'piece';
  readonly piece: Piece;
  /** `part 1 of 2` where the piece is spliced, else empty. */
  readonly part: string;
  readonly length: ExactInches;
  readonly left: EndWords;
  readonly right: EndWords;
  readonly arrow: ArrowEdge;
  /** The stick that it is cut from. */
  readonly stick: string;
}

export interface OffcutLabel {
  readonly kind: 'offcut';
  readonly kept: Kept;
  readonly length: ExactInches;
}

export type Label = PieceLabel | OffcutLabel;

/**
 * The labels in the order in which Cutting has its lengths: stick by stick, each stick's offcut after its
 * pieces, whole blanks after the sticks of their group. Each part of a spliced piece has its own. What is
 * done or cut has its label already; set-up spares and waste need none.
 */
export function listLabels(plan: JobPlan): Label[] {
  const letters = lettersOf(listLots(plan));
  const joints = listJoints(plan);
  return plan.groups.flatMap((group): Label[] => {
    const kept = listKept(plan, group, letters);
    const plans = plansOf(plan, group);
    const ofSticks = plans.flatMap(({ profile, sticks }) =>
      sticks.flatMap((stick) => [
        ...stick.pieces.flatMap((cut) => labelOfPiece(plan, profile, stick, cut, joints)),
        ...kept.filter((one) => one.stick === stick && !isCutUp(stick)).map(labelOfOffcut),
      ]),
    );
    const sticks = plans.flatMap((one) => one.sticks);
    const blanks = kept.filter(({ board }) => board !== undefined && isToRip(board, sticks));
    return [...ofSticks, ...blanks.map(labelOfOffcut)];
  });
}

function labelOfPiece(
  { job: { shop } }: JobPlan,
  profile: Profile,
  stick: CutStick,
  { id, piece, part, length, isCut, unneeded }: CutPiece,
  jointsOf: ReadonlyMap<string, readonly Joint[]>,
): PieceLabel[] {
  if (piece === undefined || isCut === true || unneeded !== undefined) return [];
  const ends = {
    left: sayEnd(piece.left, profile, shop.decimalSign),
    right: sayEnd(piece.right, profile, shop.decimalSign),
  };
  const joints = jointsOf.get(id) ?? [];
  return [
    {
      kind: 'piece',
      piece,
      part: part === undefined ? '' : `part ${part} of ${joints.length + 1}`,
      length,
      ...(part === undefined ? ends : sayPartEnds(ends, part, joints, shop)),
      arrow: arrowOf(piece),
      stick: stick.id,
    },
  ];
}

/** A casing's edges lie around its opening, whichever way the piece stands. */
function arrowOf({ left, right }: Piece): ArrowEdge {
  const isAround = [left, right].some(({ point }) => point === 'long point at the outer edge');
  return isAround ? 'outer edge' : 'up';
}

function labelOfOffcut(kept: Kept): OffcutLabel {
  return { kind: 'offcut', kept, length: kept.length };
}

/** Nothing is left to be cut from it: its offcut lies in the rack. */
function isCutUp({ pieces }: CutStick): boolean {
  return pieces.length > 0 && pieces.every(({ isCut }) => isCut === true);
}

/** Whether something of the board is still to be cut. */
function isToRip({ item, unit }: NonNullable<Kept['board']>, sticks: readonly CutStick[]): boolean {
  const own = sticks.filter((stick) => stick.item === item && stick.unit === unit);
  return own.length === 0 || !own.every(isCutUp);
}
