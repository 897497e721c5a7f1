/** Whether an .xlsx file is a client's copy, and its cells where it is. */
import type { Sheet } from 'hucre/xlsx';

import { cellName } from '../../core/cells/cell-range.ts';
import { copyIn, type CopyFile, type CopySheet } from '../../sheets/client/copy-sheet.ts';
import { keptTextsOf } from './kept-parts.ts';
import { keptProperties } from './kept-properties.ts';
import { openWorkbook, partsOf, rowsOf } from './open-workbook.ts';

/** A copy is a sheet or two; a workbook of many is a job, and isn't read for this. */
const MOST_SHEETS = 12;

/**
 * Undefined for what is no copy of a client, and for what can't be read: what is wrong with that is said
 * where its tables are read.
 */
export async function copyInFile(bytes: Uint8Array, name: string): Promise<CopyFile | undefined> {
  if (!partsOf(bytes, name).ok || Object.keys(keptTextsOf(bytes)).length > 0) return undefined;
  let sheets = 0;
  const opened = await openWorkbook(bytes, name, () => (sheets += 1) <= MOST_SHEETS);
  if (!opened.ok) return undefined;
  return copyIn(opened.value.sheets.map(sheetOf), keptProperties(opened.value));
}

function sheetOf(sheet: Sheet): CopySheet {
  const formulas = [...(sheet.cells ?? [])].flatMap(([key, { type, formula }]) => {
    if (formula === undefined && type !== 'formula') return [];
    const [row = 0, column = 0] = key.split(',').map(Number);
    return [cellName(row, column)];
  });
  return { name: sheet.name, rows: rowsOf(sheet), formulas: new Set(formulas) };
}
