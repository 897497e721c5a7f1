/** One suite for every host that puts rows into a person's tables. */
import { describe, expect, test } from '@jest/globals';

import type { TablePlace, WorkbookHost } from '../../src/hosts/host.ts';
import type { NewRow } from '../../src/hosts/tables/room-below.ts';
import type { RawRow } from '../../src/planning/input/raw-table.ts';
import { valueOf } from './excel-workbooks.ts';
import type { PersonsSheet } from './persons-sheets.ts';

export interface AppendingHost {
  readonly name: string;
  readonly open: (sheets: readonly PersonsSheet[]) => Promise<WorkbookHost>;
  /** What stands below a growing table moves down; else it is in the way. */
  readonly makesRoom: boolean;
}

const HEADINGS = ['Profile', 'Make', 'Width'];
const NEW: NewRow[] = [
  ['Crown', '?'],
  ['3/4 cove', '?'],
];
const TABLES = [{ name: 'T', range: 'A1:C3' }];

export function testAppending({ name, open, makesRoom }: AppendingHost): void {
  const placeOf = async (host: WorkbookHost, which = 0): Promise<TablePlace> =>
    valueOf(await host.survey()).places[which]!;
  const rowsNow = async (host: WorkbookHost, which = 0): Promise<readonly RawRow[]> =>
    valueOf(await host.readTable(await placeOf(host, which), 'Profiles')).rows;
  const append = async (host: WorkbookHost, rows = NEW): Promise<unknown> => {
    const outcome = await host.appendRows(await placeOf(host), rows);
    return outcome.ok ? outcome.value.line : outcome.faults.map(({ message }) => message);
  };

  describe(`Adding rows through the ${name} host`, () => {
    test('puts them after the last filled row, in blank rows first, and the table grows', async () => {
      const rows = [
        ['Trim'],
        HEADINGS,
        ['Base', 'buy', 3],
        [null, ' ', null],
        [],
        [],
        [],
        ['a note'],
      ];
      const tables = [{ name: 'T', range: 'A2:C4' }];
      const host = await open([{ name: 'Profiles', rows, tables }]);
      expect(await append(host)).toBe(4);
      const table = valueOf(await host.readTable(await placeOf(host), 'Profiles'));
      expect(table.rows).toEqual([
        { line: 3, cells: ['Base', 'buy', 3] },
        { line: 4, cells: ['Crown', '?'] },
        { line: 5, cells: ['3/4 cove', '?'] },
      ]);
      expect(table.cautions).toBeUndefined();
      expect(await append(host, [['=1+1', '?']])).toBe(6);
      expect((await rowsNow(host)).at(-1)).toEqual({ line: 6, cells: ['=1+1', '?'] });
      const last = valueOf(await host.readSheet('Profiles')).at(-1);
      expect([last?.line, last?.cells]).toEqual([makesRoom ? 10 : 8, ['a note']]);
    });

    test('leaves a cell for which nothing is given as it is', async () => {
      const rows = [
        HEADINGS,
        ['Base', 'buy', 3],
        [null, null, { formula: '=IF(TRUE,"","x")', value: '' }],
      ];
      const host = await open([{ name: 'Profiles', rows, tables: TABLES }]);
      expect(await append(host, [['Crown', null, null]])).toBe(3);
      expect((await rowsNow(host)).at(-1)).toEqual({ line: 3, cells: ['Crown'] });
      // A formula that answers nothing is no blank cell.
      const other = await open([{ name: 'Profiles', rows, tables: TABLES }]);
      expect(await append(other, [['Crown', null, '?']])).toEqual([
        "T: one more row doesn't fit below its rows, since Profiles!C3 holds something. Insert blank rows above that cell and try again.",
      ]);
      expect(await rowsNow(other)).toHaveLength(1);
    });

    test('writes over nothing that stands below the table', async () => {
      const rows = [HEADINGS, ['Base', 'buy', 3], ['Rail', 'buy', 2], [], [null, 'mine', null]];
      const sheets = [{ name: 'Profiles', rows, tables: TABLES }];
      const host = await open(sheets);
      const said = await append(host);
      if (makesRoom) expect(said).toBe(4);
      else {
        expect(said).toEqual([
          "T: 2 more rows don't fit below its rows, since Profiles!B5 holds something. Insert blank rows above that cell and try again.",
        ]);
      }
      const mine = valueOf(await host.readSheet('Profiles')).at(-1);
      expect(mine?.cells).toEqual([null, 'mine']);
      expect((await rowsNow(host)).map(({ cells }) => cells[0])).toEqual(
        makesRoom ? ['Base', 'Rail', 'Crown', '3/4 cove'] : ['Base', 'Rail'],
      );
    });

    test('keeps a row of totals last', async () => {
      const rows = [HEADINGS, ['Base', 'buy', 3], [], ['Total', null, 3]];
      const host = await open([
        { name: 'Profiles', rows, tables: [{ name: 'T', range: 'A1:C4' }] },
      ]);
      expect(await append(host)).toEqual([
        "T: 2 more rows don't fit below its rows, since Profiles!A4 holds something. Insert blank rows above that cell and try again.",
      ]);
      expect(await append(host, [['Crown', '?']])).toBe(3);
    });

    test('puts them under the used cells of a sheet without tables', async () => {
      const rows = [['Trim of the Maple house'], [], [null, ...HEADINGS], [null, 'Base', 'buy', 3]];
      const host = await open([{ name: 'Profiles', rows }]);
      expect(await append(host, [[null, 'Crown', '?']])).toBe(5);
      expect((await rowsNow(host)).at(-1)).toEqual({ line: 5, cells: [null, 'Crown', '?'] });
    });

    test('says so when the place is gone', async () => {
      const host = await open([{ name: 'Profiles', rows: [HEADINGS, ['Base', 'buy', 3]] }]);
      const place = await placeOf(host);
      const key = place.key.replace(/\/.*/u, '/none');
      expect(await host.appendRows({ ...place, key }, NEW)).toMatchObject({
        faults: [{ code: 'host.gone' }],
      });
    });
  });
}
