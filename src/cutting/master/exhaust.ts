import type { Column } from './column.ts';
import { layoutColumn } from './column.ts';
import type { Dived } from './dive.ts';
import type { Instance } from './instance.ts';
import type { Proof } from './certify.ts';
import { spareLayouts, type SpareLayout } from './spare-layouts.ts';

/** States remembered at most, so that none is gone through twice. */
const MOST_REMEMBERED = 400_000;
const LOOKS_A_PAUSE = 4_000;

export interface ExhaustOptions {
  /** A plan that costs at most this is sought, in whole cents. */
  readonly mostCents: number;
  readonly mostLayouts: number;
  readonly mostLooks: number;
  readonly isSpent: () => boolean;
  readonly pause: () => Promise<void>;
}

/**
 * Goes through every plan that the duals leave room for: each lay-out costs a spare sum more than its
 * pieces are worth, and the spare sums of a plan of at most `mostCents` come to no more than what
 * lies between that and the bound. All in whole numbers, so what it doesn't find isn't there.
 *
 * @returns a cheaper plan; 'none' where all was tried; 'too many' where it was too much to try
 */
export async function exhaust(
  instance: Instance,
  proof: Proof,
  options: ExhaustOptions,
): Promise<Dived | 'none' | 'too many'> {
  const { slots, choices, items } = instance;
  if (choices.length > 0 || slots.some(({ supply }) => supply < 0)) return 'too many';
  const budget = options.mostCents * proof.grain - proof.total;
  if (budget < 0) return 'none';
  const layouts = spareLayouts(instance, proof, budget, options.mostLayouts);
  if (layouts === undefined) return 'too many';
  const search = new CoverSearch(instance, layouts);
  const outcome = await search.run(budget, options);
  if (outcome === 'none' || outcome === 'too many') return outcome;
  const columns = new Map<string, [Column, number]>();
  for (const { slot, items: cut, key } of outcome) {
    const known = columns.get(key);
    const profile = items[cut[0] ?? 0]?.profile ?? 0;
    if (known === undefined) columns.set(key, [layoutColumn(instance, slot, profile, cut), 1]);
    else known[1] += 1;
  }
  return new Map(columns.values());
}

/** Depth first: the piece with the fewest lay-outs first, each lay-out in turn, the sparest first. */
class CoverSearch {
  private readonly layoutsOf: readonly (readonly SpareLayout[])[];
  private readonly left: number[];
  private readonly stock: number[];
  private readonly order: readonly number[];
  private readonly seen = new Map<string, number>();
  private readonly chosen: SpareLayout[] = [];
  private looks = 0;
  private readonly instance: Instance;

  constructor(instance: Instance, layouts: readonly SpareLayout[]) {
    this.instance = instance;
    this.left = instance.items.map(({ blocks }) => blocks.length);
    this.stock = instance.supplies.map(({ count }) => count);
    const layoutsOf: SpareLayout[][] = instance.items.map(() => []);
    const sparest = [...layouts].sort((a, b) => a.spare - b.spare);
    for (const layout of sparest) {
      for (const item of new Set(layout.items)) layoutsOf[item]?.push(layout);
    }
    this.layoutsOf = layoutsOf;
    this.order = instance.items
      .map((_, item) => item)
      .sort((a, b) => (layoutsOf[a]?.length ?? 0) - (layoutsOf[b]?.length ?? 0) || a - b);
  }

  async run(
    budget: number,
    { mostLooks, isSpent, pause }: ExhaustOptions,
  ): Promise<readonly SpareLayout[] | 'none' | 'too many'> {
    const stack: { item: number; next: number; from: number; spare: number }[] = [];
    const enter = (spare: number, from: number): boolean => {
      const item = this.order.find((one) => (this.left[one] ?? 0) > 0);
      if (item === undefined) return true;
      const last = stack.at(-1);
      // Lay-outs for pieces of one length are chosen in rising order: no order twice.
      const next = last?.item === item ? from : 0;
      const key = `${this.left.join()};${this.stockKey()};${next}`;
      if ((this.seen.get(key) ?? Infinity) <= spare) return false;
      if (this.seen.size < MOST_REMEMBERED) this.seen.set(key, spare);
      stack.push({ item, next, from: next, spare });
      return false;
    };
    if (enter(0, 0)) return [];
    while (stack.length > 0) {
      this.looks += 1;
      if (this.looks > mostLooks) return 'too many';
      if (this.looks % LOOKS_A_PAUSE === 0) {
        await pause();
        if (isSpent()) return 'too many';
      }
      const top = stack.at(-1);
      if (top === undefined) break;
      const layout = this.layoutsOf[top.item]?.[top.next];
      if (layout === undefined || top.spare + layout.spare > budget) {
        stack.pop();
        const undone = this.chosen.pop();
        if (undone !== undefined) this.use(undone, -1);
        continue;
      }
      const at = top.next;
      top.next += 1;
      if (!this.fits(layout)) continue;
      this.use(layout, 1);
      this.chosen.push(layout);
      const depth = stack.length;
      if (enter(top.spare + layout.spare, at)) return [...this.chosen];
      if (stack.length === depth) {
        this.chosen.pop();
        this.use(layout, -1);
      }
    }
    return 'none';
  }

  private fits({ counts, slot }: SpareLayout): boolean {
    const supply = this.instance.slots[slot]?.supply ?? -1;
    if ((this.stock[supply] ?? 0) < 1) return false;
    return counts.every(([item, count]) => (this.left[item] ?? 0) >= count);
  }

  private use({ counts, slot }: SpareLayout, times: 1 | -1): void {
    for (const [item, count] of counts) this.left[item] = (this.left[item] ?? 0) - times * count;
    const supply = this.instance.slots[slot]?.supply ?? -1;
    this.stock[supply] = (this.stock[supply] ?? 0) - times;
  }

  private stockKey(): string {
    return this.stock.filter((count) => Number.isFinite(count)).join();
  }
}
