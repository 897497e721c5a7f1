import { expect, test } from '@jest/globals';
import { readJob } from '../../src/planning/input/read-job.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
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
