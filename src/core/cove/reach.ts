/**
 * What a blade can do at a depth and off-center: the widest cove by an approach up to each of three limits.
 * Upright, derived: 2 sqrt(h(2R - h)) sin a + t cos a at the limit a, where it still grows.
 */
import type { Fault } from '../faults/fault.ts';
import { degrees } from '../units/angle.ts';
import { bisectLast } from './bisect.ts';
import { checkSizes } from './check-sizes.ts';
import type { Blade, Cove } from './cove.ts';
import { checkCove } from './feasibility.ts';
import { USUAL_STEEPEST_APPROACH, type SawLimits } from './saw-limits.ts';
import { isReached, widestUpTo } from './too-wide.ts';

/** From the blade line: the steepest that is cut at all, the steepest without a caution, and half a right angle. */
export const REACH_APPROACHES = [USUAL_STEEPEST_APPROACH, degrees(60), degrees(45)] as const;

export interface Reach {
  /** Inches, one for each of REACH_APPROACHES; none where there are faults. */
  readonly widths: readonly number[];
  /** Why not even the widest can be cut: the blade doesn't rise so far, or no tilt brings it so far off center. */
  readonly faults: readonly Fault[];
}

export function computeReach(asked: Omit<Cove, 'width'>, blade: Blade, saw: SawLimits = {}): Reach {
  // As wide as the blade: no tilt is held back by a width that isn't asked.
  const wide = { ...asked, width: blade.diameter };
  if (checkSizes(wide, blade).length > 0 || asked.depth >= blade.diameter / 2) {
    return { widths: [], faults: checkCove(wide, blade, saw).faults };
  }
  const widths = REACH_APPROACHES.map((steepestApproach) =>
    widestReached(asked, blade, { ...saw, steepestApproach }),
  );
  const found = widths.filter((width) => width !== undefined);
  if (found.length === widths.length) return { widths: found, faults: [] };
  const width = Math.max(2 * asked.offCenter, widestUpTo(wide, blade, saw));
  return { widths: [], faults: checkCove({ ...asked, width }, blade, saw).faults };
}

/**
 * The widest that every limit of the saw lets pass: a cove far off center may lean too much at its widest,
 * so sixty-fourths are tried from there down, and the border between the last two is halved.
 */
function widestReached(
  asked: Omit<Cove, 'width'>,
  blade: Blade,
  saw: SawLimits,
): number | undefined {
  const can = (width: number): boolean => isReached({ ...asked, width }, blade, saw);
  const most = widestUpTo({ ...asked, width: blade.diameter }, blade, saw);
  if (can(most)) return most;
  const least = Math.max(2 * asked.offCenter, blade.kerf);
  for (let at = Math.floor(most * 64); at / 64 > least; at--) {
    if (can(at / 64)) return bisectLast(can, at / 64, Math.min(most, (at + 1) / 64));
  }
  return undefined;
}
