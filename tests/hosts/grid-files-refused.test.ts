import { describe, expect, test } from '@jest/globals';
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { strToU8, zipSync } from 'fflate';

import { openIntoGrid, type Opened } from '../../src/hosts/grid/from-file/open-into-grid.ts';
import { makeXlsx, row } from './make-xlsx.ts';

async function open(bytes: Uint8Array, name = 'job.xlsx'): Promise<Opened> {
  const outcome = await openIntoGrid(bytes, name);
  if (!outcome.ok) throw new Error(outcome.faults.map((one) => one.message).join('\n'));
  return outcome.value;
}

async function codes(bytes: Uint8Array, name = 'job.xlsx'): Promise<string[]> {
  const outcome = await openIntoGrid(bytes, name);
  return outcome.ok ? [] : outcome.faults.map((one) => one.code);
}

/** A cell of the first sheet, by row and column from 1. */
function at({ data }: Opened, r: number, c: number): ICellData | undefined {
  return data.sheets['sheet-1']?.cellData?.[r - 1]?.[c - 1];
}

function formatOf(data: IWorkbookData, cell: ICellData | undefined): string | undefined {
  return typeof cell?.s === 'string' ? data.styles[cell.s]?.n?.pattern : undefined;
}

const cell = (where: string, inside: string, more = ''): string =>
  `<c r="${where}" ${more}>${inside}</c>`;
const rowOf = (number: number, ...cells: string[]): string =>
  `<row r="${number}">${cells.join('')}</row>`;

describe('A CSV file opened into the grid', () => {
  test('is one sheet of its name: plain numbers are numbers, all else is text as it stands', async () => {
    const opened = await open(
      Buffer.from('Room;Length;No\nHall;3/4;007\n\nDen;96.5;=1+1\n'),
      'My: list.csv',
    );
    expect(opened.data.sheets['sheet-1']!.name).toBe('My  list');
    const rows = [1, 2, 3, 4].map((r) => [1, 2, 3].map((c) => at(opened, r, c)?.v ?? null));
    expect(rows).toEqual([
      ['Room', 'Length', 'No'],
      ['Hall', '3/4', '007'],
      [null, null, null],
      ['Den', 96.5, '=1+1'],
    ]);
    expect(formatOf(opened.data, at(opened, 2, 2))).toBe('@');
  });

  test('may be UTF-16 or Windows-1252, with tabs', async () => {
    const wide = await open(Buffer.from('\ufeffRoom\tNote\nHall\t½\n', 'utf16le'), 'a.csv');
    const old = await open(Buffer.from('526f6f6d094e0a48616c6c09bd0a', 'hex'), 'a.txt');
    expect([at(wide, 2, 2)?.v, at(old, 2, 2)?.v]).toEqual(['½', '½']);
  });
});

describe('A file that is refused', () => {
  const zip = makeXlsx({ sheets: [['Sheet', row(1, 'a')]] });
  const compound = Buffer.from('d0cf11e0a1b11ae1', 'hex');
  const locked = Buffer.concat([compound, Buffer.from('EncryptedPackage', 'utf16le')]);
  const bomb = zipSync({ 'xl/worksheets/sheet1.xml': new Uint8Array(140_000_000) }, { level: 1 });

  test.each<[string, string, Uint8Array, string]>([
    ['more than 50 MB', 'job.xlsx', new Uint8Array(50_000_001), 'file.too-large'],
    ['behind a password', 'job.xlsx', locked, 'file.protected'],
    ['an old .xls', 'job.xls', compound, 'file.old-workbook'],
    ['CSV called .xlsx', 'job.xlsx', Buffer.from('Room,Length\nHall,96\n'), 'file.not-workbook'],
    ['a workbook called .csv', 'job.csv', zip, 'file.not-text'],
    ['cut off', 'job.xlsx', zip.subarray(0, zip.length - 30), 'file.not-workbook'],
    ['some other zip', 'job.xlsx', zipSync({ 'a.txt': strToU8('a') }), 'file.not-workbook'],
    ['small and unpacks to a mountain', 'job.xlsx', bomb, 'file.too-large'],
    ['without a sheet', 'job.xlsx', makeXlsx({ sheets: [] }), 'grid.no-sheet'],
    ['CSV with nothing in it', 'job.csv', Buffer.from(',,\n\n'), 'grid.no-sheet'],
    ['CSV with an open quote', 'job.csv', Buffer.from('a,b\n"c,d\n'), 'file.not-csv'],
    [
      'CSV of 30,001 rows',
      'job.csv',
      Buffer.from('Hall,96\n'.repeat(30_001)),
      'grid.too-many-rows',
    ],
  ])('is %s', async (_, name, bytes, code) => {
    const outcome = await openIntoGrid(bytes, name);
    expect(outcome).toMatchObject({ ok: false, faults: [{ code }] });
    const said = outcome.ok ? '' : outcome.faults[0]!.message;
    expect(said).toMatch(/job\.|XLSX|grid/u);
  });

  test('has more rows, or more cells, than the page works with; a far formatted cell is no row', async () => {
    const far = (n: number, inside: string): string =>
      row(1, 'a') + rowOf(n, cell(`A${n}`, inside, 's="1"'));
    const sheet = (data: string): Uint8Array => makeXlsx({ sheets: [['Far', data]] });
    expect(await codes(sheet(far(30_001, '<v>1</v>')))).toEqual(['grid.too-many-rows']);
    expect(await codes(sheet(far(30_001, '')))).toEqual([]);
    expect(await codes(sheet(far(1_048_576, '')))).toEqual([]);
    expect(await codes(sheet(`${row(1, 'a')}<!--${' '.repeat(24_100_000)}-->`))).toEqual([
      'grid.too-large',
    ]);
  });
});
