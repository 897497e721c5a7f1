/** Joints of spliced pieces: how many, where, and parts that came out shorter than the shop wants them. */
import { own } from '../core/faults/argument.ts';
import { fault, placeFault, type Caution } from '../core/faults/fault.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { CutStick, ProfilePlan } from './job-plan.ts';
import type { Shop } from './shop.ts';

export interface SplicedPiece {
  readonly id: string;
  readonly room: string;
  readonly run: string;
  /** Two or more; one joint less. */
  readonly parts: number;
  readonly shortest: ExactInches;
}

/** The pieces that come in parts, in the order in which their first parts are cut. */
export function listSpliced(sticks: readonly Pick<CutStick, 'pieces'>[]): SplicedPiece[] {
  const spliced = new Map<string, SplicedPiece>();
  for (const { pieces } of sticks) {
    for (const { id, part, length, piece } of pieces) {
      if (part === undefined) continue;
      const { parts, shortest } = spliced.get(id) ?? { parts: 0, shortest: length };
      spliced.set(id, {
        id,
        room: piece?.room ?? '',
        run: piece?.run ?? '',
        parts: parts + 1,
        shortest: length.lt(shortest) ? length : shortest,
      });
    }
  }
  return [...spliced.values()];
}

export function countJoints(sticks: readonly Pick<CutStick, 'pieces'>[]): number {
  return listSpliced(sticks).reduce((sum, { parts }) => sum + parts - 1, 0);
}

/** A caution at each profile that has parts shorter than the shop's least: no stick allows longer ones. */
export function shortPartCautions(
  profiles: readonly Pick<ProfilePlan, 'profile' | 'sticks'>[],
  { leastPart }: Pick<Shop, 'leastPart'>,
): Caution[] {
  return profiles.flatMap(({ profile, sticks }) => {
    const short = listSpliced(sticks).filter(({ shortest }) => shortest.lt(leastPart));
    if (short.length === 0) return [];
    const given = { inches: Math.min(...short.map(({ shortest }) => Number(shortest))) };
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
