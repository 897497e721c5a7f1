import { describe, expect, test } from '@jest/globals';

import { openFileHost } from '../../src/hosts/xlsx/open-file-host.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { readXlsxBack } from './read-xlsx.ts';
import { codesOf, hostOf, valueOf } from './excel-workbooks.ts';
import { FakeExcel } from './excel-fake/fake-excel.ts';
import { inExcel, inFile } from './persons-sheets.ts';
import { testLayout } from './layout-suite.ts';
import { testReading, type ReadingHost } from './reading-suite.ts';
import { richWorkbook } from './sample-workbook.ts';

const HOSTS: readonly ReadingHost[] = [
  { name: 'Excel', open: (sheets) => Promise.resolve(hostOf(inExcel(sheets))) },
  {
    name: 'opened file',
    open: async (sheets) => {
      // A file has a sheet at least.
      const bytes = inFile(sheets.length === 0 ? [{ name: 'Empty', rows: [] }] : sheets);
      return valueOf(await openFileHost({ name: 'trim.xlsx', bytes }));
    },
  },
];
for (const one of HOSTS) {
  testReading(one);
  testLayout(one);
}

describe('Reading in Excel', () => {
  const rows = Array.from({ length: 10_000 }, (_, at) => ['Hall', 'Base', at]);
  const sheets = [{ name: 'Runs', rows: [['Room', 'Profile', 'Length'], ...rows] }];

  test('takes a table in blocks, as few as their size allows', async () => {
    const fake = inExcel(sheets);
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    const before = fake.syncs;
    valueOf(await host.readTable(place!, 'Runs'));
    // To find it, to measure it, its 30,003 cells in two, and whether headings are merged.
    expect(fake.syncs - before).toBe(5);
  });

  test('asks for less at a time where cells are full of text', async () => {
    const long = Array.from({ length: 400 }, (_, at) => [`${at}`, 'x'.repeat(30_000)]);
    const fake = inExcel([{ name: 'Runs', rows: [['Room', 'Note'], ...long] }]);
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    expect(place?.rowCount).toBe(400);
    const table = valueOf(await host.readTable(place!, 'Runs'));
    expect(table.rows.map(({ cells }) => cells[0])).toEqual(long.map(([first]) => first));
  });

  test('looks no further than 256 columns, and not at cells that are vastly apart', async () => {
    const wide = Array.from({ length: 300 }, (_, at) => `c${at}`);
    const fake = inExcel([
      { name: 'Runs', rows: [wide, wide] },
      { name: 'Far', rows: [['a', 'b']] },
    ]);
    fake.workbook.sheets[1]!.make(1_048_575, 3).value = 'far';
    const host = hostOf(fake);
    const [runs, far] = valueOf(await host.survey()).places;
    expect(runs?.headings).toHaveLength(256);
    expect(valueOf(await host.readTable(runs!, 'Runs')).rows[0]?.cells).toHaveLength(256);
    expect(codesOf(await host.readTable(far!, 'Stock'))).toEqual(['table.too-many-rows']);
  });

  test('leaves merged headings to the reader where this Excel tells none', async () => {
    const merged = {
      name: 'Runs',
      rows: [
        ['Room', 'Length', null],
        ['Hall', 96, 4],
      ],
      merges: ['B1:C1'],
    };
    const fake = inExcel([merged]);
    fake.minor = 12;
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    expect(valueOf(await host.readTable(place!, 'Runs')).headings.cells).toEqual([
      'Room',
      'Length',
    ]);
  });

  test('takes no total row for a run, and no table without headings for a table', async () => {
    const fake = inExcel([
      {
        name: 'Runs',
        rows: [
          ['Room', 'Length'],
          ['Hall', 96],
          ['Total', 96],
        ],
        tables: [{ name: 'T', range: 'A1:B3' }],
      },
    ]);
    const table = fake.workbook.tables[0]!;
    table.showTotals = true;
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    expect(valueOf(await host.readTable(place!, 'Runs')).rows).toHaveLength(1);
    table.showHeaders = false;
    const [bare] = valueOf(await host.survey()).places;
    expect([bare?.table, bare?.rowCount]).toEqual([undefined, 2]);
    expect(codesOf(await host.readTable(place!, 'Runs'))).toEqual(['host.gone']);
  });

  test('offers none of our own sheets as a table', async () => {
    const fake = new FakeExcel();
    fake.addSheet('Notes');
    valueOf(await hostOf(fake).write(richWorkbook(), { owner: 'tool', replace: [] }));
    const survey = valueOf(await hostOf(fake).survey());
    expect(survey.places).toEqual([]);
    expect(survey.sheets.map(({ ours }) => ours)).toEqual([false, true, true, true]);
  });
});

