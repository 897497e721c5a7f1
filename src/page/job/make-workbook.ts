/** A described workbook as the grid opens it: the person's own sheets, to be filled in. */
import { generateRandomId, LocaleType, type IWorkbookData } from '@univerjs/core';
import { loadDemo } from '../../browser/browser-services.ts';
import { describedGridStyles } from '../../hosts/grid/convert-style.ts';
import { sheetData, type GridSheetData } from '../../hosts/grid/sheet-data.ts';
import { describedSheet } from '../../hosts/workbook/described-workbook.ts';
import { describeInput } from '../../sheets/describe-input.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { WorkbookDescription } from '../../sheets/grammar/description.ts';
import { withLiveColumns } from '../../sheets/input/live-columns.ts';

const NAMES = { demo: 'Demo job', blank: 'New job' } as const;

/** The demo's sheets; it comes over the network. */
export async function demoWorkbook(): Promise<IWorkbookData> {
  return workbookOf(describeInput(await loadDemo()), NAMES.demo);
}

export function blankWorkbook(unit: LengthUnit): IWorkbookData {
  return workbookOf(describeInput([], unit), NAMES.blank);
}

/** With live columns beside the profiles, and under an id of its own: two workbooks of one id can't follow one another. */
function workbookOf(described: WorkbookDescription, name: string): IWorkbookData {
  const { sheets } = withLiveColumns(described);
  const made = sheets.map((sheet, index): [string, GridSheetData] => {
    const id = `sheet-${index + 1}`;
    return [id, sheetData(describedSheet(sheet, { ours: false }), id)];
  });
  return {
    id: `made-${generateRandomId()}`,
    name,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: describedGridStyles(),
    sheetOrder: made.map(([id]) => id),
    sheets: Object.fromEntries(made),
  };
}
