import { beforeAll, describe, expect, test } from '@jest/globals';
import { strFromU8, unzipSync } from 'fflate';

import { openIntoGrid, type Opened } from '../../src/hosts/grid/from-file/open-into-grid.ts';
import { readCustomData } from '../../src/hosts/grid/sheet-metadata.ts';
import { gridToFile } from '../../src/hosts/grid/to-file/grid-to-file.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { planOf, tablesOf } from '../planning/make-job.ts';
import { JOBS } from '../sheets/sheet-jobs.ts';
import { gridBook } from './grid-book.ts';
import { differingFormulas, libreOfficeIsHere, recalculate } from './libreoffice.ts';
import { readXlsxBack } from './read-xlsx.ts';
import { paintTiny } from './tiny-drawing.ts';
import type { SheetView, WorkbookView } from './workbook-view.ts';

const described: Record<string, WorkbookDescription> = {};

beforeAll(async () => {
  for (const name of ['demo', 'millimetres']) {
    described[`${name} input`] = describeInput(tablesOf(JOBS[name]!));
  }
  for (const name of ['demo', 'hostile']) {
    described[`${name} plan`] = describePlan(await planOf(JOBS[name]!));
  }
});

const CASES = ['demo input', 'demo plan', 'hostile plan', 'millimetres input'];

async function opened(bytes: Uint8Array, name = 'job.xlsx'): Promise<Opened> {
  const outcome = await openIntoGrid(bytes, name);
  if (!outcome.ok) throw new Error(outcome.faults.map((one) => one.message).join('\n'));
  return outcome.value;
}

describe("The grid's workbook as a file", () => {
  test.each(CASES)(
    'holds all that the same sheets hold when written directly: %s',
    async (name) => {
      const description = described[name]!;
      const direct = readXlsxBack(await writeWorkbook(description, { paint: paintTiny }));
      const saved = readXlsxBack(await gridToFile(await gridBook(description, 'person')));
      expect(saved.names).toEqual(direct.names);
      expect(saved.title).toBe(direct.title);
      saved.sheets.forEach((sheet, index) => {
        expect(comparable(sheet)).toEqual(comparable(direct.sheets[index]!));
      });
      expect(saved.sheets).toHaveLength(direct.sheets.length);
    },
  );

  test.each(CASES)('is the same again after it was opened: %s', async (name) => {
    const first = await gridToFile(await gridBook(described[name]!, 'tool'));
    const { data, cautions } = await opened(first);
    const pictures = described[name]!.sheets.some(({ drawings = [] }) => drawings.length > 0);
    expect(cautions.map(({ code }) => code)).toEqual(pictures ? ['grid.left-out'] : []);
    const second = await gridToFile(data);
    expect(withoutDrawings(readXlsxBack(second))).toEqual(withoutDrawings(readXlsxBack(first)));
    // Opened once more it is the same to the last byte: nothing creeps.
    expect(await gridToFile((await opened(second)).data)).toEqual(second);
  });
});

describe('What is marked in the file', () => {
  test('are sheets made here, known as ours again unless they were renamed', async () => {
    const book = await gridBook(described['demo plan']!, 'tool');
    const [first, second] = book.sheetOrder;
    book.sheets[second!]!.name = 'My own now';
    const { data } = await opened(await gridToFile(book));
    const owners = data.sheetOrder.map((id) => readCustomData(data.sheets[id]!.custom)?.owner);
    expect(owners.slice(0, 2)).toEqual(['tool', 'person']);
    expect(new Set(owners.slice(2))).toEqual(new Set(['tool']));
    expect(readCustomData(data.sheets['sheet-1']!.custom)).toMatchObject({
      name: book.sheets[first!]!.name,
      print: described['demo plan']!.sheets[0]!.print,
    });
    const names = strFromU8(unzipSync(await gridToFile(book))['xl/workbook.xml']!);
    expect(names.match(/"Coveledger_sheet" hidden="1"/gu)).toHaveLength(owners.length - 1);
  });

  test('is nothing of who, when or where', async () => {
    const parts = unzipSync(await gridToFile(await gridBook(described['demo input']!, 'person')));
    const about = ['docProps/core.xml', 'docProps/app.xml'].map((name) => strFromU8(parts[name]!));
    expect(about.join()).not.toMatch(
      /creator|lastModifiedBy|20(?!00-01-01)\d\d-|Company|[\\/]tmp/u,
    );
    expect(Object.keys(parts).filter((name) => name.includes('custom'))).toEqual([]);
  });
});

const soffice = libreOfficeIsHere();
(soffice || process.env['CI'] !== undefined ? test : test.skip)(
  "LibreOffice recalculates the grid's workbooks to what stands in them",
  async () => {
    expect(soffice).toBe(true);
    const files: Record<string, Uint8Array> = {};
    for (const name of ['demo plan', 'hostile plan']) {
      const first = await gridToFile(await gridBook(described[name]!, 'tool'));
      files[name.replace(' ', '-')] = await gridToFile((await opened(first)).data);
    }
    const saved = await recalculate(files);
    for (const [name, bytes] of Object.entries(files)) {
      const { compared, differing } = differingFormulas(
        readXlsxBack(bytes),
        readXlsxBack(saved[name]!, false),
      );
      // The grid keeps no answer where a formula's is an empty text.
      expect([name, differing.filter((line) => !line.endsWith(': null, '))]).toEqual([name, []]);
      expect(compared).toBeGreaterThan(20);
    }
  },
  120_000,
);

/** Pictures to a thousandth of a millimetre: the grid keeps their sizes in pixels. */
const NO_VALUE = { kind: 'blank', value: null };

function comparable({ drawings, cells, ...sheet }: SheetView): unknown {
  const thousandth = (mm: number): number => Math.round(mm * 1000) / 1000;
  // A formula that answers with an empty text has none kept in the grid: a reader sees the same.
  const kept = Object.entries(cells).map(([at, cell]) =>
    cell.formula !== null && cell.value === '' ? [at, { ...cell, ...NO_VALUE }] : [at, cell],
  );
  return {
    ...sheet,
    cells: Object.fromEntries(kept) as unknown,
    drawings: drawings.map(({ widthMm, heightMm, ...one }) => ({
      ...one,
      widthMm: thousandth(widthMm),
      heightMm: thousandth(heightMm),
    })),
  };
}

function withoutDrawings({ sheets, ...book }: WorkbookView): unknown {
  return { ...book, sheets: sheets.map((sheet) => ({ ...sheet, drawings: [] })) };
}
