import { entryAt } from '../entry-at.ts';
import type { Block } from './cut-list.ts';
import { blockPool } from './fullest-stick.ts';
import { bestFit, firstFit } from './open-sticks.ts';
import type { Opening } from './opening.ts';
import { sticksToHave, type StickKind } from '../stick-kind.ts';

/** Which blocks share a stick; which kind of stick that is, the exchange settles. */
export interface Packing {
  /** The stick of each block, or -1 where it found none. */
  readonly stickOf: Int32Array;
  /** What the blocks of each stick weigh together; 0 where it was begun and not used. */
  readonly used: number[];
}

/**
 * Packs the blocks in one way: each in turn into a stick that has been begun, another being begun
 * where none has room; or stick after stick, each filled as full as can be.
 *
 * @param blocks heaviest first
 * @param order the blocks' places in the order in which they are placed; where sticks are filled one
 *   after the other, it makes no difference
 */
export function pack(
  blocks: readonly Block[],
  order: readonly number[],
  kinds: readonly StickKind[],
  opening: Opening,
): Packing {
  const packing = { stickOf: new Int32Array(blocks.length).fill(-1), used: [] as number[] };
  const rack = rackOf(blocks, kinds, opening);
  const put = (at: number, stick: number): void => {
    packing.stickOf[at] = stick;
    packing.used[stick] = (packing.used[stick] ?? 0) + entryAt(blocks, at).weight;
  };
  if (opening.fit === 'fullest') fillSticks(blocks, rack, put);
  else placePieces(blocks, order, rack, opening.fit, put);
  return packing;
}

type Put = (at: number, stick: number) => void;

/** The sticks that are begun: first those asked for, then one for each block that finds no room. */
interface Rack {
  /** The capacities of the sticks that are begun before anything is placed. */
  readonly begunFirst: readonly number[];
  /** Begins the next stick, numbered on, that holds the weight; its capacity, if there is any. */
  readonly begin: (weight: number) => number | undefined;
}

function rackOf(blocks: readonly Block[], kinds: readonly StickKind[], opening: Opening): Rack {
  const left = kinds.map(sticksToHave);
  const total = blocks.reduce((sum, block) => sum + block.weight, 0);
  const begunFirst = opening.begunFirst.flatMap((place) => {
    const capacity = entryAt(kinds, place).capacity;
    // As many as could be of use: twice what would hold everything.
    const most = Math.min(entryAt(left, place), blocks.length, Math.ceil((2 * total) / capacity));
    left[place] = entryAt(left, place) - most;
    return Array.from({ length: most }, () => capacity);
  });
  const begin = (weight: number): number | undefined => {
    const place = opening.preference.find(
      (kind) => entryAt(kinds, kind).capacity >= weight && entryAt(left, kind) > 0,
    );
    if (place === undefined) return undefined;
    left[place] = entryAt(left, place) - 1;
    return kinds[place]?.capacity;
  };
  return { begunFirst, begin };
}

function placePieces(
  blocks: readonly Block[],
  order: readonly number[],
  rack: Rack,
  fit: 'first' | 'best',
  put: Put,
): void {
  const most = blocks.length + rack.begunFirst.length;
  const open = fit === 'first' ? firstFit(most) : bestFit();
  for (const capacity of rack.begunFirst) open.open(capacity);
  for (const at of order) {
    const weight = entryAt(blocks, at).weight;
    let stick = open.take(weight);
    if (stick < 0) {
      const capacity = rack.begin(weight);
      if (capacity === undefined) continue;
      open.open(capacity);
      stick = open.take(weight);
    }
    put(at, stick);
  }
}

function fillSticks(blocks: readonly Block[], rack: Rack, put: Put): void {
  const pool = blockPool(blocks);
  let stick = 0;
  for (const capacity of rack.begunFirst) {
    for (const at of pool.takeFullest(capacity, false)) put(at, stick);
    stick += 1;
  }
  for (let heaviest = pool.heaviest(); heaviest !== undefined; heaviest = pool.heaviest()) {
    const capacity = rack.begin(heaviest);
    if (capacity === undefined) {
      pool.leaveHeaviest();
      continue;
    }
    for (const at of pool.takeFullest(capacity, true)) put(at, stick);
    stick += 1;
  }
}
