import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import { parseRange, rangesOverlap } from '../../../src/core/cells/cell-range.ts';
import { checkDescription } from '../../../src/sheets/grammar/check/check-description.ts';
import {
  cleanDescription,
  cleanText,
  clipText,
} from '../../../src/sheets/grammar/check/clean-text.ts';
import type {
  SheetDescription,
  WorkbookDescription,
} from '../../../src/sheets/grammar/description.ts';
import { richWorkbook, workbook } from '../../hosts/sample-workbook.ts';

function wrongWith(sheet: Partial<SheetDescription>): readonly string[] {
  return checkDescription(workbook([{ name: 'S', ...sheet }]));
}

/** A sheet whose A1:C3 is a sound table. */
const TABLE_ROWS = [
  { cells: ['Room', 'Length', 'Note'].map((value) => ({ value })) },
  { cells: [{ value: 'Hall' }, { value: 96 }] },
  { cells: [] },
];
const withTable = (range: string, name = 'T') => ({ rows: TABLE_ROWS, tables: [{ name, range }] });
const said = { strict: true, title: '', message: '' };

describe('A description of sheets', () => {
  test('is sound when it holds everything that it may', () => {
    expect(checkDescription(richWorkbook())).toEqual([]);
  });

  // Limits: Microsoft, "Excel specifications and limits", and its rules for naming a worksheet.
  test.each([
    ['', 1],
    [' ', 1],
    ['a/b', 1],
    ['a\\b', 1],
    ['a?', 1],
    ['a*', 1],
    ['[a]', 1],
    ['a:b', 1],
    ["'a", 1],
    ["a'", 1],
    ['History', 1],
    ['x'.repeat(32), 1],
    ['x'.repeat(31), 0],
    ["Joe's & Ann's (2)", 0],
  ])('takes %j as the name of a sheet with %d complaints', (name, complaints) => {
    expect(checkDescription(workbook([{ name }]))).toHaveLength(complaints);
  });

  test('has at least one sheet, and no two of a name, whatever the case', () => {
    expect(checkDescription(workbook([]))).toHaveLength(1);
    expect(checkDescription(workbook([{ name: 'Runs' }, { name: 'RUNS' }]))).toHaveLength(1);
  });

  test.each([NaN, Infinity, -Infinity])('refuses the number %d, and says where', (value) => {
    const wrong = wrongWith({ rows: [{ cells: [] }, { cells: [null, { value }] }] });
    expect(wrong).toEqual([expect.stringContaining('B2')]);
  });

  test('holds 32,767 characters in a cell, and no more', () => {
    const cell = (length: number) => ({ rows: [{ cells: [{ value: 'x'.repeat(length) }] }] });
    expect(wrongWith(cell(32_767))).toEqual([]);
    expect(wrongWith(cell(32_768))).toHaveLength(1);
  });

  test.each([
    ['=A1', 1],
    [' =A1', 1],
    ['', 1],
    ['1+'.repeat(4096), 0],
    [`${'1+'.repeat(4096)}1`, 1],
    ['SUM(A1:A9)', 0],
  ])('takes the formula %.20j with %d complaints', (formula, complaints) => {
    expect(wrongWith({ rows: [{ cells: [{ value: 1, formula }] }] })).toHaveLength(complaints);
  });

  test('has a calculated value with every formula', () => {
    expect(wrongWith({ rows: [{ cells: [{ value: null, formula: 'A2' }] }] })).toHaveLength(1);
  });

  test.each([
    ['A1:C3', 0],
    ['A1:B2', 0],
    ['A1:C1', 1], // headings alone
    ['A1:D3', 1], // D1 has no heading
    ['A2:A3', 0],
    ['B2:B3', 1], // a number as heading
    ['A1:C4', 1], // past the last row
    ['C3:A1', 1],
    ['A0:C3', 1],
    ['Sheet!A1:C3', 1],
  ])('takes the table %s with %d complaints', (range, complaints) => {
    expect(wrongWith(withTable(range))).toHaveLength(complaints);
  });

  test('has no heading twice in a table, whatever the case, and none with a line end', () => {
    const table = (...headings: string[]) => ({
      rows: [{ cells: headings.map((value) => ({ value })) }, { cells: [] }],
      tables: [{ name: 'T', range: 'A1:B2' }],
    });
    expect(wrongWith(table('Room', 'ROOM'))).toHaveLength(1);
    expect(wrongWith(table('Room', 'Two\nlines'))).toHaveLength(1);
    expect(wrongWith(table('Room', '  '))).toHaveLength(1);
    expect(wrongWith(table('Room', 'Rooms'))).toEqual([]);
  });

  test.each([
    ['Runs', 0],
    ['_x', 0],
    ['Größe_2.b', 0],
    ['A1', 1],
    ['xfd99', 1],
    ['R1C1', 1],
    ['c', 1],
    ['2nd', 1],
    ['two words', 1],
    ['a-b', 1],
    ['', 1],
    ['n'.repeat(256), 1],
  ])('takes %.12j as the name of a table with %d complaints', (name, complaints) => {
    expect(wrongWith(withTable('A1:C3', name))).toHaveLength(complaints);
  });

  test('has no name twice among tables and ranges, and points to sheets that are there', () => {
    const sheets = [
      { name: 'One', ...withTable('A1:C3', 'Runs') },
      { name: 'Two', ...withTable('A1:C3', 'RUNS') },
    ];
    const names = [
      { name: 'runs', sheet: 'One', range: 'A1' },
      { name: 'Lost', sheet: 'Three', range: 'A1:A0' },
    ];
    expect(checkDescription(workbook(sheets))).toHaveLength(1);
    expect(checkDescription(workbook(sheets, { names }))).toHaveLength(4);
  });

  test('has no overlapping merges, none over a table and none that hides anything', () => {
    expect(wrongWith({ merges: ['A1:B2', 'C1:D2', 'A3:D3'] })).toEqual([]);
    expect(wrongWith({ merges: ['A1:B2', 'B2:C3'] })).toEqual([
      expect.stringContaining('A1:B2 overlaps B2:C3'),
    ]);
    expect(wrongWith({ merges: ['A1'] })).toHaveLength(1);
    expect(wrongWith({ ...withTable('A1:C3'), merges: ['C3:D3'] })).toHaveLength(1);
    expect(wrongWith({ rows: TABLE_ROWS, merges: ['A1:B1'] })).toEqual([
      expect.stringContaining('B1'),
    ]);
  });

  test.each([
    ['A1:XFD1048576', 0],
    ['XFE1', 1],
    ['A1048577', 1],
    ['a1', 1],
    ['$A$1', 1],
    ['A1:', 1],
  ])('takes the range %s with %d complaints', (range, complaints) => {
    const highlights = [{ range, formula: 'TRUE', style: 'caution' as const }];
    expect(wrongWith({ highlights })).toHaveLength(complaints);
  });

  test('has validations that a spreadsheet can hold', () => {
    const list = (...values: string[]) => ({
      validations: [{ range: 'A1', allow: { kind: 'list' as const, values }, ...said }],
    });
    expect(wrongWith(list('yes', 'no'))).toEqual([]);
    expect(wrongWith(list())).toHaveLength(1);
    expect(wrongWith(list('yes, please'))).toHaveLength(1);
    expect(wrongWith(list(' yes'))).toHaveLength(1);
    expect(wrongWith(list('x'.repeat(100), 'y'.repeat(100), 'z'.repeat(53)))).toEqual([]);
    expect(wrongWith(list('x'.repeat(100), 'y'.repeat(100), 'z'.repeat(54)))).toHaveLength(1);
    const whole = (least: number, most: number) => ({
      validations: [{ range: 'A1', allow: { kind: 'whole' as const, least, most }, ...said }],
    });
    expect(wrongWith(whole(2, 1))).toHaveLength(1);
    expect(wrongWith(whole(0.5, 1))).toHaveLength(1);
    const twice = ['A1:A9', 'A9'].map((range) => ({
      range,
      allow: { kind: 'list from' as const, formula: '$B$1:$B$9' },
      ...said,
    }));
    expect(wrongWith({ validations: twice })).toHaveLength(1);
  });

  test('has columns, rows, panes and pages of sizes there are', () => {
    expect(wrongWith({ columns: [{ width: 0 }, { width: 256 }, { width: NaN }] })).toHaveLength(3);
    expect(wrongWith({ rows: [{ cells: [], height: 410 }] })).toHaveLength(1);
    expect(wrongWith({ freeze: { rows: 1.5, columns: 0 } })).toHaveLength(1);
    const print = workbook([{ name: 'S' }]).sheets[0]!.print;
    expect(wrongWith({ print: { ...print, titleRows: [3, 1] } })).toHaveLength(1);
    expect(wrongWith({ print: { ...print, breaksAfter: [5, 5, 0] } })).toHaveLength(2);
    expect(wrongWith({ print: { ...print, header: 'x'.repeat(235) } })).toEqual([]);
    expect(wrongWith({ print: { ...print, footer: '&'.repeat(118) } })).toHaveLength(1);
  });

  test('knows its styles by name', () => {
    const description = JSON.parse(
      JSON.stringify(workbook([{ name: 'S', rows: [{ cells: [{ value: 1, style: 'text' }] }] }])),
    ) as WorkbookDescription;
    expect(checkDescription(description)).toEqual([]);
    const stranger = JSON.parse(
      JSON.stringify(description).replace('"text"', '"toString"'),
    ) as WorkbookDescription;
    expect(checkDescription(stranger)).toHaveLength(1);
  });
});

