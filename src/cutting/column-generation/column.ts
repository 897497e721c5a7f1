import { entryAt } from '../entry-at.ts';
import { offcutCents } from '../problem/offcut-credit.ts';
import { creditOf, laborIn, rowOfRelaxed, supplyOf, type Instance } from './instance.ts';

/** One thing that can be done any whole number of times, as a column over the instance's rows. */
export interface Column {
  readonly costCents: number;
  readonly rows: Int32Array;
  readonly values: Float64Array;
  readonly what: Layout | BoardRip | Splice | Shortfall;
}

/** A stick or strip of one slot, cut into items. */
export interface Layout {
  readonly kind: 'layout';
  readonly slot: number;
  /** Places of items, each as often as it is cut, in rising order. */
  readonly items: readonly number[];
}

/** A board bought and ripped. */
export interface BoardRip {
  readonly kind: 'rip';
  readonly supply: number;
  /** The place in the supply's list of rips here. */
  readonly rip: number;
}

/** A spliced piece cut in one of the ways there are. */
export interface Splice {
  readonly kind: 'splice';
  readonly choice: number;
  readonly way: number;
}

/** A piece left over: keeps every program solvable. */
export interface Shortfall {
  readonly kind: 'shortfall';
}

/** @param relaxedUnits units of relaxed splices that fill what the items leave, or a part of it */
export function layoutColumn(
  instance: Instance,
  slotAt: number,
  profile: number,
  items: readonly number[],
  relaxedUnits = 0,
): Column {
  const slot = entryAt(instance.slots, slotAt);
  const entries = new Map<number, number>();
  let used = relaxedUnits;
  for (const item of items) {
    entries.set(item, (entries.get(item) ?? 0) + 1);
    used += entryAt(instance.items, item).weight;
  }
  if (relaxedUnits > 0)
    entries.set(rowOfRelaxed(instance, profile), relaxedUnits / instance.relaxedScale);
  if (slot.stripRow >= 0) entries.set(slot.stripRow, -1);
  const supplyRow = supplyOf(instance, slot)?.row ?? -1;
  if (supplyRow >= 0) entries.set(supplyRow, -1);
  const { keepOffcutsOver, kerf } = instance.problem;
  const offcut = Math.max(0, slot.capacity - kerf - used);
  const credit = offcutCents(offcut, keepOffcutsOver, creditOf(instance, profile), slot.capCents);
  const sorted = [...items].sort((a, b) => a - b);
  return columnOf(slot.priceCents + laborIn(instance, profile, slot) - credit, entries, {
    kind: 'layout',
    slot: slotAt,
    items: sorted,
  });
}

export function ripColumns(instance: Instance): Column[] {
  return instance.supplies.flatMap(({ supply, row, rips }, at) =>
    rips.map(({ strips }, rip) => {
      const entries = new Map<number, number>();
      for (const { slot, count } of strips) {
        const stripRow = entryAt(instance.slots, slot).stripRow;
        entries.set(stripRow, (entries.get(stripRow) ?? 0) + count);
      }
      if (row >= 0) entries.set(row, -1);
      return columnOf(supply.priceCents, entries, { kind: 'rip', supply: at, rip });
    }),
  );
}

export function spliceColumns(instance: Instance): Column[] {
  return instance.choices.flatMap(({ row, ways }, choice) =>
    ways.map(({ items }, way) => {
      const entries = new Map<number, number>([[row, 1]]);
      for (const item of items) entries.set(item, (entries.get(item) ?? 0) - 1);
      return columnOf(0, entries, { kind: 'splice', choice, way });
    }),
  );
}

/**
 * A column for each item, relaxed length and splice, at a price that no plan would pay; a longer piece
 * is dearer, though less so than one more.
 *
 * @param centsEach of one piece
 */
export function shortfallColumns(instance: Instance, centsEach: number): Column[] {
  const { items, profiles, relaxedUnits, relaxedScale, choices, problem } = instance;
  const longest = problem.demands.reduce((most, { length }) => Math.max(most, length), 1);
  const short = (row: number, cents: number): Column =>
    columnOf(cents, new Map([[row, 1]]), { kind: 'shortfall' });
  const centsFor = (demands: readonly number[]): number =>
    demands.reduce(
      (sum, at) => sum + centsEach * (1 + entryAt(problem.demands, at).length / longest / 1000),
      0,
    );
  return [
    ...items.flatMap(({ blocks }, row) =>
      blocks.length === 0 ? [] : [short(row, centsFor(entryAt(blocks, 0).demands))],
    ),
    ...profiles.flatMap((_, profile) =>
      entryAt(relaxedUnits, profile) > 0
        ? [short(rowOfRelaxed(instance, profile), (centsEach * relaxedScale) / longest)]
        : [],
    ),
    ...choices.map(({ row, demands }) => short(row, centsFor(demands.slice(0, 1)))),
  ];
}

/** How often each column is used; together they cover every row. */
export type ColumnUses = ReadonlyMap<Column, number>;

function columnOf(
  costCents: number,
  entries: ReadonlyMap<number, number>,
  what: Column['what'],
): Column {
  const rows = Int32Array.from(entries.keys()).sort();
  const values = Float64Array.from(rows, (row) => entries.get(row) ?? 0);
  return { costCents, rows, values, what };
}
