import { gcd } from '../greatest-divisor.ts';

/** How fine the table of a knapsack is at most: cells for the choices, and steps of capacity. */
const MOST_CELLS = 48_000_000;
const MOST_STEPS = 40_000;

export interface KnapsackItem {
  /** In the planner's units. */
  readonly weight: number;
  readonly count: number;
}

/**
 * The bounded knapsack over a list of items, solved for every capacity at once by the textbook
 * recursion over items and capacities (R. Bellman, Dynamic Programming, 1957 [M]). An item of which n
 * are asked for stands as packets of 1, 2, 4 and so on that sum to n.
 *
 * Where capacities are so long that the table would not fit, they are counted in steps of several
 * units. Weights are then rounded up (every fill is real) or down (no fill is missed, so values bound).
 */
export class KnapsackTable {
  readonly step: number;
  private readonly rounding: 'up' | 'down';
  private readonly steps: number;
  /** Worth of the best fill within so many steps, all items seen so far. */
  readonly best: Float64Array;
  private readonly chosen: Uint8Array;
  private packets: { item: number; copies: number; weight: number }[] = [];

  /** @param longest the longest capacity, in the planner's units */
  constructor(items: readonly KnapsackItem[], longest: number, rounding: 'up' | 'down') {
    const packets = items.reduce((sum, { count }) => sum + packetsOf(count), 0);
    const unit = items.reduce((common, { weight }) => gcd(common, weight), 0);
    const most = Math.max(64, Math.min(MOST_STEPS, Math.floor(MOST_CELLS / Math.max(1, packets))));
    const exact = Math.max(1, unit);
    this.step = Math.floor(longest / exact) <= most ? exact : Math.ceil(longest / most);
    this.rounding = rounding;
    this.steps = Math.floor(longest / this.step);
    this.best = new Float64Array(this.steps + 1);
    this.chosen = new Uint8Array(packets * (this.steps + 1));
  }

  /** Whole steps in a capacity. */
  stepsIn(capacity: number): number {
    return Math.min(this.steps, Math.floor(capacity / this.step));
  }

  /**
   * Fills the table.
   *
   * @param counts how many of each item may be taken; may be fewer than at first
   * @param onPacket called before each packet joins: `best` holds the fills of the items before it
   */
  run(
    items: readonly KnapsackItem[],
    counts: ArrayLike<number>,
    values: ArrayLike<number>,
    onPacket?: (packet: number, item: number, weight: number, value: number) => void,
  ): void {
    const { best, chosen, steps } = this;
    best.fill(0);
    this.packets = [];
    items.forEach((item, at) => {
      const value = values[at] ?? 0;
      if (!(value > 0)) return;
      const single = this.weigh(item.weight);
      const most = single === 0 ? Infinity : Math.floor(steps / single);
      let left = Math.min(counts[at] ?? 0, item.count, most);
      for (let copies = 1; left > 0; copies *= 2) {
        const some = Math.min(copies, left);
        left -= some;
        const packet = this.packets.length;
        const weight = some * single;
        const worth = some * value;
        onPacket?.(packet, at, weight, worth);
        this.packets.push({ item: at, copies: some, weight });
        const base = packet * (steps + 1);
        chosen.fill(0, base, base + steps + 1);
        for (let room = steps; room >= weight; room -= 1) {
          const tried = (best[room - weight] ?? 0) + worth;
          if (tried > (best[room] ?? 0)) {
            best[room] = tried;
            chosen[base + room] = 1;
          }
        }
      }
    });
  }

  /** The items of the best fill of `room` steps from the packets before `before`, each as often as it is taken. */
  trace(room: number, before = this.packets.length): number[] {
    const items: number[] = [];
    let left = room;
    for (let packet = before - 1; packet >= 0; packet -= 1) {
      if (this.chosen[packet * (this.steps + 1) + left] !== 1) continue;
      const taken = this.packets[packet];
      if (taken === undefined) continue;
      for (let copy = 0; copy < taken.copies; copy += 1) items.push(taken.item);
      left -= taken.weight;
    }
    return items;
  }

  copiesOf(packet: number): number {
    return this.packets[packet]?.copies ?? 0;
  }

  private weigh(weight: number): number {
    const steps = weight / this.step;
    return this.rounding === 'up' ? Math.ceil(steps) : Math.floor(steps);
  }
}

function packetsOf(count: number): number {
  return Math.floor(Math.log2(Math.max(1, count))) + 1;
}
