import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, test } from '@jest/globals';

import { sayArgument } from '../../src/core/faults/argument.ts';
import type { Outcome } from '../../src/core/faults/fault.ts';
import { readJobInput } from '../../src/hosts/file/read-job-input.ts';
import { saveFile } from '../../src/hosts/file/save-files.ts';
import { makeXlsx, row } from './make-xlsx.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coveledger-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});
const at = (...names: string[]): string => join(folder, ...names);

const WANTED = [
  { name: 'Runs', required: true },
  { name: 'Openings', required: false },
  { name: 'Stock', required: true },
];

function faultsOf(outcome: Outcome<unknown>): unknown[] {
  return outcome.ok
    ? []
    : outcome.faults.map(({ code, argument, given }) => [code, sayArgument(argument), given]);
}

/** A user without rights of any kind, on Unix-like systems. */
const NOBODY = 65_534;

/** Permissions bind no superuser, so the work is done as nobody where the tests run as one. */
async function asOrdinaryUser<T>(work: () => Promise<T>): Promise<T> {
  if (process.getuid?.() !== 0) return work();
  process.seteuid?.(NOBODY);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}
/** Windows has other permissions than these. */
const unixTest = process.platform === 'win32' ? test.skip : test;

describe("A job's input", () => {
  test('is read from a folder, its files named in any case', async () => {
    writeFileSync(at('RUNS.csv'), 'Room,Length\nHall,96\n');
    writeFileSync(at('stock.CSV'), 'For;Length\nOak;120\n');
    writeFileSync(at('notes.txt'), 'nothing to do with it');
    const outcome = await readJobInput(folder, WANTED);
    expect(outcome).toMatchObject({
      ok: true,
      value: [
        { name: 'Runs', source: { kind: 'file', name: 'RUNS.csv' }, rows: [{ line: 2 }] },
        { name: 'Stock', source: { kind: 'file', name: 'stock.CSV' }, rows: [{ line: 2 }] },
      ],
    });
  });

  test('is read from a workbook', async () => {
    const sheets = ['Runs', 'Stock'].map(
      (name) => [name, row(1, 'a', 'b') + row(2, 1, 2)] as const,
    );
    writeFileSync(at('job.XLSX'), makeXlsx({ sheets }));
    const outcome = await readJobInput(at('job.XLSX'), WANTED);
    expect(outcome).toMatchObject({ ok: true, value: [{ name: 'Runs' }, { name: 'Stock' }] });
  });

  test('is refused with everything that is wrong in a folder at once', async () => {
    mkdirSync(at('runs.csv'));
    writeFileSync(at('openings.csv'), 'Room,"Wall\n');
    expect(faultsOf(await readJobInput(folder, WANTED))).toEqual([
      ['file.is-folder', 'file', at('runs.csv')],
      ['file.not-csv', 'file', 'openings.csv'],
      ['table.missing', 'Stock', folder],
    ]);
  });

  test('is refused where two files differ in case alone', async () => {
    writeFileSync(at('runs.csv'), 'Room,Length\n');
    writeFileSync(at('Runs.csv'), 'Room,Length\n');
    // Some disks take the two for one.
    const expected = readdirSync(folder).length === 2 ? [['table.twice', 'Runs', folder]] : [];
    expect(faultsOf(await readJobInput(folder, WANTED.slice(0, 1)))).toEqual(expected);
  });

  test('is refused from a folder without any of its files, a missing path and other kinds', async () => {
    expect(faultsOf(await readJobInput(folder, WANTED))).toEqual([
      ['table.missing', 'Runs', folder],
      ['table.missing', 'Stock', folder],
    ]);
    expect(faultsOf(await readJobInput(at('none.xlsx'), WANTED))).toEqual([
      ['file.missing', 'file', at('none.xlsx')],
    ]);
    writeFileSync(at('job.pdf'), '%PDF-1.4');
    expect(faultsOf(await readJobInput(at('job.pdf'), WANTED))).toEqual([
      ['file.not-folder-or-workbook', 'input', at('job.pdf')],
    ]);
    writeFileSync(at('job.xlsx'), 'Room,Length\n');
    expect(faultsOf(await readJobInput(at('job.xlsx'), WANTED))).toEqual([
      ['file.not-workbook', 'workbook', at('job.xlsx')],
    ]);
    expect(faultsOf(await readJobInput(at('job.xlsx', 'deeper'), WANTED))).toEqual([
      ['file.unreadable', 'file', at('job.xlsx', 'deeper')],
    ]);
  });

  test('of more than 50 MB is refused without being read', async () => {
    writeFileSync(at('job.xlsx'), new Uint8Array(50_000_001));
    expect(faultsOf(await readJobInput(at('job.xlsx'), WANTED))).toEqual([
      ['file.too-large', at('job.xlsx'), 50.1],
    ]);
  });

  unixTest('that may not be read is refused', async () => {
    writeFileSync(at('runs.csv'), 'Room,Length\n');
    chmodSync(at('runs.csv'), 0);
    chmodSync(folder, 0o755);
    const outcome = await asOrdinaryUser(() => readJobInput(folder, WANTED.slice(0, 1)));
    expect(faultsOf(outcome)).toEqual([['file.unreadable', 'file', at('runs.csv')]]);
  });
});

