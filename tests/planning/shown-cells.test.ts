/** What a cell shows is what is meant: by its number format, and as the text that a CSV has of it, alike. */
import { describe, expect, test } from '@jest/globals';

import { shownCell } from '../../src/hosts/tables/shown-number.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { tablesOf } from './make-job.ts';
import { SHOWN_CELLS, type Place } from './shown-cell-cases.ts';

interface Found {
  readonly meaning: number | string | null | undefined;
  readonly codes: readonly string[];
  readonly cautions: readonly string[];
}

const SHOP = (more: readonly (readonly RawCell[])[] = []): RawTable => ({
  name: 'Shop',
  source: { kind: 'sheet', name: 'Shop' },
  headings: { line: 1, cells: ['Setting', 'Value', 'Unit'] },
  rows: more.map((cells, at) => ({ line: at + 2, cells })),
});

function read(place: Place, cell: RawCell, shop: readonly (readonly RawCell[])[] = []): Found {
  const inRuns = place === 'Length' || place === 'Quantity' || place === 'Room';
  const put = (heading: Place, usual: RawCell): RawCell => (place === heading ? cell : usual);
  const table = (
    name: string,
    headings: readonly string[],
    cells: readonly RawCell[],
  ): RawTable => ({
    name,
    source: { kind: 'sheet', name },
    headings: { line: 1, cells: headings },
    rows: [{ line: 2, cells }],
  });
  const setting = typeof place === 'object' ? place : undefined;
  const tables = [
    table(
      'Runs',
      ['Room', 'Profile', 'Length', 'Quantity'],
      [put('Room', 'Hall'), 'Base', put('Length', 10), put('Quantity', 1)],
    ),
    table(
      'Profiles',
      ['Profile', 'Spring', 'Offcut allowance %', 'Blank width', 'Blank thickness'],
      ['Base', put('Spring', 38), put('Allowance', 10), 5, 0.75],
    ),
    table(
      'Stock',
      ['For', 'Length', 'Price', 'Buy'],
      ['Base', 192, put('Price', 20), put('Buy', null)],
    ),
    SHOP([
      ...shop,
      ...(setting === undefined ? [] : [[setting.setting, cell, setting.unit ?? null]]),
    ]),
  ];
  const { job, faults, cautions } = readJob(tables, 'job.xlsx');
  const own = (codes: readonly { readonly code: string }[]): string[] =>
    codes
      .map(({ code }) => code)
      .filter(
        (code) =>
          code.startsWith('number.') ||
          code.startsWith('length.') ||
          code.startsWith('table.') ||
          code.startsWith('word.'),
      );
  const [run, profile, stick] = [job?.runs[0], job?.profiles[0], job?.stock[0]];
  const values: Record<string, unknown> = {
    Length: run?.length,
    Quantity: run?.quantity,
    Room: run?.room,
    Price: stick?.price,
    Buy: stick?.buyMost,
    Spring: profile?.spring,
    Allowance: profile?.offcutAllowancePercent,
  };
  const settings = job?.shop as unknown as Readonly<Record<string, unknown>> | undefined;
  const key = setting?.setting
    .replace(/ %$/u, '')
    .replace(/[ -](\w)/gu, (_, one: string) => one.toUpperCase());
  const meaning = key === undefined ? values[place as string] : settings?.[key];
  expect([inRuns, faults.length > 0]).toEqual([inRuns, job === undefined]);
  return {
    meaning:
      meaning === undefined || meaning === null || typeof meaning === 'string'
        ? meaning
        : Number(Number(meaning).toFixed(9)),
    codes: own(faults),
    cautions: own(cautions),
  };
}

