import { beforeAll, describe, expect, test } from '@jest/globals';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { roomForRows } from '../../src/sheets/grammar/page-size.ts';
import { printedPages } from '../hosts/libreoffice.ts';
import { printingIsHere, printingMustRun } from '../hosts/printed-pages.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf } from '../planning/make-job.ts';
import { cutSticks, pagesOf } from './cut-rows.ts';
import { largeJob } from './large-job.ts';
import { DEMO, JOBS, sheetOf, textsOf } from './sheet-jobs.ts';

const sheets = new Map<string, SheetDescription>();

beforeAll(async () => {
  const jobs = {
    demo: DEMO,
    hostile: JOBS['hostile']!,
    millimetres: JOBS['millimetres']!,
    done: JOBS['done']!,
    large: largeJob(600),
  };
  for (const [name, tables] of Object.entries(jobs)) {
    sheets.set(name, sheetOf(describePlan(await planOf(tables)), 'Cutting'));
  }
});

const heightOf = ({ rows }: SheetDescription, from: number, to: number): number =>
  rows.slice(from - 1, to).reduce((sum, { height = 0 }) => sum + height, 0);

describe.each(['demo', 'hostile', 'millimetres', 'done', 'large'])(
  'The pages of the cutting sheet of the job “%s”',
  (name) => {
    test('hold what is on them, with the headings that are repeated on each', () => {
      const sheet = sheets.get(name)!;
      const { paper, orientation, titleRows } = sheet.print;
      const [heads] = titleRows!;
      const room = roomForRows(paper, sheet.columns, orientation);
      expect(orientation).toBe('landscape');
      expect(sheet.freeze).toEqual({ rows: heads, columns: 0 });
      expect(sheet.rows.every(({ height }) => height !== undefined)).toBe(true);
      pagesOf(sheet).forEach(([from, to], at) => {
        const repeated = at === 0 ? 0 : heightOf(sheet, heads, heads);
        expect(repeated + heightOf(sheet, from, to)).toBeLessThanOrEqual(room);
      });
    });

    test('tear no stick that has room on one', () => {
      const sheet = sheets.get(name)!;
      const room = roomForRows(sheet.print.paper, sheet.columns, 'landscape') * 0.9;
      const pages = pagesOf(sheet);
      const pageOf = (row: number): number =>
        pages.findIndex(([from, to]) => from <= row && row <= to);
      for (const { row, pieces } of cutSticks(sheet)) {
        const last = pieces.at(-1)!.row;
        if (heightOf(sheet, row, last) < room - 60) expect(pageOf(last)).toBe(pageOf(row));
      }
    });

    test('say whose sticks they begin with', () => {
      const sheet = sheets.get(name)!;
      const sticks = new Map(cutSticks(sheet).map((stick) => [stick.row, stick]));
      for (const [from] of pagesOf(sheet).slice(1)) {
        expect(sticks.has(from)).toBe(false);
        const next = sticks.get(from + 1);
        const text = String(sheet.rows[from - 1]?.cells[0]?.value ?? '');
        if (next !== undefined && text.endsWith(', continued')) {
          expect(next.id.startsWith(`${text.slice(0, -', continued'.length)} #`)).toBe(true);
        }
      }
    });

    test('waste no more of the paper than the next stick would take', () => {
      const sheet = sheets.get(name)!;
      const room = roomForRows(sheet.print.paper, sheet.columns, 'landscape');
      const sticks = cutSticks(sheet);
      const pages = pagesOf(sheet);
      pages.slice(0, -1).forEach(([from, to], at) => {
        const next = sticks.find(({ row }) => row > to);
        if (next === undefined || sticks.every(({ row }) => row < from || row > to)) return;
        const used = heightOf(sheet, from, to) + (at === 0 ? 0 : heightOf(sheet, 3, 3));
        const needed = heightOf(sheet, to + 1, next.pieces.at(-1)!.row);
        expect(used + needed).toBeGreaterThan(room * 0.97 - 20);
      });
    });
  },
);

(printingMustRun() ? test : test.skip)(
  'LibreOffice prints as many pages as there are breaks for, five sticks and more on each of a job of 300',
  async () => {
    expect(printingIsHere()).toBe(true);
    const files: Record<string, Uint8Array> = {};
    for (const name of ['demo', 'millimetres', 'large']) {
      const sheet = withoutFormulas(sheets.get(name)!);
      const description = { version: 1, title: 'Cutting', sheets: [sheet] } as const;
      files[name] = await writeWorkbook(description, { paint: paintTiny });
    }
    const printed = await printedPages(files);
    for (const [name, pages] of Object.entries(printed)) {
      expect([name, pages]).toEqual([name, pagesOf(sheets.get(name)!).length]);
    }
    const large = sheets.get('large')!;
    const sticks = cutSticks(large).length;
    expect(sticks).toBeGreaterThan(270);
    expect(pagesOf(large).length).toBeLessThan(sticks / 5.5);
  },
  120_000,
);

test('A job of more sticks than programs open pictures of says so, and lists all of them', async () => {
  const sheet = sheetOf(describePlan(await planOf(largeJob(4_400))), 'Cutting');
  const sticks = cutSticks(sheet);
  expect(sticks.length).toBeGreaterThan(2_050);
  const drawn = sheet.drawings!.map(({ at }) => at);
  expect(drawn).toEqual(sticks.slice(0, 2_000).map(({ row }) => `A${row + 1}`));
  for (const { row, pieces } of sticks.slice(2_000)) expect(pieces[0]!.row).toBe(row + 1);
  const said = textsOf(sheet).filter((text) => text.includes('The first 2000 sticks have a bar'));
  expect(said).toHaveLength(1);
  expect(said[0]).toContain(`with all ${sticks.length} drawn`);
  const few = textsOf(sheets.get('large')!);
  expect(few.filter((text) => text.includes('sticks have a bar'))).toEqual([]);
}, 60_000);

/** Sums of other sheets are not there when this one is printed alone. */
function withoutFormulas(sheet: SheetDescription): SheetDescription {
  const rows = sheet.rows.map((row) => ({
    ...row,
    cells: row.cells.map((cell) =>
      cell === null ? null : { value: cell.value, style: cell.style ?? 'plain' },
    ),
  }));
  return { ...sheet, rows };
}
