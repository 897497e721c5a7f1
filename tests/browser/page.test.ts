import { afterAll, beforeAll, expect, test } from '@jest/globals';
import { unzipSync } from 'fflate';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CATALOGUE } from '../../src/functions/catalogue.ts';
import { folderWith, jsonOf, runAlone, stopProgram } from '../cli/program.ts';
import { drawingsOn, expectDrawn, fitOf } from './printed-drawings.ts';
import { printTestsRun, readPdf, wordsMissing, wordsOf, type PrintedPdf } from './printed-pdf.ts';
import {
  downloaded,
  isKept,
  PAGE_TEST_MS,
  pageSuite,
  selectCell,
  sheetNames,
  shownIn,
  textsOn,
  typeInto,
  type OpenedPage,
} from './page-suite.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';
import type { Page } from 'playwright-core';
import { sortPieces } from './sort-pieces.ts';
import { goTo, planJob } from './pane-steps.ts';
import { INPUT_SHEETS, planSheets } from '../sheets/sheet-names.ts';

const SHEETS = [...INPUT_SHEETS, ...planSheets()];
/** Grid shown and functions answering, cold, on two cores; a busy machine has thrice as long. */
const READY_MS = 4_000;
const BUSY = 3;
/** First blank row of the demo's runs. */
const NEXT_RUN = DEMO.runs!.trimEnd().split('\n').length + 1;

/** A trim list as another spreadsheet hands it over: room, run, profile, length. */
const TRIM = [
  ['Porch', 'north', 'Picture rail', '9\' 4 3/8"'],
  ['Porch', 'east', 'Picture rail', '2.29 m'],
  ['Porch', 'south base', 'Tall base', '112 1/2'],
];

/** The demo's profiles that are cut, in the order of its Profiles sheet. */
const COVES = ['Reading cove', 'Gallery crown', 'Picture rail'];
/** The corners of a crown have a page of their own. */
const SET_UP_PAGES = [
  'Reading cove',
  'Gallery crown',
  'Gallery crown, its corners',
  'Picture rail',
];
/** On the emptiest page, its header and footer with it. */
const LEAST_WORDS = 12;
/** Of a PNG: W3C, third edition, 11.2.1. */
const COLOR_TYPE_AT = 25;
const INDEXED = 3;
/** In points. */
const LETTER = [612, 792];

interface Totals {
  readonly totals: { readonly price: number; readonly lumberCost?: number };
  readonly rooms: readonly { readonly room: string }[];
}

