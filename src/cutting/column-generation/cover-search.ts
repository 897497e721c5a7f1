import type { Proof } from './certify.ts';
import type { Instance } from './instance.ts';
import type { SpareLayout } from './spare-layouts.ts';

/** States remembered at most, so that none is gone through twice. */
const MOST_REMEMBERED = 400_000;
const LOOKS_A_PAUSE = 4_000;

export interface CoverOptions {
  readonly mostLooks: number;
  readonly isSpent: () => boolean;
  readonly pause: () => Promise<void>;
}

interface Frame {
  readonly item: number;
  next: number;
  readonly left: number;
}

/**
 * Depth first through the sets of lay-outs that cut every piece once, within a budget of spare sums:
 * the piece with the fewest lay-outs first, its lay-outs in turn, the sparest first.
 */
export class CoverSearch {
  private readonly instance: Instance;
  private readonly worths: Float64Array;
  private readonly layoutsOf: readonly (readonly SpareLayout[])[];
  private readonly order: readonly number[];
  private readonly pieces: number[];
  private stock: number[] = [];
  private strips: number[] = [];
  /** The most that was left of the budget each time a state was gone through in vain. */
  private readonly vain = new Map<string, number>();
  private looks = 0;

  constructor(instance: Instance, proof: Proof, layouts: readonly SpareLayout[]) {
    this.instance = instance;
    this.worths = proof.slots;
    this.pieces = instance.items.map(({ blocks }) => blocks.length);
    const layoutsOf: SpareLayout[][] = instance.items.map(() => []);
    for (const layout of [...layouts].sort((a, b) => a.spare - b.spare)) {
      for (const item of new Set(layout.items)) layoutsOf[item]?.push(layout);
    }
    this.layoutsOf = layoutsOf;
    this.order = instance.items
      .map((_, item) => item)
      .sort((a, b) => (layoutsOf[a]?.length ?? 0) - (layoutsOf[b]?.length ?? 0) || a - b);
  }

  /**
   * @param budget what the spare sums of the lay-outs and the worth of unused strips may come to
   * @param strips of each slot, those that the boards give
   * @param stock of each supply, how many sticks can be had
   */
  async run(
    budget: number,
    strips: readonly number[],
    stock: readonly number[],
    { mostLooks, isSpent, pause }: CoverOptions,
  ): Promise<readonly SpareLayout[] | 'none' | 'too many'> {
    this.looks = 0;
    this.stock = [...stock];
    this.strips = [...strips];
    this.instance.items.forEach(({ blocks }, item) => (this.pieces[item] = blocks.length));
    const stack: Frame[] = [];
    const chosen: SpareLayout[] = [];
    if (this.enter(stack, budget, 0) === 'covered') return [];
    while (stack.length > 0) {
      this.looks += 1;
      if (this.looks > mostLooks) return this.breakOff();
      if (this.looks % LOOKS_A_PAUSE === 0) {
        await pause();
        if (isSpent()) return this.breakOff();
      }
      const top = stack.at(-1);
      if (top === undefined) break;
      const layout = this.layoutsOf[top.item]?.[top.next];
      if (layout === undefined || layout.spare > top.left) {
        stack.pop();
        const undone = chosen.pop();
        if (undone !== undefined) this.use(undone, -1);
        continue;
      }
      const at = top.next;
      top.next += 1;
      if (!this.fits(layout)) continue;
      this.use(layout, 1);
      chosen.push(layout);
      const entered = this.enter(stack, top.left - layout.spare, at);
      if (entered === 'covered') return chosen;
      if (entered === 'vain') {
        chosen.pop();
        this.use(layout, -1);
      }
    }
    return 'none';
  }

  /** States that were begun were not gone through: nothing is known of them. */
  private breakOff(): 'too many' {
    this.vain.clear();
    return 'too many';
  }

  /** Goes on to the next piece, unless all are cut or the state has been gone through in vain. */
  private enter(stack: Frame[], left: number, from: number): 'covered' | 'vain' | 'entered' {
    const item = this.order.find((one) => (this.pieces[one] ?? 0) > 0);
    if (item === undefined) return this.unusedWorth() <= left ? 'covered' : 'vain';
    // Lay-outs for pieces of one length are chosen in rising order: no order twice.
    const next = stack.at(-1)?.item === item ? from : 0;
    const key = `${this.pieces.join()};${this.strips.join()};${this.stockKey()};${next}`;
    if ((this.vain.get(key) ?? -1) >= left) return 'vain';
    if (this.vain.size < MOST_REMEMBERED) this.vain.set(key, left);
    stack.push({ item, next, left });
    return 'entered';
  }

  private fits({ counts, slot }: SpareLayout): boolean {
    const supply = this.instance.slots[slot]?.supply ?? -1;
    const there = supply < 0 ? this.strips[slot] : this.stock[supply];
    if ((there ?? 0) < 1) return false;
    return counts.every(([item, count]) => (this.pieces[item] ?? 0) >= count);
  }

  private use({ counts, slot }: SpareLayout, times: 1 | -1): void {
    for (const [item, count] of counts) {
      this.pieces[item] = (this.pieces[item] ?? 0) - times * count;
    }
    const supply = this.instance.slots[slot]?.supply ?? -1;
    if (supply < 0) this.strips[slot] = (this.strips[slot] ?? 0) - times;
    else this.stock[supply] = (this.stock[supply] ?? 0) - times;
  }

  private unusedWorth(): number {
    return this.strips.reduce((sum, count, slot) => sum + count * (this.worths[slot] ?? 0), 0);
  }

  private stockKey(): string {
    return this.stock.filter((count) => Number.isFinite(count)).join();
  }
}
