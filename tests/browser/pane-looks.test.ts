import { expect, test } from '@jest/globals';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

import { root } from '../addin/root.ts';
import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';
import { findViolations } from './find-violations.ts';
import { PANE_WIDTHS } from './pane-page.ts';
import { blankWorkbook, demoWorkbook, goTo, planJob } from './pane-steps.ts';

/** Left behind to be looked at; nothing compares them. */
const SCREENSHOTS = join(root, 'build', 'screenshots');
const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

interface Look {
  readonly width: number;
  readonly media: NonNullable<Parameters<Page['emulateMedia']>[0]>;
}

/** Widths and colors that each part of the pane is looked at in, in one page. */
const LOOKS: Readonly<Record<string, Look>> = {
  ...Object.fromEntries(
    PANE_WIDTHS.flatMap((width) =>
      (['light', 'dark'] as const).map((colorScheme) => [
        `${width} wide and ${colorScheme}`,
        { width, media: { colorScheme, forcedColors: 'none' } },
      ]),
    ),
  ),
  '320 wide in the system’s own colors': {
    width: 320,
    media: { colorScheme: 'light', forcedColors: 'active' },
  },
};

browserSuite('The look of the pane', ({ besideExcel, alone }) => {
  test(
    'has nothing cut off, and axe finds nothing on any tab, at every width, light, dark and in the system’s own colors',
    async () => {
      await mkdir(SCREENSHOTS, { recursive: true });
      const { page, context } = await besideExcel({ before: blankWorkbook });
      const look = async (part: string): Promise<void> => {
        for (const [name, { width, media }] of Object.entries(LOOKS)) {
          await page.setViewportSize({ width, height: 900 });
          await page.emulateMedia(media);
          await page.screenshot({
            path: join(SCREENSHOTS, `${part} ${name}.png`),
            fullPage: true,
            animations: 'disabled',
          });
          const found = await findViolations(page, 'iframe');
          expect({ part, name, overflow: await overflow(page), found }).toEqual({
            part,
            name,
            overflow: 0,
            found: [],
          });
        }
      };
      await page.getByRole('button', { name: /Make the demo.s sheets/ }).waitFor();
      await look('Begin');
      await demoWorkbook(page);
      await page.evaluate(async () => {
        const runs = testExcel.workbook.sheets.find((sheet) => sheet.name === 'Runs')!;
        await testExcel.types(runs, 'D3', 'about six feet');
      });
      await page.getByRole('button', { name: /Runs!D3/ }).waitFor();
      await page.getByRole('heading', { name: 'Runs of Reading room' }).waitFor();
      await look('Job with a problem');
      await page.evaluate(async () => {
        const runs = testExcel.workbook.sheets.find((sheet) => sheet.name === 'Runs')!;
        await testExcel.types(runs, 'D3', '72');
      });
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      await goTo(page, 'Profile');
      await page.getByRole('img').nth(1).waitFor();
      await look('Profile');
      await planJob(page, 'Plan the job', 0);
      await look('Plan');
      await page.getByRole('button', { name: 'Print by choice' }).click();
      // The pages themselves, in the pane's own policy.
      const printed = page.frameLocator('iframe');
      await printed.getByText('Reading cove', { exact: true }).waitFor();
      expect(await printed.locator('svg').count()).toBe(2);
      await page.getByRole('combobox', { name: 'What is printed' }).selectOption('Cutting');
      await printed.getByText('Pull from the rack, and buy').waitFor();
      expect(await findViolations(page, 'iframe')).toEqual([]);
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      await goTo(page, 'Functions');
      await page.getByText('COVE.TILT').first().click();
      await look('Functions');
      await context.close();
    },
    BROWSER_TEST_MS * 2,
  );

  test(
    'keeps the corner clear that the program puts its own buttons in: 34 by 32 at the top right',
    async () => {
      for (const width of PANE_WIDTHS) {
        const { page, context } = await alone({ width });
        const inCorner = await page.evaluate(() => {
          const { innerWidth } = window;
          const shown = [
            ...document.querySelectorAll('button, input, select, a, h1, h2, p, [role=tab]'),
          ];
          return shown
            .map((element) => ({ box: element.getBoundingClientRect(), text: element.textContent }))
            .filter(({ box }) => box.width > 0 && box.top < 32 && box.right > innerWidth - 34)
            .map(({ text }) => text);
        });
        expect({ width, inCorner }).toEqual({ width, inCorner: [] });
        await context.close();
      }
    },
    BROWSER_TEST_MS,
  );

  test(
    'is used with the keyboard alone: from a blank workbook to written sheets',
    async () => {
      const { page, context } = await besideExcel({ before: blankWorkbook });
      await page.getByRole('button', { name: /Make the demo.s sheets/ }).waitFor();
      await tabTo(page, /Make the demo.s sheets/u);
      await page.keyboard.press('Enter');
      await page
        .getByText(/^No problems/)
        .first()
        .waitFor();
      await tabTo(page, /^Job$/u);
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      await tabTo(page, /^Seconds to look for a cheaper plan/u);
      await page.keyboard.type('0');
      await tabTo(page, /^Plan the job$/u, 'Shift+Tab');
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Write the sheets' }).waitFor();
      await tabTo(page, /^Write the sheets$/u);
      await page.keyboard.press('Enter');
      await page.getByText('were written').first().waitFor();
      expect(await page.evaluate(() => testExcel.sheetNames)).toContain('Cutting');
      await context.close();
    },
    BROWSER_TEST_MS,
  );
});

/** Presses Tab, or that key, until what has the focus says so, or its label. */
async function tabTo(page: Page, text: RegExp, key = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < 120; presses++) {
    await page.keyboard.press(key);
    const focused = await page.evaluate(() => {
      const { activeElement } = document;
      const labels = activeElement instanceof HTMLInputElement ? activeElement.labels : null;
      return (labels?.[0] ?? activeElement)?.textContent ?? '';
    });
    if (text.test(focused.trim())) return;
    passed.push(focused.trim().slice(0, 30));
  }
  throw new Error(`${key} never comes to ${String(text)}, but to ${passed.join(' | ')}`);
}
