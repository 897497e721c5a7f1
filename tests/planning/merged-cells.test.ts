import { describe, expect, test } from '@jest/globals';
import type { CellRange } from '../../src/core/cells/cell-range.ts';
import { parseRange } from '../../src/core/cells/cell-range.ts';
import { INCHES_AND_POINT } from '../../src/core/units/length.ts';
import { TABLE_HEADINGS } from '../../src/planning/input/headings/table-headings.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readRows } from '../../src/planning/input/read-rows.ts';
import type { Findings } from '../../src/planning/input/row-reader.ts';

const NAMES = Object.keys(TABLE_HEADINGS) as (keyof typeof TABLE_HEADINGS)[];

function tableOf(name: string, headings: RawCell[], rows: RawCell[][], merges: string[]): RawTable {
  return {
    name,
    source: { kind: 'sheet', name },
    headings: { line: 1, cells: headings },
    rows: rows.map((cells, index) => ({ line: index + 2, cells })),
    merges: merges.map((one) => parseRange(one)).filter((one): one is CellRange => one !== null),
  };
}

function read(table: RawTable, name: keyof typeof TABLE_HEADINGS) {
  const findings: Findings = { faults: [], cautions: [] };
  const rows = readRows(table, TABLE_HEADINGS[name], INCHES_AND_POINT, findings);
  return { rows, findings };
}

const codes = (of: Findings['faults']) => of.map(({ code }) => code);

describe('Cells of an input table that are merged', () => {
  const all = NAMES.flatMap((name) =>
    TABLE_HEADINGS[name].map((heading) => ({ name, heading, key: heading.key })),
  );

  test.each(all)('down $name, $key: read for each row where it is words, else refused', (one) => {
    const { name, heading } = one;
    const headings = TABLE_HEADINGS[name].map((each) => each.heading);
    const column = TABLE_HEADINGS[name].indexOf(heading);
    const filled = TABLE_HEADINGS[name].map((_, at) => (at === column ? '7' : `cell ${at}`));
    const below = filled.map((cell, at) => (at === column ? null : cell));
    const letter = String.fromCharCode(65 + column);
    const table = tableOf(name, headings, [filled, below], [`${letter}2:${letter}3`]);
    const { rows, findings } = read(table, name);
    if (['name', 'word', 'yes or no', 'day', 'note'].includes(heading.holds)) {
      expect(rows.map((row) => row.text(heading.key))).toEqual(['7', '7']);
      expect(codes(findings.faults)).toEqual([]);
      expect(codes(findings.cautions)).toContain('table.merged-taken');
    } else {
      expect(codes(findings.faults)).toEqual(['table.merged-down']);
      expect(findings.faults[0]).toMatchObject({
        argument: heading.key,
        where: { sheet: name, cell: `${letter}2` },
      });
    }
  });

  const RUNS = ['Room', 'Profile', 'Length', 'Quantity', 'Left end', 'Right end', 'Note'];
  const readRuns = (rows: RawCell[][], merges: string[], headings: RawCell[] = RUNS) =>
    read(tableOf('Runs', headings, rows, merges), 'Runs');

  test('hide nothing that is read: what a merge covers is not seen', () => {
    const rows = [
      ['Hall', 'Base', 96, null],
      ['Den', 'Crown', 80, 9],
    ];
    const { rows: found, findings } = readRuns(rows, ['A2:A3', 'D2:D3']);
    expect(codes(findings.faults)).toEqual([]);
    expect(found.map((row) => [row.text('room'), row.whole('quantity', 1, 1, 99)])).toEqual([
      ['Hall', 1],
      ['Hall', 1],
    ]);
  });

  test('stand for one row where the other is blank, or a total, which needs no question', () => {
    const tall = ['A2:A3', 'B2:B3', 'C2:C3', 'D2:D3'];
    const { findings } = readRuns([['Hall', 'Base', 96, 4]], tall);
    expect(findings).toEqual({ faults: [], cautions: [] });
    const rows = [
      ['Hall', 'Base', 96, 4],
      [null, 'Subtotal', 96, null],
    ];
    const total = readRuns(rows, ['A2:A3']);
    expect(total.rows).toHaveLength(1);
    expect(codes(total.findings.cautions)).toEqual(['table.total-ignored']);
  });

  test('are refused over several columns of ours, and left alone over others', () => {
    const row = ['Hall', 'Base', 96, 4, 'outside', null, 'x', null];
    const { findings } = readRuns([row], ['E2:F2']);
    expect(findings.faults.map(({ code, message }) => [code, message])).toEqual([
      [
        'table.merged-across',
        "Right end: “outside” stands once for several columns (E2:F2 are merged), and one value can't be meant for all of them. Take the merge apart and fill in each.",
      ],
    ]);
    expect(readRuns([row], ['G2:H2']).findings).toEqual({ faults: [], cautions: [] });
  });

  test('are refused where a heading covers cells of its rows', () => {
    const { findings } = readRuns([['Hall', 'Base', 96, null]], ['D1:D2']);
    expect(findings.faults.map(({ code, message }) => [code, message])).toEqual([
      [
        'table.merged-down',
        "The heading of Quantity is merged with cells of its rows (D1:D2), so what stands in them can't be told. Take the merge apart.",
      ],
    ]);
  });
});
