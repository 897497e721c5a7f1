import { describe, expect, test } from '@jest/globals';
import { zipSync } from 'fflate';

import type { Outcome } from '../../src/core/faults/fault.ts';
import { scanSheets } from '../../src/hosts/xlsx/scan-sheets.ts';
import { readWorkbook } from '../../src/hosts/xlsx/read-workbook.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { count } from '../deep.ts';
import { makeXlsx, row } from './make-xlsx.ts';
import { HOSTILE_TEXTS, workbook } from './sample-workbook.ts';

async function tablesOf(bytes: Uint8Array, ...names: string[]): Promise<readonly RawTable[]> {
  const outcome = await readWorkbook(bytes, 'job.xlsx', names);
  if (!outcome.ok) throw new Error(outcome.faults.map((one) => one.message).join('\n'));
  return outcome.value;
}

async function runsOf(sheetData: string, sharedStrings = ''): Promise<RawTable> {
  const [table] = await tablesOf(
    makeXlsx({ sheets: [['Runs', sheetData]], sharedStrings }),
    'Runs',
  );
  return table!;
}

function codes(outcome: Outcome<unknown>): string[] {
  return outcome.ok ? [] : outcome.faults.map((one) => one.code);
}

describe('Reading a workbook', () => {
  test('finds the sheets looked for by name, whatever the case and spaces', async () => {
    const bytes = makeXlsx({
      sheets: [
        ['How to', row(1, 'Fill in Runs')],
        [' sTOCK ', row(1, 'For', 'Kind')],
        ['Runs', row(1, 'Room', 'Length')],
      ],
    });
    const tables = await tablesOf(bytes, 'Runs', 'Stock', 'Openings');
    expect(tables.map(({ name, source }) => [name, source])).toEqual([
      ['Runs', { kind: 'sheet', name: 'Runs' }],
      ['Stock', { kind: 'sheet', name: ' sTOCK ' }],
    ]);
  });

  test('gives each cell as what it is', async () => {
    const cells = [
      '<c r="A2" t="s"><v>0</v></c>',
      '<c r="B2" t="s"><v>1</v></c>',
      '<c r="C2"><v>96.5</v></c>',
      '<c r="D2" t="b"><v>1</v></c>',
      '<c r="E2" s="1"><v>45352</v></c>',
      '<c r="F2" s="2"><v>0.5</v></c>',
      '<c r="G2" t="e"><v>#N/A</v></c>',
      '<c r="H2" t="e"><f>1/0</f><v>#DIV/0!</v></c>',
      '<c r="I2"><f>A1</f></c>',
      '<c r="J2"><f t="shared" ref="J2:J3" si="0">1+1</f><v>2</v></c>',
      '<c r="K2"><f t="shared" si="0"/></c>',
      '<c r="L2" t="str"><f>"a"&amp;"b"</f><v>ab</v></c>',
      '<c r="M2" s="1"><f>TODAY()</f><v>45352</v></c>',
      '<c r="N2" s="3"/>',
      '<c r="O2" t="inlineStr"><is><r><t xml:space="preserve">3 </t></r><r><t>1/2</t></r></is></c>',
      '<c r="P2" t="s" s="3"><v>2</v></c>',
    ];
    const shared = [
      '<si><t>Hall &amp; stair</t></si>',
      '<si><r><t xml:space="preserve">rich </t></r><r><rPr><b/></rPr><t>text</t></r></si>',
      '<si><t>two_x000D_\nlines</t></si>',
    ];
    const table = await runsOf(
      `${row(1, 'Room', 'Length')}<row r="2">${cells.join('')}</row>`,
      shared.join(''),
    );
    expect(table.rows).toEqual([
      {
        line: 2,
        cells: [
          'Hall & stair',
          'rich text',
          96.5,
          true,
          { kind: 'date', day: '2024-03-01' },
          { kind: 'date' },
          { kind: 'error', text: '#N/A' },
          { kind: 'error', text: '#DIV/0!' },
          { kind: 'uncalculated' },
          2,
          { kind: 'uncalculated' },
          'ab',
          { kind: 'date', day: '2024-03-01' },
          null,
          '3 1/2',
          'two\r\nlines',
        ],
      },
    ]);
  });

  test('takes the first row with two texts as headings, and leaves out blank rows', async () => {
    const table = await runsOf(
      [
        row(2, 'Runs of the Maple house'),
        row(3, 2024),
        row(4, null, 'Room', 'Length'),
        row(5, ' ', ''),
        row(7, null, 'Hall', 96),
        '<row r="8"><c r="A8" s="3"/><c r="B8" s="3"/></row>',
        row(9, null, null, 12),
      ].join(''),
    );
    expect(table.headings).toEqual({ line: 4, cells: [null, 'Room', 'Length'] });
    expect(table.rows).toEqual([
      { line: 7, cells: [null, 'Hall', 96] },
      { line: 9, cells: [null, null, 12] },
    ]);
  });

  test('gives a table of one column its heading, and an empty sheet none', async () => {
    expect(await runsOf(row(1, 'Room') + row(2, 'Hall'))).toMatchObject({
      headings: { line: 1, cells: ['Room'] },
      rows: [{ line: 2, cells: ['Hall'] }],
    });
    expect(await runsOf('')).toMatchObject({ headings: { line: 1, cells: [] }, rows: [] });
  });

  test('does not count rows that have formats alone, down to the last of the sheet', async () => {
    const formatted = Array.from({ length: 21_000 }, (_, index) => {
      const at = index + 3;
      return `<row r="${at}"><c r="A${at}" s="3"/><c r="B${at}" s="3"/></row>`;
    });
    const last = '<row r="1048576"><c r="A1048576" s="3"/></row>';
    const table = await runsOf(
      row(1, 'Room', 'Length') + row(2, 'Hall', 96) + formatted.join('') + last,
    );
    expect(table.rows).toEqual([{ line: 2, cells: ['Hall', 96] }]);
  });

  test('reads 20,000 rows of a table, and refuses one more', async () => {
    const data = Array.from({ length: 20_001 }, (_, index) => row(index + 2, 'Hall', 96));
    const headed = (count: number) => row(1, 'Room', 'Length') + data.slice(0, count).join('');
    expect((await runsOf(headed(20_000))).rows).toHaveLength(20_000);
    const sheets = [['Runs', headed(20_001)] as const];
    const outcome = await readWorkbook(makeXlsx({ sheets }), 'job.xlsx', ['Runs']);
    expect(outcome).toMatchObject({
      ok: false,
      faults: [{ code: 'table.too-many-rows', given: 20_001, limit: 20_000 }],
    });
  });

  test('refuses a sheet whose corners are far apart in one line', async () => {
    const far = row(1, 'Room', 'Length') + '<row r="1048576"><c r="IV1048576"><v>1</v></c></row>';
    const outcome = await readWorkbook(makeXlsx({ sheets: [['Runs', far]] }), 'job.xlsx', ['Runs']);
    expect(codes(outcome)).toEqual(['table.too-many-rows']);
  });

  test('reads back what our own writer wrote, text and numbers alike', async () => {
    const rows = [
      { cells: [{ value: 'Room' }, { value: 'Length' }] },
      ...HOSTILE_TEXTS.map((value, index) => ({ cells: [{ value }, { value: index / 3 }] })),
    ];
    const bytes = await writeWorkbook(
      workbook([{ name: 'Runs', rows, columns: [{ width: 9, style: 'inputText' }] }]),
    );
    const [table] = await tablesOf(bytes, 'Runs');
    expect(table?.rows.map((one) => one.cells)).toEqual(
      HOSTILE_TEXTS.map((text, index) => [text, index / 3]),
    );
  });

  test('says all that is missing or twice there at once', async () => {
    const sheets = ['Runs', 'Run s', 'Shop'].map((name) => [name, row(1, 'a', 'b')] as const);
    const wanted = ['Runs', 'Profiles', 'Openings', 'Stock', 'Shop'];
    const outcome = await readWorkbook(makeXlsx({ sheets }), 'job.xlsx', wanted, [
      'Runs',
      'Profiles',
      'Stock',
    ]);
    expect(outcome).toMatchObject({
      ok: false,
      faults: [
        { code: 'table.twice', argument: 'sheet.Runs', given: 'job.xlsx' },
        { code: 'table.missing', argument: 'sheet.Profiles' },
        { code: 'table.missing', argument: 'sheet.Stock' },
      ],
    });
  });
});

