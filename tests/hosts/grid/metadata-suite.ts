/** Tables and rules of a sheet when rows and columns come and go in the grid. */
import { describe, expect, test } from '@jest/globals';

import { readCustomData, type SheetMetadata } from '../../../src/hosts/grid/sheet-metadata.ts';
import type { GridPage } from '../../browser/grid-host-page.ts';
import { valueOf } from '../excel-workbooks.ts';
import { workbook } from '../sample-workbook.ts';
import { inGrid } from './persons-in-grid.ts';

const HEADS = ['Room', 'Run', 'Length'];
const list = workbook([
  {
    name: 'Runs',
    rows: [HEADS, ['Hall', 'north', '8'], ['Hall', 'south', '9'], ['Den', 'east', '7']].map(
      (cells) => ({ cells: cells.map((value) => ({ value })) }),
    ),
    tables: [{ name: 'Runs', range: 'A1:C4' }],
    validations: [
      {
        range: 'C2:C4',
        allow: { kind: 'list', values: ['7', '8', '9'] },
        strict: false,
        title: 'Length',
        message: 'One of these.',
      },
    ],
  },
]);

export function testGridKept({ page, host, open, saved, settle }: GridPage): void {
  const kept = async (): Promise<SheetMetadata | undefined> => {
    const { sheets } = await saved();
    return readCustomData(Object.values(sheets).find(({ name }) => name === 'Runs')?.custom);
  };
  const ranges = async (): Promise<(string | undefined)[]> => {
    const { tables = [], validations = [] } = (await kept()) ?? {};
    return [tables[0]?.range, validations[0]?.range];
  };
  const step = async (name: 'undo' | 'redo'): Promise<void> => {
    await page().evaluate((called) => gridTest.grid.api[called](), name);
    await settle();
  };
  const change = async (
    how: 'insertRowBefore' | 'insertColumnBefore' | 'deleteRows',
    at: number,
  ): Promise<void> => {
    await page().evaluate(
      ([called, place]) => {
        const sheet = gridTest.grid.book().getSheetByName('Runs')!;
        if (called === 'deleteRows') sheet.deleteRows(place, 1);
        else sheet[called](place);
      },
      [how, at] as const,
    );
    await settle();
  };

  describe('A table in the grid', () => {
    test('stays with its rows and columns when others come and go, and Undo puts it back', async () => {
      await open(inGrid([{ name: 'Notes', rows: [['a']] }]));
      valueOf(await host.write(list, { owner: 'person', replace: [] }));
      await page().evaluate(() => {
        gridTest.grid.book().setActiveSheet(gridTest.grid.book().getSheetByName('Runs')!);
      });
      const asWritten = await kept();
      await change('insertRowBefore', 0);
      expect(await ranges()).toEqual(['A2:C5', 'C3:C5']);
      await change('insertColumnBefore', 0);
      expect(await ranges()).toEqual(['B2:D5', 'D3:D5']);
      await change('insertRowBefore', 3);
      expect(await ranges()).toEqual(['B2:D6', 'D3:D6']);
      await change('deleteRows', 5);
      expect(await ranges()).toEqual(['B2:D5', 'D3:D5']);
      expect(valueOf(await host.survey())).toMatchObject({
        places: [{ table: 'Runs', line: 2, rowCount: 2 }, {}],
      });
      for (let times = 0; times < 4; times++) await step('undo');
      expect(await kept()).toEqual(asWritten);
      for (let times = 0; times < 4; times++) await step('redo');
      expect(await ranges()).toEqual(['B2:D5', 'D3:D5']);
    });
  });
}
