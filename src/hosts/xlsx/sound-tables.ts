/** Tables proper as files take them: a person may have typed over headings, or moved rows, since. */
import type { WriteSheet } from 'hucre/xlsx';

import {
  cellName,
  parseRange,
  rangesOverlap,
  type CellRange,
} from '../../core/cells/cell-range.ts';
import { cleanText } from '../../sheets/grammar/check/clean-text.ts';
import type { PlainSheet } from '../workbook/plain-workbook.ts';
import { escapeText } from './xlsx-sheet.ts';

type XlsxTable = NonNullable<WriteSheet['tables']>[number];

/**
 * The tables of each sheet that a file can hold: names and headings once each, headings of text, no
 * merge, no other table and no spilled answers in them. Rows typed right below belong to the table.
 */
export function soundTables(sheets: readonly PlainSheet[]): ReadonlyMap<PlainSheet, XlsxTable[]> {
  const names = new Set<string>();
  const sound = new Map<PlainSheet, XlsxTable[]>();
  for (const sheet of sheets) {
    const taken: CellRange[] = [...sheet.merges, ...spills(sheet)];
    const tables: XlsxTable[] = [];
    for (const { name, range } of sheet.tables) {
      const where = parseRange(range);
      const columns = where === null ? null : headings(sheet, where);
      if (where === null || columns === null || names.has(name.toLowerCase())) continue;
      const grown = withRowsBelow(sheet, where, taken);
      if (taken.some((one) => rangesOverlap(one, grown))) continue;
      names.add(name.toLowerCase());
      taken.push(grown);
      tables.push({
        name,
        range: `${cellName(grown.top, grown.left)}:${cellName(grown.bottom, grown.right)}`,
        columns: columns.map((one) => ({ name: escapeText(one) })),
        style: 'TableStyleLight1',
      });
    }
    sound.set(sheet, tables);
  }
  return sound;
}

/** Null where they are not all text, or one stands there twice. */
function headings(sheet: PlainSheet, { top, left, right }: CellRange): string[] | null {
  const found: string[] = [];
  for (let column = left; column <= right; column++) {
    const { value = null, formula } = sheet.cells[top]?.[column] ?? {};
    if (typeof value !== 'string' || value === '' || formula !== undefined) return null;
    found.push(cleanText(value));
  }
  return new Set(found.map((one) => one.toLowerCase())).size === found.length ? found : null;
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