describe('A file that is no workbook to read', () => {
  const sound = makeXlsx({ sheets: [['Runs', row(1, 'Room', 'Length')]] });
  const compound = (text: string): Uint8Array =>
    Buffer.concat([
      Buffer.from('d0cf11e0a1b11ae1', 'hex'),
      Buffer.alloc(512),
      Buffer.from(text, 'utf16le'),
      Buffer.alloc(512),
    ]);
  const flipped = (at: number): Uint8Array => {
    const bytes = Uint8Array.from(sound);
    bytes[at]! ^= 0xff;
    return bytes;
  };

  const torn = (end: string): Uint8Array => {
    const whole = `<worksheet><sheetData>${row(1, 'Room')}</sheetData></worksheet>`;
    return makeXlsx({
      sheets: [['Runs', '']],
      parts: { 'xl/worksheets/sheet1.xml': whole.replace(end, '') },
    });
  };

  test.each([
    ['nothing at all', new Uint8Array(0), 'file.not-workbook'],
    ['text', Buffer.from('Room,Length\nHall,96\n'), 'file.not-workbook'],
    [
      'noise',
      Buffer.from(Array.from({ length: 5000 }, (_, i) => (i * 7919) % 251)),
      'file.not-workbook',
    ],
    ['half a zip', sound.slice(0, sound.length / 2), 'file.not-workbook'],
    ['a sheet that stops before its end', torn('</sheetData></worksheet>'), 'file.torn'],
    ['a sheet whose cells stop before its end', torn('</sheetData>'), 'file.torn'],
    [
      'a zip with a byte changed in its middle',
      flipped(Math.floor(sound.length / 3)),
      'file.not-workbook',
    ],
    ['a zip of something else', zipSync({ 'a.txt': Buffer.from('hello') }), 'file.not-workbook'],
    ['a zip with nothing in it', zipSync({}), 'file.not-workbook'],
    ['an old .xls', compound('Workbook'), 'file.old-workbook'],
    ['a workbook with a password', compound('EncryptedPackage'), 'file.protected'],
    [
      'a workbook whose sheet is broken off',
      makeXlsx({
        sheets: [['Runs', '']],
        parts: { 'xl/worksheets/sheet1.xml': '<worksheet><sheetData><row r="1"><c r="A1' },
      }),
      'file.torn',
    ],
  ])('is refused in one line: %s', async (_, bytes, code) => {
    const outcome = await readWorkbook(bytes, 'job.xlsx', ['Runs']);
    expect(codes(outcome)).toEqual([code]);
    expect(outcome.ok ? '' : outcome.faults[0]?.message).toMatch(/^“job\.xlsx” [^\n]*\.$/);
  });

  test.each([
    ['rows', '<row/>', 2_097_153],
    ['cells', '<c/>', 8_000_001],
  ])(
    'is refused by its %s, empty ones counted, before anything is built of them: %s',
    async (what, unit, many) => {
      const bytes = makeXlsx({ sheets: [['Runs', unit.repeat(many)]] });
      const outcome = await readWorkbook(bytes, 'job.xlsx', ['Runs']);
      expect(codes(outcome)).toEqual(['file.too-many-cells']);
      expect(outcome.ok ? '' : outcome.faults[0]?.message).toMatch(
        new RegExp(`^“job\\.xlsx” has more than ${(many - 1).toLocaleString('en')} ${what} `),
      );
    },
    20_000,
  );

  test('is refused by the size of its formats', async () => {
    const xml = `<styleSheet><cellXfs>${'<xf/>'.repeat(1_400_000)}</cellXfs></styleSheet>`;
    const bytes = makeXlsx({
      sheets: [['Runs', row(1, 'a', 'b')]],
      parts: { 'xl/styles.xml': xml },
    });
    const outcome = await readWorkbook(bytes, 'job.xlsx', ['Runs']);
    expect(outcome.ok ? '' : outcome.faults[0]!.message).toBe(
      'The list of formats of job.xlsx, unpacked, is 7.1 MB; at most 6.5 MB are read.',
    );
  });

  test('is read with a sheet whose formats reach far below its rows', async () => {
    const formats = '<row s="1" customFormat="1"/>'.repeat(count(1_048_500));
    const bytes = makeXlsx({ sheets: [['Runs', row(1, 'a', 'b') + row(2, 1, 2) + formats]] });
    expect(await readWorkbook(bytes, 'job.xlsx', ['Runs'])).toMatchObject({
      ok: true,
      value: [{ rows: [{ line: 2 }] }],
    });
  });

  test('counts rows and cells of any prefix, and nothing that is called alike', () => {
    const xml =
      '<x:worksheet><x:cols><x:col/></x:cols><x:sheetData><x:row><x:c/><x:c r="B1"><x:v>&lt;c/></x:v></x:c></x:row><x:rowBreaks/></x:sheetData></x:worksheet>';
    const bytes = makeXlsx({ sheets: [['Runs', '']], parts: { 'xl/worksheets/sheet1.xml': xml } });
    expect(scanSheets(bytes, { rows: 9, cells: 9 })).toEqual({ isTorn: false, rows: 1, cells: 2 });
  });

  test('is refused by its size', async () => {
    const outcome = await readWorkbook(new Uint8Array(50_000_001), 'job.xlsx', ['Runs']);
    expect(outcome).toMatchObject({
      ok: false,
      faults: [{ code: 'file.too-large', given: 50.1, limit: 50 }],
    });
  });

  /** A workbook whose directory claims that a part unpacks to so many bytes (APPNOTE 4.3.12). */
  function claiming(part: string, bytes: number, sheetData = row(1, 'Room', 'Length')): Uint8Array {
    const made = Uint8Array.from(makeXlsx({ sheets: [['Runs', sheetData]] }));
    const view = new DataView(made.buffer);
    const at = Buffer.from(made).lastIndexOf(Buffer.from(part)) - 46;
    expect(view.getUint32(at, true)).toBe(0x02014b50);
    view.setUint32(at + 24, bytes, true);
    return made;
  }

  test.each([
    ['xl/worksheets/sheet1.xml', 130_000_000, 128],
    ['xl/sharedStrings.xml', 17_000_000, 16],
  ])('is refused by what %s would unpack to, before it is', async (part, bytes, limit) => {
    const outcome = await readWorkbook(claiming(part, bytes), 'job.xlsx', ['Runs']);
    expect(outcome).toMatchObject({ ok: false, faults: [{ code: 'file.too-large', limit }] });
  });

  test.each([0, 100, 0xffffffff])(
    'is refused where its directory claims %d bytes for a part of a million',
    async (claimed) => {
      const bytes = claiming('xl/worksheets/sheet1.xml', claimed, ' '.repeat(1_000_000));
      // What it claims is all that is ever unpacked, so that the sheet stops before its end.
      const [code] = codes(await readWorkbook(bytes, 'job.xlsx', ['Runs']));
      expect(['file.torn', 'file.not-workbook']).toContain(code);
    },
  );
});
