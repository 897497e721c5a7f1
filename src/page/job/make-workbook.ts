/** A described workbook as the grid opens it: the person's own sheets, to be filled in. */
import { generateRandomId, LocaleType, type IWorkbookData } from '@univerjs/core';
import { loadDemo } from '../../browser/browser-services.ts';
import { gridStyles } from '../../hosts/grid/grid-style.ts';
import { sheetData } from '../../hosts/grid/sheet-data.ts';
import { describeInput } from '../../sheets/describe-input.ts';
import type { WorkbookDescription } from '../../sheets/description.ts';
import { withLiveColumns } from './live-columns.ts';

const NAMES = { demo: 'Demo job', blank: 'New job' } as const;

/** The demo's sheets with live columns beside the profiles; it comes over the network. */
export async function demoWorkbook(): Promise<IWorkbookData> {
  return workbookOf(withLiveColumns(describeInput(await loadDemo())), NAMES.demo);
}

export function blankWorkbook(): IWorkbookData {
  return workbookOf(describeInput(), NAMES.blank);
}

/** Under an id of its own: two workbooks of one id can't follow one another. */
function workbookOf({ sheets }: WorkbookDescription, name: string): IWorkbookData {
  const made = sheets.map((sheet, index) => ({ sheet, id: `sheet-${index + 1}` }));
  return {
    id: `made-${generateRandomId()}`,
    name,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: gridStyles(),
    sheetOrder: made.map(({ id }) => id),
    sheets: Object.fromEntries(made.map(({ sheet, id }) => [id, sheetData(sheet, id, 'person')])),
  };
}
