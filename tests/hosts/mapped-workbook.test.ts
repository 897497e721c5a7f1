/** A list with headings of its own, mapped: whoever opens the workbook reads the same job. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type { IWorkbookData } from '@univerjs/core';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { readJobTables, type JobInput } from '../../src/hosts/file/read-job-input.ts';
import { recallNotes } from '../../src/hosts/grid/book-metadata.ts';
import { openIntoGrid } from '../../src/hosts/grid/from-file/open-into-grid.ts';
import { gridToFile } from '../../src/hosts/grid/to-file/grid-to-file.ts';
import { openFileHost } from '../../src/hosts/xlsx/open-file-host.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { fingerprint } from '../../src/planning/input/fingerprint.ts';
import { readJob } from '../../src/planning/input/read-job.ts';
import {
  CHOICE_NOTES,
  choiceNote,
  readChoices,
  writeChoices,
  type Choices,
  type Notes,
} from '../../src/planning/input/table-choices.ts';
import type { CellDescription, SheetDescription } from '../../src/sheets/grammar/description.ts';
import { valueOf } from './excel-workbooks.ts';
import { libreOfficeIsHere, recalculate } from './libreoffice.ts';
import { workbook } from './sample-workbook.ts';

/** As people head their lists: over two lines, and at such length that a note goes on in a second part. */
const ROOM = `Room\nor “hall” ${'as the plans call it '.repeat(12)}½`;
const LIST = [
  [ROOM, 'Item', 'Feet', 'Qty'],
  ['Living', 'Crown', '14\' 6"', 2],
  ['Living', 'Base', 12.5, 2],
] as const;
const CHOICES: Choices = {
  Runs: {
    sheet: 'House “A” & <B>',
    columns: { Room: ROOM, Profile: 'Item', Length: 'Feet', Quantity: 'Qty' },
  },
  Profiles: {
    sheet: 'My profiles',
    table: 'Moldings_we_have',
    columns: { Profile: 'Molding', Make: 'Made or "bought"' },
  },
  Stock: { sheet: 'Rack' },
};

const sheet = (name: string, rows: readonly (readonly (string | number)[])[]): SheetDescription =>
  workbook([
    {
      name,
      rows: rows.map((row) => ({ cells: row.map((value): CellDescription => ({ value })) })),
    },
  ]).sheets[0]!;

function mapped(choices: Choices = CHOICES): Promise<Uint8Array> {
  const profiles = sheet('My profiles', [
    ['Molding', 'Made or "bought"'],
    ['Crown', 'buy'],
    ['Base', 'buy'],
  ]);
  const notes = Object.entries(writeChoices(choices)).flatMap(([key, note]) =>
    note === undefined ? [] : [[key, note] as const],
  );
  return writeWorkbook(
    workbook(
      [
        sheet('House “A” & <B>', LIST),
        { ...profiles, tables: [{ name: 'Moldings_we_have', range: 'A1:B3' }] },
        sheet('Rack', [
          ['For', 'Length', 'Price'],
          ['Crown', "16'", 30],
          ['Base', "16'", 20],
        ]),
        // It is named so, but it is not what was chosen.
        sheet('Runs', [
          ['Room', 'Profile', 'Length'],
          ['Hall', 'Base', 10],
        ]),
      ],
      { properties: Object.fromEntries(notes) },
    ),
  );
}

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'coveledger-mapped-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function readByName(bytes: Uint8Array): Promise<Awaited<ReturnType<typeof readJobTables>>> {
  const path = join(folder, 'job.xlsx');
  writeFileSync(path, bytes);
  return readJobTables(path);
}

async function notesOf(bytes: Uint8Array): Promise<Notes> {
  const host = valueOf(await openFileHost({ name: 'job.xlsx', bytes }));
  return valueOf(await host.recall(CHOICE_NOTES));
}

