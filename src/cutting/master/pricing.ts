import { layoutColumn, type Column } from './column.ts';
import { FillTable } from './fill-table.ts';
import type { Instance, Item } from './instance.ts';
import { restWorth } from './rest-worth.ts';

/** Of each slot, how many layouts are handed over at once at most. */
const MOST_LAYOUTS_A_SLOT = 24;

/** What a slot's layouts must be worth to be of use, and what was found. */
export interface Pricing {
  /** Cents that the best layout of each slot is worth by the duals it was priced at; -Infinity where it has no pieces. */
  readonly worth: Float64Array;
  readonly columns: readonly Column[];
}

interface Candidate {
  readonly packet: number;
  readonly item: number;
  readonly room: number;
  readonly gain: number;
  readonly poured: number;
}

/** Prices layouts: for each profile a knapsack table that is kept, since it is filled again and again. */
export class LayoutPricer {
  private readonly instance: Instance;
  private readonly tables: readonly {
    readonly first: number;
    readonly items: readonly { weight: number; count: number }[];
    readonly table: FillTable;
  }[];

  constructor(instance: Instance, rounding: 'up' | 'down') {
    this.instance = instance;
    this.tables = instance.profiles.map((_, profile) => {
      const first = instance.items.findIndex((item) => item.profile === profile);
      const items = instance.items
        .filter((item) => item.profile === profile)
        .map((item: Item) => ({ weight: item.weight, count: item.most }));
      const longest = (instance.slotsOf[profile] ?? []).reduce(
        (most, slot) => Math.max(most, instance.slots[slot]?.capacity ?? 0),
        0,
      );
      return { first, items, table: new FillTable(items, longest, rounding) };
    });
  }

  /**
   * @param duals what one more of each row is worth, in cents
   * @param counts how many of each item a layout may hold
   * @param thresholds of each slot: a layout worth more is handed over; absent: none is
   */
  price(duals: Float64Array, counts: ArrayLike<number>, thresholds?: ArrayLike<number>): Pricing {
    const { instance } = this;
    const worth = new Float64Array(instance.slots.length);
    const columns: Column[] = [];
    this.tables.forEach(({ first, items, table }, profile) => {
      const slots = instance.slotsOf[profile] ?? [];
      const pouredRate = (duals[instance.items.length + profile] ?? 0) / instance.pouredScale;
      const rest = restWorth(
        instance,
        profile,
        (instance.poured[profile] ?? 0) > 0 ? pouredRate : 0,
      );
      const found = slots.map((): Candidate[] => []);
      const rooms = slots.map((slot) => table.stepsIn(instance.slots[slot]?.capacity ?? 0));
      const note = (packet: number, item: number, weight: number, value: number): void => {
        rooms.forEach((room, at) => {
          if (weight > room) return;
          const capacity = instance.slots[slots[at] ?? 0]?.capacity ?? 0;
          let most = -1;
          let gain = 0;
          if (rest === undefined) {
            most = room;
            gain = value + (table.best[room - weight] ?? 0);
          } else {
            for (let used = room; used >= weight; used -= 1) {
              const tried =
                value + (table.best[used - weight] ?? 0) + rest(capacity - used * table.step);
              if (most >= 0 && tried <= gain) continue;
              gain = tried;
              most = used;
            }
          }
          if (gain > (thresholds?.[slots[at] ?? 0] ?? Infinity)) {
            found[at]?.push({ packet, item, room: most - weight, gain, poured: 0 });
          }
        });
      };
      const ownCounts = Array.from(items, (_, at) => counts[first + at] ?? 0);
      const ownValues = Array.from(items, (_, at) => duals[first + at] ?? 0);
      table.run(items, ownCounts, ownValues, thresholds === undefined ? undefined : note);
      slots.forEach((slot, at) => {
        const capacity = instance.slots[slot]?.capacity ?? 0;
        const room = rooms[at] ?? 0;
        const best = bestWithin(table, capacity, room, rest);
        worth[slot] = Math.max(worth[slot] ?? 0, best);
        columns.push(
          ...this.choose(
            found[at] ?? [],
            slot,
            profile,
            first,
            ownCounts,
            rest !== undefined && pouredRate > 0,
          ),
        );
      });
      const all = slots.filter(
        (slot) => pouredRate > 0 && (thresholds?.[slot] ?? Infinity) < Infinity,
      );
      for (const slot of all) {
        const capacity = instance.slots[slot]?.capacity ?? 0;
        if (
          (instance.poured[profile] ?? 0) > 0 &&
          pouredRate * capacity > (thresholds?.[slot] ?? 0)
        ) {
          columns.push(layoutColumn(instance, slot, profile, [], capacity));
        }
      }
    });
    return { worth, columns };
  }

  /** The layouts worth most, none of which takes more of an item than is asked for all together. */
  private choose(
    candidates: Candidate[],
    slot: number,
    profile: number,
    first: number,
    counts: readonly number[],
    pours: boolean,
  ): Column[] {
    const { instance } = this;
    const entry = this.tables[profile];
    if (entry === undefined) return [];
    const columns: Column[] = [];
    const taken = new Map<number, number>();
    candidates.sort((a, b) => b.gain - a.gain || a.packet - b.packet);
    let looked = 0;
    for (const { packet, item, room } of candidates) {
      if (columns.length >= MOST_LAYOUTS_A_SLOT || looked >= 4 * MOST_LAYOUTS_A_SLOT) break;
      looked += 1;
      if ((taken.get(item) ?? 0) >= (counts[item] ?? 0)) continue;
      const items = entry.table.trace(room, packet);
      for (let copy = entry.table.copiesOf(packet); copy > 0; copy -= 1) items.push(item);
      if (columns.length > 0 && items.some((one) => (taken.get(one) ?? 0) > (counts[one] ?? 0)))
        continue;
      for (const one of items) taken.set(one, (taken.get(one) ?? 0) + 1);
      const own = items.map((one) => first + one);
      const used = own.reduce((sum, one) => sum + (instance.items[one]?.weight ?? 0), 0);
      const capacity = instance.slots[slot]?.capacity ?? 0;
      if (used > capacity) throw new RangeError('A layout is longer than its stick.');
      const left = capacity - used;
      columns.push(layoutColumn(instance, slot, profile, own, pours ? left : 0));
    }
    return columns;
  }
}

function bestWithin(
  table: FillTable,
  capacity: number,
  room: number,
  rest: ((left: number) => number) | undefined,
): number {
  if (rest === undefined) return table.best[room] ?? 0;
  let most = 0;
  for (let used = 0; used <= room; used += 1) {
    most = Math.max(most, (table.best[used] ?? 0) + rest(capacity - used * table.step));
  }
  return most;
}
