/** Draws the sheet in sight anew, after a change that the grid doesn't know of. */
import { IRenderManagerService } from '@univerjs/engine-render';
import { SheetSkeletonManagerService } from '@univerjs/sheets-ui';
import type { Grid } from './grid.ts';

export function drawAnew(grid: Grid): void {
  const render = grid.services.get(IRenderManagerService).getRenderById(grid.book().getId());
  if (render === null || render === undefined) return;
  const sheetId = grid.book().getActiveSheet().getSheetId();
  const skeletons = render.with(SheetSkeletonManagerService);
  skeletons.makeDirty({ sheetId }, true);
  skeletons.setCurrent({ sheetId });
  render.mainComponent?.makeForceDirty();
}
