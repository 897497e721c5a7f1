import { expect, test } from '@jest/globals';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { root } from '../addin/root.ts';
import { findViolations } from './find-violations.ts';
import { PAGE_TEST_MS, pageSuite } from './page-suite.ts';

/** Left behind to be looked at; nothing compares them. */
const SCREENSHOTS = join(root, 'build', 'screenshots');

const LOOKS = [
  { width: 1280, dark: false },
  { width: 1024, dark: true },
  { width: 390, dark: false },
];

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** What comes next is there without scrolling. */
async function expectInView(page: Page, what: Locator): Promise<void> {
  await what.waitFor();
  const { y, height } = (await what.boundingBox())!;
  expect(y).toBeGreaterThan(0);
  expect(y + height).toBeLessThanOrEqual(page.viewportSize()!.height);
}

/** Of letters to what is behind them: WCAG 2.2, 1.4.3. */
const LEAST_CONTRAST = 4.5;

/** As WCAG 2.2 works it from the colors of a button's letters and its own ground. */
function contrastOf(button: Locator): Promise<number> {
  return button.evaluate((element) => {
    const { color, backgroundColor } = getComputedStyle(element);
    const [ink, ground] = [color, backgroundColor].map((one) => {
      const [red = 0, green = 0, blue = 0] = (one.match(/[\d.]+/gu) ?? []).map((part) => {
        const share = Number(part) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05;
    }) as [number, number];
    return Math.max(ink, ground) / Math.min(ink, ground);
  });
}

pageSuite('The look of the page', ({ open }) => {
  test.each(LOOKS)(
    'has nothing cut off, and axe finds nothing, $width wide, dark: $dark',
    async ({ width, dark }) => {
      await mkdir(SCREENSHOTS, { recursive: true });
      const { page, context } = await open({ width, dark, blank: true });
      const isNarrow = width < 760;
      const look = async (part: string): Promise<void> => {
        const name = `page ${part} ${width}${dark ? ' dark' : ''}.png`;
        await page.screenshot({ path: join(SCREENSHOTS, name), animations: 'disabled' });
        expect({ part, overflow: await overflow(page) }).toEqual({ part, overflow: 0 });
        expect({ part, found: await findViolations(page) }).toEqual({ part, found: [] });
      };
      // The first visit: a cove to size and three doors, nothing to scroll for.
      for (const name of ['Cove width', 'Cove depth', 'Off-center']) {
        await expectInView(page, page.getByRole('textbox', { name }));
      }
      await expectInView(page, page.getByRole('img').first());
      await expectInView(page, page.getByRole('button', { name: 'Size a cove' }));
      await page.getByRole('button', { name: 'Plan a list' }).click();
      await expectInView(page, page.getByRole('button', { name: 'Read this list' }));
      await look('first visit');
      await page.getByRole('button', { name: 'See the demo' }).click();
      await page
        .getByText(/^No problems/u)
        .first()
        .waitFor();
      await expectInView(page, page.getByRole('button', { name: 'Plan the job' }));
      if (isNarrow) await page.getByRole('button', { name: 'Sheet', exact: true }).click();
      await look('sheet');
      await page.locator('#more').click();
      await look('more');
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Print…' }).click();
      await look('dialog');
      await page.keyboard.press('Escape');
      if (isNarrow) {
        const [sheet, pane] = [page.locator('#sheet'), page.locator('#pane')];
        expect([await sheet.isVisible(), await pane.isVisible()]).toEqual([true, false]);
        await page.getByRole('button', { name: 'Sheet', exact: true }).focus();
        await page.keyboard.press('Tab');
        await page.keyboard.press('Enter');
        expect([await sheet.isVisible(), await pane.isVisible()]).toEqual([false, true]);
        await look('pane');
        for (const name of ['Sheet', 'Pane']) {
          const button = page.getByRole('button', { name, exact: true });
          await button.click();
          expect(await contrastOf(button)).toBeGreaterThan(LEAST_CONTRAST);
          await page.mouse.down();
          expect(await contrastOf(button)).toBeGreaterThan(LEAST_CONTRAST);
          await page.mouse.up();
        }
        await page.emulateMedia({ forcedColors: 'active' });
        const pressed = page.getByRole('button', { name: 'Pane', exact: true });
        expect(await contrastOf(pressed)).toBeGreaterThan(LEAST_CONTRAST);
      } else {
        const grid = page.locator('#grid-place canvas').first();
        const before = (await grid.boundingBox())!.width;
        await page.getByRole('button', { name: 'Hide pane' }).click();
        expect(await page.locator('#pane').isVisible()).toBe(false);
        await page.waitForFunction(
          (was) => document.querySelector('#grid-place canvas')!.clientWidth > was + 200,
          before,
        );
        await look('without pane');
        await page.getByRole('button', { name: 'Show pane' }).click();
        expect(await page.locator('#pane').isVisible()).toBe(true);
      }
      await context.close();
    },
    PAGE_TEST_MS,
  );
});
