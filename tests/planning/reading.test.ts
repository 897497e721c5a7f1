import { describe, expect, test } from '@jest/globals';
import { sayFault } from '../../src/core/faults/fault.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import { PLAIN, readTables, tablesOf } from './make-job.ts';

const codes = (tables: Parameters<typeof readTables>[0]): string[] =>
  readTables(tables).faults.map((one) => one.code);
const said = (tables: Parameters<typeof readTables>[0]): string[] =>
  readTables(tables).faults.map(sayFault);

describe('every fault of the input', () => {
  test('is found at once, each with its file, line and column', () => {
    const { faults, job } = readTables({
      runs:
        'Room,Run,Profile,Length,Measured as,Quantity,Left end,Left corner\n' +
        ',n,Base,100,,,,\nHall,n,Bse,100,,,,\nHall,n,Base,3/0,,,,\nHall,n,Base,100,wal,,,\n' +
        'Hall,n,Base,100,,1.5,,\nHall,n,Base,100,,0,mitre,\nHall,n,Base,-4,,,,200',
      shop: 'Setting,Value\nkerf,thick\nmargin %,100\nhourly rate,1',
    });
    expect(job).toBeUndefined();
    expect(faults.map((one) => [one.code, Object.values(one.where!).join(' ')])).toEqual([
      ['length.unreadable', 'shop.csv 2 2'],
      ['number.too-large', 'shop.csv 3 2'],
      ['text.missing', 'runs.csv 2 1'],
      ['length.zero-denominator', 'runs.csv 4 4'],
      ['word.unknown', 'runs.csv 5 5'],
      ['number.not-whole', 'runs.csv 6 6'],
      ['number.too-small', 'runs.csv 7 6'],
      ['word.unknown', 'runs.csv 7 7'],
      ['length.not-positive', 'runs.csv 8 4'],
      ['number.too-large', 'runs.csv 8 8'],
      ['job.profile-unknown', 'runs.csv 3 3'],
    ]);
  });

  test('names the cell, what was given and what is allowed', () => {
    const text = said({ runs: 'Room,Profile,Length,Left end\nHall,Base,100,mitre' });
    expect(text).toEqual([
      'runs.csv, line 2, column 4: Left end: “mitre” is not known here. Did you mean inside miter or outside miter? Allowed: square, inside miter, outside miter, cope, return.',
    ]);
  });

  test.each([
    ['a missing column', { runs: 'Room,Profile\nHall,Base' }, ['table.heading-missing']],
    [
      'a heading twice',
      { runs: 'Room,Profile,Length,LENGTH\nHall,Base,1,2' },
      ['table.heading-twice'],
    ],
    ['no rows', { runs: 'Room,Profile,Length' }, ['table.empty']],
    ['a profile twice', { profiles: 'Profile\nBase\nbase' }, ['job.profile-twice']],
    ['a setting twice', { shop: 'Setting,Value\nkerf,1/8\nKerf,1/8' }, ['job.setting-twice']],
    [
      'a cove without its sizes',
      { profiles: 'Profile,Make,Cove width\nBase,crown cove,3' },
      ['job.cove-needs', 'job.cove-needs', 'job.cove-needs', 'job.cove-needs'],
    ],
    ['a class nobody sells', { profiles: 'Profile,Class\nBase,7/5' }, ['lumber.class-unknown']],
    [
      'a board without width',
      { stock: 'For,Kind,Length,Price\nBase,board,96,1' },
      ['job.board-needs-width'],
    ],
    ['a price left out', { stock: 'For,Length,Price\nBase,96,' }, ['cutting.price-missing']],
    ['a price below 0', { stock: 'For,Length,Price\nBase,96,-1' }, ['number.too-small']],
    ['half a stick to buy', { stock: 'For,Length,Price,Buy\nBase,96,1,some' }, ['word.unknown']],
    [
      'a rack count in halves',
      { stock: 'For,Length,Price,Have\nBase,96,1,1.5' },
      ['number.not-whole'],
    ],
    ['a unit that is no length', { shop: 'Setting,Value,Unit\nkerf,1/8,lb' }, ['word.unknown']],
    ['a blade of 0', { shop: 'Setting,Value\nblade diameter,0' }, ['length.not-positive']],
    [
      'a price that holds half a day more',
      { shop: 'Setting,Value\nprice holds days,30.5' },
      ['number.not-whole'],
    ],
    [
      'a price that holds no day',
      { shop: 'Setting,Value\nprice holds days,0' },
      ['number.too-small'],
    ],
  ] as const)('%s', (_, tables, expected) => {
    expect(codes(tables)).toEqual(expected);
  });

  test('includes tables that are not there or there twice', () => {
    const [runs, ...rest] = tablesOf({});
    const without = rest.filter((table) => table.name !== 'Profiles' && table.name !== 'Stock');
    expect(
      readJob([runs!, runs!, ...without], 'job.xlsx').faults.map((one) => [one.code, one.argument]),
    ).toEqual([
      ['table.twice', 'sheet.Runs'],
      ['table.missing', 'sheet.Profiles'],
      ['table.missing', 'sheet.Stock'],
    ]);
  });
});

