/** When the grid's formulas have been worked out. */
import { FormulaExecutedStateType } from '@univerjs/engine-formula';
import type {} from '@univerjs/engine-formula/facade';
import type { Grid } from './grid.ts';

/** The grid begins with the formulas of a new workbook within about half of that. */
const LONGEST_START_MS = 1_500;

/**
 * Settles once the answers of the next calculation stand in their cells, however long it takes, or
 * when none has begun: a workbook that was kept with its answers isn't worked out again.
 */
export function whenCalculated({ api }: Grid): Promise<void> {
  const formulas = api.getFormula();
  return new Promise((resolve) => {
    const settle = (): void => {
      begin.dispose();
      end.dispose();
      clearTimeout(timer);
      resolve();
    };
    const begin = formulas.calculationStart(() => {
      clearTimeout(timer);
    });
    // One that is stopped by a change begins again with it.
    const end = formulas.calculationEnd((state) => {
      if (state !== FormulaExecutedStateType.STOP_EXECUTION) settle();
    });
    const timer = setTimeout(settle, LONGEST_START_MS);
  });
}
