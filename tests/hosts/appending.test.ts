/** Rows that are added to a person's tables, and which rows are a table's. */
import { describe, expect, test } from '@jest/globals';

import { tableRows } from '../../src/hosts/tables/table-rows.ts';
import { testAppending } from './appending-suite.ts';
import { codesOf, hostOf, valueOf } from './excel-workbooks.ts';
import { inExcel } from './persons-sheets.ts';

testAppending({
  name: 'Excel',
  open: (sheets) => Promise.resolve(hostOf(inExcel(sheets))),
  makesRoom: true,
});

describe('The rows of a table', () => {
  const rows = ['Room', 'Hall', 'All', 'Loft', 'Attic'].map((text, index) => ({
    line: index + 1,
    cells: [text],
  }));
  const linesOf = (hasTotals: boolean, bottom: number) => {
    const range = { top: 0, left: 0, bottom, right: 0 };
    const { rows: found, below } = tableRows(rows, { range, hasTotals });
    return [found.map(({ line }) => line), below];
  };

  test('are those in it and right below it, also below its own totals, which are none', () => {
    expect(linesOf(false, 1)).toEqual([[1, 2, 3, 4, 5], { line: 3, count: 3 }]);
    expect(linesOf(true, 1)).toEqual([[1, 2, 4, 5], { line: 4, count: 2 }]);
    expect(linesOf(true, 3)).toEqual([[1, 2, 3, 4], undefined]);
  });
});

describe('Adding rows in Excel', () => {
  const open = () => {
    const rows = [
      ['Profile', 'Make', 'Price'],
      ['Base', 'buy', 3],
      ['All of them', null, 3],
      [],
      ['beside the table'],
    ];
    const fake = inExcel([{ name: 'Profiles', rows, tables: [{ name: 'T', range: 'A1:C3' }] }]);
    fake.workbook.tables[0]!.showTotals = true;
    return { fake, host: hostOf(fake), sheet: fake.workbook.sheets[0]! };
  };

  test('moves the totals of the table down, and looks like the row above', async () => {
    const { host, sheet } = open();
    sheet.make(1, 0).look.format = '@';
    const [place] = valueOf(await host.survey()).places;
    const rows = [["'tis", '1/2'], ['=1+1']];
    expect(valueOf(await host.appendRows(place!, rows))).toEqual({ line: 3 });
    const held = [1, 2, 3, 4].map((row) =>
      [0, 1].map((column) => sheet.at(row, column)?.value ?? null),
    );
    expect(held).toEqual([
      ['Base', 'buy'],
      ["'tis", '1/2'],
      ['=1+1', null],
      ['All of them', null],
    ]);
    expect([2, 3].map((row) => sheet.at(row, 0)?.look.format)).toEqual(['@', '@']);
    expect(sheet.at(6, 0)?.value).toBe('beside the table');
    expect(valueOf(await host.readTable(place!, 'Profiles')).rows).toHaveLength(3);
  });

  test('leaves a protected sheet as it is, and says so', async () => {
    const { host, sheet } = open();
    sheet.isProtected = true;
    const [place] = valueOf(await host.survey()).places;
    expect(codesOf(await host.appendRows(place!, [['Crown']]))).toEqual(['host.sheet-protected']);
    expect(sheet.at(2, 0)?.value).toBe('All of them');
  });
});
