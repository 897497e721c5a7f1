import { afterAll, beforeAll, expect, test } from '@jest/globals';
import type {} from '@univerjs/sheets-numfmt/facade';
import type { Page } from 'playwright-core';

import { makeXlsx, row } from '../hosts/make-xlsx.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import {
  downloaded,
  PAGE_TEST_MS,
  pageSuite,
  selectCell,
  typeUntil,
  type OpenedPage,
} from './page-suite.ts';

const PAD = 'Pad';

/** A cell as the workbook keeps it: value or formula, and its number format. */
type Kept = readonly [string | number | null, string | null];

function keptIn(page: Page, sheet: string, range: string): Promise<Kept[][]> {
  return page.evaluate(
    ([name, cells]) => {
      const data = grid.book().save();
      const found = grid.book().getSheetByName(name)!;
      const { startRow, endRow, startColumn, endColumn } = found.getRange(cells).getRange();
      const held = data.sheets[found.getSheetId()]!.cellData!;
      return Array.from({ length: endRow - startRow + 1 }, (_, r) =>
        Array.from({ length: endColumn - startColumn + 1 }, (__, c) => {
          const { f, v, s } = held[startRow + r]?.[startColumn + c] ?? {};
          const style = typeof s === 'string' ? data.styles[s] : s;
          return [
            f ?? (v as string | number | null | undefined) ?? null,
            style?.n?.pattern ?? null,
          ] as const;
        }),
      );
    },
    [sheet, range] as const,
  );
}

async function paste(page: Page, cell: string, html: string, text: string): Promise<void> {
  await selectCell(page, PAD, cell);
  // What another program put on the clipboard, which a page's own script may not put there unchanged.
  await page.evaluate(
    ([asHtml, asText]) => {
      const clipboardData = new DataTransfer();
      if (asHtml !== '') clipboardData.setData('text/html', asHtml);
      if (asText !== '') clipboardData.setData('text/plain', asText);
      const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
      document.activeElement!.dispatchEvent(event);
    },
    [html, text] as const,
  );
}

const values = (kept: readonly (readonly Kept[])[]): (string | number | null)[][] =>
  kept.map((cells) => cells.map(([value]) => value));

