import { describe, expect, test } from '@jest/globals';
import { format as formatNumber } from 'numfmt';
import { printDocument } from '../../src/browser/print/print-document.ts';
import { printedFromDescription } from '../../src/browser/print/printed-from-description.ts';
import {
  isPageOf,
  listPrintChoices,
  type PrintChoice,
} from '../../src/pane/print/print-choices.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import { showValue } from '../../src/sheets/grammar/show-value.ts';
import { STYLES, type CellStyle } from '../../src/sheets/grammar/styles.ts';
import { DEMO_FOLDER, folderTables, planOf } from '../planning/make-job.ts';
import { pageRule } from '../../src/browser/print/page-rule.ts';
import { keptTogether, partBlock, printBlocks } from '../../src/browser/print/print-blocks.ts';
import { headingOf, printScale } from '../../src/browser/print/print-table.ts';
import type { PrintedSheet } from '../../src/browser/print/printed-sheet.ts';

const PRINT = {
  paper: 'letter',
  orientation: 'portrait',
  fitWidth: true,
  header: '',
  footer: '',
} as const;

const sheet = (rows: number, more: Partial<PrintedSheet> = {}): PrintedSheet => ({
  name: 'Set-ups',
  columns: [100, 100],
  rows: Array.from({ length: rows }, () => ({ height: 15, cells: [] })),
  merges: [],
  pictures: [],
  print: PRINT,
  ...more,
});

describe('The blocks of a printed sheet', () => {
  test('end where a page break is asked for, and hold every row once', () => {
    expect(printBlocks(sheet(9))).toEqual([[0, 8]]);
    const print = { ...PRINT, breaksAfter: [7, 3, 3, 9, 40] };
    expect(printBlocks(sheet(9, { print }))).toEqual([
      [0, 2],
      [3, 6],
      [7, 8],
    ]);
    expect(printBlocks(sheet(0))).toEqual([]);
  });

  test('repeat the title rows from where they stand, and hold all else once, wherever a block ends', () => {
    const print = { ...PRINT, titleRows: [4, 5] } as const;
    expect(partBlock(print, [0, 2])).toEqual({ body: [0, 2] });
    expect(partBlock(print, [0, 3])).toEqual({ body: [0, 3] });
    expect(partBlock(print, [3, 8])).toEqual({ heads: [3, 4], body: [5, 8] });
    expect(partBlock(print, [1, 8])).toEqual({ above: [1, 2], heads: [3, 4], body: [5, 8] });
    expect(partBlock(print, [9, 12])).toEqual({ heads: [3, 4], body: [9, 12] });
    expect(partBlock(PRINT, [9, 12])).toEqual({ body: [9, 12] });
    const rows = 12;
    for (const breaksAfter of [[1], [3], [4], [5], [3, 4, 5], [2, 7], []]) {
      const parts = printBlocks(sheet(rows, { print: { ...print, breaksAfter } })).map((block) =>
        partBlock(print, block),
      );
      const printed = new Set<number>();
      for (const { above, heads, body } of parts) {
        for (const [from, to] of [above, heads, body].filter((part) => part !== undefined)) {
          for (let row = from; row <= to; row++) printed.add(row);
        }
      }
      expect({ breaksAfter, printed: printed.size }).toEqual({ breaksAfter, printed: rows });
    }
  });

  test('keep together the rows that a joined cell or a picture stands over, and no others', () => {
    const merges = [{ top: 1, left: 0, bottom: 2, right: 0 }];
    // 46 points from row 4 (the fifth) on: three rows of 15 and a point of the next.
    const pictures = [
      { row: 4, column: 1, width: 50, height: 46, image: { svg: '' }, alt: 'A section' },
    ];
    expect(keptTogether(sheet(10, { merges, pictures }), [0, 9])).toEqual([
      [0, 0],
      [1, 2],
      [3, 3],
      [4, 7],
      [8, 8],
      [9, 9],
    ]);
  });
});

