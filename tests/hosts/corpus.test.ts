/** Real files of the corpus through every door: the same meaning, or the same refusals. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, test } from '@jest/globals';
import { parseLength } from '../../src/core/units/length.ts';
import type { Fault } from '../../src/core/faults/fault.ts';
import { csvWorkbook } from '../../src/hosts/grid/from-file/csv-workbook.ts';
import { readCsvTable } from '../../src/hosts/file/read-csv.ts';
import { readJobInput, readJobTables } from '../../src/hosts/file/read-job-input.ts';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import type { PlainWorkbook } from '../../src/hosts/workbook/plain-workbook.ts';
import { openFileHost } from '../../src/hosts/xlsx/open-file-host.ts';
import { readFileWorkbook } from '../../src/hosts/xlsx/read-file-workbook.ts';
import type { RawTable } from '../../src/planning/input/raw-table.ts';
import { JOB_TABLES, readJob, type JobReading } from '../../src/planning/input/read-job.ts';
import { recognizeTables } from '../../src/planning/input/recognize-tables.ts';
import type { PersonsCell } from './excel-fake/fake-excel.ts';
import { codesOf, hostOf, valueOf } from './excel-workbooks.ts';
import { inExcel, type PersonsSheet } from './persons-sheets.ts';

const CORPUS = join(import.meta.dirname, '..', 'corpus');
const fileOf = (...path: readonly string[]): Uint8Array => readFileSync(join(CORPUS, ...path));
const meaningOf = (folder: string): Meaning =>
  JSON.parse(readFileSync(join(CORPUS, folder, 'meaning.json'), 'utf8')) as Meaning;

type Size = string | number;
interface Meaning {
  readonly runs?: readonly (readonly [string, string, string, Size, number])[];
  readonly profiles?: readonly (readonly [string, Size, Size, number])[];
  readonly stock?: readonly (readonly [string, Size, number, number])[];
  readonly shop?: Readonly<Record<string, Size>>;
  /** Code and table and line of each fault; of two codes the first is that of a CSV. */
  readonly faults?: readonly (readonly [string, string, number])[];
  /** Codes of faults that a CSV can't have: it holds what was seen. */
  readonly savedAsText?: readonly string[];
  readonly cautions: Readonly<Record<string, string>>;
  /** Cautions that a CSV can't give. */
  readonly hidden?: Readonly<Record<string, string>>;
}

const inches = (size: Size): number => {
  const read = parseLength(String(size), 'width');
  return read.ok ? Number(Number(read.value).toFixed(6)) : Number.NaN;
};
const lengthOf = (value: unknown): number => Number(Number(value).toFixed(6));

/** Every door with the tables that it reads of a workbook. */
async function throughHost(host: WorkbookHost): Promise<RawTable[]> {
  const { places } = valueOf(await host.survey());
  const chosen = recognizeTables(places).flatMap(({ name, chosen: place }) =>
    place === undefined ? [] : [{ name, place }],
  );
  return Promise.all(
    chosen.map(async ({ name, place }) => valueOf(await host.readTable(place, name))),
  );
}

/** What the grid opens, as a person's sheets in Excel. */
function sheetsOf({ sheets, styles }: PlainWorkbook): PersonsSheet[] {
  return sheets.map(({ name, cells, rows: heights }) => {
    const last = Math.max(-1, ...Object.keys(cells).map(Number));
    const rows = Array.from({ length: last + 1 }, (_, row) => {
      const own = cells[row] ?? {};
      const width = Math.max(-1, ...Object.keys(own).map(Number));
      return Array.from({ length: width + 1 }, (__, column): PersonsCell => {
        const { value = null, style = '' } = own[column] ?? {};
        const format = styles[style]?.format;
        return typeof value === 'number' && format !== undefined ? { held: value, format } : value;
      });
    });
    const hidden = Object.entries(heights).flatMap(([row, one]) =>
      one.hidden === true ? [Number(row) + 1] : [],
    );
    return { name, rows, hidden };
  });
}

const WANTED = JOB_TABLES.map(({ name, required }) => ({ name, required }));
const DOORS: Readonly<Record<string, (path: string) => Promise<RawTable[]>>> = {
  'the command line': async (path) => [...valueOf(await readJobTables(path)).tables],
  'the file host': async (path) => {
    const opened = await openFileHost({ name: 'job.xlsx', bytes: readFileSync(path) });
    return throughHost(valueOf(opened));
  },
  'the grid’s opening and Excel': async (path) => {
    const read = valueOf(await readFileWorkbook(readFileSync(path), 'job.xlsx'));
    return throughHost(hostOf(inExcel(sheetsOf(read.workbook))));
  },
};

