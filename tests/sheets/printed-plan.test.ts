import { beforeAll, describe, expect, test } from '@jest/globals';

import { paintPng } from '../../src/hosts/file/paint-png.ts';
import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { cleanDescription } from '../../src/sheets/grammar/check/clean-text.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type {
  SheetDescription,
  WorkbookDescription,
} from '../../src/sheets/grammar/description.ts';
import { roomForRows } from '../../src/sheets/grammar/page-size.ts';
import type { StyleName } from '../../src/sheets/grammar/styles.ts';
import { rowHeights, STANDARD_POINTS } from '../../src/sheets/grammar/row-height.ts';
import { planOf, type Tables } from '../planning/make-job.ts';
import {
  printingIsHere,
  printingMustRun,
  rasterPages,
  toPdf,
  type PageRaster,
} from '../hosts/printed-pages.ts';
import { SHEET_NAMES } from '../../src/sheets/plan-anchors.ts';
import { pageSizes, pageTexts, pageTextIsHere, type SizedText } from '../hosts/printed-text.ts';
import { layOutsOf } from './cut-rows.ts';
import { JOBS } from './sheet-jobs.ts';

const DPI = 60;
const MM_PER_INCH = 25.4;
/** Nothing is printed nearer to the paper's edge: the margins are wider, but most printers reach this far. */
const EDGE_MM = 5;
/** Of 255: pale yellow, which is lighter than any other ink, is darker. */
const NEARLY_WHITE = 254;

/** Jobs by name; the demo is on letter paper, millimetres on A4. */
const PRINTED: Readonly<Record<string, Tables>> = {
  demo: JOBS['demo']!,
  millimetres: JOBS['millimetres']!,
  hostile: JOBS['hostile']!,
  unused: JOBS['unused']!,
};

interface Printed {
  readonly workbook: WorkbookDescription;
  readonly pdf: Uint8Array;
  readonly texts: readonly string[];
  readonly sizes: readonly (readonly SizedText[])[];
}

const printed = new Map<string, Printed>();

/**
 * Without any white space, which lines broken anew have elsewhere, and without the glyphs of ends, which
 * are of another font and so come apart from their words.
 */
function squeeze(text: string): string {
  return text.replace(/[\s◥◤◢◣▐▌]+/gu, '');
}

/** Texts of the pages that bear the sheet's footer. */
function pagesOf({ texts }: Printed, { print }: SheetDescription): string[] {
  return texts.filter((text) => text.startsWith(`${print.footer} Page `));
}

/** Sheets that hang on the wall, or are held in the hand. */
const AT_ARMS_LENGTH = [
  'Production',
  'Labor',
  'Pieces',
  'Set-ups',
  'Outlines',
  'Cutting',
  'Rooms',
  'Yard',
];
const ARMS_LENGTH_POINTS = 10;
/** Angles, heights and marks on Set-ups, which are read while both hands are at the saw. */
const AT_THE_SAW: readonly StyleName[] = ['figure', 'figureRight', 'passRight'];
const AT_THE_SAW_POINTS = 14;
/**
 * Not read at arm's length: by which inputs and when the plan was made, what stands beside a figure of the
 * invoice, standing cautions that are known by heart, what is looked up about a cove, the number of a pass.
 */
const SMALL_PRINT: readonly StyleName[] = ['quietLabel', 'finePrint', 'small', 'smallRow'];
const SMALL_PRINT_POINTS = 8;
/** Sheets of the shop: what a client pays, and what the shop pays, is on none of them as it is printed. */
const WITHOUT_MONEY = [
  'Production',
  'Labor',
  'Pieces',
  'Set-ups',
  'Outlines',
  'Cutting',
  'Labels',
  'Rooms',
];

/** Sized lines of the pages that bear the sheet's footer. */
function sizesOf({ texts, sizes }: Printed, { print }: SheetDescription): SizedText[] {
  return sizes.filter((_, at) => texts[at]!.startsWith(`${print.footer} Page `)).flat();
}

function printedCells({ rows, print }: SheetDescription) {
  return rows.flatMap(({ cells }) =>
    cells.slice(0, print.printedColumns).flatMap((cell) => cell ?? []),
  );
}