function expectMapped({ tables, cautions }: JobInput): void {
  expect(tables.map(({ name, source }) => [name, source.name])).toEqual([
    ['Runs', 'House “A” & <B>'],
    ['Profiles', 'My profiles'],
    ['Stock', 'Rack'],
  ]);
  expect(cautions).toEqual([]);
  const { job } = readJob(tables, 'job.xlsx');
  expect(job?.runs.map(({ length, quantity }) => [Number(length), quantity])).toEqual([
    [174, 2],
    [150, 2],
  ]);
}

function inProperties(bytes: Uint8Array, change: (xml: string) => string): Uint8Array {
  const parts = unzipSync(bytes);
  const xml = strFromU8(parts['docProps/custom.xml']!);
  return zipSync({ ...parts, 'docProps/custom.xml': strToU8(change(xml)) });
}

describe('A mapped workbook', () => {
  test('is read by the command line as it was mapped', async () => {
    expectMapped(valueOf(await readByName(await mapped())));
  });

  test('keeps its mapping through the grid, open and downloaded, and through the file host', async () => {
    const bytes = await mapped();
    const opened = valueOf(await openIntoGrid(bytes, 'job.xlsx')).data;
    expect(readChoices(recallNotes(opened.custom, CHOICE_NOTES)).choices).toEqual(CHOICES);
    const saved = await gridToFile(JSON.parse(JSON.stringify(opened)) as IWorkbookData);
    expect(readChoices(await notesOf(saved)).choices).toEqual(CHOICES);
    const first = valueOf(await readByName(bytes));
    const again = valueOf(await readByName(saved));
    expectMapped(again);
    expect(fingerprint(again.tables)).toBe(fingerprint(first.tables));
  });

  test('whose sheet or column is gone is refused by name', async () => {
    const { Runs, ...others } = CHOICES;
    const gone = await readByName(await mapped({ ...others, Runs: { ...Runs!, sheet: 'House' } }));
    expect(gone).toMatchObject({ faults: [{ code: 'table.choice-gone', given: 'House' }] });
    const columns = { ...Runs!.columns, Quantity: 'How many' };
    const lost = await readByName(await mapped({ ...others, Runs: { ...Runs!, columns } }));
    expect(lost).toMatchObject({ faults: [{ code: 'table.column-gone', given: 'How many' }] });
  });

  test('whose properties are broken or forged is read without them, and that is said', async () => {
    const good = await mapped();
    const forged = inProperties(good, (xml) =>
      xml.replaceAll('&quot;sheet&quot;', '7').replaceAll('"sheet"', '7'),
    );
    const torn = inProperties(good, (xml) => xml.slice(0, xml.length - 60));
    for (const bytes of [forged, torn]) {
      // By name and headings alone: Runs, and Stock by what its columns are called, no Profiles.
      const read = await readByName(bytes);
      expect(read).toMatchObject({
        ok: false,
        faults: [{ code: 'table.missing', argument: 'sheet.Profiles' }],
      });
      const { choices, cautions } = readChoices(await notesOf(bytes));
      expect(choices).toEqual({});
      expect(cautions.map(({ argument }) => argument)).toEqual([
        'sheet.Runs',
        'sheet.Profiles',
        'sheet.Stock',
      ]);
    }
    const strange = inProperties(good, (xml) =>
      xml.replace(`name="${choiceNote('Stock')}"`, 'name="Coveledger of another day"'),
    );
    expect(readChoices(await notesOf(strange)).choices).toEqual({
      Runs: CHOICES.Runs,
      Profiles: CHOICES.Profiles,
    });
  });
});

const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

(mustRun ? test : test.skip)(
  'LibreOffice keeps the mapping when it saves the workbook',
  async () => {
    // Where CI lacks it, this fails: a check that can't run there is no check.
    expect(here).toBe(true);
    const { job } = await recalculate({ job: await mapped() });
    expect(readChoices(await notesOf(job!)).choices).toEqual(CHOICES);
    expectMapped(valueOf(await readByName(job!)));
  },
  120_000,
);
