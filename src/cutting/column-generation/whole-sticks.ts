import { entryAt } from '../entry-at.ts';
import { offcutCents } from '../problem/offcut-credit.ts';
import type { Block } from '../quick/cut-list.ts';
import { weightOf, type WholeStick } from '../whole-stick.ts';
import type { ColumnUses, Layout } from './column.ts';
import { creditOf, laborIn, supplyOf, type Instance } from './instance.ts';

/** A stick with its profile by place, and the slot it lies in. */
interface Draft {
  readonly profile: number;
  slot: number;
  blocks: Block[];
}

/**
 * Turns settled columns into sticks: every block handed out once, what is covered twice left out of
 * the emptiest sticks, every stick exchanged for the cheapest that still holds it, and no more
 * boards opened than the strips need.
 */
export function wholeSticks(instance: Instance, uses: ColumnUses): readonly WholeStick[] {
  const drafts = handOut(instance, uses);
  exchangeSticks(instance, drafts);
  const boards = [...uses].flatMap(([{ what }, times]) =>
    what.kind === 'rip' ? Array.from({ length: times }, () => what) : [],
  );
  const onBoards = layOnBoards(instance, drafts, boards);
  return [
    ...drafts.flatMap(({ profile, slot, blocks }) => {
      const supply = supplyOf(instance, entryAt(instance.slots, slot))?.supply;
      if (supply === undefined) return [];
      const blank = entryAt(instance.profiles, profile).blank;
      const rip = supply.rips?.findIndex(
        (strips) => strips.length === 1 && strips[0]?.count === 1 && strips[0].blank === blank,
      );
      return [
        {
          profile: entryAt(instance.profiles, profile).id,
          supply,
          rip: Math.max(0, rip ?? 0),
          blocks,
        },
      ];
    }),
    ...onBoards,
  ];
}

function handOut(instance: Instance, uses: ColumnUses): Draft[] {
  const waiting = instance.items.map(({ blocks }) => [...blocks]);
  cutSplices(instance, uses, waiting);
  const layouts: Layout[] = [];
  for (const [{ what }, times] of uses) {
    if (what.kind !== 'layout') continue;
    for (let time = 0; time < times; time += 1) layouts.push(what);
  }
  const room = ({ slot, items }: Layout): number =>
    items.reduce(
      (left, item) => left - entryAt(instance.items, item).weight,
      entryAt(instance.slots, slot).capacity,
    );
  return layouts
    .map((layout) => ({ layout, room: room(layout) }))
    .sort((a, b) => a.room - b.room)
    .flatMap(({ layout }) => {
      const blocks = layout.items.flatMap((item) => waiting[item]?.pop() ?? []);
      const profile = entryAt(instance.items, entryAt(layout.items, 0)).profile;
      return blocks.length === 0 ? [] : [{ profile, slot: layout.slot, blocks }];
    });
}

/** Adds the parts of every splice as it was settled. */
function cutSplices(instance: Instance, uses: ColumnUses, waiting: readonly Block[][]): void {
  const { problem, choices } = instance;
  const given = choices.map(() => 0);
  for (const [{ what }, times] of uses) {
    if (what.kind !== 'splice') continue;
    const { demands, ways } = entryAt(choices, what.choice);
    const way = entryAt(ways, what.way);
    for (let time = 0; time < times; time += 1) {
      const demand = demands[entryAt(given, what.choice)] ?? -1;
      const demandId = problem.demands[demand]?.id;
      if (demandId === undefined) continue;
      given[what.choice] = entryAt(given, what.choice) + 1;
      way.parts.forEach((length, part) => {
        const pieces = [{ demandId, length, part }];
        entryAt(waiting, entryAt(way.items, part)).push({
          weight: length + problem.kerf,
          pieces,
          demands: [demand],
        });
      });
    }
  }
}