describe('The printed page', () => {
  test('is shrunk to its width where the sheet says so, and never made larger', () => {
    // 7.5 inches stand between the margins of a letter: 540 points; 10 across it: 720.
    expect(printScale(sheet(1, { columns: [600, 480] }))).toBe(0.5);
    expect(printScale(sheet(1, { columns: [300] }))).toBe(1);
    const print = { ...PRINT, orientation: 'landscape' } as const;
    expect(printScale(sheet(1, { columns: [600, 480], print }))).toBeCloseTo(720 / 1080, 12);
    const whole = { ...PRINT, fitWidth: false };
    expect(printScale(sheet(1, { columns: [600, 480], print: whole }))).toBe(1);
  });

  test('has its paper and its footer, whatever stands in the text', () => {
    const rule = pageRule({
      ...PRINT,
      paper: 'a4',
      orientation: 'landscape',
      footer: 'Jo\'s "best"\\ } @page </style>\nroom',
    });
    expect(rule).toContain('size: 297mm 210mm;');
    expect(rule).toContain('content: "Page " counter(page) " of " counter(pages)');
    const [, footer = ''] = /@bottom-left \{ content: "(.*?)"; font/u.exec(rule) ?? [];
    expect(footer).toBe("Jo's \\22 best\\22 \\5c  } @page \\3c /style>\\a room");
    expect(rule.split('\n')).toHaveLength(7);
  });
});

describe('What a plan is printed from, without a workbook', () => {
  const plan = planOf(folderTables(DEMO_FOLDER), { seconds: 0, now: () => 0 });

  test('has for each cove and each room its own pages, and all pages of the set-ups are of one cove', async () => {
    const made = await plan;
    const choices = listPrintChoices(made, describePlan(made));
    const headings = (choice: PrintChoice): string[] => {
      const printed = printedFromDescription(choice.sheet, '.');
      return printBlocks(printed)
        .map((rows) => headingOf(printed, rows))
        .filter((text) => isPageOf(choice, text));
    };
    const parts = choices.filter(({ heading }) => heading !== undefined);
    expect(parts.map(({ label }) => label)).toEqual([
      ...['Reading cove', 'Gallery crown', 'Picture rail'],
      ...['Reading room', 'Map room', 'Stair hall'],
    ]);
    for (const part of parts) {
      expect(headings(part).length).toBeGreaterThan(0);
      const { blocks, html, width } = printDocument(part.sheet, '.', (text) =>
        isPageOf(part, text),
      );
      expect([blocks, width]).toEqual([headings(part).length, 8.5]);
      const others = parts.filter(({ group, key }) => group === part.group && key !== part.key);
      const strange = others.filter(({ label }) => html.includes(`<div class="wrapped">${label}<`));
      expect(strange.map(({ label }) => label)).toEqual([]);
    }
    const whole = choices.find(({ key }) => key === 'Set-ups')!;
    const ofCoves = parts.filter(({ group }) => group === 'One set-up').flatMap(headings);
    expect(ofCoves.sort()).toEqual(headings(whole).sort());
  });

  test('shows every number as its format says, drawings as lines, and keeps a person’s words text', async () => {
    const made = await plan;
    const { sheets } = describePlan(made);
    for (const sheet of sheets) {
      const { html } = printDocument(sheet, '.', () => true);
      expect(html.match(/<svg /gu) ?? []).toHaveLength(sheet.drawings?.length ?? 0);
      expect(/NaN|undefined|Infinity/u.exec(html)?.[0]).toBeUndefined();
    }
    const office = sheets.find(({ name }) => name === 'Office')!;
    const price = (made.totals.priceCents / 100).toLocaleString('en-US', {
      minimumFractionDigits: 2,
    });
    expect(printDocument(office, '.', () => true).html.includes(price)).toBe(true);
    const [row] = office.rows;
    const words = '</style><b>&"';
    const spoiled = { ...office, rows: [{ cells: [{ value: words }] }, row!], name: words };
    const { html } = printDocument(
      { ...spoiled, merges: [], drawings: [], print: { ...office.print, footer: words } },
      '.',
      () => true,
    );
    expect(html.split('&lt;/style&gt;&lt;b&gt;&amp;&quot;').length).toBeGreaterThan(1);
    expect(html.includes('<b>')).toBe(false);
    expect(html.match(/<\/style>/gu)).toHaveLength(1);
  });
});

describe('What a cell shows of a number', () => {
  // A formatter of another make, which the grid brings along.
  test.each(
    [...new Set(Object.values<CellStyle>(STYLES).flatMap(({ format = [] }) => format))].filter(
      (format) => format !== '@',
    ),
  )('under %s is what another formatter shows', (code) => {
    const values = [0, 1, 0.5, 2.005, 46.625, 0.0156, 1234.5678, 0.1234567, 1e6, -3.25, 46357];
    for (const value of values) {
      // Days are counted alike from 1901 on.
      if (code === 'd mmm yyyy' && value < 367) continue;
      const theirs = formatNumber(code, value).trim().replace(/\s+/gu, ' ');
      expect([value, showValue(value, code, '.').trim()]).toEqual([value, theirs]);
    }
  });

  test('has the shop’s own decimal sign', () => {
    expect(showValue(1234.5, '#,##0.00_)', ',')).toBe('1.234,50');
    expect(showValue(0.25, '+0.0##;-0.0##;""', ',')).toBe('+0,25');
    expect(showValue(46.625, '# ??/??_)', ',')).toBe('46 5/8');
    expect(showValue(33.5, undefined, ',')).toBe('33,5');
    expect(() => showValue(1, '[Red]0', '.')).toThrow(RangeError);
  });
});
