/** A cove's outline in as few straight pieces as keep within a chord error. */
import type { Blade, Setting } from '../core/cove/cove.ts';
import { computeOutline, type OutlinePoint } from '../core/cove/outline.ts';

const FEWEST_STEPS = 16;
/** Far more than any blade needs: a stop, not a limit. */
const MOST_STEPS = 1 << 14;
/** The arc is furthest from its chord about midway, where it is looked at; the rest is for "about". */
const SHARE_USED = 0.8;

/**
 * Points of the outline from the near edge over the deepest line to the far edge, so close that no
 * straight piece between two of them leaves the curve by more than told; inches.
 */
export function fineOutline(blade: Blade, setting: Setting, chordError: number): OutlinePoint[] {
  let steps = FEWEST_STEPS;
  let coarse = computeOutline(blade, setting, steps);
  for (; steps < MOST_STEPS; steps *= 2) {
    const fine = computeOutline(blade, setting, 2 * steps);
    if (furthestBetween(coarse, fine) <= SHARE_USED * chordError) break;
    coarse = fine;
  }
  return coarse.filter((point, at) => !isSame(point, coarse[at - 1]));
}

/** How far points halfway along lie off the straight pieces that leave them out. */
function furthestBetween(coarse: readonly OutlinePoint[], fine: readonly OutlinePoint[]): number {
  const half = coarse.length / 2;
  let furthest = 0;
  for (let at = 0; at + 1 < coarse.length; at++) {
    // From the near side's last point to the far side's first there is nothing to leave out.
    if (at === half - 1) continue;
    const between = fine[2 * at + (at < half ? 1 : 0)];
    const [from, to] = [coarse[at], coarse[at + 1]];
    if (from === undefined || to === undefined || between === undefined) continue;
    furthest = Math.max(furthest, fromChord(from, to, between));
  }
  return furthest;
}

function fromChord(from: OutlinePoint, to: OutlinePoint, point: OutlinePoint): number {
  const [u, depth] = [to.u - from.u, to.depth - from.depth];
  const length = Math.hypot(u, depth);
  if (length === 0) return 0;
  return Math.abs((point.u - from.u) * depth - (point.depth - from.depth) * u) / length;
}

function isSame(one: OutlinePoint, other: OutlinePoint | undefined): boolean {
  return other !== undefined && one.u === other.u && one.depth === other.depth;
}
