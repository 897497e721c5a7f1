/** Keeps what is typed as a length from becoming a date. */
import { CellValueType, type Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/sheets';
import { looksLikeDay } from './typed-meaning.ts';

/** Before the grid's own reading of what was typed. */
const FIRST = 1000;

/** From now on 3/4 typed into a cell stays 3/4; what is surely a date or a number is read as usual. */
export function keepLengths(services: Injector): void {
  services.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, _context, next) => {
      const typed = cell?.v;
      const isText = typeof typed === 'string' && (cell?.p ?? null) === null;
      if (!isText || typed.trim() === '' || !looksLikeDay(typed)) return next(cell);
      // Not handed on: whoever comes next would read a day in it.
      return { ...cell, t: CellValueType.STRING };
    },
  });
}
