/** Draws the sheet in sight anew, after a change that the grid doesn't know of. */
import { IRenderManagerService, type IRender } from '@univerjs/engine-render';
import { SheetSkeletonManagerService } from '@univerjs/sheets-ui';
import type { Grid } from './grid.ts';

/** Its cells alone: what floats over them stays. */
export function drawCells(grid: Grid): void {
  renderOf(grid)?.mainComponent?.makeForceDirty();
}

/** Its rows and columns too. */
export function drawAnew(grid: Grid): void {
  const render = renderOf(grid);
  if (render === undefined) return;
  const sheetId = grid.book().getActiveSheet().getSheetId();
  const skeletons = render.with(SheetSkeletonManagerService);
  skeletons.makeDirty({ sheetId }, true);
  skeletons.setCurrent({ sheetId });
  render.mainComponent?.makeForceDirty();
}

function renderOf(grid: Grid): IRender | undefined {
  return grid.services.get(IRenderManagerService).getRenderById(grid.book().getId()) ?? undefined;
}
