import { entryAt } from '../entry-at.ts';
import { boardSets } from './board-sets.ts';
import type { Proof } from './certify.ts';
import { layoutColumn, ripColumns, type Column, type ColumnUses } from './column.ts';
import { CoverSearch, type CoverOptions } from './cover-search.ts';
import type { Instance } from './instance.ts';
import { spareLayouts, type SpareLayout } from './spare-layouts.ts';

/** For each set of boards, however many there are. */
const LEAST_LOOKS = 2_000;

export interface EnumerateOptions extends CoverOptions {
  /** A plan that costs at most this is sought, in whole cents. */
  readonly mostCents: number;
  readonly mostLayouts: number;
  readonly mostBoardSets: number;
  /** Asked without counting a step. */
  readonly isOver: () => boolean;
}

/**
 * Goes through every plan that the duals leave room for: each lay-out costs a spare sum more than its
 * pieces are worth, each board one more than its strips are, and the spare sums of a plan of at most
 * `mostCents`, with the strips it leaves unused, come to no more than what lies between that and the
 * bound. All in whole numbers, so what it doesn't find isn't there.
 *
 * @returns a plan as cheap as asked; 'none' where all was tried; 'too many' where it was too much to try
 */
export async function enumerateLayouts(
  instance: Instance,
  proof: Proof,
  options: EnumerateOptions,
): Promise<ColumnUses | 'none' | 'too many'> {
  if (instance.choices.length > 0) return 'too many';
  const budget = options.mostCents * proof.grain - proof.total;
  if (budget < 0) return 'none';
  const sets = boardSets(instance, proof, budget, options.mostBoardSets);
  if (sets === undefined) return 'too many';
  const layouts = spareLayouts(instance, proof, budget, options.mostLayouts);
  if (layouts === undefined) return 'too many';
  const search = new CoverSearch(instance, proof, layouts);
  const mostLooks = Math.max(LEAST_LOOKS, Math.floor(options.mostLooks / Math.max(1, sets.length)));
  let isAllTried = true;
  for (const { boards, strips, stock, spare } of sets) {
    const outcome = await search.run(budget - spare, strips, stock, { ...options, mostLooks });
    if (options.isOver()) return 'too many';
    if (outcome === 'too many') isAllTried = false;
    if (typeof outcome === 'string') continue;
    const settled = columnsOf(instance, outcome);
    const rips = ripColumns(instance);
    for (const { supply, rip, count } of boards) {
      const column = rips.find(
        ({ what }) => what.kind === 'rip' && what.supply === supply && what.rip === rip,
      );
      if (column !== undefined) settled.set(column, count);
    }
    return settled;
  }
  return isAllTried ? 'none' : 'too many';
}

function columnsOf(instance: Instance, layouts: readonly SpareLayout[]): Map<Column, number> {
  const columns = new Map<string, { readonly column: Column; count: number }>();
  for (const { slot, items, key } of layouts) {
    const profile = entryAt(instance.items, entryAt(items, 0)).profile;
    const one = columns.get(key) ?? {
      column: layoutColumn(instance, slot, profile, items),
      count: 0,
    };
    columns.set(key, one);
    one.count += 1;
  }
  return new Map([...columns.values()].map(({ column, count }) => [column, count]));
}
