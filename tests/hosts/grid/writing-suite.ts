/** What writing into the grid leaves, keeps and refuses. */
import { describe, expect, test } from '@jest/globals';

import type { GridPage } from '../../browser/grid-host-page.ts';
import { codesOf, valueOf } from '../excel-workbooks.ts';
import { readGrid, sheetsWithPictures } from '../read-grid.ts';
import { HOSTILE_TEXTS, richWorkbook, workbook } from '../sample-workbook.ts';
import { TINY_DRAWING } from '../tiny-drawing.ts';
import { inGrid } from './persons-in-grid.ts';
import { savedCell, savedSheet, savedValue, sheetNames, withoutBlankParts } from './saved-cells.ts';

/** What the grid is told to do when sheets are written. */
const STEPS = '(insert-sheet|remove-sheet|drawing-apply|set-defined-name)$';
const TOOL = { owner: 'tool', replace: [] } as const;

export function testGridWriting({ page, host, open, saved, settle }: GridPage): void {
  const one = (name: string, value: number | string, formula?: string) => ({
    name,
    rows: [{ cells: [{ value, ...(formula === undefined ? {} : { formula }) }] }],
  });
  const begin = (formula = '=1') =>
    open(inGrid([{ name: 'Notes', rows: [[5, { formula, value: 0 }]] }]));

  describe('Writing into the grid', () => {
    test('puts sheets behind those of the person, in order, and shows the first', async () => {
      await open(
        inGrid([
          { name: 'Notes', rows: [] },
          { name: 'More notes', rows: [] },
        ]),
      );
      valueOf(await host.write(richWorkbook(), TOOL));
      const rich = richWorkbook().sheets.map(({ name }) => name);
      expect(sheetNames(await saved())).toEqual(['Notes', 'More notes', ...rich]);
      const shown = await page().evaluate(() =>
        gridTest.grid.book().getActiveSheet().getSheetName(),
      );
      expect(shown).toBe(rich[0]);
    });

    test('knows its own sheets, but none that was renamed, copied or written as the person’s', async () => {
      await begin();
      valueOf(await host.write(workbook([{ name: 'A' }, { name: 'B' }, { name: 'C' }]), TOOL));
      valueOf(await host.write(workbook([{ name: 'Runs' }]), { owner: 'person', replace: [] }));
      await page().evaluate(() => {
        const book = gridTest.grid.book();
        book.getSheetByName('B')!.setName('Mine');
        book.duplicateSheet(book.getSheetByName('C')!);
      });
      const ours = valueOf(await host.survey()).sheets.filter((sheet) => sheet.ours);
      expect(ours.map(({ name }) => name)).toEqual(['A', 'C']);
    });

    test('refuses what is not ours, or may not be replaced, all at once and untouched', async () => {
      await open(inGrid([{ name: 'production', rows: [['mine']] }]));
      valueOf(await host.write(workbook([one('Cutting', 1)]), TOOL));
      const before = await saved();
      const both = workbook([one('Production', 2), one('Cutting', 3), one('Client', 4)]);
      expect(codesOf(await host.write(both, { owner: 'tool', replace: ['Production'] }))).toEqual([
        'host.sheet-not-ours',
        'host.sheet-exists',
      ]);
      const input = await host.write(workbook([one('Cutting', 2)]), {
        owner: 'person',
        replace: ['Cutting'],
      });
      expect(codesOf(input)).toEqual(['host.sheet-not-ours']);
      expect(await saved()).toEqual(before);
    });

    test('replaces its own; formulas of the person that point there read the new one', async () => {
      await begin("='Cut list'!A1*2");
      valueOf(await host.write(workbook([one('Cut list', 7), one('Client', 1)]), TOOL));
      await settle();
      expect(savedValue(await saved(), 'Notes', 'B1')).toBe(14);
      const survey = valueOf(await host.survey()).sheets.find(({ name }) => name === 'Cut list');
      expect(survey).toEqual({ name: 'Cut list', ours: true, pointedAtBy: ['Notes!B1'] });
      valueOf(
        await host.write(workbook([one('Cut list', 50)]), { owner: 'tool', replace: ['cut LIST'] }),
      );
      await settle();
      const book = await saved();
      expect(sheetNames(book)).toEqual(['Notes', 'Client', 'Cut list']);
      expect(savedCell(book, 'Notes', 'B1')).toMatchObject({ f: "='Cut list'!A1*2", v: 100 });
    });

    test('leaves no picture of a sheet that it replaced', async () => {
      await begin();
      const drawn = workbook([
        { name: 'Drawn', drawings: [{ at: 'B2', drawing: TINY_DRAWING }] },
        { name: 'Other', drawings: [{ at: 'A1', drawing: TINY_DRAWING }] },
      ]);
      valueOf(await host.write(drawn, TOOL));
      expect(sheetsWithPictures(await saved())).toHaveLength(2);
      valueOf(
        await host.write(workbook([{ name: 'Drawn' }]), { owner: 'tool', replace: ['Drawn'] }),
      );
      const book = await saved();
      expect(sheetsWithPictures(book)).toEqual([savedSheet(book, 'Other').id]);
    });

    test('works out formulas through sheets that come later, and again when a cell changes', async () => {
      await begin('=First!A1+1');
      const chain = workbook([
        one('First', 0, 'Second!A1*2'),
        one('Second', 0, 'Third!A1+Notes!A1'),
        one('Third', 100),
      ]);
      valueOf(await host.write(chain, TOOL));
      await settle();
      const values = async (): Promise<unknown[]> => {
        const book = await saved();
        return [savedValue(book, 'First', 'A1'), savedValue(book, 'Notes', 'B1')];
      };
      expect(await values()).toEqual([210, 211]);
      await page().evaluate(() => {
        gridTest.grid.book().getSheetByName('Notes')!.getRange('A1').setValue(6);
      });
      await settle();
      expect(await values()).toEqual([212, 213]);
    });

    test('is not spoiled by a formula with a bracket too many, or too few', async () => {
      await begin('=A1+1');
      for (const wrong of ['=SUM(A1])', '=SUM([A1)', '=]]>']) {
        await page().evaluate((formula) => {
          gridTest.grid.book().getSheetByName('Notes')!.getRange('C1').setFormula(formula);
        }, wrong);
        await settle();
        const plan = workbook([one('Sums', 14, 'SUM(Notes!A1:B1)+3')]);
        valueOf(await host.write(plan, { owner: 'tool', replace: ['Sums'] }));
        await settle();
        expect([wrong, savedValue(await saved(), 'Sums', 'A1')]).toEqual([wrong, 14]);
      }
    });

    test('gives names that formulas can use, and points them elsewhere when it writes again', async () => {
      await begin('=SUM(rates)');
      const write = async (range: string, replace: readonly string[]): Promise<unknown> => {
        const sheet = {
          name: "Joe's rates",
          rows: [1, 2, 4].map((value) => ({ cells: [{ value }] })),
        };
        const names = [{ name: 'Rates', sheet: sheet.name, range }];
        valueOf(await host.write(workbook([sheet], { names }), { owner: 'tool', replace }));
        await settle();
        return savedValue(await saved(), 'Notes', 'B1');
      };
      expect(await write('A1:A3', [])).toBe(7);
      expect(await write('A2:A3', ["Joe's rates"])).toBe(6);
      expect(readGrid(await saved(), []).names).toEqual({ Rates: "'Joe''s rates'!$A$2:$A$3" });
      await page().evaluate(() => gridTest.grid.api.undo());
      await settle();
      expect(savedValue(await saved(), 'Notes', 'B1')).toBe(7);
    });

    test('gives way to a name of the person’s own, in formulas too', async () => {
      await begin();
      await page().evaluate(() => {
        gridTest.grid.book().insertDefinedName('Rates', 'Notes!$A$1');
      });
      const mine = workbook(
        [one('Sums', 3, 'SUM(Rates)'), { name: 'List', rows: [{ cells: [{ value: 3 }] }] }],
        { names: [{ name: 'Rates', sheet: 'List', range: 'A1' }] },
      );
      valueOf(await host.write(mine, TOOL));
      await settle();
      const book = await saved();
      expect(readGrid(book, []).names).toEqual({
        Rates: 'Notes!$A$1',
        Rates_2: "'List'!$A$1",
      });
      expect(savedCell(book, 'Sums', 'A1')).toMatchObject({ f: '=SUM(Rates_2)', v: 3 });
    });

    test.each(['before', 'after'] as const)(
      'writes all or nothing: where the grid fails %s any of its steps, all is as it was',
      async (when) => {
        await begin("='Two'!A1");
        const pictured = { drawings: [{ at: 'A1', drawing: TINY_DRAWING }] };
        const two = (value: number) =>
          workbook(
            [
              { ...one('One', value), ...pictured },
              { ...one('Two', value), ...pictured },
            ],
            { names: [{ name: 'Both', sheet: 'Two', range: 'A1' }] },
          );
        valueOf(await host.write(two(1), TOOL));
        await settle();
        const before = withoutBlankParts(await saved());
        const failures: string[] = [];
        for (let step = 1; failures.at(-1) !== ''; step++) {
          await page().evaluate(([at, number, steps]) => gridTest.breakAt(at, steps, number), [
            when,
            step,
            STEPS,
          ] as const);
          const written = await host.write(two(2), { owner: 'tool', replace: ['One', 'Two'] });
          failures.push(codesOf(written).join(' '));
          if (!written.ok) expect(withoutBlankParts(await saved())).toEqual(before);
        }
        await page().evaluate(() => gridTest.mend());
        // The name; of each sheet: it comes, its picture, the old one's picture goes, it goes.
        expect(failures).toEqual([...Array.from({ length: 9 }, () => 'host.refused'), '']);
        expect(savedValue(await saved(), 'Two', 'A1')).toBe(2);
      },
    );

    test('writes nothing into a workbook that was opened meanwhile in the place of its own', async () => {
      await begin();
      const other = JSON.stringify(inGrid([{ name: 'Other', rows: [] }]));
      const written = await page().evaluate(
        ([description, sheets]) =>
          gridTest.host.write(description, {
            owner: 'tool',
            replace: [],
            onProgress: () => gridTest.open(sheets),
          }),
        [workbook([one('A', 1), one('B', 2)]), other] as const,
      );
      expect(codesOf(written)).toEqual(['host.gone']);
      expect(sheetNames(await saved())).toEqual(['Other']);
    });

    test('tells how far it is, and lets the page breathe between sheets', async () => {
      await begin();
      const sheets = ['A', 'B', 'C'].map((name) => one(name, 1));
      const told = await page().evaluate(async (description) => {
        const events: string[] = [];
        const timer = setInterval(() => events.push('breath'), 0);
        await gridTest.host.write(description, {
          owner: 'tool',
          replace: [],
          onProgress: (done, of) => events.push(`${done}/${of}`),
        });
        clearInterval(timer);
        return events;
      }, workbook(sheets));
      expect(told.filter((event) => event !== 'breath')).toEqual(['1/4', '2/4', '3/4', '4/4']);
      const [first, second] = [told.indexOf('1/4'), told.indexOf('2/4')];
      expect(told.slice(first, second)).toContain('breath');
    });

    test('writes 5,000 rows within a second or two', async () => {
      await begin();
      const cells = Array.from({ length: 8 }, (_, column) => ({ value: `piece ${column}` }));
      const long = workbook([
        { name: 'Long', rows: Array.from({ length: 5_000 }, () => ({ cells })) },
      ]);
      const ms = await page().evaluate(
        async (text) => {
          const [description] = gridTest.unpack(text) as [
            Parameters<typeof gridTest.host.write>[0],
          ];
          const start = performance.now();
          await gridTest.host.write(description, { owner: 'tool', replace: [] });
          return performance.now() - start;
        },
        JSON.stringify([long]),
      );
      expect(savedValue(await saved(), 'Long', 'H5000')).toBe('piece 7');
      // Some 150 ms by itself; the machine may be busy with other tests.
      expect(ms).toBeLessThan(4_000);
    });

    test('takes sheets of any name, and any text', async () => {
      await begin();
      const names = ["O'Brien & <den>", '=1+1', '🏠 Stube', 'غرفة', '2nd', 'x'.repeat(31)];
      const texts = [...HOSTILE_TEXTS, 'x'.repeat(300)];
      const sheets = names.map((name, index) => ({
        name,
        rows: [
          ...texts.map((value) => ({ cells: [{ value }] })),
          {
            cells: [
              {
                value: texts[0]!,
                formula: `'${names[(index + 1) % names.length]!.replaceAll("'", "''")}'!A1`,
              },
            ],
          },
        ],
      }));
      valueOf(await host.write(workbook(sheets), TOOL));
      await settle();
      const book = await saved();
      expect(sheetNames(book).slice(1)).toEqual(names);
      for (const name of names) {
        const held = texts.map((_, row) => savedValue(book, name, `A${row + 1}`));
        expect([name, held]).toEqual([name, texts]);
        expect([name, savedValue(book, name, `A${texts.length + 1}`)]).toEqual([name, texts[0]]);
      }
    });
  });
}
