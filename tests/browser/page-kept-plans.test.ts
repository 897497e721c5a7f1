import { expect, test } from '@jest/globals';
import type { Locator, Page } from 'playwright-core';
import { findViolations } from './find-violations.ts';
import { isReady, PAGE_TEST_MS, pageSuite } from './page-suite.ts';
import { goTo, planJob } from './pane-steps.ts';

/** What the Plan tab says of ticks. */
function cut(page: Page): Locator {
  return page
    .getByRole('tabpanel', { name: 'Plan' })
    .getByText(/^1 of \d+ sticks cut or begun: it stays/u);
}

pageSuite('A plan on the page', ({ open }) => {
  test(
    'outlives a reload, and so do the ticks: what is cut stays in the next plan',
    async () => {
      const { page, errors } = await open();
      await planJob(page, 'Plan the job', 0);
      const price = await page
        .getByText(/^\$[\d,.]+$/u)
        .last()
        .innerText();
      await page.getByRole('button', { name: 'Write the sheets' }).click();
      await page.locator('#pane .fui-MessageBar').getByText('were written').waitFor();
      const stick = await page.evaluate(() => {
        const sheet = grid.book().getSheetByName('Cutting')!;
        const rows = sheet.getRange(0, 5, sheet.getLastRow() + 1, 1).getDisplayValues();
        const at = rows.findIndex(([name]) => /^#\d+ /u.test(name ?? ''));
        sheet.getRange(at, 4).setValue('x');
        return rows[at]![0]!;
      });
      await cut(page).waitFor();
      await page
        .getByText(/^Kept in this browser at/u)
        .first()
        .waitFor();
      await page.reload();
      await isReady(page);
      await goTo(page, 'Plan');
      await page.getByText(/^This plan was kept with the workbook/u).waitFor();
      expect(
        await page
          .getByText(/^\$[\d,.]+$/u)
          .last()
          .innerText(),
      ).toBe(price);
      await cut(page).waitFor();
      for (const width of [270, 350]) {
        await page.evaluate((wanted) => {
          document.getElementById('pane')!.style.cssText = `width: ${wanted}px; min-width: 0`;
        }, width);
        await page.getByRole('heading', { name: 'What it comes to' }).scrollIntoViewIfNeeded();
        const wide = await page.evaluate(() => document.getElementById('pane')!.scrollWidth);
        expect(wide).toBeLessThanOrEqual(width);
        const folder = process.env['KEPT_PICTURES'];
        if (folder !== undefined) {
          await page.getByRole('heading', { name: 'Plan', exact: true }).scrollIntoViewIfNeeded();
          await page.locator('#pane').screenshot({ path: `${folder}/kept-${width}.png` });
        }
      }
      const found = await findViolations(page, '#grid-place');
      expect(found.filter(({ isForeign }) => !isForeign)).toEqual([]);
      await page.getByRole('button', { name: 'Plan again' }).click();
      await page.getByText(/^1 of \d+ sticks cut or begun: they stay, and/u).waitFor();
      const texts = await page.evaluate(
        () =>
          (grid.book().getWorkbook().getCustomMetadata() as { coveledger: { texts: object } })
            .coveledger.texts,
      );
      expect(Object.keys(texts).sort()).toEqual(['plan', 'written-plan']);
      expect(stick).toMatch(/^#\d+ [A-Z]/u);
      expect(errors).toEqual([]);
    },
    PAGE_TEST_MS,
  );
});
