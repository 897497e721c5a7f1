/** Where a sheet's pages begin, so that no part that has room on one page is torn in two. */
import { FILLED_SHARE, MOST_BREAKS } from './page-size.ts';
import type { SheetDraft } from './sheet-draft.ts';

/** A title, a note, headings and two rows. */
const HEADED_ROWS = 5;

/** The first rows of a long block, as many as a page has room for. */
function headed(heights: readonly number[], room: number): readonly number[] {
  let left = room;
  const beyond = heights.findIndex((points) => (left -= points) < 0);
  return heights.slice(0, Math.min(HEADED_ROWS, beyond < 0 ? heights.length : beyond));
}

/**
 * Breaks pages before blocks of rows that would not fit on the page begun; a block longer than a page
 * is broken where the page is full.
 *
 * @param blocks First row of each block, ascending, from row 1 on.
 * @param room Points of rows that a page has room for, at the sheet's own size.
 * @param repeated A row that is repeated at the top of every page after it; absent: none is.
 */
export function layPages(
  draft: SheetDraft,
  blocks: readonly number[],
  room: number,
  repeated?: number,
): void {
  const most = room * FILLED_SHARE;
  const again = repeated === undefined ? 0 : draft.pointsOf(repeated);
  let used = 0;
  let breaks = 0;
  const turn = (row: number): void => {
    if (breaks < MOST_BREAKS) draft.breakPage(row - 1);
    breaks += 1;
    used = row > (repeated ?? Infinity) ? again : 0;
  };
  blocks.forEach((first, at) => {
    const end = blocks[at + 1] ?? draft.next;
    const heights = Array.from({ length: end - first }, (_, row) => draft.pointsOf(first + row));
    const sum = (some: readonly number[]): number => some.reduce((all, points) => all + points, 0);
    const high = sum(heights);
    // One longer than a page begins where its first rows have room with its headings.
    const together = high <= most ? high : sum(headed(heights, most));
    if (first > 1 && used + together > most) turn(first);
    heights.forEach((points, row) => {
      if (used > again && used + points > most) turn(first + row);
      used += points;
    });
  });
}
