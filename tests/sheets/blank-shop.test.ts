import { expect, test } from '@jest/globals';
import { blankLists } from '../../src/exports/blank-lists.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { USUAL_WORK } from '../../src/planning/work/usual-work.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';

/** The blank workbook's Shop as it is read, with some of its settings typed over. */
function blankShop(typed: Readonly<Record<string, string>>): RawTable {
  const sheet = describeInput().sheets.find(({ name }) => name === 'Shop');
  const [headings = [], ...rows] = (sheet?.rows ?? []).map(({ cells }) =>
    cells.map((cell): RawCell => cell?.value ?? null),
  );
  return {
    name: 'Shop',
    source: { kind: 'sheet', name: 'Shop' },
    headings: { line: 1, cells: headings },
    rows: rows.map((cells, index) => {
      const [name = ''] = cells;
      const own = typeof name === 'string' ? typed[name] : undefined;
      const filled = own === undefined ? cells : cells.map((one, at) => (at === 1 ? own : one));
      return { line: index + 2, cells: filled };
    }),
  };
}

test.each(['in', 'mm'])(
  'The blank workbook passes its own defaults, in %s with either decimal sign',
  (unit) => {
    const shopWith = (sign: string) => {
      const { faults, asRead } = readJob([blankShop({ unit, 'decimal sign': sign })], 'blank');
      const found = faults.filter(({ where }) => where !== undefined);
      expect(found.map(({ where, message }) => [where, message])).toEqual([]);
      return { ...asRead.shop, decimalSign: '' };
    };
    const [point, comma] = ['.', ','].map(shopWith);
    expect(comma).toEqual(point);
    const usual = readJob([], 'none').asRead.shop;
    expect(point).toEqual({
      ...usual,
      unit,
      decimalSign: '',
      lengthPrecision: point?.lengthPrecision,
    });
  },
);

test.each(['in', 'mm'])(
  'The rows of Work in a new workbook, and in new CSV files, change nothing of a job, in %s with either decimal sign',
  (unit) => {
    for (const sign of ['.', ','] as const) {
      const shop = blankShop({ unit, 'decimal sign': sign });
      const without = readJob([shop], 'blank').asRead.work;
      const sheet = describeInput().sheets.find(({ name }) => name === 'Work')!;
      const cells = sheet.rows.map((row) => row.cells.map((one): RawCell => one?.value ?? null));
      const inWorkbook: RawTable = {
        name: 'Work',
        source: { kind: 'sheet', name: 'Work' },
        headings: { line: 1, cells: cells[0]! },
        rows: cells.slice(1).map((row, at) => ({ line: at + 2, cells: row })),
      };
      const csv = blankLists(sign).find(({ path }) => path === 'work.csv')!;
      const inFile = readCsvTable(csv.text, 'work.csv', 'Work');
      if (!inFile.ok) throw new Error(inFile.faults[0]!.message);
      for (const table of [inWorkbook, inFile.value]) {
        expect(table.rows.filter((row) => row.cells[0] !== null)).toHaveLength(USUAL_WORK.length);
        const { faults, cautions, asRead } = readJob([shop, table], 'blank');
        expect([...faults, ...cautions].filter(({ where }) => where !== undefined)).toEqual([]);
        expect(asRead.work).toEqual(without);
      }
      // A person's own yes takes a kind into the price.
      const own = inWorkbook.rows.map((row) =>
        row.cells[0] === 'miter'
          ? { ...row, cells: row.cells.map((one) => (one === 'no' ? 'yes' : one)) }
          : row,
      );
      const { asRead } = readJob([shop, { ...inWorkbook, rows: own }], 'blank');
      const typed = asRead.work.filter((row) => row.typed !== undefined);
      expect(typed.map(({ work, minutes, isOurs }) => [work, minutes, isOurs])).toEqual([
        ['miter', 1, true],
      ]);
    }
  },
);