describe("cells of a workbook that can't be read", () => {
  const withLength = (cell: RawTable['rows'][number]['cells'][number]): RawTable[] => {
    const tables = tablesOf({});
    const runs: RawTable = {
      name: 'Runs',
      source: { kind: 'sheet', name: 'Runs' },
      headings: { line: 3, cells: ['Room', 'Profile', null, 'Length'] },
      rows: [{ line: 5, cells: ['Hall', 'Base', null, cell] }],
    };
    return [runs, ...tables.filter((table) => table.name !== 'Runs')];
  };

  test.each([
    [{ kind: 'date' } as const, 'table.date-cell'],
    [{ kind: 'error', text: '#N/A' } as const, 'table.error-cell'],
    [{ kind: 'uncalculated' } as const, 'table.uncalculated'],
    [true, 'length.unreadable'],
    [null, 'length.missing'],
    ['   ', 'length.missing'],
  ])('%j is refused once, by sheet and cell', (cell, code) => {
    const { faults } = readJob(withLength(cell), 'job.xlsx');
    expect(faults.map((one) => [one.code, one.where])).toEqual([
      [code, { sheet: 'Runs', cell: 'D5' }],
    ]);
  });

  test('a room that is a number is its text, and a true is a yes', () => {
    const runs: RawTable = {
      name: 'runs ',
      source: { kind: 'sheet', name: 'Runs' },
      headings: { line: 1, cells: ['ROOM *', 'profile', 'length', 'One-piece'] },
      rows: [{ line: 2, cells: [101, 'base', 12, true] }],
    };
    const { job } = readJob([runs, ...tablesOf({}).filter((table) => table.name !== 'Runs')], 'x');
    expect(job!.runs[0]).toMatchObject({
      room: '101',
      profile: 'base',
      run: 'base',
      onePiece: true,
    });
  });
});

describe('headings', () => {
  test('that nobody knows are said once and ignored', () => {
    const { cautions, job } = readTables({
      runs: 'Room,Profile,Length,Colour\nHall,Base,1,red\nHall,Base,2,blue',
    });
    expect(job!.runs).toHaveLength(2);
    expect(cautions.map((one) => one.code)).toContain('table.heading-unknown');
    expect(cautions.filter((one) => one.code === 'table.heading-unknown')).toHaveLength(1);
  });
});

describe("the shop's settings", () => {
  test('read bare numbers in the unit that the shop says', () => {
    const { job } = readTables({
      runs: 'Room,Profile,Length\nHall,Base,254',
      shop: 'Setting,Value\nunit,mm',
    });
    expect(Number(job!.runs[0]!.length)).toBe(10);
    expect(Number(job!.shop.lengthPrecision)).toBeCloseTo(1 / 25.4, 12);
  });

  test('read a decimal comma where the shop says so, in every table', () => {
    const { job } = readTables({
      runs: 'Room;Profile;Length\nHall;Base;2,5',
      shop: 'Setting;Value\nDecimal sign;,\nfeed;7,5',
      stock: 'For;Length;Price;Per\nBase;96;2,35;foot',
    });
    expect(Number(job!.runs[0]!.length)).toBe(2.5);
    expect(job!.shop.feed).toBe(7.5);
    expect(job!.stock[0]!.price).toBe(2.35);
  });

  test('take the unit that stands beside them', () => {
    const { job } = readTables({
      shop: 'Setting,Value,Unit\nblade diameter,254,mm\ntable front,1,ft\nkerf,"3 mm",in\nfeed,3,m/min\ntilt scale step,1/2,degrees',
    });
    expect(Number(job!.shop.bladeDiameter)).toBe(10);
    expect(Number(job!.shop.tableFront)).toBe(12);
    expect(Number(job!.shop.kerf)).toBeCloseTo(3 / 25.4, 12);
    expect(job!.shop.feed).toBeCloseTo(3 / 0.3048, 9);
    expect(job!.shop.tiltScaleStep).toBe(0.5);
  });

  test('left open take their usual values, which is said, as is a missing hourly rate', () => {
    const { job, cautions } = readTables({ shop: 'Setting,Value\nkerf,3/32' });
    expect(Number(job!.shop.bladeDiameter)).toBe(10);
    expect(cautions.map((one) => one.code)).toEqual([
      'job.usual-values',
      'job.no-hourly-rate',
      'job.heights-assumed',
    ]);
    expect(cautions[0]!.message).toMatch(/blade diameter 10 in; .*tilt stop 45°/u);
    expect(cautions[0]!.message).not.toMatch(/kerf 1\/8 in; greatest/u);
  });

  test('are said in millimetres to a shop that measures so', () => {
    const { cautions } = readTables({ shop: 'Setting,Value\nunit,mm' });
    expect(cautions[0]!.message).toMatch(
      /blade diameter 250 mm; kerf 3\.2 mm; .*least blank length 900 mm/u,
    );
  });

  test('at fault are not said to be missing too', () => {
    const { faults, cautions } = readTables({ shop: 'Setting,Value\nhourly rate,abc' });
    expect(faults.map((one) => one.code)).toEqual(['number.unreadable']);
    expect(cautions.map((one) => one.code)).not.toContain('job.no-hourly-rate');
  });

  test('may be left out whole', () => {
    const { job } = readJob(
      tablesOf({}).filter((table) => table.name !== 'Shop'),
      'x',
    );
    expect(job!.shop.unit).toBe('in');
  });
});