function expectMeaning(reading: JobReading, meaning: Meaning, isCsv: boolean): void {
  const { runs, profiles, stock, shop, cautions, hidden = {}, faults, savedAsText = [] } = meaning;
  if (faults !== undefined) {
    const wanted = faults
      .filter(([code]) => !isCsv || !savedAsText.includes(code))
      .map(([code, table, line]) => {
        const [first = '', other = first] = code.split('|');
        return [isCsv ? first : other, table.toLowerCase(), line];
      });
    const found = reading.faults.map((one) => [one.code, ...placeOf(one)].join(' '));
    expect(found.sort()).toEqual(wanted.map((one) => one.join(' ')).sort());
  } else {
    expect(reading.faults).toEqual([]);
    const { job } = reading;
    expect(
      job?.runs.map((one) => [one.room, one.run, one.profile, lengthOf(one.length), one.quantity]),
    ).toEqual(
      runs?.map(([room, run, profile, size, count]) => [room, run, profile, inches(size), count]),
    );
    expect(
      job?.profiles.map((one) => [
        one.name,
        lengthOf(one.blankWidth),
        lengthOf(one.blankThickness),
        one.offcutAllowancePercent,
      ]),
    ).toEqual(
      profiles?.map(([name, width, thick, part]) => [name, inches(width), inches(thick), part]),
    );
    expect(job?.stock.map((one) => [one.for, lengthOf(one.length), one.price, one.have])).toEqual(
      // The planner's lengths are whole parts of an inch, a metric one rounded down by less than a hair.
      stock?.map(([name, size, price, have]) => [
        name,
        expect.closeTo(inches(size), 4),
        price,
        have,
      ]),
    );
    const settings = job?.shop as unknown as Readonly<Record<string, unknown>>;
    for (const [key, value] of Object.entries(shop ?? {})) {
      const held = settings[key];
      const isLength = typeof held === 'object';
      const wanted = isLength ? expect.closeTo(inches(value), 4) : value;
      expect([key, isLength ? lengthOf(held) : held]).toEqual([key, wanted]);
    }
  }
  const said = reading.cautions.filter(({ code }) => /^(?:table|number|host)\./u.test(code));
  const codes = { ...cautions, ...(isCsv ? {} : hidden) };
  expect(said.map(({ code }) => code).sort()).toEqual(Object.keys(codes).sort());
  if (!isCsv) {
    for (const { code, where } of said) expect(Object.values(where!).join('!')).toBe(codes[code]);
  }
}

function placeOf({ where }: Fault): readonly (string | number)[] {
  if (where === undefined) return [];
  return 'sheet' in where
    ? [where.sheet.toLowerCase(), Number(/\d+$/u.exec(where.cell)?.[0])]
    : [where.file.replace('.csv', ''), where.line];
}

describe.each(['library', 'bibliothek', 'refused'])('%s', (folder) => {
  const meaning = meaningOf(folder);
  for (const [door, open] of Object.entries(DOORS)) {
    test.each(['libreoffice.xlsx', 'gnumeric.xlsx'])(
      `%s means the same through ${door}`,
      async (file) => {
        const tables = await open(join(CORPUS, folder, file));
        expectMeaning(readJob(tables, file), meaning, false);
      },
    );
  }

  test('the CSV of it means the same', async () => {
    const tables = valueOf(await readJobInput(join(CORPUS, folder, 'csv'), WANTED));
    expectMeaning(readJob(tables, 'csv'), meaning, true);
  });
});

describe('Lists that are plain ranges, a title over them and a total under', () => {
  const meaning = meaningOf('plain');
  for (const [door, open] of Object.entries(DOORS)) {
    test.each(['libreoffice.xlsx', 'gnumeric.xlsx'])(
      `%s is found by its headings through ${door}`,
      async (file) => {
        const tables = await open(join(CORPUS, 'plain', file));
        expectMeaning(readJob(tables, file), meaning, false);
      },
    );

    test(`one list that isn’t named as ours is not passed over beside others that are, through ${door}`, async () => {
      const tables = await open(join(CORPUS, 'plain', 'rates-unnamed.xlsx'));
      const cautions = { 'table.total-ignored': 'Runs!B10' };
      expectMeaning(readJob(tables, 'job.xlsx'), { ...meaning, cautions }, false);
    });
  }

  test('two lists on one sheet are refused: the one that is not found is named', async () => {
    const outcome = await readJobTables(join(CORPUS, 'plain', 'two-lists.xlsx'));
    expect(codesOf(outcome)).toEqual(['table.missing']);
    expect(!outcome.ok && outcome.faults[0]?.message).toMatch(
      /^There is no Stock table in .*two-lists\.xlsx”\. Add it, on a sheet of its own;/u,
    );
  });
});

describe('CSV as programs export it', () => {
  const { headings, rows } = meaningOf('encodings') as unknown as Readonly<
    Record<'headings' | 'rows', unknown>
  >;
  const names = readdirSync(join(CORPUS, 'encodings')).filter((name) => name.endsWith('.csv'));
  const plain = (cells: readonly unknown[]): string[] => {
    const texts = cells.map((cell) => (typeof cell === 'string' ? cell : ''));
    return [...texts, '', '', '', '', ''].slice(0, 5);
  };

  test('is a list of files', () => expect(names.length).toBeGreaterThan(12));

  test.each(names)('%s is read', (name) => {
    const table = valueOf(readCsvTable(fileOf('encodings', name), name, 'Runs'));
    expect(plain(table.headings.cells)).toEqual(headings);
    const own = table.rows.filter(({ cells }) => cells[0] !== 'Total');
    expect(own.map(({ cells }) => plain(cells))).toEqual(rows);
  });

  test.each(names)('%s is opened into the grid', (name) => {
    const { sheets } = valueOf(csvWorkbook(fileOf('encodings', name), name));
    const all = Object.values(sheets[0]!.cells).map((row) =>
      plain(Array.from({ length: 5 }, (_, at) => row[at]?.value ?? null)),
    );
    const from = all.findIndex(([first]) => first === 'Room');
    expect(all.slice(from, from + 4)).toEqual([headings, ...(rows as unknown[])]);
  });
});

describe('Files of other kinds', () => {
  test.each([
    ['library.ods', 'file.opendocument'],
    ['library.xls', 'file.old-workbook'],
  ])('%s is refused with words that say how to save it', async (name, code) => {
    const path = join(CORPUS, 'other', name);
    const bytes = readFileSync(path);
    for (const outcome of [
      await readJobInput(path, WANTED),
      await openFileHost({ name, bytes }),
      await readFileWorkbook(bytes, name),
    ]) {
      expect(codesOf(outcome)).toEqual([code]);
      expect(!outcome.ok && outcome.faults[0]?.message).toMatch(
        /save it as \.xlsx \(File, Save As/u,
      );
    }
  });
});
