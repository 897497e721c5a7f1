import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';

import type { Outcome } from '../../src/core/faults/fault.ts';
import { readRecords } from '../../src/hosts/csv/csv-records.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';

type Content = string | Uint8Array;

function table(content: Content): RawTable {
  const outcome = readCsvTable(content, 'runs.csv', 'Runs');
  if (!outcome.ok) throw new Error(outcome.faults.map((one) => one.message).join('\n'));
  return outcome.value;
}

/** Headings and rows with their lines. */
function linesOf(content: Content): unknown[] {
  const { headings, rows } = table(content);
  return [headings, ...rows].map(({ line, cells }) => [line, ...cells]);
}

function faultsOf(outcome: Outcome<RawTable>): unknown {
  return outcome.ok ? [] : outcome.faults;
}

const PLAIN = [
  [1, 'Room', 'Length'],
  [2, 'Hall', '96'],
];

describe('Reading CSV', () => {
  test('gives the table, its headings and rows with their lines', () => {
    expect(table('Room,Length\nHall,96\n')).toEqual({
      name: 'Runs',
      source: { kind: 'file', name: 'runs.csv' },
      headings: { line: 1, cells: ['Room', 'Length'] },
      rows: [{ line: 2, cells: ['Hall', '96'] }],
    });
  });

  test.each([
    ['commas', 'Room,Length\nHall,96\n'],
    ['semicolons', 'Room;Length\nHall;96\n'],
    ['tabs', 'Room\tLength\nHall\t96\n'],
    ['CRLF', 'Room,Length\r\nHall,96\r\n'],
    ['CR alone', 'Room,Length\rHall,96'],
    ['no last line end', 'Room,Length\nHall,96'],
    ['quotes round everything', '"Room","Length"\n"Hall","96"\n'],
    ['a mark of UTF-8', '\ufeffRoom,Length\nHall,96\n'],
  ])('is the same with %s, as text or bytes', (_, content) => {
    expect(linesOf(content)).toEqual(PLAIN);
    expect(linesOf(Buffer.from(content))).toEqual(PLAIN);
  });

  test('reads UTF-16 by its mark, either way round', () => {
    const little = Buffer.from('\ufeffRoom;Länge\nHall;½\n', 'utf16le');
    const expected = [
      [1, 'Room', 'Länge'],
      [2, 'Hall', '½'],
    ];
    expect(linesOf(little)).toEqual(expected);
    expect(linesOf(Buffer.from(little).swap16())).toEqual(expected);
  });

  test('takes what is not UTF-8 for Windows-1252', () => {
    // Windows-1252 (WHATWG Encoding, index-windows-1252): BD is ½, 93 and 94 quotes, E9 é.
    const bytes = Buffer.from('526f6f6d2c4e6f74650a48616c6c2c3320bd20939420e90a', 'hex');
    expect(linesOf(bytes)).toEqual([
      [1, 'Room', 'Note'],
      [2, 'Hall', '3 ½ “” é'],
    ]);
  });

  test('takes all of 0x80 to 0x9F as Windows-1252 has them', () => {
    // WHATWG Encoding, index-windows-1252, in its order.
    const published = [
      0x20ac, 0x81, 0x201a, 0x192, 0x201e, 0x2026, 0x2020, 0x2021, 0x2c6, 0x2030, 0x160, 0x2039,
      0x152, 0x8d, 0x17d, 0x8f, 0x90, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x2dc,
      0x2122, 0x161, 0x203a, 0x153, 0x9d, 0x17e, 0x178,
    ];
    const upper = Array.from({ length: 32 }, (_, index) => 0x80 + index);
    const bytes = Buffer.from([...Buffer.from('Room,Note\nHall,'), ...upper]);
    expect(table(bytes).rows[0]?.cells[1]).toBe(String.fromCharCode(...published));
  });

  test('finds the separator in the first line that has any, outside quotes', () => {
    expect(linesOf('My house\n"Room, or hall";Length;Note\nHall;3,5;a,b,c\n')).toEqual([
      [2, 'Room, or hall', 'Length', 'Note'],
      [3, 'Hall', '3,5', 'a,b,c'],
    ]);
  });

  test('counts lines through quoted line ends, blank lines and blank rows', () => {
    const content =
      'Room,Note\r\n\r\nHall,"two\r\nlines"\r\n,\r\n  ,\r\nDen,"a\n\n""b"""\r\nBath,x\r\n';
    expect(linesOf(content)).toEqual([
      [1, 'Room', 'Note'],
      [3, 'Hall', 'two\nlines'],
      [7, 'Den', 'a\n\n"b"'],
      [10, 'Bath', 'x'],
    ]);
  });

  test('keeps rows of unlike length, and cells as they stand', () => {
    expect(linesOf('a,b,c\n 1 ,=1+1\n-1,@x,+2,"4"\n')).toEqual([
      [1, 'a', 'b', 'c'],
      [2, ' 1 ', '=1+1'],
      [3, '-1', '@x', '+2', '4'],
    ]);
  });

  test('leaves inch marks alone in cells that are not quoted, and reads doubled ones in those that are', () => {
    const content = 'Room,Length,Note\nHall,3-1/2",a\nDen,"7\' 4 3/8""",b\nBath,"5" wide,c\n';
    expect(linesOf(content)).toEqual([
      [1, 'Room', 'Length', 'Note'],
      [2, 'Hall', '3-1/2"', 'a'],
      [3, 'Den', '7\' 4 3/8"', 'b'],
      [4, 'Bath', '"5" wide', 'c'],
    ]);
  });

  test.each(['', '\n\n', '\ufeff', ',,\n , \n'])(
    'gives no headings where there is nothing: %j',
    (text) => {
      expect(table(text)).toMatchObject({ headings: { line: 1, cells: [] }, rows: [] });
    },
  );

  test('reads back whatever RFC 4180 can write', () => {
    // RFC 4180, section 2: quotes round each cell, those inside doubled, CRLF after each record.
    const cell = fc
      .string({
        unit: fc.constantFrom('a', '"', ',', ';', '\n', '\t', ' ', 'é', '🪚'),
        maxLength: 8,
      })
      .filter((text) => !(text.startsWith('"') && text.includes('\n')));
    const record = fc.array(cell, { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(record, { maxLength: 6 }), (records) => {
        const all = [['Room', 'Length', 'Note'], ...records];
        const quoted = all.map((cells) => cells.map((one) => `"${one.replaceAll('"', '""')}"`));
        const content = quoted.map((cells) => `${cells.join(',')}\r\n`).join('');
        const { rows } = table(content);
        const filled = records.filter((cells) => cells.some((one) => one.trim() !== ''));
        expect(rows.map((row) => row.cells)).toEqual(filled);
        const lines = content.replaceAll('\r\n', '\n').split('\n');
        for (const { line, cells } of rows) {
          const text = lines.slice(line - 1).join('\n');
          const first = (cells[0] as string).replaceAll('"', '""');
          expect(text.startsWith(`"${first}"`)).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('A file that is no CSV', () => {
  test.each([
    ['at the end', 'Room,Note\nHall,"open\nDen,x\n', 2],
    ['after a quoted line end', 'Room,Note\nHall,"two\nlines"\nDen,"open\n\n\n', 4],
    ['before another quote', 'Room,Note\nHall,"open\nDen,"x"\nBath,y\n', 2],
    ['alone', '"', 1],
  ])('is refused with the line of a quote left open %s', (_, content, line) => {
    const outcome = readCsvTable(content, 'runs.csv', 'Runs');
    expect(faultsOf(outcome)).toMatchObject([
      { code: 'file.not-csv', where: { file: 'runs.csv', line, column: 1 } },
    ]);
    expect(outcome.ok ? '' : outcome.faults[0]?.message).toContain(`line ${line} `);
  });

  test.each([
    ['a zip', Buffer.from('504b030414000600', 'hex')],
    ['an old workbook', Buffer.from('d0cf11e0a1b11ae1', 'hex')],
    ['bytes with nothing between', Buffer.from('Room\0Length\n')],
    ['UTF-16 without its mark', Buffer.from('Room,Length\n', 'utf16le')],
  ])('is refused when it is %s', (_, bytes) => {
    expect(faultsOf(readCsvTable(bytes, 'runs.csv', 'Runs'))).toMatchObject([
      { code: 'file.not-text', given: 'runs.csv' },
    ]);
  });

  test('is refused by its size and by its rows', () => {
    const large = readCsvTable(new Uint8Array(50_000_001).fill(32), 'runs.csv', 'Runs');
    expect(faultsOf(large)).toMatchObject([{ code: 'file.too-large', limit: 50 }]);
    const rows = (count: number): string => `Room,Length\n${'Hall,96\n'.repeat(count)}`;
    expect(table(rows(20_000)).rows).toHaveLength(20_000);
    for (const count of [20_001, 39_999]) {
      expect(faultsOf(readCsvTable(rows(count), 'runs.csv', 'Runs'))).toMatchObject([
        { code: 'table.too-many-rows', argument: 'sheet.Runs', given: count, limit: 20_000 },
      ]);
    }
    const more = readCsvTable(rows(100_000), 'runs.csv', 'Runs');
    expect(more.ok ? '' : more.faults[0]!.message).toBe(
      'Runs has more than 39,999 rows; at most 20,000 are read.',
    );
  });

  const MB = 1_000_000;
  /** Bytes of so many megabytes: a beginning, then one text over and over. */
  const vast = (begin: string, unit: string, megabytes: number, end = ''): Uint8Array =>
    Buffer.concat([Buffer.from(begin), Buffer.alloc(megabytes * MB, unit), Buffer.from(end)]);

  test.each([
    ['rows without end', vast('Room,Length\n', 'Hall,12345678\n', 46), 'table.too-many-rows'],
    ['blank rows', vast('Room,Length\n', '\n', 48, 'Hall,9'), undefined],
    ['rows of separators', vast('Room,Length\n', ',,,\n', 48, 'Hall,9'), undefined],
    ['a wall of quotes', vast('Room,Length\n', '"', 40), 'file.not-csv'],
    ['quotes and letters', vast('Room,Length\n', '""x', 40), 'file.not-csv'],
    ['one cell', vast('Room,Length\nHall,', 'x', 49), 'file.not-csv'],
    ['one quoted cell of lines', vast('Room,Length\nHall,"', 'x\n', 49), 'file.not-csv'],
    ['one row of cells', vast('Room,Length\nHall', ',x', 49), 'file.not-csv'],
    ['a first line without end', vast('', 'x,', 49), 'file.not-csv'],
    ['carriage returns', vast('Room,Length\n', '\r', 48, 'Hall,9'), undefined],
    ['blank rows to its end', vast('Room,Length\nHall,9\n', ' ,\t\r\n', 48), undefined],
  ])('ends soon on %s, in memory that the file bounds', (_, bytes, code) => {
    const [before, began] = [process.memoryUsage().rss, performance.now()];
    const outcome = readCsvTable(bytes, 'runs.csv', 'Runs');
    // Fifteen times and more what it takes on one core that does nothing else.
    expect(performance.now() - began).toBeLessThan(30_000);
    expect(process.memoryUsage().rss - before).toBeLessThan(600 * MB);
    expect(faultsOf(outcome)).toMatchObject(code === undefined ? [] : [{ code }]);
    for (const { message } of outcome.ok ? [] : outcome.faults) {
      expect(message.length).toBeLessThan(200);
    }
  });

  test('counts the lines of blank rows that it passes over', () => {
    const blank = (count: number): string => ', \t\r\n'.repeat(count);
    for (const count of [999, 1_000, 1_001, 5_000]) {
      const content = `${blank(count)}Room,Note\n${blank(count)}Hall,"a\n\nb"\n \nDen,x\n${blank(count)}`;
      expect(linesOf(content)).toEqual([
        [count + 1, 'Room', 'Note'],
        [2 * count + 2, 'Hall', 'a\n\nb'],
        [2 * count + 6, 'Den', 'x'],
      ]);
      expect(faultsOf(readCsvTable(`${content}"open`, 'runs.csv', 'Runs'))).toMatchObject([
        { where: { line: 3 * count + 7 } },
      ]);
    }
  });

  test('stops at rows that are blank by their quotes alone, once they are a sheet full', () => {
    const bytes = vast('Room,Length\n', '"",""\n', 12);
    expect(faultsOf(readCsvTable(bytes, 'runs.csv', 'Runs'))).toMatchObject([
      { code: 'file.too-many-lines', limit: 1_048_576 },
    ]);
  });

  test('looks at no more records than it needs to know that there are too many', () => {
    const seen = { records: 0, lastLine: 0 };
    const read = readRecords(vast('a,b\n', 'x,y\n', 20), 'x.csv', (_cells, line) => {
      seen.records += 1;
      seen.lastLine = line;
      return seen.records === 1_000 ? 'stop' : 'go on';
    });
    expect([read.ok, seen]).toEqual([true, { records: 1_000, lastLine: 1_000 }]);
  });

  test('reads a row as long as it may be, and no longer', () => {
    // A table's cells have a limit of their own, where they are read.
    const long = (count: number): string => `Room,Note\nHall,${'x'.repeat(count)}\nDen,y\n`;
    expect(table(long(999_000)).rows).toHaveLength(2);
    expect(faultsOf(readCsvTable(long(1_000_001), 'runs.csv', 'Runs'))).toMatchObject([
      { code: 'file.not-csv', where: { file: 'runs.csv', line: 2, column: 1 } },
    ]);
  });
});
