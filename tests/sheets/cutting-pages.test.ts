import { beforeAll, describe, expect, test } from '@jest/globals';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { cellName } from '../../src/core/cells/cell-range.ts';
import { HALVES } from '../../src/sheets/cutting/cutting-columns.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { SheetDescription } from '../../src/sheets/grammar/description.ts';
import { columnPoints, roomForRows, roomOnPage } from '../../src/sheets/grammar/page-size.ts';
import { printedPages } from '../hosts/libreoffice.ts';
import { printingIsHere, printingMustRun } from '../hosts/printed-pages.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import { planOf } from '../planning/make-job.ts';
import { cutSticks, layOutsOf, pagesOf } from './cut-rows.ts';
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
      const room = roomForRows(
        paper,
        sheet.columns.slice(0, sheet.print.printedColumns),
        orientation,
      );
      expect(orientation).toBe('landscape');
      expect(sheet.freeze).toEqual({ rows: heads, columns: 0 });
      expect(sheet.rows.every(({ height }) => height !== undefined)).toBe(true);
      pagesOf(sheet).forEach(([from, to], at) => {
        const repeated = at === 0 ? 0 : heightOf(sheet, heads, heads);
        expect(repeated + heightOf(sheet, from, to)).toBeLessThanOrEqual(room);
      });
    });

    test('are as wide as the paper, so that letters keep their size', () => {
      const { columns, print } = sheets.get(name)!;
      const wide = columns
        .slice(0, print.printedColumns)
        .reduce((all, { width }) => all + columnPoints(width), 0);
      expect(wide).toBeLessThanOrEqual(roomOnPage(print.paper, 'landscape').width);
      // Of many columns LibreOffice makes more than they are wide: by a tenth of the page at most.
      expect(wide).toBeGreaterThan(0.87 * roomOnPage(print.paper, 'landscape').width);
    });

    test('tear no band of lay-outs that has room on one', () => {
      const sheet = sheets.get(name)!;
      const room = roomOf(sheet) * 0.9;
      const pages = pagesOf(sheet);
      const pageOf = (row: number): number =>
        pages.findIndex(([from, to]) => from <= row && row <= to);
      for (const [head, last] of bandsOf(sheet)) {
        if (heightOf(sheet, head, last) < room - 60) expect(pageOf(last)).toBe(pageOf(head));
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

    test('waste no more of the paper than the lowest band still to come would take', () => {
      const sheet = sheets.get(name)!;
      const bands = bandsOf(sheet);
      const pages = pagesOf(sheet);
      pages.slice(0, -1).forEach(([from, to], at) => {
        const here = bands.filter(([head]) => head >= from && head <= to);
        const next = bands.filter(([head]) => head > to);
        const profile = profileOf(sheet, here.at(-1)?.[0]);
        // Only where the profile goes on: a new one brings its headings along.
        const own = next.filter(([head]) => profileOf(sheet, head) === profile);
        const ends = sheet.rows.slice((here.at(-1)?.[1] ?? 0) - 1, to).length;
        if (here.length === 0 || own.length === 0 || ends > 2 || isTorn(sheet, own)) return;
        const used = heightOf(sheet, from, to) + (at === 0 ? 0 : heightOf(sheet, HEADS, HEADS));
        const lowest = Math.min(...own.map(([head, last]) => heightOf(sheet, head, last)));
        expect(used + lowest).toBeGreaterThan(roomOf(sheet) * 0.97 - 5);
      });
    });
  },
);

/** Row of the headings that are repeated, from 1. */
const HEADS = 4;

function roomOf({ print, columns }: SheetDescription): number {
  return roomForRows(print.paper, columns.slice(0, print.printedColumns), 'landscape');
}

/** First and last row of each band, from 1. */
function bandsOf(sheet: SheetDescription): (readonly [head: number, last: number])[] {
  const last = new Map<number, number>();
  for (const { row, pieces } of cutSticks(sheet)) {
    last.set(row, Math.max(last.get(row) ?? row, ...pieces.map((piece) => piece.row)));
  }
  return [...last];
}

function profileOf({ rows }: SheetDescription, head: number | undefined): unknown {
  return head === undefined ? undefined : rows[head - 1]?.cells[HALVES.start('profile')]?.value;
}

/** Whether a lay-out of many sticks goes on, whose bands keep their order. */
function isTorn({ rows }: SheetDescription, own: readonly (readonly [number, number])[]): boolean {
  return own.some(([head]) => String(rows[head - 1]?.cells[0]?.value).startsWith('the same'));
}

(printingMustRun() ? test : test.skip)(
  'LibreOffice prints as many pages as there are breaks for, ten sticks and more on each of a job of 300',
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
    expect(pagesOf(large).length).toBeLessThan(sticks / 10);
  },
  120_000,
);

test('A job of more lay-outs than programs open pictures of says so, and lists all of them', async () => {
  const sheet = sheetOf(describePlan(await planOf(largeJob(4_400))), 'Cutting');
  const sticks = cutSticks(sheet);
  expect(sticks.length).toBeGreaterThan(2_050);
  const layOuts = layOutsOf(sheet);
  const drawn = sheet.drawings!.map(({ at }) => at);
  const places = layOuts.map(({ row, half }) => cellName(row, half.first));
  expect(drawn).toEqual(places.slice(0, 2_000));
  const later = new Set(layOuts.slice(2_001));
  for (const { row, pieces, layOut } of sticks) {
    if (later.has(layOut)) expect(pieces[0]!.row).toBe(row + 1);
  }
  const said = textsOf(sheet).filter((text) => text.includes('The first 2000 lay-outs have a bar'));
  expect(said).toHaveLength(1);
  expect(said[0]).toContain(`with all ${layOuts.length} drawn`);
  const few = textsOf(sheets.get('large')!);
  expect(few.filter((text) => text.includes('lay-outs have a bar'))).toEqual([]);
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
