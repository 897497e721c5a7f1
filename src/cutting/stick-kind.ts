import type { StickProblem, StickSupply, StripLabor } from './problem/problem.ts';
import { laborCents } from './problem/strip-labor.ts';
import { capacityOf, countOf } from './problem/supplies.ts';

/** A supply that can be had, measured so that pieces with their kerfs simply add up. */
export interface StickKind {
  readonly supply: StickSupply;
  /**
   * What the pieces, each with a kerf, may sum to: the stick less both end trims, and one kerf more,
   * for the last piece needs none.
   */
  readonly capacity: number;
  readonly priceCents: number;
  /** What each strip of it costs in labor. */
  readonly laborCents: number;
  readonly strips: number;
  /** Sticks or boards that can be had; Infinity where any number may be bought. */
  readonly count: number;
}

/**
 * The kinds that can be had at all, with the labor of one profile's strips,, shortest first. Their order depends on what they are, never on
 * their place in the problem, so that a reordered stock list gives the same plan.
 */
export function stickKinds(problem: StickProblem, labor?: StripLabor): readonly StickKind[] {
  return problem.supplies
    .map((supply) => ({
      supply,
      capacity: capacityOf(problem, supply),
      priceCents: supply.priceCents,
      laborCents: laborCents(labor, supply.length),
      strips: supply.strips,
      count: countOf(supply),
    }))
    .filter((kind) => kind.count > 0)
    .sort(
      (a, b) =>
        a.capacity - b.capacity ||
        centsPerUnit(a) - centsPerUnit(b) ||
        a.strips - b.strips ||
        compareCounts(a.count, b.count),
    );
}

/** What a unit of length costs where the whole stick or board is put to use. */
export function centsPerUnit(kind: StickKind): number {
  return (kind.priceCents / kind.strips + kind.laborCents) / kind.capacity;
}

/** How many sticks the kind gives, strips of boards counted one by one. */
export function sticksToHave(kind: StickKind): number {
  return kind.count * kind.strips;
}

/** The longest piece that any stick that can be had gives, in units; 0 where there is none. */
export function longestPiece(problem: StickProblem, kinds: readonly StickKind[]): number {
  const longest = kinds.at(-1);
  return longest === undefined ? 0 : longest.capacity - problem.kerf;
}

// Infinity less Infinity is no number, so counts can't be subtracted.
function compareCounts(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