/** Fullest first, each stick bought by itself takes the cheapest slot that still holds it and can be had. */
function exchangeSticks(instance: Instance, drafts: readonly Draft[]): void {
  const left = instance.supplies.map(({ count }) => count);
  const single = drafts.filter(({ slot }) => entryAt(instance.slots, slot).supply >= 0);
  for (const { slot } of single) take(instance, left, slot, -1);
  const fullestFirst = single
    .map((draft) => ({ draft, weight: weightOf(draft) }))
    .sort((a, b) => b.weight - a.weight);
  for (const { draft, weight } of fullestFirst) {
    take(instance, left, draft.slot, 1);
    const cost = (slot: number): number => netCents(instance, draft.profile, slot, weight);
    for (const slot of entryAt(instance.slotsOf, draft.profile)) {
      const { capacity, supply } = entryAt(instance.slots, slot);
      if (supply < 0 || capacity < weight || entryAt(left, supply) < 1) continue;
      if (cost(slot) < cost(draft.slot)) draft.slot = slot;
    }
    take(instance, left, draft.slot, -1);
  }
}

function take(instance: Instance, left: number[], slot: number, by: number): void {
  const supply = entryAt(instance.slots, slot).supply;
  if (supply >= 0) left[supply] = entryAt(left, supply) + by;
}

function netCents(instance: Instance, profile: number, slot: number, weight: number): number {
  const own = entryAt(instance.slots, slot);
  const { capacity, capCents } = own;
  const priceCents = own.priceCents + laborIn(instance, profile, own);
  const { kerf, keepOffcutsOver } = instance.problem;
  const offcut = Math.max(0, capacity - kerf - weight);
  return priceCents - offcutCents(offcut, keepOffcutsOver, creditOf(instance, profile), capCents);
}

interface Board {
  readonly supply: number;
  readonly rip: number;
}

/** Lays the strips' sticks on as few of the boards as hold them, the dearest left out where they can be. */
function layOnBoards(
  instance: Instance,
  drafts: readonly Draft[],
  boards: readonly Board[],
): readonly WholeStick[] {
  const strips = drafts
    .filter(({ slot }) => entryAt(instance.slots, slot).supply < 0)
    .sort((a, b) => weightOf(b) - weightOf(a));
  if (strips.length === 0) return [];
  let kept = [...boards].sort((a, b) => priceOf(instance, b) - priceOf(instance, a));
  let laid = lay(instance, strips, kept);
  if (laid === undefined) throw new RangeError('The boards give too few strips.');
  for (const board of [...kept]) {
    const at = kept.indexOf(board);
    const fewer = [...kept.slice(0, at), ...kept.slice(at + 1)];
    const tried = lay(instance, strips, fewer);
    if (tried === undefined) continue;
    kept = fewer;
    laid = tried;
  }
  return laid;
}

function priceOf(instance: Instance, board: Board): number {
  return entryAt(instance.supplies, board.supply).supply.priceCents;
}

/** Longest sticks first, each on the shortest strip of its blank that holds it. */
function lay(
  instance: Instance,
  strips: readonly Draft[],
  boards: readonly Board[],
): readonly WholeStick[] | undefined {
  const free = new Map<string, { capacity: number; board: Board }[]>();
  for (const board of boards) {
    const rip = instance.supplies[board.supply]?.rips[board.rip];
    for (const { slot, count } of rip?.strips ?? []) {
      const { blank, capacity } = entryAt(instance.slots, slot);
      const list = free.get(blank) ?? [];
      free.set(blank, list);
      for (let strip = 0; strip < count; strip += 1) list.push({ capacity, board });
    }
  }
  for (const list of free.values()) list.sort((a, b) => a.capacity - b.capacity);
  const laid: WholeStick[] = [];
  for (const { profile, blocks } of strips) {
    const { blank, id } = entryAt(instance.profiles, profile);
    const list = free.get(blank) ?? [];
    const at = list.findIndex(({ capacity }) => capacity >= weightOf({ blocks }));
    const [strip] = at < 0 ? [] : list.splice(at, 1);
    const supply = instance.supplies[strip?.board.supply ?? -1];
    if (strip === undefined || supply === undefined) return undefined;
    const rip = entryAt(supply.rips, strip.board.rip).rip;
    laid.push({ profile: id, supply: supply.supply, rip, blocks });
  }
  return laid;
}
