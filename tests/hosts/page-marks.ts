/** What can be measured on a page's pixels: dark stretches along its rows. */
import type { PageRaster } from './printed-pages.ts';

/** Of 255: lines of ink are darker, areas of wood and cautions are not. */
const DARK = 150;

export interface Stretch {
  /** First pixel, and the one after the last. */
  readonly from: number;
  readonly to: number;
}

/** The dark stretches of one row of pixels, from left to right. */
export function darkStretches({ width, data }: PageRaster, row: number): Stretch[] {
  const found: Stretch[] = [];
  let from = -1;
  for (let x = 0; x <= width; x++) {
    const isDark = x < width && data[row * width + x]! < DARK;
    if (isDark && from < 0) from = x;
    if (!isDark && from >= 0) {
      found.push({ from, to: x });
      from = -1;
    }
  }
  return found;
}

export interface Bar {
  readonly top: number;
  /** Rows of pixels. */
  readonly thick: number;
  /** Pixels from end to end. */
  readonly long: number;
}

/** Level bars of ink longer than told, from above: rows one under the other that are dark alike. */
export function levelBars(page: PageRaster, longerThan: number): Bar[] {
  const bars: { top: number; thick: number; longs: number[]; from: number }[] = [];
  for (let row = 0; row < page.height; row++) {
    for (const { from, to } of darkStretches(page, row)) {
      if (to - from <= longerThan) continue;
      const above = bars.find(
        (bar) => bar.top + bar.thick === row && Math.abs(bar.from - from) <= 3,
      );
      if (above === undefined) bars.push({ top: row, thick: 1, longs: [to - from], from });
      else {
        above.thick += 1;
        above.longs.push(to - from);
      }
    }
  }
  return bars.map(({ top, thick, longs }) => {
    const sorted = longs.toSorted((one, other) => one - other);
    return { top, thick, long: sorted[Math.floor(sorted.length / 2)]! };
  });
}