/** Pages that the sheet's rows fill: a new one after each break of its own, and where one is full. */
function expectedPages(sheet: SheetDescription): number {
  const { paper, orientation, breaksAfter = [], titleRows, fitWidth, printedColumns } = sheet.print;
  if (!fitWidth || (sheet.drawings ?? []).length > 0) return breaksAfter.length + 1;
  const room = roomForRows(paper, sheet.columns.slice(0, printedColumns), orientation);
  const heights = rowHeights(sheet);
  const points = (row: number): number => heights.get(row - 1)?.height ?? STANDARD_POINTS;
  const repeated = titleRows === undefined ? 0 : points(titleRows[0]);
  let pages = 1;
  let used = 0;
  for (let row = 1; row <= sheet.rows.length; row++) {
    if (breaksAfter.includes(row - 1) || used + points(row) > room) {
      pages += 1;
      used = row > (titleRows?.[1] ?? Infinity) ? repeated : 0;
    }
    used += points(row);
  }
  return pages;
}

/** Whether anything but paper is within the edge that a printer may not reach. */
function inkNearEdge({ width, height, data }: PageRaster): boolean {
  const edge = Math.floor((EDGE_MM / MM_PER_INCH) * DPI);
  for (let y = 0; y < height; y++) {
    const isEdgeRow = y < edge || y >= height - edge;
    for (let x = 0; x < width; x++) {
      if (!isEdgeRow && x === edge) x = width - edge;
      if (data[y * width + x]! < NEARLY_WHITE) return true;
    }
  }
  return false;
}

const mustRun = printingMustRun();
if (!mustRun) console.info('Skipped: LibreOffice or poppler is not installed on this machine.');

