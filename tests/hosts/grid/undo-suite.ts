/** Undo after sheets were written: all of them are one step, and what came before them is another. */
import { describe, expect, test } from '@jest/globals';

import type { GridPage } from '../../browser/grid-host-page.ts';
import { valueOf } from '../excel-workbooks.ts';
import { readGrid } from '../read-grid.ts';
import { workbook } from '../sample-workbook.ts';
import { TINY_DRAWING } from '../tiny-drawing.ts';
import { inGrid } from './persons-in-grid.ts';
import { savedCell, savedValue, sheetNames, withoutBlankParts } from './saved-cells.ts';

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

    test('takes added rows away as one step, with all that grew along with them', async () => {
      const [sheet] = inGrid([
        {
          name: 'Profiles',
          rows: [
            ['Profile', 'Width', 'Twice'],
            ['Base', 3, { formula: '=B2*2', value: 6 }],
          ],
          tables: [{ name: 'T', range: 'A1:C2' }],
        },
      ]);
      const validations = [{ range: 'B2', allow: { kind: 'list', values: ['a'] } }];
      const custom = sheet!.custom as { readonly coveledger: object };
      // No row is left below: the sheet grows too.
      const small = { rowCount: 3, custom: { coveledger: { ...custom.coveledger, validations } } };
      await open([{ ...sheet, ...small }]);
      await page().evaluate(() => {
        const book = gridTest.grid.book();
        book.getSheetByName('Profiles')!.getRange('B2').setNumberFormat('0.000');
        book.insertDefinedName('Widths', 'Profiles!$B$2:$B$2');
      });
      await settle();
      const before = withoutBlankParts(await saved());
      const [place] = valueOf(await host.survey()).places;
      const rows = [['Crown', '?'], ['Rail'], ['=1+1']];
      expect(valueOf(await host.appendRows(place!, rows))).toEqual({ line: 3 });
      await settle();
      const grown = await saved();
      const kept = (book: typeof grown) => {
        const { coveledger } = Object.values(book.sheets)[0]!.custom as {
          coveledger: { tables: unknown; validations: { range: string }[] };
        };
        return [coveledger.tables, coveledger.validations[0]!.range];
      };
      expect(kept(grown)).toEqual([[{ name: 'T', range: 'A1:C5' }], 'B2:B5']);
      expect(readGrid(grown, []).names).toEqual({ Widths: "'Profiles'!$B$2:$B$5" });
      expect(['A3', 'B3', 'A5'].map((at) => savedValue(grown, 'Profiles', at))).toEqual([
        'Crown',
        '?',
        '=1+1',
      ]);
      expect(savedCell(grown, 'Profiles', 'C4')).toMatchObject({ f: '=B4*2' });
      const formats = await page().evaluate(() =>
        ['B3', 'B5'].map((at) =>
          gridTest.grid.book().getSheetByName('Profiles')!.getRange(at).getNumberFormat(),
        ),
      );
      expect(formats).toEqual(['0.000', '0.000']);
      await undo();
      expect(withoutBlankParts(await saved())).toEqual(before);
      await redo();
      expect(kept(await saved())).toEqual(kept(grown));
      expect(savedValue(await saved(), 'Profiles', 'A5')).toBe('=1+1');
    });

    test('has nothing to take away where rows would have stood in merged cells', async () => {
      const rows = [['Profile', 'Make'], ['Base', 'buy'], []];
      await open(inGrid([{ name: 'Profiles', rows, merges: ['A4:B4'] }]));
      const [place] = valueOf(await host.survey()).places;
      const given = [['Crown', '?'], ['Rail']];
      expect(await host.appendRows(place!, given)).toMatchObject({
        faults: [{ code: 'host.no-room', where: { sheet: 'Profiles', cell: 'A4' } }],
      });
      expect(savedValue(await saved(), 'Profiles', 'A3')).toBeUndefined();
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
