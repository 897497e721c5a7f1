import { entryAt } from '../entry-at.ts';
import { certify } from './certify.ts';
import type { ColumnUses } from './column.ts';
import { enumerateLayouts } from './enumerate-layouts.ts';
import type { Instance } from './instance.ts';

/** Pieces that are few enough for every set of their lay-outs to be tried. */
export const MOST_TO_ENUMERATE = 28;
const SIZE = { mostLayouts: 4_000, mostLooks: 20_000, mostBoardSets: 200 };

/**
 * The last pieces of a dive, finished by trying every set of lay-outs that their own duals leave room
 * for.
 *
 * @param left what each row still needs
 * @param duals of the program for just that
 * @param mostCents what it may come to, whole
 */
export async function enumerateRest(
  instance: Instance,
  left: Float64Array,
  duals: Float64Array,
  mostCents: number,
): Promise<ColumnUses | 'none' | 'too many'> {
  if (instance.choices.length > 0) return 'too many';
  const rest: Instance = {
    ...instance,
    items: instance.items.map((item, at) => {
      const blocks = item.blocks.slice(0, Math.max(0, Math.round(entryAt(left, at))));
      return { ...item, blocks, most: blocks.length };
    }),
    supplies: instance.supplies.map((supply) =>
      supply.row < 0 ? supply : { ...supply, count: -Math.round(entryAt(left, supply.row)) },
    ),
    rowLeast: left,
  };
  const proof = certify(rest, duals);
  if (proof === undefined) return 'too many';
  const quiet = { isSpent: () => false, isOver: () => false, pause: async () => {} };
  return enumerateLayouts(rest, proof, { ...SIZE, ...quiet, mostCents });
}

export function piecesLeft(instance: Instance, left: Float64Array): number {
  let pieces = 0;
  for (let at = 0; at < instance.items.length; at += 1) pieces += Math.max(0, entryAt(left, at));
  return Math.round(pieces);
}
