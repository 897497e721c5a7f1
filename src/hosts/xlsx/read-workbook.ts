/** Reads the tables that are looked for out of an .xlsx file's bytes. */
import type { Workbook } from 'hucre/xlsx';

import { own } from '../../core/faults/argument.ts';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { tableArgument, type RawTable } from '../../planning/input/raw-table.ts';
import { tableOf, together } from '../tables/raw-rows.ts';
import { withLayout } from '../tables/sheet-layout.ts';
import { layoutOf, openWorkbook, rowsOf } from './open-workbook.ts';

/**
 * Reads tables from the sheets of their names (case and spaces don't matter).
 *
 * @param bytes The .xlsx file, at most 50 MB.
 * @param fileName What faults call it.
 * @param tableNames The sheets looked for.
 * @param required Those of them that must be there.
 * @returns The tables found, in the order of `tableNames`; or the faults: file.too-large,
 *   file.protected, file.old-workbook, file.not-workbook; or for all tables together table.missing,
 *   table.twice, table.too-many-rows, table.heading-merged.
 */
export async function readWorkbook(
  bytes: Uint8Array,
  fileName: string,
  tableNames: readonly string[],
  required: readonly string[] = [],
): Promise<Outcome<RawTable[]>> {
  const keys = new Set(tableNames.map(sheetKey));
  const opened = await openWorkbook(bytes, fileName, (name) => keys.has(sheetKey(name)));
  if (!opened.ok) return opened;
  const found = tableNames.map((name) => {
    const outcome = tableFrom(opened.value, name, fileName);
    const missing = outcome === null && required.includes(name);
    return missing ? failed(fault('table.missing', tableArgument(name), fileName)) : outcome;
  });
  return together(found.filter((one) => one !== null));
}

/** A table with the names of all sheets beside it. */
export interface OneSheet extends RawTable {
  readonly sheets: readonly string[];
}

/**
 * Reads one sheet as a table, whatever it is called.
 *
 * @param name Of the sheet; the first where left out.
 * @returns The table, named as its file; or one fault, as readWorkbook has them, table.no-sheet for
 *   table.missing.
 */
export async function readOneSheet(
  bytes: Uint8Array,
  fileName: string,
  name?: string,
): Promise<Outcome<OneSheet>> {
  const sheets: string[] = [];
  let key = name === undefined ? undefined : sheetKey(name);
  // The library asks sheet by sheet, in their order.
  const opened = await openWorkbook(bytes, fileName, (sheet) => {
    if (!sheets.includes(sheet)) sheets.push(sheet);
    return sheetKey(sheet) === (key ??= sheetKey(sheet));
  });
  if (!opened.ok) return opened;
  const sheet = opened.value.sheets.find((one) => sheetKey(one.name) === key);
  const table = sheet === undefined ? null : tableFrom(opened.value, sheet.name, fileName);
  if (table === null) {
    const wanted = name === undefined ? 'firstSheet' : own(name);
    const details = { sheets: sheets.join(', ') };
    return failed(fault('table.no-sheet', wanted, fileName, { details }));
  }
  return table.ok ? ok({ ...table.value, name: fileName, sheets }) : table;
}

function tableFrom(workbook: Workbook, name: string, fileName: string): Outcome<RawTable> | null {
  const [sheet, ...others] = workbook.sheets.filter((one) => sheetKey(one.name) === sheetKey(name));
  if (sheet === undefined) return null;
  if (others.length > 0) return failed(fault('table.twice', tableArgument(name), fileName));
  const table = tableOf(name, { kind: 'sheet', name: sheet.name }, rowsOf(sheet));
  return table.ok ? withLayout(table.value, layoutOf(sheet)) : table;
}

function sheetKey(name: string): string {
  return name.replace(/\s/gu, '').toLowerCase();
}
