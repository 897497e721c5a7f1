/** What a cell shows is what is meant: by its number format, and as the text that a CSV has of it, alike. */
import { describe, expect, test } from '@jest/globals';

import { shownCell } from '../../src/hosts/tables/shown-number.ts';
import type { RawCell, RawTable } from '../../src/planning/input/raw-table.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { tablesOf } from './make-job.ts';

/** Where the cell stands: a column of a table, or a setting of Shop. */
type Place =
  | 'Length'
  | 'Price'
  | 'Quantity'
  | 'Spring'
  | 'Allowance'
  | 'Room'
  | 'Buy'
  | { setting: string; unit?: string };

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

const MM = (millimetres: number): number => Number((millimetres / 25.4).toFixed(9));

/** Held in the cell under the format, and as a spreadsheet writes that cell into CSV. */
const CASES: readonly (readonly [
  Place,
  held: number,
  format: string,
  csv: string,
  meaning: number | string | null | 'refused',
  ...codes: string[],
])[] = [
  // Percents
  [{ setting: 'margin %' }, 0.15, '0%', '15%', 15],
  [{ setting: 'margin %' }, 0.155, '0.0 %', '15.5 %', 15.5],
  [{ setting: 'margin %' }, 15, '0.00', '15.00', 15],
  [{ setting: 'tax %' }, 0.0725, '0.00%', '7.25%', 7.25],
  ['Allowance', 0.12, '0%', '12%', 12],
  ['Length', 0.041, '0.00%', '4.10%', 'refused', 'number.percent'],
  ['Price', 0.041, '0.00%', '4.10%', 'refused', 'number.percent'],
  ['Quantity', 3, '0%', '300%', 'refused', 'number.percent'],
  ['Spring', 0.38, '0%', '38%', 'refused', 'number.percent'],
  [{ setting: 'kerf' }, 0.125, '0.0%', '12.5%', 'refused', 'number.percent'],
  [{ setting: 'feed' }, 0.06, '0%', '6%', 'refused', 'number.percent'],
  // Units of length
  ['Length', 90, '0.00" mm"', '90.00 mm', MM(90)],
  ['Length', 8, '0.00" ft"', '8.00 ft', 96],
  ['Length', 8, "0'", "8'", 96],
  ['Length', 96.5, '0.0\\"', '96.5"', 96.5],
  ['Length', 2.4, '0.0" m"', '2.4 m', MM(2400)],
  ['Length', 240, '0" cm"', '240 cm', MM(2400)],
  ['Length', 4, '0" kg"', '4 kg', 'refused', 'number.other-unit'],
  ['Length', 4, '"$"0.00', '$4.00', 'refused', 'number.other-unit'],
  ['Length', 46_085, '0" in"', '46085 in', 46_085],
  ['Price', 4, '0.00" mm"', '4.00 mm', 'refused', 'number.other-unit'],
  ['Quantity', 4, '0" in"', '4 in', 'refused', 'number.other-unit'],
  ['Quantity', 4, '0" pcs"', '4 pcs', 4],
  ['Spring', 38, '0.0°', '38.0°', 38],
  [{ setting: 'kerf' }, 3.2, '0.0" mm"', '3.2 mm', MM(3.2)],
  [{ setting: 'kerf', unit: 'in' }, 3.2, '0.0" mm"', '3.2 mm', MM(3.2)],
  [{ setting: 'set-up minutes' }, 40, '0" min"', '40 min', 40],
  [{ setting: 'set-up minutes' }, 40, '0" mm"', '40 mm', 'refused', 'number.other-unit'],
  // Money
  ['Price', 4.1, '"$"#,##0.00', '$4.10', 4.1],
  ['Price', 4.1, '[$$-409]#,##0.00', '$4.10', 4.1],
  ['Price', 4.1, '[$USD] #,##0.00', 'USD 4.10', 4.1],
  ['Price', 4.1, '#,##0.00\\ [$€-407]', '4.10 €', 'refused', 'number.other-currency'],
  ['Price', 1234.5, '"$"#,##0.00', '$1,234.50', 1234.5],
  ['Price', -4.1, '"$"#,##0.00_);("$"#,##0.00)', '($4.10)', 'refused', 'number.too-small'],
  [{ setting: 'hourly rate' }, 60, '[$€-407] 0', '€ 60', 'refused', 'number.other-currency'],
  [{ setting: 'hourly rate' }, 60, '"$"0', '$60', 60],
  [{ setting: 'margin %' }, 15, '"$"0', '$15', 'refused', 'number.other-unit'],
  // Numbers that show in groups, and names that are numbers
  ['Length', 1234.5, '#,##0.0', '1,234.5', 1234.5],
  ['Room', 7, '000', '007', '007'],
  ['Room', 101, '"Room "0', 'Room 101', 'Room 101'],
  ['Room', 101, '0', '101', '101'],
  ['Buy', 5, '0', '5', 5],
  // Days
  ['Length', 46_085, 'd-mmm', '4-Mar', 'refused', 'table.date-cell|length.date'],
];

describe('A cell as shown', () => {
  test.each(CASES)('at %j, %d under %s is %s', (place, held, format, csv, meaning, ...codes) => {
    const wanted = meaning === 'refused' ? undefined : meaning;
    const seen = read(place, shownCell(held, format));
    const saved = read(place, csv);
    const [code = ''] = codes;
    const [byFormat = '', byText = byFormat] = code.split('|');
    expect([seen.meaning, ...seen.codes]).toEqual(code === '' ? [wanted] : [wanted, byFormat]);
    expect([saved.meaning, ...saved.codes]).toEqual(code === '' ? [wanted] : [wanted, byText]);
  });

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
