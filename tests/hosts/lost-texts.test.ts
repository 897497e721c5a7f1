/** Workbooks that a reader could take for sound: shared texts that aren't there, styles to a sheet's end. */
import { describe, expect, test } from '@jest/globals';

import { openFileHost } from '../../src/hosts/xlsx/open-file-host.ts';
import { readFileWorkbook } from '../../src/hosts/xlsx/read-file-workbook.ts';
import { readWorkbook } from '../../src/hosts/xlsx/read-workbook.ts';
import { headingsAt } from '../../src/hosts/tables/raw-rows.ts';
import { codesOf, valueOf } from './excel-workbooks.ts';
import { makeXlsx, row, stylesXml } from './make-xlsx.ts';

const withCell = (cell: string, sharedStrings = '<si><t>square</t></si><si><t>cope</t></si>') =>
  makeXlsx({
    sheets: [['Runs', `${row(1, 'Room', 'Left end')}<row r="2">${cell}</row>`]],
    sharedStrings,
  });

describe('A cell that names a shared text', () => {
  test.each([
    ['one beyond the last', '<c r="B2" t="s"><v>2</v></c>'],
    ['one far beyond', '<c t="s" r="B2" s="1"><v>99999999999</v></c>'],
    ['one below the first', '<c r="B2" t="s"><v>-1</v></c>'],
    ['no number', '<c r="B2" t="s"><v>cope</v></c>'],
    ['half a number', '<c r="B2" t="s"><v>0.5</v></c>'],
    ['nothing', '<c r="B2" t="s"><v></v></c>'],
    ['nothing at all', '<c r="B2" t=\'s\'><v/></c>'],
    ['in another spelling', '<x:c r="B2" t = "s">\n<x:v xml:space="preserve"> 7 </x:v></x:c>'],
  ])('%s, is refused, never read as blank', async (_, cell) => {
    const bytes = withCell(cell);
    for (const outcome of [
      await readWorkbook(bytes, 'job.xlsx', ['Runs']),
      await openFileHost({ name: 'job.xlsx', bytes }),
      await readFileWorkbook(bytes, 'job.xlsx'),
    ]) {
      expect(codesOf(outcome)).toEqual(['file.lost-text']);
      expect(!outcome.ok && outcome.faults[0]?.message).toContain('B2 of a sheet names a text');
    }
  });

  test('is read where it is there', async () => {
    const bytes = withCell('<c r="A2" t="s"><v>0</v></c><c r="B2" t="s"><v> 1 </v></c>');
    const [table] = valueOf(await readWorkbook(bytes, 'job.xlsx', ['Runs']));
    expect(table?.rows[0]?.cells).toEqual(['square', 'cope']);
  });

  test('is looked for in the same time a character, whatever the sheet is', async () => {
    const begin = performance.now();
    for (const part of ['<c ', '<c t="s">', '<c t="s"><v>', '<c t="s" ', ' ']) {
      await readWorkbook(withCell(part.repeat(200_000)), 'job.xlsx', ['Runs']);
    }
    expect(performance.now() - begin).toBeLessThan(10_000);
  });
});

test('formats to a sheet’s end take neither memory nor a value', async () => {
  const styled = Array.from(
    { length: 60_000 },
    (_, at) => `<row r="${at + 3}"><c r="A${at + 3}" s="4"/><c r="B${at + 3}" s="4"/></row>`,
  );
  const held = '<row r="2"><c r="A2" s="4"><v>0.15</v></c></row>';
  const bytes = makeXlsx({
    sheets: [['Runs', row(1, 'Room', 'Length') + held + styled.join('')]],
    parts: { 'xl/styles.xml': stylesXml(['0%']) },
  });
  const [table] = valueOf(await readWorkbook(bytes, 'job.xlsx', ['Runs']));
  expect(table?.rows).toEqual([
    { line: 2, cells: [{ kind: 'shown', value: 15, text: '15%', unit: { kind: 'percent' } }] },
  ]);
});

describe('The row of the headings', () => {
  const at = (...rows: readonly (readonly (string | number | null)[])[]): number =>
    headingsAt(rows.map((cells, index) => ({ line: index + 1, cells })));

  test('is the first with two texts', () => {
    expect(at(['Trim of the house'], ['Where', 'How long'], ['Hall', 'Base'])).toBe(1);
    expect(at(['Room', 'Length'], ['Length', 'Room'])).toBe(0);
    expect(at([1, 2], [3, 4])).toBe(0);
  });

  test('stands below a title of several texts, where it has headings of ours and that has none', () => {
    expect(at(['Elm Street library', 'as of May'], ['Room', 'Profile', 'Length'])).toBe(1);
    expect(at(['Library', 'page 1'], ['by', 'the shop'], ['Molding', 'Qty', 'Len'])).toBe(2);
    // A person's own headings, with a word of ours among the rows.
    expect(at(['Where', 'What', 'How long'], ['Length', 'Base', 96])).toBe(0);
  });
});
