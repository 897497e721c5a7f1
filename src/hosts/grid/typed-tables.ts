/** A formula that is typed with a table's columns in it, Runs[Length], is kept with their cells. */
import type { Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/sheets';
import { withoutTables } from '../formulas/table-references.ts';
import { tablesNow } from './tables-now.ts';

/** The grid's engine knows no tables: it would answer #NAME?. */
export function typedTables(services: Injector): void {
  services.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    handler: (cell, { workbook, worksheet, row, col }, next) => {
      const typed = cell?.f;
      if (typeof typed !== 'string' || !typed.startsWith('=')) return next(cell);
      const at = { sheet: worksheet.getName(), row, column: col };
      const { formula } = withoutTables(typed.slice(1), tablesNow(workbook), at);
      return next({ ...cell, f: `=${formula}` });
    },
  });
}
