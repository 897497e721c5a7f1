/** A formula that is typed and answers an angle is shown in degrees, rounded. */
import type { Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/sheets';
import type { DegreesOf } from './degrees-of.ts';

/** From now on on entry: one step with what is typed, so that Undo takes both away. */
export function typedDegrees(services: Injector, of: DegreesOf): void {
  services.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    handler: (cell, { worksheet, row, col }, next) => {
      const degrees = of(cell?.f, worksheet.getComposedCellStyle(row, col).n?.pattern);
      if (degrees === null || typeof cell?.s === 'string') return next(cell);
      return next({ ...cell, s: { ...cell?.s, ...degrees } });
    },
  });
}
