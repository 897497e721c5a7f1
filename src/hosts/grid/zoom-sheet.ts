/** How large the sheet in view is shown. It is no part of the workbook that goes into a file. */
import type {} from '@univerjs/sheets-ui/facade';
import type { Grid } from './grid.ts';

/** Beside the first column, for the rows' numbers, at full size; pixels. */
const ROW_NUMBERS = 46;
/** As small as the grid goes. */
const SMALLEST = 0.1;

/** 1 is full size. */
export function zoomNow(grid: Grid): number {
  return grid.book().getActiveSheet().getZoom();
}

export function zoomTo(grid: Grid, zoom: number): void {
  grid.book().getActiveSheet().zoom(zoom);
}

/** At which zoom all columns that hold anything take up as many pixels, rounded down. */
export function zoomForWidth(grid: Grid, pixels: number): number {
  const sheet = grid.book().getActiveSheet();
  let width = ROW_NUMBERS;
  for (let column = 0; column <= sheet.getLastColumn(); column++) {
    width += sheet.getColumnWidth(column);
  }
  return Math.max(SMALLEST, Math.floor((pixels / width) * 100) / 100);
}
