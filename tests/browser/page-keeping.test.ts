import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';
import {
  downloaded,
  isKept,
  isReady,
  PAGE_TEST_MS,
  pageSuite,
  sheetNames,
  shownIn,
  typeInto,
} from './page-suite.ts';

const CELL = ['Runs', 'N2'] as const;

const note = async (page: Page): Promise<string> => (await shownIn(page, ...CELL))[0]![0]!;

/** Reads or replaces what is kept, as the browser's own tools can. */
function storage(page: Page, record?: object): Promise<unknown> {
  return page.evaluate(
    (given) =>
      new Promise((resolve, reject) => {
        const open = indexedDB.open('coveledger');
        open.onerror = reject;
        open.onsuccess = () => {
          const place = open.result.transaction('work', 'readwrite').objectStore('work');
          const request = given === undefined ? place.get('now') : place.put(given, 'now');
          request.onsuccess = () => {
            open.result.close();
            resolve(request.result);
          };
          request.onerror = reject;
        };
      }),
    record,
  );
}

async function loadAgain(page: Page): Promise<void> {
  await page.reload();
  await isReady(page);
}

pageSuite('The work on the page', ({ open }) => {
  test(
    'is kept from visit to visit, also what was typed the moment before, and only in one of two tabs',
    async () => {
      const { page, context } = await open();
      await isKept(page);
      await typeInto(page, ...CELL, 'typed and waited');
      await page.waitForFunction(() =>
        document.getElementById('kept')?.textContent.startsWith('Keeping'),
      );
      await isKept(page);
      await typeInto(page, ...CELL, 'typed and left');
      // Taken by the grid, and not kept yet.
      while ((await note(page)) !== 'typed and left') await page.waitForTimeout(20);
      await loadAgain(page);
      expect(await note(page)).toBe('typed and left');
      const second = (await open({ context })).page;
      await second.getByRole('alert').getByText('open in another tab').waitFor();
      expect(await note(second)).toBe('typed and left');
      await typeInto(second, ...CELL, 'from the second');
      expect(await second.locator('#kept').textContent()).toBe('Not kept in this browser');
      await typeInto(page, ...CELL, 'from the first');
      await isKept(page);
      await page.close();
      await second.getByRole('button', { name: 'Load what it kept' }).click();
      await second.waitForEvent('load');
      await isReady(second);
      expect(await note(second)).toBe('from the first');
      await isKept(second);
      await context.close();
    },
    PAGE_TEST_MS,
  );

  test(
    'that a newer page kept, or that is damaged, stays as it is until the person gives it up',
    async () => {
      const { page, context } = await open();
      await isKept(page);
      const sound = (await storage(page)) as object;
      const records = [
        { record: { ...sound, version: 2, turn: 7 }, says: 'comes from a newer version' },
        { record: { ...sound, turn: 8, data: { id: 'x', sheets: [] } }, says: 'is damaged' },
      ];
      for (const { record, says } of records) {
        await storage(page, record);
        await loadAgain(page);
        await page.getByRole('alert').getByText(says).waitFor();
        expect((await sheetNames(page))[0]).toBe('Runs');
        await typeInto(page, ...CELL, 'not kept');
        const { name, bytes } = await downloaded(page, () =>
          page.getByRole('button', { name: 'Save it as it is' }).click(),
        );
        expect([name, JSON.parse(bytes.toString())]).toEqual(['coveledger-kept.json', record]);
        await page.evaluate(() => window.dispatchEvent(new Event('pagehide')));
        expect(await storage(page)).toEqual(record);
      }
      await page.locator('#notices').getByRole('button', { name: 'Start over' }).click();
      await isKept(page);
      await loadAgain(page);
      expect(await note(page)).toBe('not kept');
      expect(await page.getByRole('alert').allInnerTexts()).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );

  test(
    'is said not to be kept where the browser’s room is used up, and is kept once there is some',
    async () => {
      const { page, context, errors, makeRoom } = await open({ room: 50_000 });
      await page.getByRole('alert').getByText('its room is used up').waitFor();
      const { name } = await downloaded(page, () =>
        page.locator('#notices').getByRole('button', { name: 'Download' }).click(),
      );
      expect(name).toBe('Demo job.xlsx');
      await makeRoom();
      await typeInto(page, ...CELL, 'less');
      await isKept(page);
      expect(await page.getByRole('alert').allInnerTexts()).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );

  test(
    'is said not to be kept where storage is forbidden; the page works without',
    async () => {
      const { page, context, errors } = await open({
        before: () => {
          Object.defineProperty(globalThis, 'indexedDB', {
            get: () => {
              throw new DOMException('Storage is forbidden here.', 'SecurityError');
            },
          });
        },
      });
      await page.getByRole('alert').getByText('Storage is forbidden here').waitFor();
      await typeInto(page, ...CELL, 'typed all the same');
      expect(await note(page)).toBe('typed all the same');
      expect(errors).toEqual([]);
      await context.close();
    },
    PAGE_TEST_MS,
  );

  test(
    'is given up by New alone, which says what goes and asks; Escape leaves all as it was; the demo comes by its address',
    async () => {
      const { page, context } = await open();
      await typeInto(page, ...CELL, 'of worth');
      const button = page.getByRole('button', { name: 'New…' });
      await button.click();
      const dialog = page.getByRole('dialog', { name: 'Begin a new workbook?' });
      await dialog.getByText('“Demo job” and all its sheets').waitFor();
      await dialog.getByText('It was changed since it was last downloaded').waitFor();
      await page.keyboard.press('Escape');
      expect(await note(page)).toBe('of worth');
      expect(await button.evaluate((one) => one === document.activeElement)).toBe(true);
      await button.click();
      const { name } = await downloaded(page, () =>
        dialog.getByRole('button', { name: 'Download it first' }).click(),
      );
      expect(name).toBe('Demo job.xlsx');
      await dialog.getByText('It was not changed since').waitFor();
      await dialog.getByRole('button', { name: 'Start with a blank workbook' }).click();
      await page.waitForFunction(() => grid.book().save().name === 'New job');
      expect(await note(page)).toBe('');
      await page.locator('#pane').getByRole('button', { name: 'Size a cove' }).waitFor();
      await isKept(page);
      await loadAgain(page);
      expect(await page.locator('#book-name').textContent()).toBe('New job');
      // Never changed: another takes its place without a question.
      await page.evaluate(() => {
        window.location.hash = 'demo';
      });
      await page.locator('#pane').getByText('Demo job').waitFor();
      await page
        .getByText(/^No problems/u)
        .first()
        .waitFor();
      // A reload keeps to what is there.
      expect(await page.evaluate(() => window.location.hash)).toBe('');
      await context.close();
    },
    PAGE_TEST_MS,
  );
});
