/** Opens the grid with the demo job and the pane beside it. */
import { LocaleType, type IWorkbookData } from '@univerjs/core';
import { gridStyles } from '../hosts/grid/grid-style.ts';
import { sheetData } from '../hosts/grid/sheet-data.ts';
import { startGrid } from '../hosts/grid/start-grid.ts';
import { describeInput } from '../sheets/describe-input.ts';
import type { RawTable } from '../planning/input/raw-table.ts';
import { gridFunctions } from './grid-functions.ts';

export async function openPage(): Promise<void> {
  const demo = (await (await fetch('demo.json')).json()) as RawTable[];
  const { sheets } = describeInput(demo);
  const ids = sheets.map((_, index) => `sheet-${index + 1}`);
  const data: IWorkbookData = {
    id: 'job',
    name: 'Trim',
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: gridStyles(),
    sheetOrder: ids,
    sheets: Object.fromEntries(
      sheets.map((sheet, index) => {
        const id = ids[index] ?? '';
        return [id, sheetData(sheet, id, 'person')];
      }),
    ),
  };
  const grid = startGrid('grid', data, gridFunctions());
  performance.mark('grid shown');
  Object.assign(globalThis, { grid });
}
