/** Described workbooks as the grid holds them, without a grid: its data is plain. */
import { LocaleType, type IWorkbookData } from '@univerjs/core';

import { nameResources } from '../../src/hosts/grid/defined-names.ts';
import { describedGridStyles } from '../../src/hosts/grid/convert-style.ts';
import type { SheetOwner } from '../../src/hosts/grid/sheet-metadata.ts';
import { sheetData } from '../../src/hosts/grid/sheet-data.ts';
import { describedSheet } from '../../src/hosts/workbook/described-workbook.ts';
import { absoluteRange, soundRange } from '../../src/core/cells/cell-range.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { paintTiny } from './tiny-drawing.ts';

const PIXELS_PER_MM = 96 / 25.4;

export async function gridBook(
  description: WorkbookDescription,
  owner: SheetOwner,
): Promise<IWorkbookData> {
  const { title, sheets, names = [] } = cleanDescription(description);
  const ids = sheets.map((_, index) => `s${index}`);
  const pictures = await Promise.all(
    sheets.map(async ({ drawings = [] }) => {
      const data = await Promise.all(
        drawings.map(async ({ at, drawing }, index) => {
          const { top, left } = soundRange(at);
          const png = Buffer.from(await paintTiny()).toString('base64');
          return [
            `d${index}`,
            {
              source: `data:image/png;base64,${png}`,
              title: drawing.title,
              description: drawing.alt,
              transform: {
                width: drawing.width * PIXELS_PER_MM,
                height: drawing.height * PIXELS_PER_MM,
              },
              sheetTransform: { from: { row: top, column: left } },
            },
          ] as const;
        }),
      );
      return { data: Object.fromEntries(data), order: data.map(([id]) => id) };
    }),
  );
  return {
    id: 'job',
    name: title,
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: describedGridStyles(),
    sheetOrder: ids,
    sheets: Object.fromEntries(
      sheets.map((sheet, index) => {
        const described = describedSheet(sheet, { ours: owner === 'tool' });
        return [`s${index}`, sheetData(described, `s${index}`)] as const;
      }),
    ),
    resources: [
      ...nameResources(
        names.map(({ name, sheet, range }) => ({
          name,
          refersTo: absoluteRange(sheet, soundRange(range)),
        })),
        () => undefined,
      ),
      {
        name: 'SHEET_DRAWING_PLUGIN',
        data: JSON.stringify(Object.fromEntries(pictures.map((one, index) => [`s${index}`, one]))),
      },
    ],
  };
}
