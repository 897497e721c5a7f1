/**
 * The least cost by trying everything, for tiny problems: built on sets of pieces instead of sticks
 * that are filled, and sharing nothing with the planner.
 */
import type { StickProblem } from '../../src/cutting/problem.ts';

export interface TinyPiece {
  readonly length: number;
  readonly match?: string | undefined;
}

/**
 * @param pieces at most about 8
 * @returns for every set of pieces (bit i stands for piece i) the least cost to cut just that set;
 *   Infinity where it can't be cut
 */
export function leastCosts(problem: StickProblem, pieces: readonly TinyPiece[]): Float64Array {
  const sets = 2 ** pieces.length;
  let cost = new Float64Array(sets).fill(Infinity);
  cost[0] = 0;
  for (const supply of problem.supplies) {
    const room = supply.length - 2 * problem.endTrim;
    const strips = stripsNeeded(pieces, room, problem.kerf);
    const count = Math.min(
      supply.buyMost === null ? Infinity : supply.have + supply.buyMost,
      pieces.length,
    );
    for (let unit = 0; unit < count; unit += 1) {
      const next = Float64Array.from(cost);
      for (let set = 1; set < sets; set += 1) {
        for (let part = set; part > 0; part = (part - 1) & set) {
          if (strips[part]! > supply.strips) continue;
          next[set] = Math.min(next[set]!, cost[set ^ part]! + supply.priceCents);
        }
      }
      cost = next;
    }
  }
  return cost;
}

/** For every set of pieces, into how many sticks of `room` it can be cut at least. */
function stripsNeeded(pieces: readonly TinyPiece[], room: number, kerf: number): Float64Array {
  const sets = 2 ** pieces.length;
  const needed = new Float64Array(sets).fill(Infinity);
  needed[0] = 0;
  for (let set = 1; set < sets; set += 1) {
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (!onOneStick(pieces, part, room, kerf)) continue;
      needed[set] = Math.min(needed[set]!, needed[set ^ part]! + 1);
    }
  }
  return needed;
}

function onOneStick(
  pieces: readonly TinyPiece[],
  set: number,
  room: number,
  kerf: number,
): boolean {
  const within = pieces.filter((_, at) => (set >> at) % 2 === 1);
  const without = pieces.filter((_, at) => (set >> at) % 2 === 0);
  const torn = within.some(
    ({ match }) => match !== undefined && without.some((other) => other.match === match),
  );
  const length = within.reduce((sum, piece) => sum + piece.length, 0);
  return !torn && length + kerf * (within.length - 1) <= room;
}

/** Every way to cut a length into two to `most` parts, longest first, with an overlap a joint. */
export function everySplice(length: number, overlap: number, most: number): readonly number[][] {
  const found: number[][] = [];
  for (let count = 2; count <= most; count += 1) {
    parts(length + (count - 1) * overlap, count, overlap + 1, Infinity, [], found);
  }
  return found;
}

function parts(
  sum: number,
  count: number,
  least: number,
  most: number,
  chosen: readonly number[],
  found: number[][],
): void {
  if (count === 1) {
    if (sum >= least && sum <= most) found.push([...chosen, sum]);
    return;
  }
  for (let part = least; part <= Math.min(most, sum); part += 1) {
    parts(sum - part, count - 1, least, part, [...chosen, part], found);
  }
}
