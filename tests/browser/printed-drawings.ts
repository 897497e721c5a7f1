/** The drawings of a sheet, on the screen and on paper. */
import { expect } from '@jest/globals';
import type { Page } from 'playwright-core';
import { SET_UP_COLUMNS } from '../../src/sheets/set-ups/set-up-columns.ts';
import type { PrintedPdf } from './printed-pdf.ts';

/** What the printing may be off, as a share; a page lays pictures out on whole pixels of 96 to the inch. */
const SIZE_OFF = 0.005;
const PIXEL_MM = 25.4 / 96;

/** Widths and heights of a sheet's pictures, in millimetres at their true size. */
export function drawingsOn(page: Page, name: string): Promise<(readonly [number, number])[]> {
  return page.evaluate((sheet) => {
    const id = grid.book().getSheetByName(sheet)!.getSheetId();
    const { resources = [] } = grid.book().save();
    const all = JSON.parse(
      resources.find((one) => one.name === 'SHEET_DRAWING_PLUGIN')!.data,
    ) as Record<
      string,
      { data: Record<string, { transform: Record<'width' | 'height', number> }> }
    >;
    const inMm = (pixels: number): number => (pixels / 96) * 25.4;
    return Object.values(all[id]!.data).map(
      ({ transform }) => [inMm(transform.width), inMm(transform.height)] as const,
    );
  }, name);
}

/** How much the columns of the set-ups, A to K, must shrink for the 7.5 inches between a letter's margins. */
/** Of the sheet Set-ups, all of which share the page's width. */
const SET_UP_COLUMN_COUNT = SET_UP_COLUMNS.length;

export function fitOf(page: Page, name: string): Promise<number> {
  return page.evaluate(
    ({ sheet, columns }) => {
      const found = grid.book().getSheetByName(sheet)!.getSheet();
      let wide = 0;
      for (let column = 0; column < columns; column++) wide += found.getColumnWidth(column);
      // Shrunk where they are wider, never stretched.
      return Math.min(1, (7.5 * 96) / wide);
    },
    { sheet: name, columns: SET_UP_COLUMN_COUNT },
  );
}

export function expectDrawn(
  { pictures }: PrintedPdf,
  wanted: readonly (readonly [number, number])[],
  scale: number,
): void {
  expect(pictures).toHaveLength(wanted.length);
  const bySize = (one: readonly [number, number], other: readonly [number, number]): number =>
    one[1] - other[1];
  const got = pictures.map(({ width, height }) => [width, height] as const).sort(bySize);
  [...wanted].sort(bySize).forEach(([width, height], index) => {
    for (const [is, should] of [
      [got[index]![0], width * scale],
      [got[index]![1], height * scale],
    ] as const) {
      expect(Math.abs(is - should)).toBeLessThan(Math.max(SIZE_OFF * should, PIXEL_MM));
    }
  });
}