pageSuite('Lengths in the grid, and files in and out of it', ({ open }) => {
  let opened: OpenedPage | undefined;
  beforeAll(async () => {
    opened = await open();
    await opened.page.evaluate((name) => void grid.book().insertSheet(name), PAD);
  }, PAGE_TEST_MS);
  afterAll(() => opened?.context.close());

  test(
    'a length that is typed stays as it was typed, a date and a number are taken as ever',
    async () => {
      const { page } = opened!;
      const typed = [
        '3/4',
        '1/2',
        '5/8',
        '3 1/2',
        '3-1/2"',
        '1-2',
        '7\' 4 3/8"',
        '96',
        '3/4/2026',
        '=1/4',
      ];
      await selectCell(page, PAD, 'A1');
      for (const text of typed) {
        await page.keyboard.type(text);
        await page.keyboard.press('Enter');
      }
      const kept = await keptIn(page, PAD, 'A1:A10');
      expect(values(kept).flat()).toEqual([...typed.slice(0, 7), 96, 46085, '=1/4']);
      expect(kept[0]![0]![1]).toBeNull();
      await selectCell(page, PAD, 'A1');
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+y');
      expect(values(await keptIn(page, PAD, 'A10'))).toEqual([['=1/4']]);
    },
    PAGE_TEST_MS,
  );

  test(
    "a table's columns may be typed by their names, its own row too, and answer",
    async () => {
      const { page } = opened!;
      const typed = async (
        sheet: string,
        cell: string,
        text: string,
        value: number,
      ): Promise<string> => {
        await typeUntil(page, sheet, cell, text, value);
        return page.evaluate(
          ([name, at]) => grid.book().getSheetByName(name)!.getRange(at).getFormula(),
          [sheet, cell] as const,
        );
      };
      expect(await typed(PAD, 'T1', '=ROWS(profilestable[Profile])', 100)).toBe(
        "=ROWS('Profiles'!$A$2:$A$101)",
      );
      expect(await typed('Runs', 'F20', '=LEN([@Room])', 5)).toBe('=LEN($A20)');
      await page.keyboard.press('Control+z');
    },
    PAGE_TEST_MS,
  );

  test(
    'a length that is copied within the grid stays one, and no other cell changes its format',
    async () => {
      const { page } = opened!;
      const lookOf = async (): Promise<unknown> =>
        page.evaluate(() => grid.book().save().styles['inputText']?.n);
      const before = await lookOf();
      expect(before).toEqual({ pattern: '@' });
      await page.evaluate(() => {
        const runs = grid.book().getSheetByName('Runs')!;
        runs.getRange('D70').setValue({ v: '3/4' });
      });
      await selectCell(page, 'Runs', 'D70');
      await page.keyboard.press('Control+c');
      while ((await page.evaluate(() => navigator.clipboard.readText())) !== '3/4');
      await selectCell(page, 'Runs', 'D71');
      await page.keyboard.press('Control+v');
      await page.waitForFunction(
        () => grid.book().getSheetByName('Runs')!.getRange('D71').getValue() === '3/4',
      );
      expect(await keptIn(page, 'Runs', 'D71')).toEqual([[['3/4', '@']]]);
      expect(await lookOf()).toEqual(before);
    },
    PAGE_TEST_MS,
  );

  test(
    'what runs or loads in a pasted text never reaches the page, not even to be stopped there',
    async () => {
      const { page } = opened!;
      await page.evaluate(() => {
        document.addEventListener('securitypolicyviolation', ({ violatedDirective }) =>
          Object.assign(globalThis, { stopped: violatedDirective }),
        );
      });
      // No handlers: a document that is only parsed has them reported too, though it runs nothing.
      const html = `<p style="background:url(//x.invalid/a)">a note<img src="//x.invalid/b"><iframe src="//x.invalid/c"></iframe></p>`;
      await paste(page, 'A300', html, '');
      await page.waitForTimeout(500);
      expect(await page.evaluate(() => 'stopped' in globalThis)).toBe(false);
    },
    PAGE_TEST_MS,
  );

  test(
    "another spreadsheet's cells come as they are meant: lengths, zeros, joined cells, numbers unrounded",
    async () => {
      const { page } = opened!;
      await paste(
        page,
        'C1',
        '',
        'Room\tLength\nHall\t3/4\n"two\nlines"\t"7\' 4 3/8"""\n007\t=1+1\n',
      );
      expect(values(await keptIn(page, PAD, 'C1:D4'))).toEqual([
        ['Room', 'Length'],
        ['Hall', '3/4'],
        ['two\nlines', '7\' 4 3/8"'],
        ['007', '=1+1'],
      ]);
      const html = `<html xmlns:x="urn:schemas-microsoft-com:office:excel"><head><style>
        .xl65{mso-number-format:"\\@";} .xl66{mso-number-format:"\\#\\ ?\\/?";font-weight:700}</style></head><body><table>
        <tr><td colspan=2 class=xl66>My <b>trim</b>\n  list</td><td>=1+1</td></tr>
        <tr><td class=xl65>3/4</td><td class=xl66 x:num="3.3125">3 1/3</td><td><span style='mso-spacerun:yes'>&nbsp; </span>1,234.50 </td></tr>
        <tr><td rowspan=2>a<br>b</td><td sdval="46085" sdnum="1033;0;M/D/YYYY">3/4/2026</td><td data-sheets-value='{"1":3,"3":0.75}'>0.8</td></tr>
        <tr><td>5/8</td><td>12%</td></tr></table><script>globalThis.ran = true</script></body></html>`;
      await paste(page, 'G1', html, 'not this');
      expect(await keptIn(page, PAD, 'G1:I4')).toEqual([
        [
          ['My trim list', null],
          [null, null],
          ['=1+1', null],
        ],
        [
          ['3/4', null],
          [3.3125, '# ?/?'],
          [1234.5, '#,##0.00'],
        ],
        [
          ['a\nb', null],
          [46085, 'M/D/YYYY'],
          [0.75, null],
        ],
        [
          [null, null],
          ['5/8', null],
          [0.12, '0%'],
        ],
      ]);
      const merges = (): Promise<number> =>
        page.evaluate((name) => grid.book().getSheetByName(name)!.getMergeData().length, PAD);
      expect(await merges()).toBe(2);
      expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
      // A part of joined cells can't be pasted over; all of it comes and goes as one step.
      await paste(page, 'F1', '', 'a\tb\nc\td');
      await page.getByText('a part of the joined cells “G1:H1”').waitFor();
      expect(values(await keptIn(page, PAD, 'F1:F2'))).toEqual([[null], [null]]);
      await selectCell(page, PAD, 'G1');
      await page.keyboard.press('Control+z');
      await page.waitForFunction(
        (name) => grid.book().getSheetByName(name)!.getMergeData().length === 0,
        PAD,
      );
      expect(
        values(await keptIn(page, PAD, 'G1:I4'))
          .flat()
          .every((one) => one === null),
      ).toBe(true);
    },
    PAGE_TEST_MS,
  );

  test(
    '20,000 cells are pasted beyond the last row; 100,000 rows are refused in words, the sheet as it was',
    async () => {
      const { page } = opened!;
      const list = (rows: number): string =>
        Array.from({ length: rows }, (_, at) => `Room ${at}\t3/4\t${at}\tx`).join('\n');
      await paste(page, 'A900', '', list(5_000));
      expect(values(await keptIn(page, PAD, 'A5898:C5899'))).toEqual([
        ['Room 4998', '3/4', 4998],
        ['Room 4999', '3/4', 4999],
      ]);
      await page.keyboard.press('Control+z');
      await page.waitForFunction(
        (name) => grid.book().getSheetByName(name)!.getMaxRows() === 1000,
        PAD,
      );
      await paste(page, 'A900', '', list(100_000));
      await page.getByText('at most 200,000 are pasted at once').waitFor();
      expect(values(await keptIn(page, PAD, 'A900:B900'))).toEqual([[null, null]]);
    },
    PAGE_TEST_MS,
  );

  test(
    "a person's workbook comes alive: our formulas are worked out, others keep their values until theirs change",
    async () => {
      const { page, errors } = opened!;
      const cells =
        '<row r="2"><c r="A2"><v>3</v></c><c r="B2" t="e"><f>_xldudf_COVE_APPROACH(A2,0.5)</f><v>#NAME?</v></c>' +
        '<c r="C2"><f>B2*2</f><v>1</v></c><c r="D2"><f>A2*2</f><v>777</v></c><c r="E2"><f>NOSUCH(A2)</f><v>5</v></c>' +
        '<c r="F2"><f t="array" ref="F2:F3">_xldudf_COVE_INCHTEXT(A2:A3)</f><v>0</v></c></row>' +
        '<row r="3"><c r="A3"><v>0.75</v></c><c r="F3"><v>0</v></c></row>';
      const bytes = makeXlsx({ sheets: [['Mine', row(1, 'Width') + cells]] });
      const choosing = page.waitForEvent('filechooser');
      await page.getByRole('button', { name: /^Open/u }).click();
      await (
        await choosing
      ).setFiles({
        name: 'mine.xlsx',
        mimeType: 'application/octet-stream',
        buffer: Buffer.from(bytes),
      });
      await page.getByRole('button', { name: 'Open it' }).click();
      await page.waitForFunction(() => {
        const sheet = grid.book().getSheetByName('Mine');
        return sheet !== null && Number(sheet.getRange('B2').getValue()) > 10;
      });
      await page.getByText('NOSUCH').first().waitFor();
      const shown = (): Promise<unknown[]> =>
        page.evaluate(() =>
          ['B2', 'C2', 'D2', 'E2', 'F2', 'F3'].map((at) => {
            const book = grid.book();
            const sheet = book.getSheetByName('Mine')!;
            const { startRow, startColumn } = sheet.getRange(at).getRange();
            return grid.readCell(book, sheet.getSheetId(), startRow, startColumn)?.v;
          }),
        );
      const [approach, twice, kept, unknown, ...spilled] = await shown();
      expect(twice).toBeCloseTo(Number(approach) * 2, 9);
      expect([kept, unknown, ...spilled]).toEqual([777, 5, '3"', '3/4"']);
      const { bytes: saved } = await downloaded(page, () =>
        page.getByRole('button', { name: 'Download' }).click(),
      );
      const back = readXlsxBack(saved).sheets[0]!.cells;
      expect([back['B2']!.formula, back['B2']!.value]).toEqual([
        '_xldudf_COVE_APPROACH(A2,0.5)',
        approach,
      ]);
      expect([back['F2']!.formula, back['F3']!.formula, back['F3']!.value]).toEqual([
        '_xldudf_COVE_INCHTEXT(A2:A3)',
        null,
        '3/4"',
      ]);
      expect(errors).toEqual([]);
    },
    PAGE_TEST_MS,
  );
});
