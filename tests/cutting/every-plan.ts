/**
 * The least cost by trying everything, for tiny problems: built on sets of pieces instead of sticks
 * that are filled, and sharing nothing with the planner or the checks.
 */
import type { StickProblem, StickProfile, StickSupply } from '../../src/cutting/problem/problem.ts';

export interface TinyPiece {
  readonly length: number;
  readonly match?: string | undefined;
  readonly profile?: string | undefined;
}

/**
 * @param pieces at most about 8
 * @returns for every set of pieces (bit i stands for piece i) the least cost to cut just that set, the
 *   labor of its strips added, the credit of its offcuts taken off; Infinity where it can't be cut
 */
export function leastCosts(problem: StickProblem, pieces: readonly TinyPiece[]): Float64Array {
  const nothing = new Float64Array(2 ** pieces.length).fill(-Infinity);
  nothing[0] = 0;
  let gains = nothing;
  for (const supply of problem.supplies) {
    const alone = gainsOfOne(problem, supply, pieces, nothing);
    const count = supply.buyMost === null ? Infinity : supply.have + supply.buyMost;
    for (let unit = Math.min(count, pieces.length); unit > 0; unit -= 1) {
      gains = withAnother(gains, alone);
    }
  }
  return gains.map((gain) => 0 - gain);
}

/**
 * For every set of pieces, the credits less labor and the price of cutting it from one stick or board;
 * -Infinity where it doesn't give it.
 */
function gainsOfOne(
  problem: StickProblem,
  supply: StickSupply,
  pieces: readonly TinyPiece[],
  nothing: Float64Array<ArrayBuffer>,
): Float64Array {
  const profiles: readonly StickProfile[] = problem.profiles ?? [{ id: '', blank: '' }];
  const blanks = [...new Set(profiles.map(({ blank }) => blank))];
  const ways = supply.rips ?? blanks.map((blank) => [{ blank, count: supply.strips }]);
  const most = new Float64Array(nothing.length).fill(-Infinity);
  for (const way of ways) {
    let credits = nothing;
    const half = supply.priceCents / (2 * way.reduce((sum, { count }) => sum + count, 0));
    for (const { blank, count } of way) {
      const strip = creditsOfStrip(problem, supply.length, half, pieces, profiles, blank);
      for (let more = Math.min(count, pieces.length); more > 0; more -= 1) {
        credits = withAnother(credits, strip);
      }
    }
    credits.forEach((credit, set) => {
      most[set] = Math.max(most[set]!, credit - supply.priceCents);
    });
  }
  return most;
}

/** The most gain of every set, one more strip, or one more board, being there to be used or not. */
function withAnother(
  before: Float64Array<ArrayBuffer>,
  another: Float64Array,
): Float64Array<ArrayBuffer> {
  const after = Float64Array.from(before);
  const all = before.length - 1;
  for (let part = 1; part <= all; part += 1) {
    if (another[part] === -Infinity) continue;
    const others = all ^ part;
    for (let rest = others; ; rest = (rest - 1) & others) {
      after[rest | part] = Math.max(after[rest | part]!, before[rest]! + another[part]!);
      if (rest === 0) break;
    }
  }
  return after;
}

/**
 * For every set, the credit of what one strip's offcut is, less the labor of the strip; -Infinity where
 * the strip doesn't give it.
 *
 * @param half of what the strip costs, the most that an offcut of it is credited
 */
function creditsOfStrip(
  problem: StickProblem,
  length: number,
  half: number,
  pieces: readonly TinyPiece[],
  profiles: readonly StickProfile[],
  blank: string,
): Float64Array {
  const { kerf, endTrim, keepOffcutsOver } = problem;
  const credits = new Float64Array(2 ** pieces.length).fill(-Infinity);
  const ids = pieces.map(({ profile }) => profile ?? profiles[0]!.id);
  for (const { id, blank: own, offcutCredit, labor } of profiles) {
    if (own !== blank) continue;
    const { cents, centsPerUnit: byLength } = labor ?? { cents: 0, centsPerUnit: 0 };
    // Whole cents, halves up.
    const work = Math.floor(cents + byLength * length + 0.5);
    const { centsPerUnit = 0, mostCents = 0 } = offcutCredit ?? {};
    const may = pieces.reduce((set, _, at) => (ids[at] === id ? set | (1 << at) : set), 0);
    for (let set = may; set > 0; set = (set - 1) & may) {
      let left = length - 2 * endTrim;
      for (let at = 0; at < pieces.length; at += 1) {
        if ((set >> at) % 2 === 1) left -= pieces[at]!.length + kerf;
      }
      const isTorn = pieces.some(
        (piece, at) =>
          piece.match !== undefined &&
          (set >> at) % 2 === 1 &&
          pieces.some(({ match }, other) => match === piece.match && (set >> other) % 2 === 0),
      );
      // The last cut may fall into the trim.
      if (isTorn || left < -kerf) continue;
      const isKept = left > 0 && left >= keepOffcutsOver;
      credits[set] =
        (isKept ? Math.floor(Math.min(mostCents, half, centsPerUnit * left)) : 0) - work;
    }
  }
  return credits;
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
