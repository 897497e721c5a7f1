/** The grid's host and the person who works in the grid: what it shows, puts, keeps and hears. */
import { describe, expect, test } from '@jest/globals';

import type {} from '@univerjs/sheets-numfmt/facade';
import type { GridPage } from '../../browser/grid-host-page.ts';
import { codesOf, valueOf } from '../excel-workbooks.ts';
import { workbook } from '../sample-workbook.ts';
import { inGrid } from './persons-in-grid.ts';
import { savedCell, savedValue } from './saved-cells.ts';

const TOOL = { owner: 'tool', replace: [] } as const;

const MOST_TRIES = 4;
const SOON_MS = 3_000;

export function testGridPerson({ page, host, open, saved, settle }: GridPage): void {
  const select = (sheet: string, at: string): Promise<void> =>
    page().evaluate(
      ([name, cell]) => {
        const found = gridTest.grid.book().getSheetByName(name)!;
        found.activate();
        found.getRange(cell).activate();
      },
      [sheet, at] as const,
    );
  /** A page that has just been opened may lose a key: it is pressed until it does what it is for. */
  const press = async (key: string, isEditing: boolean): Promise<void> => {
    for (let tries = 0; tries < MOST_TRIES; tries++) {
      if (isEditing) await page().locator('canvas').first().focus();
      await page().keyboard.press(key);
      const done = await page()
        .waitForFunction((is) => gridTest.grid.book().isCellEditing() === is, isEditing, {
          timeout: SOON_MS,
        })
        .catch(() => undefined);
      if (done !== undefined) return;
    }
    throw new Error(`${key} did nothing ${MOST_TRIES} times.`);
  };
  /** Into the selected cell, with the keyboard. */
  const type = async (text: string): Promise<void> => {
    await press('F2', true);
    await page().keyboard.type(text);
  };

  describe('The grid’s host beside its person', () => {
    test('tells what it can do', async () => {
      const { kind, can } = await page().evaluate(() => gridTest.host);
      expect([kind, can]).toEqual([
        'grid',
        {
          showCells: true,
          putFormulas: true,
          appendRows: true,
          writeInPlace: true,
          undoWrites: true,
        },
      ]);
      expect(await host.listSeparator()).toBe(',');
    });

    test('shows a cell, far away too, and says so when its sheet is gone', async () => {
      await open(
        inGrid([
          { name: 'Notes', rows: [] },
          { name: 'Runs', rows: [] },
        ]),
      );
      valueOf(await host.show({ sheet: 'Runs', cell: 'C190' }));
      await page().waitForFunction(() => {
        const sheet = gridTest.grid.book().getActiveSheet();
        return sheet.getScrollState().sheetViewStartRow > 100;
      });
      const shown = await page().evaluate(() => {
        const book = gridTest.grid.book();
        return [book.getActiveSheet().getSheetName(), book.getActiveCell()!.getA1Notation()];
      });
      expect(shown).toEqual(['Runs', 'C190']);
      expect(await host.show({ sheet: 'Stock', cell: 'A1' })).toMatchObject({
        faults: [{ code: 'host.gone', given: 'Stock' }],
      });
      expect(codesOf(await host.show({ file: 'runs.csv', line: 1, column: 1 }))).toEqual([
        'host.gone',
      ]);
    });

    test('puts a formula into the selected cell, where it is blank', async () => {
      const full = [
        'full',
        { formula: '=IF(TRUE,"","x")', value: '' },
        { formula: '=COVE.SETUP(3,0.5)', value: 0 },
      ];
      await open(inGrid([{ name: 'Notes', rows: [full] }]));
      await page().evaluate(() => {
        gridTest.grid.book().getSheetByName('Notes')!.getRange('B3').setNumberFormat('@');
      });
      await page().evaluate(() => gridTest.grid.api.getFormula().executeCalculation());
      await settle();
      // D1 holds one of several answers of C1.
      for (const cell of ['A1', 'B1', 'C1', 'D1']) {
        await select('Notes', cell);
        expect(await host.putFormula('=COVE.TILT(3,1,0)')).toMatchObject({
          faults: [{ code: 'host.cell-not-blank', given: `Notes!${cell}` }],
        });
      }
      for (const cell of ['A3', 'B3']) {
        await select('Notes', cell);
        expect(valueOf(await host.putFormula('=1+1'))).toEqual({ sheet: 'Notes', cell });
        await settle();
        expect(savedCell(await saved(), 'Notes', cell)).toMatchObject({ f: '=1+1', v: 2 });
      }
      await page().evaluate(() => gridTest.grid.api.undo());
      expect(savedValue(await saved(), 'Notes', 'B3')).toBeUndefined();
      expect(savedValue(await saved(), 'Notes', 'A3')).toBe(2);
    });

    test('shows a typed angle rounded, in degrees, where its cell has no format of its own', async () => {
      await open(inGrid([{ name: 'Notes', rows: [] }]));
      await page().evaluate(() => {
        gridTest.grid.book().getSheetByName('Notes')!.getRange('B3').setNumberFormat('0.000');
      });
      const typed = [
        ['B2', '=COVE.TILT(3,1,0.5)', '0.0"°"'],
        ['B3', '=COVE.TILT(3,1,0.5)', '0.000'],
      ] as const;
      for (const [cell, formula] of typed) {
        await select('Notes', cell);
        await type(formula);
        await press('Enter', false);
      }
      const formatOf = (cell: string): Promise<string | undefined> =>
        page().evaluate(
          (at) =>
            gridTest.grid.book().getSheetByName('Notes')!.getRange(at).getCellStyleData()?.n
              ?.pattern,
          cell,
        );
      const formats = [];
      for (const [cell] of typed) formats.push(await formatOf(cell));
      expect(formats).toEqual(typed.map(([, , format]) => format));
      await settle();
      // The cell holds the angle itself.
      expect(String(savedValue(await saved(), 'Notes', 'B2'))).toMatch(/^\d+\.\d{6}/u);
      await select('Notes', 'B8');
      valueOf(await host.putFormula('=COVE.TILT(3,1,0.5)'));
      expect(await formatOf('B8')).toBe('0.0"°"');
      await page().evaluate(() => gridTest.grid.api.undo());
      expect(await formatOf('B8')).toBeUndefined();
    });

    test('says of the chosen cell why it shows an error, or which words may stand in it', async () => {
      const [sheet, ...others] = inGrid([
        { name: 'Runs', rows: [['Make', 'Profile']] },
        { name: 'Profiles', rows: [['Profile'], ['Base'], [null], ['Crown']] },
      ]);
      const list = { kind: 'list', values: ['cove', 'buy'] };
      const from = { kind: 'list from', formula: "'Profiles'!$A$2:$A$9" };
      const rules = [
        { range: 'A2:A9', allow: list, strict: false, title: 'Make', message: '' },
        { range: 'B2:B9', allow: from, strict: false, title: 'Profile', message: '' },
      ];
      const custom = sheet!.custom as { readonly coveledger: object };
      const withRules = { custom: { coveledger: { ...custom.coveledger, validations: rules } } };
      await open([{ ...sheet, ...withRules }, ...others]);
      await page().evaluate(() => {
        const runs = gridTest.grid.book().getSheetByName('Runs')!;
        const put = (cell: string, f: string): void => void runs.getRange(cell).setValue({ f });
        put('D2', '=COVE.APPROACH("9 long",1)');
        put('D4', '=COVE.SETUP("9 long",1)');
        put('D6', '=COVE.SETUP(3,1)');
        runs.getRange('F6').setValue('mine');
        put('D8', '=1/0');
        put('D9', '=COVE.APPROACH(J1:J2,1)');
        runs.getRange('J1').setValue('wide');
        runs.getRange('J2').setValue('x');
      });
      await settle();
      const said = async (cell: string): Promise<string> => {
        await select('Runs', cell);
        return page().evaluate(() => gridTest.sayChosenCell());
      };
      expect(await said('A3')).toBe('Make: One of: cove, buy.');
      expect(await said('B9')).toBe('Profile: One of: Base, Crown.');
      expect(await said('A1')).toBe('');
      expect(await said('D2')).toMatch(/^Width: “9 long”/u);
      expect(await said('D4')).toMatch(/^Width: “9 long”/u);
      // A blank where an answer would stand.
      expect(await said('E4')).toMatch(/^D4: Width: “9 long”/u);
      const blocked =
        'D6: its answers need D6:H6, and F6 holds something. Empty that cell, or put the formula where there is room.';
      expect(await said('D6')).toBe(blocked);
      expect(await said('E6')).toBe(blocked);
      expect(await said('D8')).toBe('#DIV/0!: Divide by zero error.');
      expect(await said('D9')).toMatch(/“wide”/u);
      expect(await said('D10')).toMatch(/“x”/u);
      // What is said moves with its formula.
      await page().evaluate(() => {
        gridTest.grid.book().getSheetByName('Runs')!.insertRowBefore(0);
      });
      await settle();
      expect(await said('D3')).toMatch(/^Width: “9 long”/u);
      expect(await said('D11')).toMatch(/“x”/u);
    });

    test('keeps what is being typed, and puts no formula over it', async () => {
      await open(inGrid([{ name: 'Notes', rows: [] }]));
      await select('Notes', 'B2');
      await type('oak');
      expect(await host.putFormula('=1+1')).toMatchObject({
        faults: [{ code: 'host.cell-not-blank', given: 'Notes!B2' }],
      });
      await select('Notes', 'B4');
      await type('ash');
      valueOf(await host.write(workbook([{ name: 'Made' }]), TOOL));
      const book = await saved();
      expect(['B2', 'B4'].map((at) => savedValue(book, 'Notes', at))).toEqual(['oak', 'ash']);
    });

    test('keeps notes with the workbook, each workbook its own', async () => {
      await open(inGrid([{ name: 'Notes', rows: [] }]));
      const recalled = async (): Promise<unknown> =>
        valueOf(await host.recall(['columns', 'plan']));
      expect(await recalled()).toEqual({});
      valueOf(await host.remember({ columns: '{"a":1}', plan: 'b' }));
      expect(await recalled()).toEqual({ columns: '{"a":1}', plan: 'b' });
      valueOf(await host.remember({ columns: '{"a":2}' }));
      expect((await saved()).custom).toEqual({
        coveledger: { properties: { columns: '{"a":2}', plan: 'b' } },
      });
      valueOf(await host.remember({ columns: undefined }));
      expect(await recalled()).toEqual({ plan: 'b' });
      await open(inGrid([{ name: 'Notes', rows: [] }]));
      expect(await recalled()).toEqual({});
    });

    test('tells of changes on the person’s sheets alone, until it is ended', async () => {
      const rows = [['oak', { formula: '=Made!A1', value: 0 }]];
      await open(
        inGrid([
          { name: 'Notes', rows },
          { name: 'Runs', rows: [['Room']] },
        ]),
      );
      await page().evaluate(() => gridTest.watch());
      const told = async (act: () => Promise<unknown>): Promise<string[]> => {
        await act();
        await settle();
        return page().evaluate(() => gridTest.told());
      };
      const one = workbook([{ name: 'Made', rows: [{ cells: [{ value: 7 }] }] }]);
      // Notes!B1 is worked out anew, and may be a length of theirs.
      expect(await told(() => host.write(one, TOOL))).toEqual(['Notes']);
      expect(savedValue(await saved(), 'Notes', 'B1')).toBe(7);
      await select('Runs', 'A2');
      const typed = async (): Promise<void> => {
        await type('Hall');
        await press('Enter', false);
      };
      expect(await told(typed)).toEqual(['Runs']);
      expect(await told(() => page().evaluate(() => gridTest.grid.api.undo()))).toEqual(['Runs']);
      expect(await told(() => page().evaluate(() => gridTest.grid.api.redo()))).toEqual(['Runs']);
      const inPage = (act: string) => told(() => page().evaluate(act));
      const sheet = (name: string) => `gridTest.grid.book().getSheetByName('${name}')`;
      expect(
        await inPage(`void ${sheet('Runs')}.getRange('A1').setBackgroundColor('#ffff00')`),
      ).toEqual([]);
      expect(await inPage(`void ${sheet('Made')}.getRange('A1').setValue('mine')`)).toEqual([
        'Notes',
      ]);
      expect(await inPage(`void ${sheet('Runs')}.insertRowBefore(0)`)).toEqual(['Runs']);
      expect(await inPage(`void ${sheet('Runs')}.setName('Trim')`)).toEqual(['Runs', 'Trim']);
      expect(await inPage(`void ${sheet('Made')}.setName('Mine')`)).toContain('Mine');
      expect(await inPage(`void gridTest.grid.book().deleteSheet(${sheet('Trim')})`)).toContain(
        'Trim',
      );
      expect(await told(() => page().evaluate(() => gridTest.grid.api.undo()))).toContain('Trim');
      expect(
        await inPage(`gridTest.endWatching(); void ${sheet('Notes')}.getRange('A1').setValue('x')`),
      ).toEqual([]);
    });
  });
}