pageSuite('The page, from the demo to a workbook of one’s own', ({ open, origin }) => {
  let opened: OpenedPage | undefined;
  beforeAll(async () => {
    opened = await open();
  }, PAGE_TEST_MS);
  afterAll(async () => {
    await opened?.context.close();
    stopProgram();
  });

  test(
    'shows the demo job, its functions live, within seconds; the pane comes after the sheet',
    async () => {
      const { page } = opened!;
      expect(await sheetNames(page)).toEqual(INPUT_SHEETS);
      await page.waitForFunction(() => performance.getEntriesByName('functions answer').length > 0);
      const at = await page.evaluate(() => {
        const start = (name: string) => performance.getEntriesByName(name)[0]!.startTime;
        return {
          grid: start('grid shown'),
          answer: start('functions answer'),
          pane: start('pane shown'),
        };
      });
      expect(at.answer).toBeLessThan(READY_MS * BUSY);
      expect(at.pane).toBeGreaterThan(at.grid);
      const approach = (width: string, depth: string, offCenter: string): string => {
        const entry = CATALOGUE.find(({ id }) => id === 'APPROACH')!;
        const [[degrees]] = entry.call(
          [[width]],
          [[depth]],
          [[offCenter]],
          [['9 7/8']],
          [['1/8']],
        ) as [[number]];
        return `${degrees.toFixed(1)}°`;
      };
      const [head, first, , third, bought] = await shownIn(page, 'Profiles', 'U1:X5');
      expect(head![0]).toBe('Approach (degrees from the blade line)');
      expect(first!.slice(0, 3)).toEqual([approach('3 5/8', '7/8', '3/8'), '29.9°', 'yes']);
      expect(third!.slice(0, 3)).toEqual([approach('1 1/2', '3/8', ''), '0.0°', 'yes']);
      expect(bought).toEqual(['', '', '', '']);
      // A profile of the person's own below them is answered as it is typed.
      await page.evaluate(() => {
        const sheet = grid.book().getSheetByName('Profiles')!;
        for (const [cell, v] of [
          ['A7', 'Own cove'],
          ['C7', '1 1/2'],
          ['D7', '3/8'],
        ] as const)
          sheet.getRange(cell).setValue({ v });
      });
      await page.waitForFunction(
        () => grid.book().getSheetByName('Profiles')!.getRange('V7').getDisplayValue() === '0.0°',
      );
      for (let times = 0; times < 3; times++) await page.evaluate(() => grid.api.undo());
      await typeInto(page, 'Profiles', 'C2', '30');
      await page.waitForFunction(
        () => grid.book().getSheetByName('Profiles')!.getRange('W2').getDisplayValue() === 'no',
      );
      expect((await shownIn(page, 'Profiles', 'X2'))[0]![0]).toMatch(/^Width is 30 in/u);
      await page.keyboard.press('Control+z');
      await page.waitForFunction(
        () => grid.book().getSheetByName('Profiles')!.getRange('W2').getDisplayValue() === 'yes',
      );
      expect((await shownIn(page, 'Profiles', 'C2'))[0]).toEqual(['3 5/8']);
    },
    PAGE_TEST_MS,
  );

  test(
    'takes a pasted trim list to written sheets, and to a file that the command line plans to the same totals',
    async () => {
      const { page, errors } = opened!;
      await selectCell(page, 'Runs', `A${NEXT_RUN}`);
      await page.evaluate(
        (text) => navigator.clipboard.writeText(text),
        TRIM.map((row) => row.join('\t')).join('\n'),
      );
      await page.keyboard.press('Control+v');
      await page.getByText(`${NEXT_RUN + 1} rows`).waitFor();
      await planJob(page);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      const written = page.locator('#pane .fui-MessageBar').getByText('were written');
      await written.waitFor();
      expect(await sheetNames(page)).toEqual(SHEETS);
      await selectCell(page, 'Runs', 'A1');
      await page.keyboard.press('Control+z');
      // What the pane says of the sheets goes with them.
      await written.waitFor({ state: 'hidden' });
      expect(await sheetNames(page)).toEqual(INPUT_SHEETS);
      await page.keyboard.press('Control+y');
      await page.waitForFunction((all) => grid.book().getNumSheets() === all, SHEETS.length);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      const dialog = page.getByRole('dialog', { name: 'Replace the sheets?' });
      expect(await dialog.innerText()).toMatch(/Undo brings the sheets back as they were\./u);
      await dialog.getByRole('button', { name: 'Replace' }).click();
      await written.waitFor();
      expect(await sheetNames(page)).toEqual(SHEETS);
      await sortPieces(page);
      // The quick plan is the same wherever it is made.
      await planJob(page, 'Plan again', 0);
      const shown = await page.locator('#pane').innerText();
      await isKept(page);
      const { name, bytes } = await downloaded(page, () =>
        page.getByRole('button', { name: 'Download' }).click(),
      );
      expect(name).toBe('Demo job.xlsx');
      // With a table of colors: four bytes a pixel make a file four times as large.
      const media = unzipSync(bytes, { filter: (one) => one.name.startsWith('xl/media/') });
      const colorTypes = Object.values(media).map((png) => png[COLOR_TYPE_AT]);
      expect([colorTypes.length > 20, new Set(colorTypes)]).toEqual([true, new Set([INDEXED])]);
      const folder = folderWith({});
      writeFileSync(join(folder, name), bytes);
      const ran = await runAlone(folder, ['plan', name, '--seconds', '0', '--json']);
      const { totals, rooms, cautions } = jsonOf(ran) as Totals & {
        cautions: { code: string }[];
      };
      expect(ran.exit).toBe(0);
      expect(rooms.map(({ room }) => room)).toContain('Porch');
      // The live columns are answers, not headings that nobody knows.
      expect(cautions.filter(({ code }) => code === 'table.heading-unknown')).toEqual([]);
      const price = totals.price.toLocaleString('en-US', { minimumFractionDigits: 2 });
      expect(shown).toContain(`$${price}`);
      expect(errors).toEqual([]);
    },
    PAGE_TEST_MS,
  );

  (printTestsRun ? test : test.skip)(
    'prints a set-up on a page of its own, with its drawings in the sheet’s proportion, or at full size',
    async () => {
      const { page } = opened!;
      await page.evaluate(() => {
        window.print = () => Object.assign(globalThis, { printed: true });
      });
      const print = async (sheet: string): Promise<PrintedPdf> => {
        await page.getByRole('button', { name: 'Print…' }).click();
        const dialog = page.getByRole('dialog', { name: 'Print a sheet' });
        await dialog.getByRole('combobox').selectOption(sheet);
        await dialog.getByRole('button', { name: 'Print', exact: true }).click();
        await page.waitForFunction(() => 'printed' in globalThis);
        const bytes = await page.pdf({ preferCSSPageSize: true });
        await page.evaluate(() => Reflect.deleteProperty(globalThis, 'printed'));
        return readPdf(bytes);
      };
      const setUps = await print('Set-ups');
      expect([setUps.pages, setUps.size]).toEqual([SET_UP_PAGES.length, LETTER]);
      setUps.texts.forEach((text, index) => {
        const heading = SET_UP_PAGES[index]!;
        expect(text).toContain(heading);
        if (COVES.includes(heading)) expect(text).toMatch(/Read your saw's manual first/u);
        expect(text).toContain(`Page ${index + 1} of ${SET_UP_PAGES.length}`);
      });
      const wanted = await drawingsOn(page, 'Set-ups');
      expect(wanted).toHaveLength(2 * COVES.length);
      // As wide as the page, so that nothing shrinks.
      const shrunk = await fitOf(page, 'Set-ups');
      expect(shrunk).toBe(1);
      expectDrawn(setUps, wanted, shrunk);
      await page.evaluate(() => {
        const sheet = grid.book().getSheetByName('Set-ups')!.getSheet();
        const custom = structuredClone(sheet.getCustomMetadata()) as {
          coveledger: { print: { fitWidth: boolean; orientation: string } };
        };
        custom.coveledger.print = {
          ...custom.coveledger.print,
          fitWidth: false,
          orientation: 'landscape',
        };
        sheet.setCustomMetadata(custom);
      });
      const whole = await print('Set-ups');
      expect(whole.size).toEqual(LETTER.toReversed());
      expectDrawn(whole, wanted, 1);
      for (const sheet of planSheets()) {
        const { texts } = await print(sheet);
        // No page is printed without anything on it but its number.
        const blank = texts.filter((text) => wordsOf(text).length < LEAST_WORDS);
        expect({ sheet, blank }).toEqual({ sheet, blank: [] });
        // What stands beside the page is for the screen.
        const printed = await printedColumnsOf(page, sheet);
        const missing = wordsMissing(await textsOn(page, sheet, printed), texts.join('\n'));
        expect({ sheet, missing }).toEqual({ sheet, missing: [] });
      }
      expect(await page.locator('#print-view').count()).toBe(0);
    },
    PAGE_TEST_MS,
  );

  test(
    'is used with the keyboard alone: F6 goes from bar to sheet to pane and back, out of a half-typed cell too',
    async () => {
      const { page } = opened!;
      const place = (): Promise<string> =>
        page.evaluate(() =>
          ['bar', 'grid-place', 'pane'].find((id) =>
            document.getElementById(id)!.contains(document.activeElement),
          )!,
        );
      await selectCell(page, 'Runs', 'N2');
      await page.keyboard.type('half typed');
      await page.keyboard.press('F6');
      expect(await place()).toBe('pane');
      await page.waitForFunction(
        () => grid.book().getSheetByName('Runs')!.getRange('N2').getValue() === 'half typed',
      );
      await page.keyboard.press('F6');
      expect(await place()).toBe('bar');
      await page.keyboard.press('F6');
      expect(await place()).toBe('grid-place');
      // Below the cell that was being typed in, as after Enter.
      await page.keyboard.type('from the keyboard');
      await page.keyboard.press('Enter');
      await page.waitForFunction(
        () => grid.book().getSheetByName('Runs')!.getRange('N3').getValue() === 'from the keyboard',
      );
      await page.keyboard.press('Shift+F6');
      await page.keyboard.press('Shift+F6');
      expect(await place()).toBe('pane');
      await page.keyboard.press('Home');
      await page.keyboard.press('ArrowRight');
      await page.getByRole('heading', { name: 'Set-up' }).waitFor();
      await page.keyboard.press('F6');
      for (let times = 0; times < 3; times++) await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.getByRole('dialog', { name: 'Print a sheet' }).waitFor();
      await page.keyboard.press('Escape');
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Print…');
    },
    PAGE_TEST_MS,
  );

  test('asks nothing of any other place, and nothing that its policy refuses', async () => {
    const { page, asked, errors } = opened!;
    await goTo(page, 'Functions');
    expect(asked.length).toBeGreaterThan(10);
    const elsewhere = asked.filter(
      (address) => !address.startsWith(`${origin()}/`) && !/^(?:data|blob):/u.test(address),
    );
    expect(elsewhere).toEqual([]);
    const policy = await page
      .locator('meta[http-equiv="Content-Security-Policy"]')
      .getAttribute('content');
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/https?:|'unsafe-eval'/u);
    expect(errors).toEqual([]);
  });
});

/** How many columns of a written sheet are printed; undefined where all are. */
function printedColumnsOf(page: Page, sheet: string): Promise<number | undefined> {
  return page.evaluate((name) => {
    const custom = grid.book().getSheetByName(name)!.getSheet().getCustomMetadata() as {
      coveledger: { print: { printedColumns?: number } };
    };
    return custom.coveledger.print.printedColumns;
  }, sheet);
}
