/** A cove's arguments with those of the blank that it is cut on. */
import type { CoveStock } from '../core/cove/stock.ts';
import type { LengthArgument, Values } from './argument.ts';
import { COVE } from './cove-arguments.ts';

export const COVE_AND_STOCK = {
  ...COVE,
  stockThickness: {
    name: 'Stock thickness',
    kind: 'length',
    least: 'above 0',
    blank: 'absent',
  },
  stockWidth: { name: 'Stock width', kind: 'length', least: 'above 0', blank: 'absent' },
} as const satisfies Readonly<Record<string, LengthArgument>>;

/** The blank as far as it is given: of a size that isn't, nothing is asked. */
export function stockOf(given: Values<typeof COVE_AND_STOCK>): CoveStock {
  const { width, depth, stockThickness, stockWidth } = given;
  return {
    blankThickness: stockThickness ?? depth,
    blankWidth: stockWidth ?? width,
    ...(stockThickness === undefined ? { leastWeb: -Infinity } : {}),
    ...(stockWidth === undefined ? { leastFlat: -Infinity } : {}),
  };
}