describe('Cleaning text', () => {
  test('leaves a description that says nothing of control characters any more', () => {
    const title = 'a\u0000b\u001fc\ud800d\uffff';
    const bad = workbook([{ name: 'S', rows: [{ cells: [{ value: title }] }] }], { title });
    expect(checkDescription(bad)).toHaveLength(2);
    expect(checkDescription(cleanDescription(bad))).toEqual([]);
    expect(cleanDescription(bad).title).toBe('a\ufffdb\ufffdc\ufffdd\ufffd');
  });

  test('changes nothing that is clean, and twice no more than once', () => {
    expect(cleanDescription(richWorkbook())).toEqual(richWorkbook());
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(cleanText(cleanText(text))).toBe(cleanText(text));
        expect(cleanText(text)).not.toMatch(/\p{Surrogate}/u);
      }),
      { numRuns: 200 },
    );
  });

  test('clips without splitting a pair', () => {
    expect(clipText('abcdef', 6)).toBe('abcdef');
    expect(clipText('abcdefg', 6)).toBe('abcde…');
    expect(clipText('abcd🪚ef', 6)).toBe('abcd…');
  });
});

describe('Ranges', () => {
  test('overlap where they share a cell, by the plain count of cells', () => {
    const at = fc.integer({ min: 0, max: 5 });
    const range = fc.tuple(at, at, at, at).map(([a, b, c, d]) => ({
      top: Math.min(a, b),
      bottom: Math.max(a, b),
      left: Math.min(c, d),
      right: Math.max(c, d),
    }));
    const cells = ({ top, left, bottom, right }: ReturnType<typeof parseRange> & object) => {
      const all = new Set<string>();
      for (let r = top; r <= bottom; r++) for (let c = left; c <= right; c++) all.add(`${r},${c}`);
      return all;
    };
    fc.assert(
      fc.property(range, range, (one, other) => {
        const others = cells(other);
        expect(rangesOverlap(one, other)).toBe([...cells(one)].some((cell) => others.has(cell)));
      }),
    );
  });

  test('read as people write them', () => {
    expect(parseRange('B3')).toEqual({ top: 2, left: 1, bottom: 2, right: 1 });
    expect(parseRange('Z1:AA10')).toEqual({ top: 0, left: 25, bottom: 9, right: 26 });
    expect(parseRange('XFD1048576')).toMatchObject({ right: 16_383, bottom: 1_048_575 });
  });
});
