import type { Block } from './cut-list.ts';

/** Combinations looked at for one stick, and for a whole plan, at most. */
const MOST_LOOKS_A_STICK = 5_000;
const MOST_LOOKS = 3_000_000;

export interface BlockPool {
  /** The heaviest block left, its weight; undefined once all are taken. */
  readonly heaviest: () => number | undefined;
  /** Sets the heaviest block aside for good: no stick is left for it. */
  readonly leaveHeaviest: () => void;
  /**
   * Takes the blocks that leave the least of `room` unused, as far as the search goes, the heaviest
   * block among them where `withHeaviest` says so.
   *
   * @returns the blocks' places, heaviest first; none where nothing fits
   */
  readonly takeFullest: (room: number, withHeaviest: boolean) => readonly number[];
}

/**
 * Blocks waiting for sticks that are filled one after the other, each as full as can be.
 *
 * After J. N. D. Gupta and J. C. Ho, A new heuristic algorithm for the one-dimensional bin-packing
 * problem, Production Planning & Control 10 (1999), with the heaviest block set first, as K. Fleszar
 * and K. S. Hindi, New heuristics for one-dimensional bin-packing, Computers & Operations Research
 * 29 (2002), have it [M]; the search is cut off after a set count of combinations.
 *
 * @param blocks heaviest first
 */
export function blockPool(blocks: readonly Block[]): BlockPool {
  const weights: number[] = [];
  const waiting: number[][] = [];
  blocks.forEach((block, at) => {
    if (weights.at(-1) === block.weight) waiting.at(-1)?.push(at);
    else {
      weights.push(block.weight);
      waiting.push([at]);
    }
  });
  const left = waiting.map(({ length }) => length);
  const nextWaiting = skipTaken(weights.length, (kind) => waiting[kind]?.length === 0);
  const looks = Math.min(MOST_LOOKS_A_STICK, Math.ceil(MOST_LOOKS / Math.max(1, blocks.length)));

  /** The heaviest weight from place `from` on that fits and is not all chosen. */
  const nextFitting = (from: number, room: number): number => {
    let kind = nextWaiting(Math.max(from, firstAtMost(weights, room)));
    while (left[kind] === 0) kind = nextWaiting(kind + 1);
    return kind;
  };
  const search = (room: number, withHeaviest: boolean): readonly number[] => {
    const chosen: number[] = [];
    let fullest: readonly number[] = [];
    let leastLeft = room + 1;
    let roomLeft = room;
    let from = nextWaiting(0);
    for (let look = 0; ;) {
      const kind = nextFitting(from, roomLeft);
      if (kind < weights.length) {
        chosen.push(kind);
        left[kind] = (left[kind] ?? 0) - 1;
        roomLeft -= weights[kind] ?? 0;
        from = kind;
        continue;
      }
      look += 1;
      if (roomLeft < leastLeft) {
        leastLeft = roomLeft;
        fullest = [...chosen];
      }
      const last = chosen.length > (withHeaviest ? 1 : 0) ? chosen.pop() : undefined;
      if (last === undefined || leastLeft === 0 || look >= looks) {
        for (const undone of last === undefined ? chosen : [...chosen, last]) {
          left[undone] = (left[undone] ?? 0) + 1;
        }
        return fullest;
      }
      left[last] = (left[last] ?? 0) + 1;
      roomLeft += weights[last] ?? 0;
      from = last + 1;
    }
  };
  const take = (kind: number): number | undefined => {
    left[kind] = (left[kind] ?? 0) - 1;
    return waiting[kind]?.pop();
  };
  return {
    heaviest: () => weights[nextWaiting(0)],
    leaveHeaviest: () => {
      take(nextWaiting(0));
    },
    takeFullest: (room, withHeaviest) =>
      search(room, withHeaviest).flatMap((kind) => take(kind) ?? []),
  };
}

/** From a place, the next that is not taken for good; `count` where there is none. */
function skipTaken(count: number, isTaken: (at: number) => boolean): (from: number) => number {
  const next = Array.from({ length: count + 1 }, (_, at) => at);
  return (from) => {
    let at = from;
    while (at < count) {
      const step = next[at] ?? count;
      if (step !== at) at = step;
      else if (isTaken(at)) next[at] = at + 1;
      else break;
    }
    // Those passed over now lead straight here.
    for (let passed = from; passed < at;) {
      const step = next[passed] ?? at;
      next[passed] = at;
      passed = step;
    }
    return at;
  };
}

function firstAtMost(descending: readonly number[], value: number): number {
  let low = 0;
  let high = descending.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((descending[middle] ?? 0) > value) low = middle + 1;
    else high = middle;
  }
  return low;
}
