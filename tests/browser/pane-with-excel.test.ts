import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';

import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';
import { blankWorkbook, demoWorkbook, goTo, ownSheets, planJob } from './pane-steps.ts';
import { INPUT_SHEETS, planSheets } from '../sheets/sheet-names.ts';

const sheetNames = (page: Page): Promise<string[]> => page.evaluate(() => testExcel.sheetNames);

browserSuite('The pane beside a workbook', ({ besideExcel }) => {
  test(
    'goes the whole way from a blank workbook to written sheets, and leaves the person’s own alone',
    async () => {
      const { page, context, errors } = await besideExcel({ before: blankWorkbook });
      const before = await ownSheets(page);
      await page.getByRole('button', { name: /Make the demo.s sheets/ }).click();
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      expect(await sheetNames(page)).toEqual(['Notes', ...INPUT_SHEETS]);
      await planJob(page);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      await page.getByText('were written').first().waitFor();
      expect(await sheetNames(page)).toEqual(['Notes', ...INPUT_SHEETS, ...planSheets()]);
      expect(await ownSheets(page)).toBe(before);
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'lists a fault with its cell as it is typed, selects the cell, and plans nothing meanwhile',
    async () => {
      const { page, context } = await besideExcel({ before: blankWorkbook });
      await demoWorkbook(page);
      await page.evaluate(async () => {
        const runs = testExcel.workbook.sheets.find(({ name }) => name === 'Runs')!;
        await testExcel.types(runs, 'D3', 'about six feet');
      });
      const fault = page.getByRole('button', { name: /Runs!D3/ });
      await fault.waitFor();
      expect(await page.getByRole('status').allTextContents()).toEqual(
        expect.arrayContaining([expect.stringContaining('1 problem')]),
      );
      await fault.click();
      await page.waitForFunction(() => testExcel.workbook.active?.name === 'Runs');
      expect(await page.evaluate(() => testExcel.workbook.activeCell)).toMatchObject({
        row: 2,
        column: 3,
      });
      await goTo(page, 'Plan');
      const plan = page.getByRole('button', { name: 'Plan the job' });
      expect(await plan.getAttribute('aria-disabled')).toBe('true');
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'says that the inputs have changed since, and asks before it replaces what it wrote',
    async () => {
      const { page, context } = await besideExcel({ before: blankWorkbook });
      await demoWorkbook(page);
      await planJob(page, 'Plan the job', 0);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      await page.getByText('were written').first().waitFor();
      await page.evaluate(async () => {
        const { sheets } = testExcel.workbook;
        const runs = sheets.find(({ name }) => name === 'Runs')!;
        await testExcel.types(runs, 'D3', '99');
        await testExcel.types(sheets[0]!, 'C3', { formula: '=Production!B2', value: 1 });
      });
      await page
        .getByText(/inputs have changed since/)
        .first()
        .waitFor();
      await planJob(page, 'Plan again', 0);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      const dialog = page.getByRole('dialog');
      await dialog.waitFor();
      const asked = await dialog.textContent();
      expect(asked).toContain('can’t be undone');
      expect(asked).toContain('Notes!C3');
      for (const name of planSheets()) expect(asked).toContain(name);
      await dialog.getByRole('button', { name: 'Leave them' }).click();
      await dialog.waitFor({ state: 'hidden' });
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      await dialog.getByRole('button', { name: 'Replace' }).click();
      await page.getByText('were written').first().waitFor();
      expect(await sheetNames(page)).toEqual(['Notes', ...INPUT_SHEETS, ...planSheets()]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'puts an example into the chosen cell when asked, and never over something',
    async () => {
      const { page, context } = await besideExcel({ before: blankWorkbook });
      await goTo(page, 'Functions');
      await page.getByText('COVE.TILT', { exact: false }).first().click();
      await page.getByRole('button', { name: 'Put example into the selected cell' }).click();
      await page
        .getByText(/Notes!B5/)
        .first()
        .waitFor();
      const cell = await page.evaluate(
        () => testExcel.view().sheets.find(({ name }) => name === 'Notes')?.cells['B5']?.formula,
      );
      expect(cell).toMatch(/^COVE\.TILT\(/u);
      await page.evaluate(() => testExcel.select(testExcel.workbook.sheets[0]!, 'A1'));
      const before = await ownSheets(page);
      await page.getByRole('button', { name: 'Put example into the selected cell' }).click();
      await page
        .getByText(/holds something already/)
        .first()
        .waitFor();
      expect(await ownSheets(page)).toBe(before);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'reads a trim list of the person’s own once its columns are told, and remembers them',
    async () => {
      const { page, context } = await besideExcel({
        before: () => {
          testExcel.addSheet('Notes', [['mine']]);
          testExcel.addSheet('House', [
            ['Space', 'Style', 'Long', 'Amount'],
            ['Hall', 'Base', '8\' 2"', 2],
          ]);
          testExcel.addSheet('Profiles', [['Profile'], ['Base']]);
          testExcel.addSheet('Stock', [
            ['For', 'Length', 'Price'],
            ['Base', '12\' 0"', 18],
          ]);
        },
      });
      await page.getByRole('button', { name: 'Choose a table for Runs' }).click();
      const panel = page.getByRole('group', { name: 'A table for Runs' });
      const choices = panel.getByRole('combobox', { name: 'Which table is Runs?' });
      await choices.selectOption({ label: 'sheet House (1 row)' });
      const theirs = (ours: string): Promise<string> =>
        panel.getByRole('combobox', { name: ours }).inputValue();
      expect(await theirs('Room (needed)')).toBe('Space');
      expect(await theirs('Profile (needed)')).toBe('Style');
      expect(await theirs('Length (needed)')).toBe('Long');
      await panel.getByRole('button', { name: 'Use this table' }).click();
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      await planJob(page);
      const before = await ownSheets(page, 4);
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      await page.getByText('were written').first().waitFor();
      expect(await ownSheets(page, 4)).toBe(before);
      const remembered = await page.evaluate(() => testExcel.workbook.properties);
      expect(JSON.stringify(remembered)).toContain('Style');
      await context.close();
    },
    BROWSER_TEST_MS,
  );
});
