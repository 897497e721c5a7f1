import { expect, test } from '@jest/globals';
import { readFile } from 'node:fs/promises';
import type { Download, Page } from 'playwright-core';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { planJob as planOnOwn } from '../../src/planning/plan-job.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { jobOf, tablesOf } from '../planning/make-job.ts';
import { typeInto } from '../sheets/client-copies.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';
import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';
import { goTo, localLibrary, planJob } from './pane-steps.ts';
import { planSheets } from '../sheets/sheet-names.ts';

const open = (page: Page, name: string, bytes: Uint8Array): Promise<void> =>
  page.locator('input[type=file]').setInputFiles({
    name,
    mimeType: 'application/octet-stream',
    buffer: Buffer.from(bytes),
  });

const bytesOf = async (download: Download): Promise<Uint8Array> =>
  new Uint8Array(await readFile(await download.path()));

browserSuite('The pane with no workbook beside it', ({ alone }) => {
  test(
    'says so, opens a saved one, plans it, and gives the sheets with the same totals as the command line',
    async () => {
      const { page, context, errors } = await alone();
      await page.getByText('No workbook stands beside this pane').waitFor();
      await open(page, 'trim.xlsx', await writeWorkbook(describeInput(tablesOf(DEMO))));
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      await planJob(page, 'Plan the job', 0);
      const saving = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the sheets as a file' }).click();
      const download = await saving;
      expect(download.suggestedFilename()).toBe('trim-production.xlsx');
      const { sheets } = readXlsxBack(await bytesOf(download));
      expect(sheets.map(({ name }) => name)).toEqual(planSheets());
      const { plan } = await planOnOwn(jobOf(DEMO));
      const price = plan!.totals.priceCents / 100;
      const client = Object.values(sheets.at(-1)!.cells).map(({ value }) =>
        Number(value).toFixed(2),
      );
      expect(client).toContain(price.toFixed(2));
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'saves the client’s copy beside the sheets, and keeps set-up numbers as formulas where that is ticked',
    async () => {
      const { page, context, errors } = await alone();
      await open(page, 'trim.xlsx', await writeWorkbook(describeInput(tablesOf(DEMO))));
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      await planJob(page, 'Plan the job', 0);
      const box = page.getByRole('checkbox', { name: 'Keep the set-up numbers as formulas' });
      expect(await box.isChecked()).toBe(false);
      await box.check();
      expect(await box.isChecked()).toBe(true);
      const saving = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the client’s copy' }).click();
      const download = await saving;
      expect(download.suggestedFilename()).toBe('trim-client.xlsx');
      const { sheets, names } = readXlsxBack(await bytesOf(download));
      expect([sheets.map(({ name }) => name), names]).toEqual([['Moldings'], {}]);
      const { plan } = await planOnOwn(jobOf(DEMO));
      const values = Object.values(sheets[0]!.cells).map(({ value }) => Number(value).toFixed(2));
      const { priceCents, taxCents } = plan!.totals;
      expect(values).toContain(((priceCents + taxCents) / 100).toFixed(2));
      expect(sheets[0]!.drawings).toHaveLength(plan!.profiles.length);
      await page.getByText('saved as trim-client.xlsx').first().waitFor();
      // It comes back with five of its first line, and is told by a list that fits.
      const { cells } = sheets[0]!;
      const [quantity = ''] = Object.keys(cells).filter((at) => cells[at]?.value === 'Quantity');
      const first = Number(quantity.slice(1)) + 1;
      const line = [first, first + 1].find((row) => typeof cells[`C${row}`]?.value === 'number');
      const back = typeInto(await bytesOf(download), { [`C${line!}`]: 5 });
      const name = 'back.xlsx';
      await page
        .locator('input[type=file]')
        .last()
        .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(back) });
      await page
        .getByText(/lines has another quantity than quoted\./)
        .first()
        .waitFor();
      await page.getByRole('button', { name: 'Save the changes as a file' }).waitFor();
      await page.setViewportSize({ width: 350, height: 900 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(350);
      if (process.env['LOOK'] !== undefined) {
        await page.screenshot({ path: process.env['LOOK'], fullPage: true });
      }
      await box.waitFor();
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'makes a workbook to fill in, and tries the demo',
    async () => {
      const { page, context } = await alone();
      const saving = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save a blank workbook' }).click();
      const { sheets } = readXlsxBack(await bytesOf(await saving));
      expect(sheets.map(({ name }) => name)).toContain('Runs');
      await page.getByRole('button', { name: 'Try the demo' }).click();
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test.each([
    ['notes.xlsx', 'plain text', /is no \.xlsx workbook/],
    ['old.xls', '\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1 old', /old \.xls kind/],
    [
      'locked.xlsx',
      `\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1${'EncryptedPackage'.replace(/(?<=.)/gu, '\0')}`,
      /protected by a password/,
    ],
  ])(
    'says of %s what is wrong with it, and goes on',
    async (name, content, said) => {
      const { page, context, errors } = await alone();
      await open(
        page,
        name,
        Uint8Array.from(content, (one) => one.charCodeAt(0)),
      );
      await page.getByText(said).first().waitFor();
      await open(page, 'trim.xlsx', await writeWorkbook(describeInput(tablesOf(DEMO))));
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'works the same where Microsoft’s own library finds no Excel around it',
    async () => {
      const { page, context } = await alone({ library: await localLibrary() });
      await page.getByText('No workbook stands beside this pane').waitFor();
      await goTo(page, 'Profile');
      await page.getByText('Approach, from the blade line').waitFor();
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'sets one cove up as it is typed, in fractions and in millimetres, with drawings and cautions',
    async () => {
      const { page, context } = await alone();
      await goTo(page, 'Profile');
      const field = (name: string) => page.getByRole('textbox', { name });
      // Regression values of our own: 2 wide, 1/2 deep, 1/8 kerf, 10 in blade.
      await field('Cove width').fill('2');
      await field('Cove depth').fill('1/2');
      await field('Off-center').fill('1/4');
      await page.getByText('24.15°', { exact: true }).first().waitFor();
      await page.getByText('65.85°', { exact: true }).first().waitFor();
      await page.getByText('32.08°', { exact: true }).first().waitFor();
      await field('Cove width').fill('50.8 mm');
      await page.getByText('24.15°', { exact: true }).first().waitFor();
      expect(await page.getByRole('img').count()).toBe(2);
      expect(await page.getByText(/saw's manual|saw’s manual/).count()).toBeGreaterThan(0);
      await field('Cove depth').fill('wide');
      await page
        .getByText(/not a length that can be read/)
        .first()
        .waitFor();
      expect(await page.getByText('24.15°', { exact: true }).count()).toBe(0);
      await context.close();
    },
    BROWSER_TEST_MS,
  );
});
