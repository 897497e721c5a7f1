import { expect, test } from '@jest/globals';
import fc from 'fast-check';

import { layPages } from '../../../src/sheets/grammar/lay-pages.ts';
import { cell, SheetDraft } from '../../../src/sheets/grammar/sheet-draft.ts';

const ROOM = 300;
/** What layPages leaves to programs that count otherwise. */
const FILLED = 0.97;

/** A sheet of blocks of so many points a row, laid on pages; gives the rows of each page, from 1. */
function lay(blocks: readonly (readonly number[])[], repeated?: number): number[][] {
  const draft = new SheetDraft('Pages', [{ width: 10 }], true);
  const starts: number[] = [];
  for (const block of blocks) {
    starts.push(draft.next);
    for (const points of block) draft.setHeight(draft.add(cell('x')), points);
  }
  layPages(draft, starts, ROOM, repeated);
  const { breaksAfter = [] } = draft.finish({
    paper: 'a4',
    orientation: 'portrait',
    footer: '',
  }).print;
  const pages: number[][] = [[]];
  for (let row = 1; row < draft.next; row++) {
    pages.at(-1)!.push(row);
    if (breaksAfter.includes(row)) pages.push([]);
  }
  return pages;
}

test('A block that would not fit on the page begun has a new one', () => {
  expect(lay([[100, 100], [90], [60, 60]])).toEqual([
    [1, 2, 3],
    [4, 5],
  ]);
});

test('A block longer than a page goes on where the page is full', () => {
  const rows = Array.from({ length: 7 }, () => 100);
  expect(lay([[50], rows])).toEqual([[1, 2, 3], [4, 5], [6, 7], [8]]);
});

test('A row that is repeated takes its room on every later page', () => {
  // Below headings of 40, a page of 291 has room for two rows of 100, not for three.
  const rows = Array.from({ length: 5 }, () => 100);
  expect(lay([[40, ...rows]], 1)).toEqual([[1, 2, 3], [4, 5], [6]]);
});

const heights = fc.array(fc.integer({ min: 10, max: 200 }), { minLength: 1, maxLength: 12 });

test('For all blocks, no page is over-full, none is blank, and no block that fits is torn', () => {
  fc.assert(
    fc.property(fc.array(heights, { minLength: 1, maxLength: 12 }), (blocks) => {
      const pages = lay(blocks);
      const rows = blocks.flat();
      const pointsOf = (some: readonly number[]): number =>
        some.reduce((all, row) => all + rows[row - 1]!, 0);
      for (const page of pages) {
        expect(page.length).toBeGreaterThan(0);
        expect(pointsOf(page)).toBeLessThanOrEqual(ROOM * FILLED);
      }
      let first = 1;
      for (const block of blocks) {
        const own = block.map((_, at) => first + at);
        first += block.length;
        const on = pages.filter((page) => own.some((row) => page.includes(row)));
        if (pointsOf(own) <= ROOM * FILLED) expect(on).toHaveLength(1);
      }
    }),
  );
});