describe('Saving a file', () => {
  const bytes = Buffer.from('new');
  const save = (path: string, replace = false): Promise<Outcome<string>> =>
    saveFile(path, bytes, { replace });

  test('writes it whole and leaves nothing beside it', async () => {
    expect(await save(at('out.xlsx'))).toEqual({ ok: true, value: at('out.xlsx') });
    expect(readdirSync(folder)).toEqual(['out.xlsx']);
    expect(readFileSync(at('out.xlsx'), 'utf8')).toBe('new');
  });

  test('takes a name as long as the disk allows', async () => {
    const name = `${'n'.repeat(250)}.xlsx`;
    expect((await save(at(name))).ok).toBe(true);
    expect(readdirSync(folder)).toEqual([name]);
    const longer = at(`${'n'.repeat(300)}.xlsx`);
    expect(faultsOf(await save(longer))).toEqual([['file.not-written', 'file', longer]]);
  });

  test('of two calls at once, one is refused', async () => {
    const both = await Promise.all([save(at('out.xlsx')), save(at('out.xlsx'))]);
    expect(both.flatMap(faultsOf)).toEqual([['file.exists', 'file', at('out.xlsx')]]);
    expect(readdirSync(folder)).toEqual(['out.xlsx']);
  });

  test('refuses to replace a file unless asked to', async () => {
    writeFileSync(at('out.xlsx'), 'old and longer');
    expect(faultsOf(await save(at('out.xlsx')))).toEqual([['file.exists', 'file', at('out.xlsx')]]);
    expect(readFileSync(at('out.xlsx'), 'utf8')).toBe('old and longer');
    expect((await save(at('out.xlsx'), true)).ok).toBe(true);
    expect(readFileSync(at('out.xlsx'), 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['out.xlsx']);
  });

  test('refuses a folder in its place and a folder that is not there', async () => {
    mkdirSync(at('out.xlsx'));
    expect(faultsOf(await save(at('out.xlsx'), true))).toEqual([
      ['file.is-folder', 'file', at('out.xlsx')],
    ]);
    expect(faultsOf(await save(at('none', 'out.xlsx')))).toEqual([
      ['file.missing', 'folder', at('none')],
    ]);
    writeFileSync(at('file'), '');
    expect(faultsOf(await save(at('file', 'out.xlsx')))).toEqual([
      ['file.not-written', 'file', at('file', 'out.xlsx')],
    ]);
    expect(readdirSync(folder).sort()).toEqual(['file', 'out.xlsx']);
  });

  test('leaves what was there, and nothing beside it, when it can not finish', async () => {
    writeFileSync(at('out.xlsx'), 'old');
    // Bytes that can not be written stand for a disk that fails half way.
    const broken = { length: 3 } as Uint8Array;
    await expect(saveFile(at('out.xlsx'), broken, { replace: true })).rejects.toMatchObject({
      name: 'TypeError',
    });
    expect(readFileSync(at('out.xlsx'), 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['out.xlsx']);
  });

  test('says why in words when the system refuses', async () => {
    const long = at(`${'x'.repeat(300)}.xlsx`);
    const outcome = await save(long);
    expect(faultsOf(outcome)).toEqual([['file.not-written', 'file', long]]);
    expect(outcome.ok ? '' : outcome.faults[0]?.message).toContain('the name is too long');
  });

  const linksCount = process.platform !== 'win32';
  (linksCount ? test : test.skip)('keeps a link and replaces what it leads to', async () => {
    mkdirSync(at('elsewhere'));
    writeFileSync(at('elsewhere', 'true.xlsx'), 'old');
    symlinkSync(at('elsewhere', 'true.xlsx'), at('link.xlsx'));
    expect((await save(at('link.xlsx'), true)).ok).toBe(true);
    expect(readFileSync(at('elsewhere', 'true.xlsx'), 'utf8')).toBe('new');
    expect(readdirSync(at('elsewhere'))).toEqual(['true.xlsx']);
  });

  unixTest('refuses where it is not permitted to', async () => {
    chmodSync(folder, 0o555);
    const outcome = await asOrdinaryUser(() => save(at('out.xlsx')));
    chmodSync(folder, 0o755);
    expect(faultsOf(outcome)).toEqual([['file.not-written', 'file', at('out.xlsx')]]);
    expect(readdirSync(folder)).toEqual([]);
  });
});
