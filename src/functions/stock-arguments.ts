/** A cove's arguments with those of the blank that it is cut on. */
import { COVE_SIZES } from '../core/cove/cove-sizes.ts';
import type { CoveStock } from '../core/cove/stock.ts';
import type { LengthArgument, Values } from './argument.ts';
import { COVE, sizeArgument } from './cove-arguments.ts';

export const COVE_AND_STOCK = {
  ...COVE,
  stockThickness: {
    ...sizeArgument(COVE_SIZES.blankThickness),
    name: 'stockThickness',
    blank: 'absent',
  },
  stockWidth: { ...sizeArgument(COVE_SIZES.blankWidth), name: 'stockWidth', blank: 'absent' },
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
