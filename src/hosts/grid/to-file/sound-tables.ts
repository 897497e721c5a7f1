/** Tables proper as files take them: a person may have typed over headings, or moved rows, since. */
import {
  cellName,
  parseRange,
  rangesOverlap,
  type CellRange,
} from '../../../core/cells/cell-range.ts';
import type { TableDescription } from '../../../sheets/grammar/description.ts';
import { cleanText } from '../../../sheets/grammar/check/clean-text.ts';
import type { PlainSheet } from '../../workbook/plain-workbook.ts';

/**
 * The sheets with those of their tables that a file can hold: names and headings once each, headings of
 * text, no merge, no other table and no spilled answers in them. Rows typed right below belong to the
 * table.
 */
export function withSoundTables(sheets: readonly PlainSheet[]): PlainSheet[] {
  const names = new Set<string>();
  return sheets.map((sheet) => {
    const taken: CellRange[] = [...sheet.merges, ...spills(sheet)];
    const tables: TableDescription[] = [];
    for (const { name, range } of sheet.tables) {
      const where = parseRange(range);
      if (where === null || !hasHeadings(sheet, where) || names.has(name.toLowerCase())) continue;
      const grown = withRowsBelow(sheet, where, taken);
      if (taken.some((one) => rangesOverlap(one, grown))) continue;
      names.add(name.toLowerCase());
      taken.push(grown);
      const last = cellName(grown.bottom, grown.right);
      tables.push({ name, range: `${cellName(grown.top, grown.left)}:${last}` });
    }
    return { ...sheet, tables };
  });
}

/** All of them text, and none twice. */
function hasHeadings(sheet: PlainSheet, { top, left, right }: CellRange): boolean {
  const found = new Set<string>();
  for (let column = left; column <= right; column++) {
    const { value = null, formula } = sheet.cells[top]?.[column] ?? {};
    if (typeof value !== 'string' || value === '' || formula !== undefined) return false;
    found.add(cleanText(value).toLowerCase());
  }
  return found.size === right - left + 1;
}

/** As a spreadsheet lets a table grow when a row is typed right below it. */
function withRowsBelow(
  { cells }: PlainSheet,
  table: CellRange,
  taken: readonly CellRange[],
): CellRange {
  let grown = table;
  for (;;) {
    const bottom = grown.bottom + 1;
    const row = cells[bottom] ?? {};
    const filled = Object.entries(row).some(
      ([column, { value }]) =>
        Number(column) >= table.left && Number(column) <= table.right && value !== null,
    );
    const next = { ...table, bottom };
    if (!filled || taken.some((one) => rangesOverlap(one, next))) return grown;
    grown = next;
  }
}

function spills({ cells }: PlainSheet): CellRange[] {
  return Object.values(cells).flatMap((row) =>
    Object.values(row).flatMap(({ spill }) => {
      const range = spill === undefined ? null : parseRange(spill);
      const several = range !== null && (range.top < range.bottom || range.left < range.right);
      return several ? [range] : [];
    }),
  );
}