describe('names', () => {
  test('of species outside the table and stock for nobody are cautioned', () => {
    const { cautions } = readTables({
      profiles: 'Profile,Species\nBase,Ironbark',
      stock: `${PLAIN.stock}\nOak,stick,,,96,1,piece,,`,
    });
    expect(cautions.map((one) => one.code)).toEqual(
      expect.arrayContaining(['job.weight-unknown', 'job.stock-unused']),
    );
  });
});

describe('a length that is hardly meant', () => {
  const doubtful = (tables: Parameters<typeof readTables>[0]): string[] =>
    readTables(tables).faults.map(({ code, where }) => [code, ...Object.values(where!)].join(' '));

  test.each<[string, Parameters<typeof readTables>[0], string[]]>([
    [
      "a wall that is a date's number",
      { runs: 'Room,Profile,Length\nHall,Base,45708' },
      ['length.date-number runs.csv 2 3'],
    ],
    [
      'the same in a shop of millimetres',
      { runs: 'Room,Profile,Length\nHall,Base,45708', shop: 'Setting,Value\nunit,mm' },
      ['length.date-number runs.csv 2 3'],
    ],
    [
      'a wall of more than 200 feet',
      { runs: 'Room,Profile,Length\nHall,Base,3000' },
      ['length.asked-about runs.csv 2 3'],
    ],
    [
      'sizes of a profile in millimetres',
      { profiles: 'Profile,Blank width,Blank thickness\nBase,140,19' },
      ['length.asked-about profiles.csv 2 2', 'length.asked-about profiles.csv 2 3'],
    ],
    [
      'the thickness that a spreadsheet made a date',
      { profiles: 'Profile,Blank width,Blank thickness\nBase,5,46085' },
      ['length.date-number profiles.csv 2 3'],
    ],
    [
      "a stick's length and a board's width",
      { stock: 'For,Kind,Width,Length,Price\nBase,stick,,4877,30\nPoplar,board,203,144,30' },
      ['length.asked-about stock.csv 2 4', 'length.asked-about stock.csv 3 3'],
    ],
    [
      'an opening',
      { openings: 'Room,Kind,Width,Height\nHall,door,45720,45721' },
      ['length.date-number openings.csv 2 3', 'length.date-number openings.csv 2 4'],
    ],
    [
      'a setting, whose unit is the sheet’s own',
      { shop: 'Setting,Value,Unit\ntable width,45720,in\nend trim,2500,in' },
      ['length.date-number shop.csv 2 2', 'length.asked-about shop.csv 3 2'],
    ],
  ])('is asked about: %s', (_, tables, expected) => {
    expect(doubtful(tables)).toEqual(expected);
  });

  test('is taken where its unit stands with it', () => {
    expect(doubtful({ runs: 'Room,Profile,Length\nHall,Base,45708 in\nHall,Base,250 ft' })).toEqual(
      [],
    );
    expect(
      doubtful({ profiles: 'Profile,Blank width,Blank thickness\nBase,140 mm,13 in' }),
    ).toEqual([]);
  });

  test('says what it may be, in the shop’s unit', () => {
    expect(said({ runs: 'Room,Profile,Length\nHall,Base,46085\nHall,Base,3000' })).toEqual([
      'runs.csv, line 2, column 3: Length: 46,085 is what a spreadsheet stores for the date 2026-03-04, which it may have made of 3/4. Format the cell as text and type the length again, with a 0 before a bare fraction (0 3/4). Where the number is meant, write its unit with it.',
      "runs.csv, line 3, column 3: Length is 3000 in, more than any shop or house has (2400 in). Check the unit: bare numbers are read in the shop's. Where it is meant, write the unit with the number.",
    ]);
  });
});
