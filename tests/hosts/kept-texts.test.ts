import { describe, expect, test } from '@jest/globals';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { openIntoGrid } from '../../src/hosts/grid/from-file/open-into-grid.ts';
import { gridToFile } from '../../src/hosts/grid/to-file/grid-to-file.ts';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import { unwrapText, wrapText } from '../../src/hosts/workbook/kept-text.ts';
import { keptTextsOf } from '../../src/hosts/xlsx/kept-parts.ts';
import { openFileHost } from '../../src/hosts/xlsx/open-file-host.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { FakeExcel } from './excel-fake/fake-excel.ts';
import { hostOf, valueOf } from './excel-workbooks.ts';
import { libreOfficeIsHere } from './libreoffice.ts';
import { workbook } from './sample-workbook.ts';
import { paintTiny } from './tiny-drawing.ts';

/** What a person may have typed, as JSON: no raw line break, but any other character. */
const TEXT = JSON.stringify({ room: `<Hall> & "Küche" ]]> \u0007\n\uFFFE\uFFFF 🪵 '&amp;'` });
const asRead = (text: string | undefined): unknown => JSON.parse(text ?? 'null');

const FILE = workbook([{ name: 'Runs' }]);
const bytesWith = (texts = { plan: TEXT }): Promise<Uint8Array> => writeWorkbook(FILE, { texts });

async function fileHost(bytes: Uint8Array): Promise<WorkbookHost> {
  return valueOf(await openFileHost({ name: 'a.xlsx', bytes, paint: paintTiny }));
}

describe.each([
  [
    'Excel',
    () => {
      const fake = new FakeExcel();
      fake.addSheet('Runs', [['Room', 'x'], [null], ['Hall', true]]);
      return Promise.resolve(hostOf(fake));
    },
  ],
  ['an opened file', async () => fileHost(await writeWorkbook(FILE))],
])('Beside %s', (_, open) => {
  test('a plan is kept, replaced and taken away, each under its own key', async () => {
    const host = await open();
    expect(valueOf(await host.keptText('plan'))).toBeUndefined();
    valueOf(await host.keepText('plan', 'one'));
    valueOf(await host.keepText('written-plan', 'other'));
    valueOf(await host.keepText('plan', TEXT));
    expect(asRead(valueOf(await host.keptText('plan')))).toEqual(JSON.parse(TEXT));
    expect(valueOf(await host.keptText('written-plan'))).toBe('other');
    valueOf(await host.keepText('plan', undefined));
    expect(valueOf(await host.keptText('plan'))).toBeUndefined();
    expect(valueOf(await host.keptText('written-plan'))).toBe('other');
  });
});

test('In Excel what is kept shows nowhere, and a sheet is read by its name', async () => {
  const fake = new FakeExcel();
  const sheet = fake.addSheet('Cutting', [['Cut'], [null, 'Base #1'], ['x', 1]]);
  const before = fake.view();
  const host = hostOf(fake);
  valueOf(await host.keepText('plan', TEXT));
  valueOf(await host.keepText('plan', TEXT));
  expect(fake.view()).toEqual(before);
  expect(fake.workbook.xmlParts).toHaveLength(1);
  expect(valueOf(await host.readSheet('Cutting'))).toEqual([
    { line: 1, cells: ['Cut'] },
    { line: 2, cells: [null, 'Base #1'] },
    { line: 3, cells: ['x', 1] },
  ]);
  expect(valueOf(await host.readSheet('Pieces'))).toEqual([]);
  expect(sheet.cells.size).toBeGreaterThan(0);
});

test('In a file it is a custom XML part, which comes back with the file and through the grid', async () => {
  const bytes = await bytesWith();
  const parts = unzipSync(bytes);
  expect(Object.keys(parts)).toContain('customXml/item1.xml');
  expect(strFromU8(parts['[Content_Types].xml']!)).toContain('/customXml/itemProps1.xml');
  expect(asRead(keptTextsOf(bytes).plan)).toEqual(JSON.parse(TEXT));
  const opened = valueOf(await openIntoGrid(bytes, 'a.xlsx'));
  const again = await gridToFile(opened.data);
  expect(asRead(keptTextsOf(again).plan)).toEqual(JSON.parse(TEXT));
  const host = await fileHost(again);
  expect(asRead(valueOf(await host.keptText('plan')))).toEqual(JSON.parse(TEXT));
  const { file } = valueOf(await host.write(FILE, { owner: 'tool', replace: [] }));
  expect(asRead(keptTextsOf(file!.bytes).plan)).toEqual(JSON.parse(TEXT));
});

test('Without a text a file has no such part', async () => {
  expect(Object.keys(unzipSync(await writeWorkbook(FILE)))).not.toContainEqual(
    expect.stringContaining('customXml'),
  );
});

test("Another program's part is none of ours", () => {
  expect(unwrapText('<kept xmlns="urn:other">x</kept>')).toBeUndefined();
  expect(unwrapText('<a><b/></a>')).toBeUndefined();
  expect(unwrapText(wrapText('plan', 'a<b>&c'))).toEqual({ key: 'plan', text: 'a<b>&c' });
});

(libreOfficeIsHere() ? test : test.skip)(
  'LibreOffice opens a file with a kept plan',
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'kept-'));
    try {
      writeFileSync(join(folder, 'a.xlsx'), await bytesWith());
      execFileSync('soffice', [
        '--headless',
        `-env:UserInstallation=file://${folder}/profile`,
        '--convert-to',
        'csv',
        '--outdir',
        folder,
        join(folder, 'a.xlsx'),
      ]);
      expect(readFileSync(join(folder, 'a.csv'))).toBeDefined();
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
  60_000,
);
