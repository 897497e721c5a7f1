/** The tables proper of a file, for the formulas that name them. */
import type { Sheet } from 'hucre/xlsx';

import { parseRange } from '../../core/cells/cell-range.ts';
import { nameKey } from '../formulas/formula-parts.ts';
import type { KnownTable, KnownTables } from '../formulas/table-references.ts';

export function knownTables(sheets: readonly Sheet[]): KnownTables {
  const tables = new Map<string, KnownTable>();
  for (const { name: sheet, tables: all = [] } of sheets) {
    for (const { name, displayName, range: text, columns, showTotalRow } of all) {
      const range = parseRange(text ?? '');
      if (range === null) continue;
      const names = columns.map((column) => column.name);
      const table = { sheet, range, columns: names, hasTotals: showTotalRow === true };
      tables.set(nameKey(displayName ?? name), table);
    }
  }
  return tables;
}
