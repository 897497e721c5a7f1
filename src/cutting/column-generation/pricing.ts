import { entryAt } from '../entry-at.ts';
import { layoutColumn, type Column } from './column.ts';
import { KnapsackTable } from './knapsack-table.ts';
import { laborIn, rowOfRelaxed, type Instance, type Item } from './instance.ts';
import { restWorth } from './rest-worth.ts';

/** Of each slot, how many layouts are handed over at once at most. */
const MOST_LAYOUTS_A_SLOT = 24;

/** What was found at given duals. */
export interface Pricing {
  /** Cents that the best layout of each slot is worth by the duals it was priced at, less its labor; 0 where there is none. */
  readonly worth: Float64Array;
  readonly columns: readonly Column[];
}

interface Candidate {
  readonly packet: number;
  readonly item: number;
  readonly room: number;
  readonly gain: number;
}

/** A slot as it is priced for one profile. */
interface Place {
  readonly slot: number;
  readonly capacity: number;
  /** Whole steps in the capacity. */
  readonly room: number;
  /** What is left beside so many used steps is worth, in cents; undefined where it is worth nothing. */
  readonly rest: Float64Array | undefined;
  /** What a layout's pieces and rest are to be worth more than, its labor included. */
  readonly threshold: number;
  readonly laborCents: number;
  readonly candidates: Candidate[];
}

/** Prices layouts: for each profile a knapsack table that is kept, since it is filled again and again. */
export class LayoutPricer {
  private readonly instance: Instance;
  private readonly tables: readonly {
    readonly first: number;
    readonly items: readonly { weight: number; count: number }[];
    readonly table: KnapsackTable;
  }[];

  constructor(instance: Instance, rounding: 'up' | 'down') {
    this.instance = instance;
    this.tables = instance.profiles.map((_, profile) => {
      const first = instance.items.findIndex((item) => item.profile === profile);
      const items = instance.items
        .filter((item) => item.profile === profile)
        .map((item: Item) => ({ weight: item.weight, count: item.most }));
      const longest = entryAt(instance.slotsOf, profile).reduce(
        (most, slot) => Math.max(most, entryAt(instance.slots, slot).capacity),
        0,
      );
      return { first, items, table: new KnapsackTable(items, longest, rounding) };
    });
  }

  /**
   * @param duals what one more of each row is worth, in cents
   * @param counts how many of each item a layout may hold
   * @param thresholds of each slot: a layout worth more is handed over; absent: none is
   */
  price(duals: Float64Array, counts: ArrayLike<number>, thresholds?: ArrayLike<number>): Pricing {
    const worth = new Float64Array(this.instance.slots.length);
    const columns = this.tables.flatMap((_, profile) =>
      this.priceProfile(profile, duals, counts, thresholds, worth),
    );
    return { worth, columns };
  }

  private priceProfile(
    profile: number,
    duals: Float64Array,
    counts: ArrayLike<number>,
    thresholds: ArrayLike<number> | undefined,
    worth: Float64Array,
  ): Column[] {
    const { instance } = this;
    const entry = this.tables[profile];
    if (entry === undefined) return [];
    const { first, items, table } = entry;
    const isRelaxed = entryAt(instance.relaxedUnits, profile) > 0;
    const rate = isRelaxed
      ? entryAt(duals, rowOfRelaxed(instance, profile)) / instance.relaxedScale
      : 0;
    const places = entryAt(instance.slotsOf, profile).map((slot) =>
      this.placeOf(profile, slot, table, rate, thresholds?.[slot] ?? Infinity),
    );
    const ownCounts = Array.from(items, (_, at) => entryAt(counts, first + at));
    const ownValues = Array.from(items, (_, at) => entryAt(duals, first + at));
    const note = (packet: number, item: number, weight: number, value: number): void => {
      for (const place of places) noteCandidate(place, table, { packet, item, weight, value });
    };
    table.run(items, ownCounts, ownValues, thresholds === undefined ? undefined : note);
    return places.flatMap((place) => {
      const best = bestWithin(table, place) - place.laborCents;
      worth[place.slot] = Math.max(entryAt(worth, place.slot), best);
      const { capacity, slot } = place;
      const relaxed =
        rate * capacity > place.threshold
          ? [layoutColumn(instance, slot, profile, [], capacity)]
          : [];
      return [...this.choose(place, profile, first, ownCounts, rate > 0), ...relaxed];
    });
  }

  private placeOf(
    profile: number,
    at: number,
    table: KnapsackTable,
    rate: number,
    threshold: number,
  ): Place {
    const slot = this.instance.slots[at];
    if (slot === undefined) throw new RangeError(`No slot ${at}.`);
    const { capacity } = slot;
    const room = table.stepsIn(capacity);
    const worthOf = restWorth(this.instance, profile, slot, rate);
    const rest =
      worthOf === undefined
        ? undefined
        : Float64Array.from({ length: room + 1 }, (_, used) =>
            worthOf(capacity - used * table.step),
          );
    const labor = laborIn(this.instance, profile, slot);
    return {
      slot: at,
      capacity,
      room,
      rest,
      threshold: threshold + labor,
      laborCents: labor,
      candidates: [],
    };
  }

  /** The layouts worth most, none of which takes more of an item than is asked for all together. */
  private choose(
    { candidates, slot, capacity }: Place,
    profile: number,
    first: number,
    counts: readonly number[],
    isRelaxed: boolean,
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
      if ((taken.get(item) ?? 0) >= entryAt(counts, item)) continue;
      const items = entry.table.trace(room, packet);
      for (let copy = entry.table.copiesOf(packet); copy > 0; copy -= 1) items.push(item);
      if (columns.length > 0 && items.some((one) => (taken.get(one) ?? 0) > entryAt(counts, one)))
        continue;
      for (const one of items) taken.set(one, (taken.get(one) ?? 0) + 1);
      const own = items.map((one) => first + one);
      const used = own.reduce((sum, one) => sum + entryAt(instance.items, one).weight, 0);
      if (used > capacity) throw new RangeError('A layout is longer than its stick.');
      const left = capacity - used;
      columns.push(layoutColumn(instance, slot, profile, own, isRelaxed ? left : 0));
    }
    return columns;
  }
}

/** The best fill whose last packet is this one, where it is worth more than the slot costs. */
function noteCandidate(
  { room, rest, threshold, candidates }: Place,
  { best }: KnapsackTable,
  { packet, item, weight, value }: { packet: number; item: number; weight: number; value: number },
): void {
  if (weight > room) return;
  let most = room;
  let gain = value + (best[room - weight] ?? 0) + (rest?.[room] ?? 0);
  if (rest !== undefined) {
    for (let used = room - 1; used >= weight; used -= 1) {
      const tried = value + (best[used - weight] ?? 0) + (rest[used] ?? 0);
      if (tried <= gain) continue;
      gain = tried;
      most = used;
    }
  }
  if (gain > threshold) candidates.push({ packet, item, room: most - weight, gain });
}

function bestWithin({ best }: KnapsackTable, { room, rest }: Place): number {
  if (rest === undefined) return best[room] ?? 0;
  let most = 0;
  for (let used = 0; used <= room; used += 1) {
    most = Math.max(most, (best[used] ?? 0) + (rest[used] ?? 0));
  }
  return most;
}
