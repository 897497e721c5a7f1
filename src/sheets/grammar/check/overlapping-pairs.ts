/** Which ranges lie over which, for lists of many thousands. */
import { rangesOverlap, type CellRange } from '../../../core/cells/cell-range.ts';

interface Placed {
  readonly range: CellRange;
  readonly place: number;
}

/**
 * Pairs of places in two lists whose ranges overlap, in the order of the lists; in one list given
 * twice each pair stands once. A null takes a place and overlaps nothing.
 *
 * Swept from the top row down: only ranges that reach to the row are looked at.
 */
export function overlappingPairs(
  ones: readonly (CellRange | null)[],
  others: readonly (CellRange | null)[],
): readonly (readonly [one: number, other: number])[] {
  const isOneList = ones === others;
  const found: (readonly [number, number])[] = [];
  const open: { first: Placed[]; second: Placed[] } = { first: [], second: [] };
  const queue = [...listed(ones, 'first'), ...(isOneList ? [] : listed(others, 'second'))];
  queue.sort((one, other) => one.range.top - other.range.top);
  for (const { list, ...placed } of queue) {
    const against = isOneList || list === 'second' ? 'first' : 'second';
    open[against] = open[against].filter(({ range }) => range.bottom >= placed.range.top);
    for (const { range, place } of open[against]) {
      if (!rangesOverlap(range, placed.range)) continue;
      if (isOneList) found.push([Math.min(place, placed.place), Math.max(place, placed.place)]);
      else found.push(list === 'first' ? [placed.place, place] : [place, placed.place]);
    }
    open[list].push(placed);
  }
  return found.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

function listed(
  ranges: readonly (CellRange | null)[],
  list: 'first' | 'second',
): (Placed & { readonly list: 'first' | 'second' })[] {
  return ranges.flatMap((range, place) => (range === null ? [] : [{ range, place, list }]));
}