describe('A cell as shown', () => {
  test.each(SHOWN_CELLS)(
    'at %j, %d under %s is %s',
    (place, held, format, csv, meaning, ...codes) => {
      const wanted = meaning === 'refused' ? undefined : meaning;
      const seen = read(place, shownCell(held, format));
      const saved = read(place, csv);
      const [code = ''] = codes;
      const [byFormat = '', byText = byFormat] = code.split('|');
      expect([seen.meaning, ...seen.codes]).toEqual(code === '' ? [wanted] : [wanted, byFormat]);
      expect([saved.meaning, ...saved.codes]).toEqual(code === '' ? [wanted] : [wanted, byText]);
    },
  );

  test('counts in the currency that Shop says, and in the usual one where it says none', () => {
    const euros = [['currency', '€']];
    expect(read('Price', shownCell(4.1, '[$€-407] 0.00'), euros)).toMatchObject({
      meaning: 4.1,
      codes: [],
    });
    expect(read('Price', '4.10 EUR', euros)).toMatchObject({ meaning: 4.1, codes: [] });
    expect(read('Price', shownCell(4.1, '"$"0.00'), euros).codes).toEqual([
      'number.other-currency',
    ]);
    expect(read('Price', '4.10 Fr', [['currency', 'Taler']]).codes).toEqual([
      'number.other-currency',
    ]);
    expect(read('Price', '4.10 Taler', [['currency', 'Taler']])).toMatchObject({ meaning: 4.1 });
    expect(read('Price', '£4.10').codes).toEqual(['number.other-currency']);
  });

  test('asks about a percent between 0 and 1 that does not say it is one, and takes it as it stands', () => {
    for (const [place, cell, meaning, cautions] of [
      [{ setting: 'margin %' }, 0.15, 0.15, ['number.below-one-percent']],
      [{ setting: 'margin %' }, '0.15', 0.15, ['number.below-one-percent']],
      ['Allowance', 0.12, 0.12, ['number.below-one-percent']],
      [{ setting: 'margin %' }, '0.15%', 0.15, []],
      [{ setting: 'margin %' }, shownCell(0.0015, '0.00%'), 0.15, []],
      [{ setting: 'margin %' }, 0, 0, []],
      [{ setting: 'margin %' }, 1, 1, []],
      [{ setting: 'kerf' }, 0.125, 0.125, []],
    ] as const satisfies readonly (readonly [Place, RawCell, number, readonly string[]])[]) {
      expect(read(place, cell)).toEqual({ meaning, codes: [], cautions });
    }
  });

  test.each([
    [8000, '#,##0,', 'the cell holds 8000, and its number format shows “8”'],
    [3, ';;;', 'the cell holds 3, and its number format shows nothing'],
    [1, '"yes";;"no"', 'the cell holds 1, and its number format shows “yes”'],
  ])(
    '%d under %s is refused where a number is wanted: another is seen, or none',
    (held, format, words) => {
      const [runs, ...others] = tablesOf({});
      const cells = ['Hall', 'north', 'Base', shownCell(held, format)];
      const { faults } = readJob([{ ...runs!, rows: [{ line: 2, cells }] }, ...others], 'job');
      expect(faults.map(({ code }) => code)).toEqual(['table.veiled-number']);
      expect(faults[0]!.message).toContain(words);
    },
  );

  test('that shows words is these words where words are wanted', () => {
    const [runs, ...others] = tablesOf({});
    const table: RawTable = {
      ...runs!,
      headings: { line: 1, cells: ['Room', 'Profile', 'Length', 'One piece'] },
      rows: [{ line: 2, cells: ['Hall', 'Base', 100, shownCell(1, '"no";;"yes"')] }],
    };
    expect(readJob([table, ...others], 'job').job?.runs[0]?.onePiece).toBe(false);
  });
});

test('names and headings that look alike are the same: composed or not, with or without what is unseen', () => {
  const tables = tablesOf({
    profiles: 'Profile\u200b,Make,Blank width,Blank thickness\nMou\u0301lure\u200b,buy,5,3/4',
    stock: 'For,Length,Price\nmoúlure ,192,20',
    runs: 'Room,\ufeffProfile,Length\nHall,Moúlu\u00adre,100',
  });
  const { job, faults, cautions } = readJob(tables, 'job');
  expect(faults).toEqual([]);
  expect(cautions.map(({ code }) => code)).not.toContain('job.stock-unused');
  expect(job?.runs).toHaveLength(1);
});
