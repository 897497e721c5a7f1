/** The tables of the grid's workbook as they stand now. */
import type { Workbook, Worksheet } from '@univerjs/core';
import { parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import { nameKey } from '../formulas/formula-parts.ts';
import type { KnownTable, KnownTables } from '../formulas/table-references.ts';
import { gridSheet } from './grid-sheets.ts';

/** Rows typed right below a table belong to it. */
export function tablesNow(book: Workbook): KnownTables {
  const tables = book.getSheets().flatMap((worksheet) => {
    const { name: sheet, kept } = gridSheet(worksheet);
    return (kept?.tables ?? []).flatMap(({ name, range: text }): [string, KnownTable][] => {
      const range = parseRange(text);
      if (range === null) return [];
      const columns = Array.from({ length: range.right - range.left + 1 }, (_, index) => {
        const { v } = worksheet.getCellRaw(range.top, range.left + index) ?? {};
        return typeof v === 'string' ? v : '';
      });
      const table = { sheet, range: withRowsBelow(worksheet, range), columns, hasTotals: false };
      return [[nameKey(name), table]];
    });
  });
  return new Map(tables);
}

function withRowsBelow(worksheet: Worksheet, range: CellRange): CellRange {
  let { bottom } = range;
  while (isFilled(worksheet, { ...range, top: bottom + 1 })) bottom += 1;
  return { ...range, bottom };
}

function isFilled(worksheet: Worksheet, { top, left, right }: CellRange): boolean {
  for (let column = left; column <= right; column++) {
    const { v, f, si, p } = worksheet.getCellRaw(top, column) ?? {};
    if ([v, f, si].some((one) => (one ?? '') !== '') || (p ?? null) !== null) return true;
  }
  return false;
}