describe('An opened file', () => {
  const open = async (bytes: Uint8Array) => openFileHost({ name: 'Maple house.xlsx', bytes });
  const trim = inFile([
    {
      name: 'Runs',
      rows: [
        ['Room', 'Length'],
        ['Hall', 96],
      ],
    },
  ]);

  test('is refused in the words of any file that is no workbook', async () => {
    expect(codesOf(await open(new TextEncoder().encode('Room,Length')))).toEqual([
      'file.not-workbook',
    ]);
  });

  test('gives what is written as a file of its own, after its name', async () => {
    const host = valueOf(await open(trim));
    const { sheets, file } = valueOf(
      await host.write(richWorkbook(), { owner: 'tool', replace: [] }),
    );
    expect(sheets).toEqual(richWorkbook().sheets.map(({ name }) => name));
    expect(file?.name).toBe('Maple house-set-ups-the-shop-s-cuts.xlsx');
    expect(readXlsxBack(file!.bytes).sheets.map(({ name }) => name)).toEqual(sheets);
    // The file itself stays as it was opened.
    expect(valueOf(await host.survey()).sheets.map(({ name }) => name)).toEqual(['Runs']);
  });

  test('says what it can not do, keeps notes while it is open, and never changes', async () => {
    const host = valueOf(await open(trim));
    expect([host.kind, host.can]).toEqual([
      'file',
      {
        showCells: false,
        putFormulas: false,
        appendRows: false,
        writeInPlace: false,
        undoWrites: false,
      },
    ]);
    expect(codesOf(await host.show({ sheet: 'Runs', cell: 'A1' }))).toEqual(['host.cannot']);
    expect(codesOf(await host.putFormula('=1'))).toEqual(['host.cannot']);
    const [place] = valueOf(await host.survey()).places;
    expect(codesOf(await host.appendRows(place!, [['x']]))).toEqual(['host.cannot']);
    expect(await host.listSeparator()).toBe(',');
    expect(valueOf(await host.recall(['a'])).a).toBeUndefined();
    await host.remember({ a: 'b' });
    expect(valueOf(await host.recall(['a']))).toEqual({ a: 'b' });
    let calls = 0;
    const end = host.watch(() => {
      calls += 1;
    });
    await host.remember({ a: undefined });
    end();
    expect(calls).toBe(0);
  });

  test('is read without a sheet that is too vast to be a table', async () => {
    const far = `<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="IV1048576"><v>1</v></c></row>`;
    const { makeXlsx, row } = await import('./make-xlsx.ts');
    const bytes = makeXlsx({
      sheets: [
        ['Far', far],
        ['Runs', row(1, 'Room', 'Length')],
      ],
    });
    const survey = valueOf(await valueOf(await open(bytes)).survey());
    expect(survey.places.map(({ sheet }) => sheet)).toEqual(['Runs']);
  });
});

describe('What is typed into Excel', () => {
  const rowsOf = async (typed: readonly string[]): Promise<RawTable> => {
    const fake = inExcel([
      { name: 'Runs', rows: [['Room', 'Length'], ...typed.map((one) => ['Hall', { typed: one }])] },
    ]);
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    return valueOf(await host.readTable(place!, 'Runs'));
  };

  test('is read as it is shown', async () => {
    const table = await rowsOf(['15%', '$4.10', '(4.10)', '0 3/4', '3/4', '90 mm', '1,234.5']);
    expect(table.rows.map(({ cells }) => cells[1])).toEqual([
      { kind: 'shown', value: 15, text: '15%', unit: { kind: 'percent' } },
      { kind: 'shown', value: 4.1, text: '$4.1', unit: { kind: 'money', currency: '$' } },
      -4.1,
      0.75,
      { kind: 'date', day: '2026-03-04' },
      '90 mm',
      1234.5,
    ]);
  });
});

describe('Values that may be old', () => {
  const reading = async (set: (fake: FakeExcel) => void): Promise<RawTable> => {
    const fake = inExcel([
      {
        name: 'Runs',
        rows: [
          ['Room', 'Length'],
          ['Hall', 96],
        ],
      },
    ]);
    set(fake);
    const host = hostOf(fake);
    const [place] = valueOf(await host.survey()).places;
    return valueOf(await host.readTable(place!, 'Runs'));
  };

  test.each([
    ['Automatic', 'Done', []],
    ['AutomaticExceptTables', 'Done', []],
    ['Manual', 'Done', ['host.manual-calculation']],
    ['Manual', 'Pending', ['host.manual-calculation']],
    ['Automatic', 'Calculating', ['host.still-calculating']],
  ])('are said in Excel: %s, %s', async (mode, state, codes) => {
    const { cautions = [] } = await reading(({ workbook }) => {
      workbook.calculationMode = mode;
      workbook.calculationState = state;
    });
    expect(cautions.map(({ code }) => code)).toEqual(codes);
  });

  test('reach the person once, though every table says so', async () => {
    const runs = await reading(({ workbook }) => {
      workbook.calculationMode = 'Manual';
    });
    const { cautions } = readJob([runs, { ...runs, name: 'Stock' }], 'job');
    const own = cautions.filter(({ code }) => code === 'host.manual-calculation');
    expect(own.map(({ message }) => message)).toEqual([
      'Excel calculates only when it is asked to: values of formulas may be old. Press F9 there before you plan.',
    ]);
  });
});

test('Excel tells of a recalculation as of a change', async () => {
  const rows = [
    ['Room', 'Length'],
    ['Hall', { formula: '=A9*2', value: 96 }],
  ];
  const fake = inExcel([{ name: 'Runs', rows }]);
  const told: string[] = [];
  const end = hostOf(fake).watch((sheet) => told.push(sheet));
  await new Promise((resolve) => setTimeout(resolve, 5));
  await fake.recalculates(fake.workbook.sheets[0]!, 'B2', 97);
  expect(told).toEqual(['Runs']);
  end();
  await new Promise((resolve) => setTimeout(resolve, 5));
  await fake.recalculates(fake.workbook.sheets[0]!, 'B2', 98);
  expect(told).toEqual(['Runs']);
});
