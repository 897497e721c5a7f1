/** One suite for every host that reads: what a person's workbook holds is found and read alike. */
import { describe, expect, test } from '@jest/globals';

import type { TablePlace, WorkbookHost } from '../../src/hosts/host.ts';
import { recognizeTables } from '../../src/planning/input/recognize-tables.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { shownCell } from '../../src/hosts/tables/shown-number.ts';
import { SHOWN_CELLS } from '../planning/shown-cell-cases.ts';
import { codesOf, valueOf } from './excel-workbooks.ts';
import type { PersonsSheet } from './persons-sheets.ts';

export interface ReadingHost {
  readonly name: string;
  readonly open: (sheets: readonly PersonsSheet[]) => Promise<WorkbookHost>;
  /** Its tables grow with what is typed right below them: nothing needs to be said of it. */
  readonly growsTables?: boolean;
}

const RUNS = ['Room', 'Profile', 'Length'];

export function testReading({ name, open, growsTables = false }: ReadingHost): void {
  const placesOf = async (host: WorkbookHost): Promise<readonly TablePlace[]> =>
    valueOf(await host.survey()).places;
  const read = async (sheets: readonly PersonsSheet[], which = 0): Promise<RawTable> => {
    const host = await open(sheets);
    return valueOf(await host.readTable((await placesOf(host))[which]!, 'Runs'));
  };

  describe(`Reading through the ${name} host`, () => {
    test('offers tables proper first, then the cells of sheets without any', async () => {
      const host = await open([
        { name: 'How to', rows: [['Fill in the lists'], [null, null, null]] },
        {
          name: 'Trim',
          rows: [
            ['Trim of the Maple house'],
            [],
            [null, ...RUNS, null, 'For', 'Kind'],
            [null, 'Hall', 'Base', 96, null, 'Base', 'stick'],
            [null, 'Hall', 'Crown', 80, null, null, null],
            [null, null, null, null, null, 'Poplar', 'board'],
          ],
          tables: [
            { name: 'Lengths', range: 'B3:D6' },
            { name: 'Rack', range: 'F3:G6' },
          ],
        },
        { name: 'Empty', rows: [] },
        { name: 'Profiles', rows: [['List of profiles'], ['Profile', 'Make'], ['Base', 'buy']] },
      ]);
      const survey = valueOf(await host.survey());
      expect(survey.sheets).toEqual(
        ['How to', 'Trim', 'Empty', 'Profiles'].map((sheet) => ({
          name: sheet,
          ours: false,
          pointedAtBy: [],
        })),
      );
      expect(survey.places.map(({ key, ...place }) => [typeof key, place])).toEqual([
        [
          'string',
          { sheet: 'Trim', table: 'Lengths', line: 3, headings: [null, ...RUNS], rowCount: 2 },
        ],
        [
          'string',
          {
            sheet: 'Trim',
            table: 'Rack',
            line: 3,
            headings: [null, null, null, null, null, 'For', 'Kind'],
            rowCount: 2,
          },
        ],
        ['string', { sheet: 'How to', line: 1, headings: ['Fill in the lists'], rowCount: 0 }],
        ['string', { sheet: 'Profiles', line: 2, headings: ['Profile', 'Make'], rowCount: 1 }],
      ]);
      expect(new Set(survey.places.map(({ key }) => key)).size).toBe(4);
    });

    test('reads a table with each row where it stands', async () => {
      const rows = [
        ['Trim of the Maple house'],
        [],
        [null, ...RUNS, 'beside it'],
        [null, 'Hall', 'Base', 96, 'a remark'],
        [null, null, null, null, 'another'],
        [null, 'Loft', null, '7\' 4 3/8"'],
      ];
      expect(await read([{ name: 'Trim', rows, tables: [{ name: 'T', range: 'B3:D6' }] }])).toEqual(
        {
          name: 'Runs',
          source: { kind: 'sheet', name: 'Trim' },
          headings: { line: 3, cells: [null, ...RUNS] },
          rows: [
            { line: 4, cells: [null, 'Hall', 'Base', 96] },
            { line: 6, cells: [null, 'Loft', null, '7\' 4 3/8"'] },
          ],
        },
      );
      expect((await read([{ name: 'Trim', rows }])).rows.map(({ line }) => line)).toEqual([
        4, 5, 6,
      ]);
    });

    test('gives each cell as what it is: also errors, dates and formulas that give ""', async () => {
      const cells = [
        'oak',
        96.5,
        true,
        { error: '#N/A' },
        { error: '#DIV/0!' },
        { date: 45_352 },
        { formula: '=IF(TRUE,"","x")', value: '' },
        { formula: '="a"&"b"', value: 'ab' },
        { formula: '=1+1', value: 2 },
        '#N/A',
        ' ',
        null,
        '3/4',
      ];
      const table = await read([{ name: 'Runs', rows: [RUNS, cells] }]);
      expect(table.rows).toEqual([
        {
          line: 2,
          cells: [
            'oak',
            96.5,
            true,
            { kind: 'error', text: '#N/A' },
            { kind: 'error', text: '#DIV/0!' },
            { kind: 'date', day: '2024-03-01' },
            null,
            'ab',
            2,
            '#N/A',
            ' ',
            null,
            '3/4',
          ],
        },
      ]);
    });

    test('reads every cell as it is shown by its number format', async () => {
      const shown = SHOWN_CELLS.map(([, held, format]) => ({ held, format }));
      const rows = shown.map((cell): PersonsSheet['rows'][number] => ['Hall', 'Base', cell]);
      const table = await read([{ name: 'Runs', rows: [RUNS, ...rows] }]);
      expect(table.rows.map(({ cells }) => cells[2])).toEqual(
        shown.map(({ held, format }) => shownCell(held, format)),
      );
      // Not plain numbers all of them, or there would be nothing to see.
      expect(new Set(table.rows.map(({ cells }) => typeof cells[2]))).toEqual(
        new Set(['object', 'number']),
      );
    });

    test('reads a row that shows nothing as blank, whatever it holds', async () => {
      const nothing = { held: 0, format: '0;-0;;@' };
      const rows = [RUNS, [nothing, null, nothing], ['Hall', 'Base', 96]];
      const table = await read([{ name: 'Runs', rows }]);
      expect(table.rows.map(({ line }) => line)).toEqual([3]);
    });

    test('says once a table how many of its rows are hidden, and reads them', async () => {
      const rows = [RUNS, ...[1, 2, 3, 4].map((length) => ['Hall', 'Base', length])];
      const table = await read([{ name: 'Trim', rows, hidden: [3, 5, 9] }]);
      expect(table.rows).toHaveLength(4);
      expect(table.cautions?.map(({ message, where }) => [message, where])).toEqual([
        [
          "2 rows of Runs are hidden or filtered out; they are planned too. Delete those that aren't meant.",
          { sheet: 'Trim', cell: 'A3' },
        ],
      ]);
      const tables = [{ name: 'T', range: 'A1:C5' }];
      const proper = await read([{ name: 'Trim', rows, tables, hidden: [4] }]);
      expect(proper.cautions?.map(({ code, given }) => [code, given])).toEqual([
        ['table.hidden-rows', 1],
      ]);
      const all = await read([{ name: 'Trim', rows, hidden: [2, 3, 4, 5] }]);
      expect(all.cautions?.map(({ given }) => given)).toEqual([4]);
      expect((await read([{ name: 'Trim', rows }])).cautions).toBeUndefined();
    });

    test(`reads rows right below a table with its own${growsTables ? '' : ', and says so'}`, async () => {
      const rows = [
        [null, ...RUNS],
        [null, 'Hall', 'Base', 96],
        [null, 'Loft', 'Base', 40],
        ['beside', 'Attic', 'Base', 50],
        ['under it'],
        [null, 'After', 'a blank', 1],
      ];
      const table = await read([{ name: 'Trim', rows, tables: [{ name: 'T', range: 'B1:D2' }] }]);
      expect(table.rows).toEqual([
        { line: 2, cells: [null, 'Hall', 'Base', 96] },
        { line: 3, cells: [null, 'Loft', 'Base', 40] },
        { line: 4, cells: [null, 'Attic', 'Base', 50] },
      ]);
      const said = [
        "2 rows stand right under the table “T” and aren't part of it; they are read with Runs all the same. Stretch the table over them; or, where they aren't meant, leave a blank row above them.",
        { sheet: 'Trim', cell: 'B3' },
      ];
      expect(table.cautions?.map(({ message, where }) => [message, where])).toEqual(
        growsTables ? undefined : [said],
      );
    });

    test('takes no row of one table for a row of the other that stands right above it', async () => {
      const rows = [
        RUNS,
        ['Hall', 'Base', 96],
        ['Stock', 'Profile', 'Price'],
        ['stick', 'Base', 4],
      ];
      const tables = [
        { name: 'T', range: 'A1:C2' },
        { name: 'Rack', range: 'A3:C4' },
      ];
      const sheets = [{ name: 'Trim', rows, tables }];
      const [first, second] = [await read(sheets), await read(sheets, 1)];
      expect([first, second].map((one) => one.rows.map(({ line }) => line))).toEqual([[2], [4]]);
      expect([first.cautions, second.cautions]).toEqual([undefined, undefined]);
    });

    test('leaves out rows of nothing but formulas that give ""', async () => {
      const nothing = { formula: '=IF(TRUE,"","x")', value: '' };
      const rows = [RUNS, [nothing, nothing], ['Hall', nothing, 96], [nothing, nothing, nothing]];
      const host = await open([{ name: 'Runs', rows }]);
      const [place] = await placesOf(host);
      expect(place?.rowCount).toBe(1);
      expect(valueOf(await host.readTable(place!, 'Runs')).rows).toEqual([
        { line: 3, cells: ['Hall', null, 96] },
      ]);
    });

    test('offers two tables alike both, and lets nobody guess', async () => {
      const rows = [RUNS, ['Hall', 'Base', 96]];
      const host = await open([
        { name: 'First', rows, tables: [{ name: 'One', range: 'A1:C2' }] },
        { name: 'Second', rows },
      ]);
      const runs = recognizeTables(await placesOf(host)).find((one) => one.name === 'Runs');
      expect(runs?.chosen).toBeUndefined();
      expect(runs?.alike.map(({ sheet }) => sheet)).toEqual(['First', 'Second']);
    });

    test('reads 10,000 rows, and says so of more than 20,000', async () => {
      const rowsOf = (count: number): PersonsSheet['rows'] => [
        RUNS,
        ...Array.from({ length: count }, (_, at) => ['Hall', `profile ${at}`, at / 8]),
      ];
      const table = await read([{ name: 'Runs', rows: rowsOf(10_000) }]);
      expect([table.rows.length, table.rows.at(-1)]).toEqual([
        10_000,
        { line: 10_001, cells: ['Hall', 'profile 9999', 9_999 / 8] },
      ]);
      const host = await open([{ name: 'Runs', rows: rowsOf(20_001) }]);
      const [place] = await placesOf(host);
      expect(place?.rowCount).toBe(20_001);
      expect(codesOf(await host.readTable(place!, 'Runs'))).toEqual(['table.too-many-rows']);
    });

    test('says so when the place is gone', async () => {
      const [place] = await placesOf(await open([{ name: 'Runs', rows: [RUNS, ['Hall']] }]));
      const other = await open([]);
      expect(codesOf(await other.readTable({ ...place!, key: 'sheet/none' }, 'Runs'))).toEqual([
        'host.gone',
      ]);
      expect(codesOf(await other.readTable({ ...place!, key: 'table/none' }, 'Runs'))).toEqual([
        'host.gone',
      ]);
    });
  });
}