(mustRun ? describe : describe.skip)('On paper', () => {
  beforeAll(async () => {
    // Where CI lacks one of them, this fails: a check that can't run there is no check.
    expect(printingIsHere() && pageTextIsHere()).toBe(true);
    const files: Record<string, Uint8Array> = {};
    const workbooks = new Map<string, WorkbookDescription>();
    for (const [name, tables] of Object.entries(PRINTED)) {
      const workbook = cleanDescription(describePlan(await planOf(tables)));
      workbooks.set(name, workbook);
      files[name.replaceAll(' ', '-')] = await writeWorkbook(workbook, { paint: paintPng });
    }
    const pdfs = await toPdf(files);
    for (const [name, workbook] of workbooks) {
      const pdf = pdfs[name.replaceAll(' ', '-')]!;
      const sizes = await pageSizes(pdf);
      printed.set(name, { workbook, pdf, texts: await pageTexts(pdf), sizes });
    }
  }, 240_000);

  describe.each(Object.keys(PRINTED))('the workbook of the job “%s”', (name) => {
    test('has as many pages of each sheet as its own breaks and full pages make', () => {
      const one = printed.get(name)!;
      const { sheets } = one.workbook;
      const counted = sheets.map((sheet) => [sheet.name, pagesOf(one, sheet).length] as const);
      for (const [at, [sheet, pages]] of counted.entries()) {
        const expected = expectedPages(sheets[at]!);
        // Where only full pages end, programs differ a little in how much they hold.
        const least = (sheets[at]!.print.breaksAfter ?? []).length > 0 ? expected : expected * 0.75;
        expect([sheet, pages, pages >= least && pages <= expected]).toEqual([sheet, pages, true]);
      }
      const all = counted.reduce((sum, [, pages]) => sum + pages, 0);
      expect(one.texts).toHaveLength(all);
    });

    test('says the number of each page and of all', () => {
      const { texts } = printed.get(name)!;
      texts.forEach((text, at) => {
        expect(text.split('\n')[0]).toMatch(new RegExp(` Page ${at + 1} of ${texts.length}$`, 'u'));
      });
    });

    test('has no number that gives way to signs', () => {
      expect(printed.get(name)!.texts.filter((text) => text.includes('###'))).toEqual([]);
    });

    test('has nothing nearer to the edge of the paper than a printer reaches', async () => {
      const pages = await rasterPages(printed.get(name)!.pdf, DPI);
      expect(pages).toHaveLength(printed.get(name)!.texts.length);
      expect(pages.flatMap((page, at) => (inkNearEdge(page) ? [at + 1] : []))).toEqual([]);
    }, 120_000);
  });

  test.each(['demo', 'millimetres'])(
    'the workbook of the job “%s” has every text of every cell in full',
    (name) => {
      const one = printed.get(name)!;
      for (const sheet of one.workbook.sheets) {
        const text = squeeze(pagesOf(one, sheet).join(''));
        const wanted = sheet.rows.flatMap(({ cells }) =>
          cells
            .slice(0, sheet.print.printedColumns)
            .flatMap((cell) => (typeof cell?.value === 'string' ? [cell.value] : [])),
        );
        expect(wanted.length).toBeGreaterThan(3);
        const missing = wanted.filter((words) => !text.includes(squeeze(words)));
        expect([sheet.name, ...missing]).toEqual([sheet.name]);
      }
    },
  );

  test('Cutting takes a page for nine lay-outs, and three for its lists', () => {
    for (const [name, layOuts] of [
      ['demo', 57],
      ['millimetres', 1],
    ] as const) {
      const one = printed.get(name)!;
      const sheet = one.workbook.sheets.find((each) => each.name === SHEET_NAMES.cutting)!;
      const pages = pagesOf(one, sheet).length;
      const blocks = layOutsOf(sheet).length;
      expect(blocks).toBeGreaterThanOrEqual(layOuts);
      // The first page and a half is what to pull and where to stop; the last half lists what is kept.
      expect([name, pages, pages <= 3 + Math.ceil(blocks / 9)]).toEqual([name, pages, true]);
    }
  });

  test.each(['demo', 'millimetres'])(
    'the job “%s” is read at arm’s length: 10 points or more, 14 at the saw, 8 in small print',
    (name) => {
      const one = printed.get(name)!;
      for (const sheet of one.workbook.sheets) {
        if (!AT_ARMS_LENGTH.includes(sheet.name)) continue;
        const lines = sizesOf(one, sheet);
        expect(lines.length).toBeGreaterThan(10);
        const cells = printedCells(sheet);
        const small = cells
          .filter(({ style = 'plain' }) => SMALL_PRINT.includes(style))
          .map(({ value }) => squeeze(String(value)));
        const isSmall = (text: string): boolean =>
          small.some((words) => words.includes(squeeze(text)));
        const tooSmall = lines.filter(
          ({ text, points }) =>
            points < SMALL_PRINT_POINTS || (points < ARMS_LENGTH_POINTS && !isSmall(text)),
        );
        expect([sheet.name, tooSmall]).toEqual([sheet.name, []]);
        const figures = cells.filter(({ style = 'plain' }) => AT_THE_SAW.includes(style));
        if (sheet.name === 'Set-ups') expect(figures.length).toBeGreaterThan(15);
        const large = squeeze(
          lines.flatMap(({ text, points }) => (points >= AT_THE_SAW_POINTS ? [text] : [])).join(''),
        );
        const lost = figures.filter(({ value }) => !large.includes(squeeze(String(value))));
        expect([sheet.name, lost]).toEqual([sheet.name, []]);
      }
    },
  );

  test('the shop’s sheets carry no money as they are printed, and Office does', () => {
    for (const { workbook } of printed.values()) {
      for (const sheet of workbook.sheets) {
        const cells = printedCells(sheet);
        const paid = cells.filter(
          ({ value, style = 'plain' }) =>
            style === 'money' ||
            (typeof value === 'string' &&
              /[$€£]|\((?:price|cost)|\b(?:cost|hourly rate|markup|margin|overhead)s?\b/iu.test(
                value,
              )),
        );
        if (WITHOUT_MONEY.includes(sheet.name)) {
          expect([sheet.name, paid.map(({ value }) => value)]).toEqual([sheet.name, []]);
        }
        if (sheet.name === 'Office') expect(paid.length).toBeGreaterThan(20);
      }
    }
  });

  test('every page of a long list repeats its headings', () => {
    const one = printed.get('demo')!;
    const pieces = one.workbook.sheets.find(({ name }) => name === 'Pieces')!;
    const pages = pagesOf(one, pieces);
    expect(pages.length).toBeGreaterThan(2);
    // What is for sums on the screen alone is on none of them.
    expect(pages.filter((text) => text.includes('Cutting less this'))).toEqual([]);
    expect(pages.filter((text) => !squeeze(text).includes('MarkRoomRunPieceProfile'))).toEqual([]);
  });
});
