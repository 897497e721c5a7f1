/** A person's sheets as the grid holds them. */
import type { ICellData, IWorksheetData } from '@univerjs/core';
import { readBox } from '../excel-fake/address.ts';
import type { PersonsCell } from '../excel-fake/fake-excel.ts';
import type { PersonsSheet } from '../persons-sheets.ts';
import { PLAIN_PRINT } from '../sample-workbook.ts';

export function inGrid(sheets: readonly PersonsSheet[]): Partial<IWorksheetData>[] {
  return sheets.map(
    ({ name, rows, tables = [], merges = [], hidden = [], hiddenColumns = [] }) => ({
      name,
      rowCount: rows.length + 200,
      cellData: Object.fromEntries(
        rows.map((cells, row) => [
          row,
          Object.fromEntries(
            cells.flatMap((cell, column) => (cell === null ? [] : [[column, gridCell(cell)]])),
          ),
        ]),
      ),
      rowData: Object.fromEntries(hidden.map((line) => [line - 1, { hd: 1 }])),
      columnData: Object.fromEntries(hiddenColumns.map((column) => [column, { hd: 1 }])),
      mergeData: merges.map((one) => {
        const { top, left, bottom, right } = readBox(one);
        return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
      }),
      custom: {
        coveledger: { owner: 'person', name, print: PLAIN_PRINT, tables, validations: [] },
      },
    }),
  );
}

/** How the grid numbers kinds of cells; an error has none. */
const KINDS = { string: 1, number: 2, boolean: 3 } as const;

function gridCell(cell: Exclude<PersonsCell, null>): ICellData {
  if (typeof cell !== 'object') return held(cell);
  if ('error' in cell) return { v: cell.error };
  if ('date' in cell) return { ...held(cell.date), s: { n: { pattern: 'yyyy-mm-dd' } } };
  if ('typed' in cell) throw new RangeError('Only Excel reads what is typed.');
  if ('held' in cell) return { ...held(cell.held), s: { n: { pattern: cell.format } } };
  return { f: cell.formula, ...held(cell.value) };
}

function held(value: string | number | boolean): ICellData {
  const kind = KINDS[typeof value as keyof typeof KINDS];
  const v = typeof value === 'boolean' ? Number(value) : value;
  return Object.assign<ICellData, object>({ v }, { t: kind });
}
