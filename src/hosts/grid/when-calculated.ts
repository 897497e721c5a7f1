/** When the grid's formulas have been worked out. */
import type {} from '@univerjs/engine-formula/facade';
import type { Grid } from './grid.ts';

/** The grid begins with the formulas of a new workbook within about half of that. */
const LONGEST_START_MS = 1_500;

/**
 * Settles once the answers of the next calculation stand in their cells, or when none has come of
 * one: a workbook that was kept with its answers isn't worked out again.
 */
export function whenCalculated({ api }: Grid): Promise<void> {
  return new Promise((resolve) => {
    const end = (): void => {
      listener.dispose();
      clearTimeout(timer);
      resolve();
    };
    const listener = api.getFormula().calculationEnd(end);
    const timer = setTimeout(end, LONGEST_START_MS);
  });
}
