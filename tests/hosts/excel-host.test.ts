import { describe, expect, test } from '@jest/globals';

import type { Drawing } from '../../src/drawings/drawing.ts';
import { openExcelHost } from '../../src/hosts/excel/open-excel-host.ts';
import { FakeExcel } from './excel-fake/fake-excel.ts';
import { testHost } from './host-suite.ts';
import { hostOf, TINY_PNG, valueOf, writtenSheets } from './excel-workbooks.ts';
import { PLAIN_PRINT, richWorkbook, workbook } from './sample-workbook.ts';

testHost({
  name: 'Excel',
  differs: {
    title: "the workbook is the person's own, and so is its title",
    values: 'Excel calculates them itself',
  },
  async write(description) {
    const fake = new FakeExcel();
    fake.addSheet('Notes', [["the person's own"]]);
    const written = await hostOf(fake).write(description, { owner: 'tool', replace: [] });
    return { fake, names: valueOf(written).sheets };
  },
  readBack: ({ fake, names }) => Promise.resolve(writtenSheets(fake, names)),
});

describe('The Excel host', () => {
  test('writes behind the sheets of the person, in order, and shows the first', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    fake.addSheet('More notes');
    valueOf(await hostOf(fake).write(richWorkbook(), { owner: 'tool', replace: [] }));
    const rich = richWorkbook().sheets.map(({ name }) => name);
    expect(fake.sheetNames).toEqual(['Notes', 'More notes', ...rich]);
    expect(fake.workbook.active?.name).toBe(rich[0]);
    expect(fake.workbook.screenSuspended).toBe(1);
  });

  test('gives formulas, lists and names between sheets their final names', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    valueOf(await hostOf(fake).write(richWorkbook(), { owner: 'tool', replace: [] }));
    const view = writtenSheets(fake, ["Set-ups & the shop's cuts", 'Lists']);
    const [cuts, lists] = view.sheets;
    expect(lists?.cells['B6']?.formula).toBe("'Set-ups & the shop''s cuts'!E64/12");
    expect(lists?.cells['B7']?.formula).toBe('IF(SUM(Cuts[Quantity])>100,"long","short")');
    expect(cuts?.validations[0]?.allowed).toEqual(['RoomList']);
    expect(view.names).toEqual({ RoomList: "'Lists'!$A$2:$A$4" });
    expect(cuts?.tables.map(({ name }) => name)).toEqual(['Cuts']);
  });

  test('leaves no mark that the person sees, and no unfinished sheet', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    valueOf(await hostOf(fake).write(workbook([{ name: 'A' }]), { owner: 'tool', replace: [] }));
    valueOf(await hostOf(fake).write(workbook([{ name: 'B' }]), { owner: 'person', replace: [] }));
    const [, made, input] = fake.workbook.sheets;
    expect(made?.names.map(({ name, visible }) => [name, visible])).toEqual([
      ['Coveledger_sheet', false],
    ]);
    expect(input?.names).toEqual([]);
  });

  test('splits what is too large for one request, and never syncs cell by cell', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    const text = 'é'.repeat(300);
    const rows = Array.from({ length: 2_000 }, () => ({
      cells: Array.from({ length: 8 }, () => ({ value: text })),
    }));
    const told: (readonly number[])[] = [];
    const written = await hostOf(fake).write(workbook([{ name: 'Long', rows }]), {
      owner: 'tool',
      replace: [],
      onProgress: (done, of) => told.push([done, of]),
    });
    valueOf(written);
    // 2,000 × 8 × 300 letters of two bytes are 9.6 MB: two requests at least, with room a handful.
    expect(fake.syncs).toBeGreaterThan(5);
    expect(fake.syncs).toBeLessThan(16);
    expect(told.at(-1)).toEqual([2, 2]);
    expect(told.map(([done = 0]) => done)).toEqual(
      told.map(([done = 0]) => done).toSorted((a, b) => a - b),
    );
  });

  test('keeps a text of 32,767 characters, whatever it begins with', async () => {
    const values = ['=', '1', 'a'].map((first) => first + 'x'.repeat(32_766));
    const rows = values.map((value) => ({ cells: [{ value, style: 'wrapped' as const }] }));
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    valueOf(
      await hostOf(fake).write(workbook([{ name: 'T', rows }]), { owner: 'tool', replace: [] }),
    );
    const { cells } = writtenSheets(fake, ['T']).sheets[0]!;
    expect(['A1', 'A2', 'A3'].map((at) => cells[at]?.value)).toEqual(values);
    expect(cells['A1']?.look.format).toBe('General');
  });

  const drawing: Drawing = {
    title: 'Cove',
    alt: 'A cove 3 in wide and 1/2 in deep.',
    width: 127,
    height: 50.8,
    shapes: [],
  };
  test.each([9, 13])(
    'puts drawings where they belong, at their size (ExcelApi 1.%d)',
    async (minor) => {
      const fake = new FakeExcel();
      fake.minor = minor;
      fake.addSheet('Notes');
      const rows = [{ cells: [], height: 30 }, { cells: [], height: 18 }, { cells: [] }];
      const sheet = {
        name: 'Drawn',
        columns: [{ width: 10 }, { width: 20 }],
        rows,
        drawings: [{ at: 'B3', drawing }],
        print: PLAIN_PRINT,
      };
      valueOf(await hostOf(fake).write(workbook([sheet]), { owner: 'tool', replace: [] }));
      expect(fake.workbook.sheets[1]?.shapes).toEqual([
        {
          image: TINY_PNG,
          name: 'Cove 1',
          altTextTitle: 'Cove',
          altTextDescription: drawing.alt,
          lockAspectRatio: false,
          // 127 and 50.8 mm are 5 and 2 inches of 72 points.
          width: expect.closeTo(360, 9),
          height: expect.closeTo(144, 9),
          // A column of 10 characters is 10 × 7 + 5 pixels wide, of 3/4 point each.
          left: 56.25,
          top: 48,
          // Since the version that also tells where cells lie, it can be kept from being stretched.
          placement: minor < 10 ? 'TwoCell' : 'OneCell',
        },
      ]);
    },
  );

  test('sets the margins of the written file', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    valueOf(await hostOf(fake).write(workbook([{ name: 'P' }]), { owner: 'tool', replace: [] }));
    // Inches in points: half of one at the sides, 0.3 for header and footer.
    expect(fake.workbook.sheets[1]?.page.values).toMatchObject({
      leftMargin: 0.5 * 72,
      rightMargin: 0.5 * 72,
      topMargin: 0.55 * 72,
      bottomMargin: 0.65 * 72,
      headerMargin: 0.3 * 72,
      footerMargin: 0.3 * 72,
    });
    const print = { ...PLAIN_PRINT, start: { left: 0.25, top: 0.375 } };
    valueOf(
      await hostOf(fake).write(workbook([{ name: 'L', print }]), { owner: 'tool', replace: [] }),
    );
    expect(fake.workbook.sheets.at(-1)?.page.values).toMatchObject({
      leftMargin: 18,
      topMargin: 27,
      rightMargin: 0,
      bottomMargin: 0,
    });
  });

  test('shows a cell, and says so when its sheet is gone', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    fake.addSheet('Runs');
    const host = hostOf(fake);
    valueOf(await host.show({ sheet: 'Runs', cell: 'C7' }));
    expect([fake.workbook.active?.name, fake.workbook.activeCell]).toEqual([
      'Runs',
      { row: 6, column: 2 },
    ]);
    expect(await host.show({ sheet: 'Stock', cell: 'A1' })).toMatchObject({
      ok: false,
      faults: [{ code: 'host.gone', given: 'Stock' }],
    });
  });

  test('puts a formula into the selected cell, where it is blank', async () => {
    const fake = new FakeExcel();
    const sheet = fake.addSheet('Notes', [
      ['full', { formula: '=IF(TRUE,"","x")', value: '' }, null],
    ]);
    sheet.make(0, 3).look.format = '@';
    const host = hostOf(fake);
    for (const cell of ['A1', 'B1']) {
      fake.select(sheet, cell);
      expect(await host.putFormula('=COVE.TILT(3,1,0)')).toMatchObject({
        faults: [{ code: 'host.cell-not-blank', given: `Notes!${cell}` }],
      });
    }
    for (const cell of ['C1', 'D1']) {
      fake.select(sheet, cell);
      expect(valueOf(await host.putFormula('=COVE.TILT(3,1,0)'))).toEqual({ sheet: 'Notes', cell });
      expect(fake.view().sheets[0]?.cells[cell]?.formula).toBe('COVE.TILT(3,1,0)');
    }
    sheet.isProtected = true;
    fake.select(sheet, 'A9');
    expect(await host.putFormula('=1')).toMatchObject({
      faults: [{ code: 'host.sheet-protected' }],
    });
  });

  test('tells the separator of arguments by the decimal sign, and else says a comma', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    const host = hostOf(fake);
    expect(await host.listSeparator()).toBe(',');
    fake.workbook.decimalSeparator = ',';
    expect(await host.listSeparator()).toBe(';');
    fake.minor = 10;
    expect(await host.listSeparator()).toBe(',');
  });

  test('keeps notes with the workbook', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    const recalled = async (): Promise<unknown> => valueOf(await hostOf(fake).recall(['a', 'b']));
    const kept = (): string[] => fake.workbook.properties.map(({ key }) => key);
    expect(await recalled()).toEqual({});
    const long = 'Left corner '.repeat(60);
    valueOf(await hostOf(fake).remember({ a: long, b: 'c' }));
    expect(await recalled()).toEqual({ a: long, b: 'c' });
    expect(kept()).toEqual(['a', 'a (2)', 'a (3)', 'b']);
    valueOf(await hostOf(fake).remember({ a: 'short' }));
    expect(await recalled()).toEqual({ a: 'short', b: 'c' });
    expect(kept()).toEqual(['a', 'b']);
    valueOf(await hostOf(fake).remember({ a: undefined }));
    expect(await recalled()).toEqual({ b: 'c' });
    expect(kept()).toEqual(['b']);
  });

  test('recalls the notes that an earlier version kept, until they are kept anew', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    fake.workbook.settings.set('Coveledger.columns', '{"a":1}');
    fake.workbook.settings.set('Coveledger.planned', 7);
    const keys = ['columns', 'planned'];
    expect(valueOf(await hostOf(fake).recall(keys))).toEqual({ columns: '{"a":1}' });
    valueOf(await hostOf(fake).remember({ columns: undefined }));
    expect(valueOf(await hostOf(fake).recall(keys))).toEqual({});
    expect([...fake.workbook.settings.keys()]).toEqual(['Coveledger.planned']);
  });

  test("tells of changes on the person's sheets alone, until it is ended", async () => {
    const fake = new FakeExcel();
    const notes = fake.addSheet('Notes');
    const host = hostOf(fake);
    const told: string[] = [];
    const end = host.watch((sheet) => told.push(sheet));
    valueOf(
      await host.write(workbook([{ name: 'Made', rows: [{ cells: [{ value: 1 }] }] }]), {
        owner: 'tool',
        replace: [],
      }),
    );
    await fake.types(notes, 'A1', 'oak');
    await fake.types(fake.workbook.sheets[1]!, 'A1', 'scribble');
    expect(told).toEqual(['Notes']);
    end();
    await new Promise((resolve) => setTimeout(resolve, 5));
    await fake.types(notes, 'A2', 'ash');
    expect(told).toEqual(['Notes']);
  });

  test('tells of the row that the person goes to, until it is ended', async () => {
    const fake = new FakeExcel();
    const [notes] = [fake.addSheet('Notes'), fake.addSheet('Other')];
    const told: string[] = [];
    const end = hostOf(fake).watchRow(({ sheet, line }) => told.push(`${sheet} ${line}`));
    await new Promise((resolve) => setTimeout(resolve, 5));
    await fake.goesTo(notes, 'B7');
    await fake.goesTo(notes, 'A2:C9');
    expect(told).toEqual(['Notes 7', 'Notes 2']);
    end();
    await new Promise((resolve) => setTimeout(resolve, 5));
    await fake.goesTo(notes, 'A4');
    expect(told).toHaveLength(2);
  });

  test('tells what it can do', () => {
    const host = openExcelHost({
      ...new FakeExcel().program,
      paint: () => Promise.reject(new Error()),
    });
    expect([host.kind, host.can]).toEqual([
      'excel',
      {
        showCells: true,
        putFormulas: true,
        appendRows: true,
        writeInPlace: true,
        undoWrites: false,
      },
    ]);
  });
});
