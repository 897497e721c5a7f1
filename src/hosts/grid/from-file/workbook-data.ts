/** A workbook from a file as the grid holds it. */
import { LocaleType, type IWorkbookData } from '@univerjs/core';
import type { PlainWorkbook } from '../../workbook/plain-workbook.ts';
import { toBookData } from '../book-metadata.ts';
import { describedGridStyles, toGridStyles } from '../convert-style.ts';
import { nameResources } from '../defined-names.ts';
import { sheetData } from '../sheet-data.ts';

/** @param id What the grid calls the workbook; no other that is open may have it. */
export function workbookData(workbook: PlainWorkbook, id: string): IWorkbookData {
  const { title, font, styles, sheets, names, properties = {}, texts } = workbook;
  const ids = new Map(sheets.map(({ name }, index) => [name, `sheet-${index + 1}`]));
  return {
    id,
    name: title,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: { ...describedGridStyles(), ...toGridStyles(styles, font) },
    sheetOrder: [...ids.values()],
    sheets: Object.fromEntries(
      sheets.map((sheet) => {
        const sheetId = ids.get(sheet.name) ?? '';
        const data = sheetData(sheet, sheetId);
        const usual = typeof data.defaultStyle === 'object' ? data.defaultStyle : {};
        return [sheetId, { ...data, defaultStyle: { ...usual, ff: font.name, fs: font.size } }];
      }),
    ),
    resources: nameResources(names, (sheet) => ids.get(sheet)),
    custom: toBookData(properties, texts),
  };
}
