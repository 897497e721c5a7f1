/** One suite for every host that reads: merged cells, and columns out of sight. */
import { describe, expect, test } from '@jest/globals';

import { own, phrase } from '../../src/core/faults/argument.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { readRuns } from '../../src/planning/input/read-runs.ts';
import type { Findings } from '../../src/planning/input/row-reader.ts';
import { valueOf } from './excel-workbooks.ts';
import type { PersonsSheet } from './persons-sheets.ts';
import type { ReadingHost } from './reading-suite.ts';

const RUNS = ['Room', 'Profile', 'Length'];

export function testLayout({ name, open }: Pick<ReadingHost, 'name' | 'open'>): void {
  describe(`Merged and hidden cells through the ${name} host`, () => {
    test('says so where merged headings would lose a column, and only there', async () => {
      const rows = [
        ['Trim of the Maple house'],
        ['Room', 'Length', null, 'Profile', null],
        ['Hall', 96, '3/8', 'Base', null],
      ];
      const merges = ['A1:E1', 'B2:C2', 'D2:E2'];
      const host = await open([{ name: 'Runs', rows, merges }]);
      const outcome = await host.readTable(valueOf(await host.survey()).places[0]!, 'Runs');
      expect(outcome).toMatchObject({
        ok: false,
        faults: [
          {
            code: 'table.heading-merged',
            argument: phrase('columnOf', { column: own('C'), table: 'sheet.Runs' }),
            where: { sheet: 'Runs', cell: 'C2' },
          },
        ],
      });
    });

    /** Room, Profile, Length, Quantity and Note of three rows, with merges and columns out of sight. */
    const LISTED = ['Room', 'Profile', 'Length', 'Quantity', 'Note'];
    const ROWS: PersonsSheet['rows'] = [
      LISTED,
      ['Hall', 'Base', 96, 4, 'x'],
      [null, 'Crown', 80, null, null],
      ['Den', 'Base', 70, 2, null],
    ];
    const readMerged = async (sheet: Partial<PersonsSheet>) => {
      const findings: Findings = { faults: [], cautions: [] };
      const host = await open([{ name: 'Runs', rows: ROWS, ...sheet }]);
      const [place] = valueOf(await host.survey()).places;
      const table = valueOf(await host.readTable(place!, 'Runs'));
      const runs = readRuns(table, INCHES_AND_POINT, findings);
      return {
        runs: runs.map(({ room, profile, quantity }) => [room, profile, quantity].join(' ')),
        faults: findings.faults.map(({ code, where }) => [code, where]),
        cautions: findings.cautions.map(({ code, message }) => [code, message]),
      };
    };
    const at = (cell: string) => ({ sheet: 'Runs', cell });

    test('reads a room merged down for each of its rows, and says so', async () => {
      expect(await readMerged({ merges: ['A2:A3'] })).toEqual({
        runs: ['Hall Base 4', 'Hall Crown 1', 'Den Base 2'],
        faults: [],
        cautions: [
          [
            'table.merged-taken',
            "Room is merged over 2 rows (A2:A3); what stands there is read for each of them. Where it isn't meant so, take the merge apart.",
          ],
        ],
      });
    });

    test('refuses a quantity merged down, and what is merged across columns of ours', async () => {
      const down = await readMerged({ merges: ['A2:A3', 'D2:D3'] });
      expect(down.faults).toEqual([['table.merged-down', at('D2')]]);
      const rows = [
        ['Room', 'Profile', 'Length', 'Left end', 'Right end'],
        ['Hall', 'Base', 96, 'outside miter', null],
      ];
      const across = await readMerged({ rows, merges: ['D2:E2'] });
      expect(across.faults).toEqual([['table.merged-across', at('D2')]]);
    });

    test('finds every merge of a long list', async () => {
      const count = 1_500;
      const rows: PersonsSheet['rows'] = [
        RUNS,
        ...Array.from({ length: count }, (_, row) => [row % 2 === 0 ? `R${row}` : null, 'Base', 9]),
      ];
      const merges = Array.from(
        { length: count / 2 },
        (_, pair) => `A${2 * pair + 2}:A${2 * pair + 3}`,
      );
      const { runs, faults } = await readMerged({ rows, merges });
      expect(faults).toEqual([]);
      expect(runs).toEqual(Array.from({ length: count }, (_, row) => `R${row - (row % 2)} Base 1`));
    });

    test('says that columns out of sight are read', async () => {
      const { cautions } = await readMerged({ hiddenColumns: [3], merges: ['A2:A3'] });
      expect(cautions).toContainEqual([
        'table.hidden-columns',
        "A column of Runs is hidden (Quantity); it is read too. Clear it where it isn't meant.",
      ]);
    });
  });
}
