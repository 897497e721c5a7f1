/** Undo after sheets were written: all of them are one step, and what came before them is another. */
import { describe, expect, test } from '@jest/globals';

import type { GridPage } from '../../browser/grid-host-page.ts';
import { valueOf } from '../excel-workbooks.ts';
import { readGrid } from '../read-grid.ts';
import { workbook } from '../sample-workbook.ts';
import { TINY_DRAWING } from '../tiny-drawing.ts';
import { inGrid } from './persons-in-grid.ts';
import { savedValue, sheetNames, withoutBlankParts } from './saved-cells.ts';

const TOOL = { owner: 'tool', replace: [] } as const;

export function testGridUndo({ page, host, open, saved, settle }: GridPage): void {
  const set = (sheet: string, at: string, value: string | number): Promise<void> =>
    page().evaluate(
      ([name, cell, given]) => {
        gridTest.grid.book().getSheetByName(name)!.getRange(cell).setValue(given);
      },
      [sheet, at, value] as const,
    );
  const undo = async (): Promise<void> => {
    await page().evaluate(() => gridTest.grid.api.undo());
    await settle();
  };
  const redo = async (): Promise<void> => {
    await page().evaluate(() => gridTest.grid.api.redo());
    await settle();
  };
  const plan = (value: number) =>
    workbook([
      {
        name: 'Cut list',
        rows: [{ cells: [{ value, formula: `Client!A1+${value}` }] }],
        drawings: [
          { at: 'B2', drawing: TINY_DRAWING },
          { at: 'A4', drawing: { ...TINY_DRAWING, title: 'Other' } },
        ],
      },
      { name: 'Client', rows: [{ cells: [{ value: 0 }] }] },
    ]);

  describe('Undo in the grid', () => {
    test('takes written sheets away as one step, then what the person did before, and Redo all back', async () => {
      await open(
        inGrid([{ name: 'Notes', rows: [['a', { formula: "='Cut list'!A1", value: 0 }]] }]),
      );
      await set('Notes', 'A1', 'b');
      const before = withoutBlankParts(await saved());
      valueOf(await host.write(plan(7), TOOL));
      await settle();
      const written = withoutBlankParts(await saved());
      await set('Cut list', 'C9', 'scribble');
      await set('Notes', 'A1', 'c');
      await undo();
      await undo();
      expect(readGrid(await saved(), ['Cut list', 'Client'])).toEqual(
        readGrid(written, ['Cut list', 'Client']),
      );
      await undo();
      expect(sheetNames(await saved())).toEqual(['Notes']);
      expect(savedValue(await saved(), 'Notes', 'A1')).toBe('b');
      expect(readGrid(await saved(), []).names).toEqual(readGrid(before, []).names);
      await undo();
      expect(savedValue(await saved(), 'Notes', 'A1')).toBe('a');
      for (let step = 0; step < 4; step++) await redo();
      const again = await saved();
      expect(sheetNames(again)).toEqual(['Notes', 'Cut list', 'Client']);
      expect(readGrid(again, ['Cut list']).sheets[0]?.drawings).toEqual(
        readGrid(written, ['Cut list']).sheets[0]?.drawings,
      );
      expect(['A1', 'B1'].map((at) => savedValue(again, 'Notes', at))).toEqual(['c', 7]);
      expect(savedValue(again, 'Cut list', 'C9')).toBe('scribble');
    });

    test('brings replaced sheets back where they were, with their pictures and answers', async () => {
      await open(inGrid([{ name: 'Notes', rows: [[{ formula: "='Cut list'!A1", value: 0 }]] }]));
      valueOf(await host.write(plan(7), TOOL));
      await page().evaluate(() => gridTest.grid.book().insertSheet('Mine'));
      await settle();
      const before = readGrid(await saved(), ['Cut list', 'Client']);
      valueOf(await host.write(plan(50), { owner: 'tool', replace: ['Cut list', 'Client'] }));
      await settle();
      expect(sheetNames(await saved())).toEqual(['Notes', 'Mine', 'Cut list', 'Client']);
      expect(savedValue(await saved(), 'Notes', 'A1')).toBe(50);
      await undo();
      expect(sheetNames(await saved())).toEqual(['Notes', 'Cut list', 'Client', 'Mine']);
      expect(readGrid(await saved(), ['Cut list', 'Client'])).toEqual(before);
      expect(savedValue(await saved(), 'Notes', 'A1')).toBe(7);
      await set('Client', 'A1', 100);
      await settle();
      expect(savedValue(await saved(), 'Notes', 'A1')).toBe(107);
    });

    test('works after a refusal as if nothing had been tried', async () => {
      await open(inGrid([{ name: 'Client', rows: [['mine']] }]));
      await set('Client', 'A1', 'typed');
      expect((await host.write(plan(7), TOOL)).ok).toBe(false);
      await undo();
      expect(savedValue(await saved(), 'Client', 'A1')).toBe('mine');
    });
  });
}
