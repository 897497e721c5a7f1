import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';

import { count } from '../deep.ts';
import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';
import { blankWorkbook, goTo, ownSheets } from './pane-steps.ts';
import { INPUT_SHEETS, planSheets } from '../sheets/sheet-names.ts';

/** Notes, the demo's input sheets and the sheets that are written. */
const SHEETS_IN_THE_END = 1 + INPUT_SHEETS.length + planSheets().length;
/** More tries than any failure needs. */
const MOST_TRIES = 12;
const [SOON_MS, LATER_MS] = [2_000, 6_000];
/** Pages open at a time. */
const AT_ONCE = 2;
/** Each takes seconds: all of them are tried in tests/pane/failing-workbook.test.ts. */
const STRIDE = count(13, 45);

/** Keeps every failure that the pane ever says, in the page. */
function listenToFailures(): void {
  const said = new Set<string>();
  Object.assign(globalThis, { said });
  const look = (): void => {
    const text = document.body.innerText;
    for (const [sentence] of text.matchAll(/[^\n]*refused it[^\n]*/gu)) said.add(sentence);
  };
  new MutationObserver(look).observe(document, {
    childList: true,
    subtree: true,
    characterData: true,
  });
}

declare global {
  var said: Set<string>;
}

/** From a blank workbook to written sheets, as a person goes who tries again what failed. */
async function goTheWholeWay(page: Page): Promise<void> {
  const done = page.getByText('were written');
  const make = page.getByRole('button', { name: /Make the demo.s sheets/ });
  const sound = page.getByText(/^No problems/).first();
  const again = page.getByRole('button', { name: 'Check again' });
  const write = page.getByRole('button', { name: 'Write the sheets' });
  const seconds = page.getByRole('textbox', { name: 'Seconds to look for a cheaper plan' });
  const plan = page.getByRole('button', { name: /^Plan (?:the job|again)$/ });
  const refused = page.getByText(/refused it/);
  const replace = page.getByRole('dialog').getByRole('button', { name: 'Replace' });
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    await goTo(page, 'Job');
    await make.or(sound).or(refused).first().waitFor();
    if (await make.isVisible()) {
      // A check that comes in just then takes the button away: the next try looks anew.
      await make.click({ timeout: SOON_MS }).catch(() => undefined);
      await sound
        .or(refused)
        .first()
        .waitFor({ timeout: LATER_MS })
        .catch(() => undefined);
    } else if (!(await sound.isVisible())) {
      await again.click();
      await make
        .or(sound)
        .first()
        .waitFor({ timeout: LATER_MS })
        .catch(() => undefined);
    }
    if (!(await sound.isVisible())) continue;
    await goTo(page, 'Plan');
    // The quick plan will do.
    await seconds.fill('0', { timeout: SOON_MS }).catch(() => undefined);
    // A check that failed just then stands in its way: back to Job.
    await plan.click({ timeout: SOON_MS }).catch(() => undefined);
    if (await page.getByText(/see Job/).isVisible()) continue;
    await write
      .or(refused)
      .first()
      .waitFor({ timeout: LATER_MS })
      .catch(() => undefined);
    if (!(await write.isVisible())) continue;
    await write.click({ timeout: SOON_MS }).catch(() => undefined);
    const ended = done.or(refused).first();
    await ended
      .or(replace)
      .first()
      .waitFor({ timeout: LATER_MS })
      .catch(() => undefined);
    // What was written before a failure may be replaced.
    if (await replace.isVisible()) await replace.click();
    await ended.waitFor({ timeout: LATER_MS }).catch(() => undefined);
    if (await done.first().isVisible()) return;
  }
  throw new Error(`Not written after ${MOST_TRIES} tries.`);
}

browserSuite('The pane beside a workbook that fails', ({ besideExcel }) => {
  test(
    'leaves the person’s cells as they were when a request fails, early or late, and gets there when tried again',
    async () => {
      const smooth = await besideExcel({ before: blankWorkbook });
      await goTheWholeWay(smooth.page);
      const requests = await smooth.page.evaluate(() => testExcel.syncs);
      await smooth.context.close();
      expect(requests).toBeGreaterThan(10);
      let failuresSaid = 0;
      const failAt = async (failing: number): Promise<void> => {
        const before = `(${blankWorkbook.toString()})(); (${listenToFailures.toString()})(); testExcel.failAt(${failing});`;
        const { page, context, errors } = await besideExcel({ before });
        const own = await ownSheets(page);
        await goTheWholeWay(page).catch(async (error: unknown) => {
          const shown = await page.locator('body').innerText();
          throw new Error(`Request ${failing}, then: ${shown}`, { cause: error });
        });
        const names = await page.evaluate(() => testExcel.sheetNames);
        const said = await page.evaluate(() => [...globalThis.said]);
        failuresSaid += said.length;
        expect({ failing, own: await ownSheets(page) }).toEqual({ failing, own });
        expect({ failing, sheets: names.length }).toEqual({ failing, sheets: SHEETS_IN_THE_END });
        expect({ failing, errors }).toEqual({ failing, errors: [] });
        await context.close();
      };
      const left = Array.from(
        { length: Math.ceil(requests / STRIDE) },
        (_, one) => 1 + one * STRIDE,
      );
      const worker = async (): Promise<void> => {
        for (let next = left.shift(); next !== undefined; next = left.shift()) await failAt(next);
      };
      await Promise.all(Array.from({ length: AT_ONCE }, worker));
      // A reading that a later one has overtaken fails without a word.
      expect(failuresSaid).toBeGreaterThan(requests / STRIDE / 3);
    },
    BROWSER_TEST_MS * 6,
  );
});
