/** What the grid's saved workbook holds, in a few words. */
import type { ICellData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { readBox } from '../excel-fake/address.ts';

/** How the grid numbers that kind of cell. */
const BOOLEAN = 3;

export function sheetNames({ sheetOrder, sheets }: IWorkbookData): string[] {
  return sheetOrder.map((id) => sheets[id]?.name ?? '');
}

export function savedSheet({ sheets }: IWorkbookData, name: string): Partial<IWorksheetData> {
  const found = Object.values(sheets).find((sheet) => sheet.name === name);
  if (found === undefined) throw new Error(`There is no sheet ${name}.`);
  return found;
}

/** @param at Written like A1. */
export function savedCell(book: IWorkbookData, name: string, at: string): ICellData | undefined {
  const { top, left } = readBox(at);
  return savedSheet(book, name).cellData?.[top]?.[left];
}

/** A boolean as one; undefined where nothing stands. */
export function savedValue(book: IWorkbookData, name: string, at: string): unknown {
  const { v, t } = savedCell(book, name, at) ?? {};
  return Number(t) === BOOLEAN ? v === 1 : (v ?? undefined);
}

/** The grid keeps an empty list of pictures for sheets that are gone. */
export function withoutBlankParts(book: IWorkbookData): IWorkbookData {
  const blank = /"[^"]+":\{"data":\{\},"order":\[\]\},?/gu;
  return {
    ...book,
    resources: (book.resources ?? []).map(({ name, data }) => ({
      name,
      data: data.replace(blank, '').replace(/,\}$/u, '}'),
    })),
  };
}
