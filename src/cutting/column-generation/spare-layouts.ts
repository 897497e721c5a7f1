import { entryAt } from '../entry-at.ts';
import { gcd } from '../greatest-divisor.ts';
import { offcutCents } from '../problem/offcut-credit.ts';
import { creditOf, laborIn, type Instance } from './instance.ts';
import type { Proof } from './certify.ts';

/** Cells of the table of what is still to be had, at most; past it the search is too large anyway. */
const MOST_CELLS = 8_000_000;
const MOST_LOOKS = 4_000_000;

/** A lay-out, and what it costs beyond what its pieces are worth, in grains; 0 or more. */
export interface SpareLayout {
  readonly slot: number;
  /** Places of items, each as often as it is cut. */
  readonly items: readonly number[];
  readonly counts: readonly (readonly [item: number, count: number])[];
  readonly spare: number;
  readonly key: string;
}

/**
 * Every lay-out whose spare sum is within `budget`: of lay-outs with the same pieces, that of an
 * unlimited slot with the least spare sum, and those of limited ones.
 *
 * @returns undefined where there are more than `mostLayouts`, or they can't be gone through
 */
export function spareLayouts(
  instance: Instance,
  proof: Proof,
  budget: number,
  mostLayouts: number,
): readonly SpareLayout[] | undefined {
  const found = new Map<string, SpareLayout>();
  let looks = MOST_LOOKS;
  for (const [profile] of instance.profiles.entries()) {
    const own = instance.items.flatMap((item, at) => (item.profile === profile ? [at] : []));
    const table = stillToHave(instance, proof, own, profile);
    if (table === undefined) return undefined;
    for (const slot of entryAt(instance.slotsOf, profile)) {
      looks = list(
        instance,
        proof,
        { own, profile, slot, table, budget, mostLayouts, looks },
        found,
      );
      if (looks < 0) return undefined;
    }
  }
  return [...found.values()];
}

interface Table {
  readonly unit: number;
  readonly width: number;
  /** `worth[k · width + room]`: the most that items from place k on are worth within so many units. */
  readonly worth: Float64Array;
}

function stillToHave(
  instance: Instance,
  proof: Proof,
  own: readonly number[],
  profile: number,
): Table | undefined {
  const unit = Math.max(
    1,
    own.reduce((common, item) => gcd(common, instance.items[item]?.weight ?? 0), 0),
  );
  const longest = (instance.slotsOf[profile] ?? []).reduce(
    (most, slot) => Math.max(most, instance.slots[slot]?.capacity ?? 0),
    0,
  );
  const width = Math.floor(longest / unit) + 1;
  if (width * (own.length + 1) > MOST_CELLS) return undefined;
  const worth = new Float64Array(width * (own.length + 1));
  for (let place = own.length - 1; place >= 0; place -= 1) {
    const item = own[place] ?? 0;
    const { weight = 1, blocks = [] } = instance.items[item] ?? {};
    const value = proof.items[item] ?? 0;
    const step = weight / unit;
    for (let room = 0; room < width; room += 1) {
      let most = 0;
      for (let count = 0; count <= blocks.length && count * step <= room; count += 1) {
        const rest = worth[(place + 1) * width + room - count * step] ?? 0;
        most = Math.max(most, count * value + rest);
      }
      worth[place * width + room] = most;
    }
  }
  return { unit, width, worth };
}

interface Listing {
  readonly own: readonly number[];
  readonly profile: number;
  readonly slot: number;
  readonly table: Table;
  readonly budget: number;
  readonly mostLayouts: number;
  readonly looks: number;
}

/** @returns the looks that are left; below 0 where there were too many, of them or of lay-outs */
function list(
  instance: Instance,
  { grain, items: worths, slots, credits }: Proof,
  { own, profile, slot: slotAt, table, budget, mostLayouts, looks }: Listing,
  found: Map<string, SpareLayout>,
): number {
  const slot = instance.slots[slotAt];
  if (slot === undefined) return looks;
  const { kerf, keepOffcutsOver } = instance.problem;
  const credit = creditOf(instance, profile);
  // A strip is paid for with its board: it costs what the board's spare sum takes it to be worth.
  const isStrip = slot.supply < 0;
  const bought = isStrip
    ? (slots[slotAt] ?? 0)
    : slot.priceCents * grain + (credits[slot.supply] ?? 0);
  const price = bought + laborIn(instance, profile, slot) * grain;
  const needed = price - budget - Math.min(slot.capCents, credit?.mostCents ?? 0) * grain;
  const limited = Number.isFinite(instance.supplies[slot.supply]?.count ?? Infinity);
  const cut: number[] = [];
  let left = looks;
  const visit = (place: number, used: number, value: number): void => {
    left -= 1;
    if (left < 0) return;
    if (place === own.length) {
      if (cut.length === 0) return;
      const offcut = Math.max(0, slot.capacity - kerf - used);
      const spare =
        price - offcutCents(offcut, keepOffcutsOver, credit, slot.capCents) * grain - value;
      if (spare > budget) return;
      const key = `${profile}:${cut.join()}${isStrip ? ` strip ${slotAt}` : limited ? ` ${slot.supply}` : ''}`;
      const known = found.get(key);
      if (known !== undefined && known.spare <= spare) return;
      found.set(key, { slot: slotAt, items: [...cut], counts: countItems(cut), spare, key });
      if (found.size > mostLayouts) left = -1;
      return;
    }
    const item = own[place] ?? 0;
    const { weight = 1, blocks = [] } = instance.items[item] ?? {};
    for (let count = blocks.length; count >= 0 && left >= 0; count -= 1) {
      const usedNow = used + count * weight;
      if (usedNow > slot.capacity) continue;
      const valueNow = value + count * (worths[item] ?? 0);
      const room = Math.floor((slot.capacity - usedNow) / table.unit);
      const most = valueNow + (table.worth[(place + 1) * table.width + room] ?? 0);
      if (most < needed) continue;
      for (let copy = 0; copy < count; copy += 1) cut.push(item);
      visit(place + 1, usedNow, valueNow);
      cut.length -= count;
    }
  };
  visit(0, 0, 0);
  return left;
}

function countItems(items: readonly number[]): (readonly [number, number])[] {
  const counts = new Map<number, number>();
  for (const item of items) counts.set(item, (counts.get(item) ?? 0) + 1);
  return [...counts];
}
