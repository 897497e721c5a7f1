/** Joints of spliced pieces: how many, where, and what of them isn't as the shop wants it. */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import { placeJoints, type Joint } from './joint-places.ts';
import type { CutPiece, CutStick, JobPlan, ProfilePlan } from './job-plan.ts';
import type { Piece } from './piece.ts';
import type { Shop } from './shop.ts';
import { spliceOverlap } from './splice-overlap.ts';

export interface SplicedPiece {
  readonly id: string;
  readonly room: string;
  readonly run: string;
  readonly piece?: Piece;
  /** From its left end to its right; two or more, one joint less. */
  readonly parts: readonly ExactInches[];
}

type Sticks = readonly Pick<CutStick, 'pieces'>[];
type Spliced = Pick<ProfilePlan, 'profile'> & { readonly sticks: Sticks };

/** The pieces that come in parts, in the order in which their first parts are cut. */
export function listSpliced(sticks: Sticks): SplicedPiece[] {
  const spliced = new Map<string, CutPiece[]>();
  for (const { pieces } of sticks) {
    for (const one of pieces) {
      if (one.part === undefined) continue;
      const known = spliced.get(one.id);
      if (known === undefined) spliced.set(one.id, [one]);
      else known.push(one);
    }
  }
  return [...spliced].map(([id, cuts]) => {
    const piece = cuts.find((one) => one.piece !== undefined)?.piece;
    const inOrder = [...cuts].sort((one, other) => (one.part ?? 0) - (other.part ?? 0));
    return {
      id,
      room: piece?.room ?? '',
      run: piece?.run ?? '',
      ...(piece === undefined ? {} : { piece }),
      parts: inOrder.map(({ length }) => length),
    };
  });
}

export function countJoints(sticks: Sticks): number {
  return listSpliced(sticks).reduce((sum, { parts }) => sum + parts.length - 1, 0);
}

/** The joints of each spliced piece from left to right, by its id. */
export function listJoints({
  profiles,
  job: { shop },
}: Pick<JobPlan, 'profiles' | 'job'>): ReadonlyMap<string, readonly Joint[]> {
  return new Map(
    profiles.flatMap((one) =>
      listSpliced(one.sticks).map(({ id, ...spliced }) => [id, jointsOf(spliced, one, shop)]),
    ),
  );
}

const UNPLACED: Joint = { front: 'right' };

function jointsOf(
  { piece, parts }: Omit<SplicedPiece, 'id'>,
  { profile }: Pick<ProfilePlan, 'profile'>,
  shop: Shop,
): readonly Joint[] {
  const overlap = spliceOverlap(profile, shop);
  // Of a cut piece that was another molding's once, nobody knows the lap; up a slope, where it begins.
  const isPlaced = piece !== undefined && overlap !== undefined && profile.slope === undefined;
  if (!isPlaced) return parts.slice(1).map(() => UNPLACED);
  return placeJoints(piece, parts, overlap, shop);
}

/** A caution at each profile that has parts shorter than the shop's least: no stick allows longer ones. */
export function shortPartCautions(
  profiles: readonly Spliced[],
  { leastPart }: Pick<Shop, 'leastPart'>,
): Caution[] {
  return profiles.flatMap(({ profile, sticks }) => {
    const short = listSpliced(sticks).flatMap(({ parts }) => {
      const least = Math.min(...parts.map(Number));
      return parts.some((part) => part.lt(leastPart)) ? [least] : [];
    });
    if (short.length === 0) return [];
    const given = { inches: Math.min(...short) };
    const limit = { inches: Number(leastPart) };
    const details = { pieces: short.length };
    return [
      placeFault(
        fault('job.part-below-least', own(profile.name), given, { limit, details }),
        profile.where,
      ),
    ];
  });
}

/** A caution at each piece with a joint beside the studs, though it is known where they should be. */
export function jointOffStudCautions(profiles: readonly Spliced[], shop: Shop): Caution[] {
  if (shop.studSpacing.lte(0)) return [];
  return profiles.flatMap((one) =>
    listSpliced(one.sticks).flatMap((spliced) => {
      const joints = jointsOf(spliced, one, shop);
      const off = joints.find(({ at, stud }) => at !== undefined && stud === undefined);
      if (off?.at === undefined || spliced.piece === undefined) return [];
      const given = { inches: Number(shop.studSpacing) };
      const details = { at: { inches: Number(off.at) } };
      return [
        placeFault(
          fault('job.joint-off-stud', own(spliced.id), given, { details }),
          spliced.piece.where,
        ),
      ];
    }),
  );
}
