import { afterAll, expect, test } from '@jest/globals';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { planSheets } from '../sheets/sheet-names.ts';
import { builtPages } from './built-pages.ts';
import { findViolations } from './find-violations.ts';
import { numbersIn, withoutSideOrUnit } from './numbers-in-view.ts';
import { isReady, PAGE_TEST_MS, pageSuite, selectCell, type OpenedPage } from './page-suite.ts';
import { goTo, planJob } from './pane-steps.ts';

/** What the Plan tab says of ticks. */
function cut(page: Page): Locator {
  return page
    .getByRole('tabpanel', { name: 'Plan' })
    .getByText(/^1 of \d+ sticks cut or begun: it stays/u);
}

let folder: string | undefined;
/** A copy of the build, in which a newer version takes its place. */
function copiedPages(): string {
  folder = mkdtempSync(join(tmpdir(), 'coveledger-pages-'));
  cpSync(builtPages(), folder, { recursive: true });
  return folder;
}
afterAll(() => {
  if (folder !== undefined) rmSync(folder, { recursive: true, force: true });
});

/** As a new build would: the page and its worker are others. */
function publishNewer(): void {
  const newer = 'Coveledger, newer';
  const [page, worker] = ['index.html', 'offline.js'].map((name) => join(folder!, name));
  writeFileSync(page!, readFileSync(page!, 'utf8').replace('<h1>Coveledger', `<h1>${newer}`));
  const list = readFileSync(worker!, 'utf8');
  const changed = list.replace(/("url":"index.html","revision":")\w+/gu, '$1newer');
  expect(changed).not.toBe(list);
  writeFileSync(worker!, changed);
}

pageSuite(
  'A plan on the page',
  ({ open }) => {
    let opened: OpenedPage | undefined;
    afterAll(async () => opened?.context.close());

    test(
      'outlives a reload, into a newer version and without a network, and so do the ticks: what is cut stays in the next plan',
      async () => {
        opened = await open({ keepsFiles: true });
        const { page, errors, context } = opened;
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
        await page.evaluate(() => navigator.serviceWorker.ready);
        publishNewer();
        const notice = page.getByText('A newer version of this page waits.');
        // The first version of all has nobody to tell; the page goes on under the one that it came with.
        expect(await notice.count()).toBe(0);
        await page.reload();
        await notice.waitFor();
        expect(await page.locator('#bar h1').innerText()).toBe('Coveledger');
        await isReady(page);
        await context.setOffline(true);
        await page.evaluate(() => Object.assign(globalThis, { before: true }));
        await page.getByRole('button', { name: 'Load it now' }).click();
        await page.waitForFunction(() => !('before' in globalThis));
        await isReady(page);
        expect(await page.locator('#bar h1').innerText()).toBe('Coveledger, newer');
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

    test(
      'is read on a phone with each number’s side and unit in view: on the sheets, in the pane, at the saw',
      async () => {
        const { page, errors } = opened!;
        await page.evaluate(() => document.getElementById('pane')!.removeAttribute('style'));
        await page.setViewportSize({ width: 390, height: 844 });
        const press = (name: string): Promise<void> =>
          page.getByRole('button', { name, exact: true }).click();
        // What is shown of a column: its width by the zoom, beside the numbers of the rows.
        const seen = (name: string) =>
          page.evaluate((wanted) => {
            grid.book().setActiveSheet(grid.book().getSheetByName(wanted)!);
            const sheet = grid.book().getActiveSheet();
            const columns = sheet.getLastColumn() + 1;
            let width = 46;
            for (let at = 0; at < columns; at++) width += sheet.getColumnWidth(at);
            const texts = sheet
              .getRange(0, 0, sheet.getLastRow() + 1, columns)
              .getDisplayValues()
              .map((row) => row.filter((text) => text !== ''));
            return { shown: width * sheet.getZoom(), zoom: sheet.getZoom(), texts };
          }, name);
        await press('Sheet');
        for (const name of [...planSheets(), 'Set-ups']) {
          const { shown, zoom } = await seen(name);
          // As large as fits: a hundredth more would not.
          const larger = (shown / zoom) * (zoom + 0.01);
          expect([name, shown <= 390, zoom < 1 ? larger > 390 : true]).toEqual([name, true, true]);
        }
        const { texts } = await seen('Set-ups');
        const marks = texts.filter(([label]) =>
          /^(?:Near|Far), (?:front|back)$/u.test(label ?? ''),
        );
        expect(marks.length).toBeGreaterThanOrEqual(12);
        // Each in one cell with its side, as far as it is on the table.
        for (const [, ...cells] of marks)
          for (const one of cells.slice(0, 2))
            expect(one).toMatch(/(?:left|right)$|^on it$|off the table/u);
        const tilts = texts.filter(([label]) => label?.startsWith('Tilt of the blade'));
        // Beside its label, which names the side: the sheet is shown by its whole width.
        for (const [label, value] of tilts) {
          expect(label).toMatch(/, (?:its top to the (?:left|right)|it stands upright)$/u);
          expect(value).toMatch(/°$/u);
        }
        await page.setViewportSize({ width: 1280, height: 800 });
        await page.waitForFunction(() => grid.book().getActiveSheet().getZoom() === 1);
        await page.setViewportSize({ width: 390, height: 844 });
        // The sheet's own way to large figures.
        await page.locator('#notices').getByRole('button', { name: 'At the saw' }).click();
        const view = page.frameLocator('dialog.saw-view iframe');
        await view.getByRole('button', { name: 'I have read these' }).click();
        const cove = view.getByRole('link', { name: /at the saw/u }).first();
        await cove.click();
        const box = view.getByRole('checkbox', { name: /Pass 1 of/u }).locator('visible=true');
        await box.click();
        const atSaw = await numbersIn(view.locator('.screen.shown'));
        expect(withoutSideOrUnit(atSaw)).toEqual([]);
        // The browser's own Back leads through the screens, then to the sheet.
        const dialog = page.locator('dialog.saw-view');
        for (let back = 0; back < 3 && (await dialog.count()) > 0; back++) {
          await page.evaluate(() => history.back());
          await page.waitForTimeout(100);
        }
        expect(await dialog.count()).toBe(0);
        await press('Pane');
        await goTo(page, 'Plan');
        await page.locator('#pane').getByRole('button', { name: 'At the saw' }).click();
        await cove.click();
        expect(await box.isChecked()).toBe(true);
        await press('Back to the sheet');
        expect(await dialog.count()).toBe(0);
        await goTo(page, 'Profile');
        await page.getByRole('heading', { name: 'Set-up' }).waitFor();
        const inPane = await numbersIn(page.locator('#pane'));
        expect(withoutSideOrUnit(inPane)).toEqual([]);
        expect(inPane.filter(({ label }) => / rail, /u.test(label)).length).toBeGreaterThanOrEqual(
          4,
        );
        expect(errors).toEqual([]);
      },
      PAGE_TEST_MS,
    );

    test(
      'a finger moves the sheet, and a tap selects the cell under it',
      async () => {
        const { page, context } = opened!;
        await page.setViewportSize({ width: 1280, height: 800 });
        await selectCell(page, 'Runs', 'A2');
        const tools = await context.newCDPSession(page);
        await tools.send('Emulation.setTouchEmulationEnabled', { enabled: true });
        const finger = async (kind: 'Start' | 'Move' | 'End', x = 0, y = 0): Promise<void> => {
          const touchPoints = kind === 'End' ? [] : [{ x, y }];
          await tools.send('Input.dispatchTouchEvent', { type: `touch${kind}`, touchPoints });
        };
        const seen = (): Promise<readonly [number, string | undefined]> =>
          page.evaluate(() => {
            const sheet = grid.book().getActiveSheet();
            const { sheetViewStartRow } = sheet.getScrollState();
            return [sheetViewStartRow, sheet.getActiveRange()?.getA1Notation()] as const;
          });
        const box = (await page.locator('#grid-place canvas').first().boundingBox())!;
        const [x, y] = [box.x + 200, box.y + 400];
        await finger('Start', x, y);
        for (let step = 1; step <= 10; step++) await finger('Move', x, y - 30 * step);
        await finger('End');
        const [row, selected] = await seen();
        expect([row > 5, selected]).toEqual([true, 'A2']);
        await finger('Start', x, y);
        await finger('End');
        const after = await seen();
        expect(after[0]).toBe(row);
        expect(after[1]).toMatch(/^B\d+$/u);
        expect(after[1]).not.toBe('B2');
      },
      PAGE_TEST_MS,
    );
  },
  copiedPages,
);
