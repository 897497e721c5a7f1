import { expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

import { root } from '../addin/root.ts';
import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';
import { PANE_WIDTHS, type PaneChoice } from './pane-page.ts';
import { blankWorkbook, demoWorkbook, goTo, planJob } from './pane-steps.ts';

/** Left behind to be looked at; nothing compares them. */
const SCREENSHOTS = join(root, 'build', 'screenshots');
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

interface AxeResult {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

/** What axe finds against WCAG 2.2 AA and its best practices, as rule and place. */
async function findViolations(page: Page): Promise<string[]> {
  // As a debugger does: the page's policy takes no script that isn't its own.
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run: () => Promise<AxeResult> } }).axe.run(),
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
  );
}

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const LOOKS: readonly (readonly [string, PaneChoice])[] = PANE_WIDTHS.flatMap((width) => [
  [`${width} wide and light`, { width }] as const,
  [`${width} wide and dark`, { width, dark: true }] as const,
]);

browserSuite('The look of the pane', ({ besideExcel, alone }) => {
  test.each([
    ...LOOKS,
    ['320 wide in the system’s own colors', { width: 320, forcedColors: true }] as const,
  ])(
    'has nothing cut off, and axe finds nothing on any tab, %s',
    async (name, choice) => {
      await mkdir(SCREENSHOTS, { recursive: true });
      const { page, context } = await besideExcel({ ...choice, before: blankWorkbook });
      const look = async (part: string): Promise<void> => {
        await page.screenshot({ path: join(SCREENSHOTS, `${part} ${name}.png`), fullPage: true });
        expect({ part, overflow: await overflow(page) }).toEqual({ part, overflow: 0 });
        expect({ part, found: await findViolations(page) }).toEqual({ part, found: [] });
      };
      await page.getByRole('button', { name: /Make the demo.s sheets/ }).waitFor();
      await look('Job without tables');
      await demoWorkbook(page);
      await page.evaluate(async () => {
        const runs = testExcel.workbook.sheets.find((sheet) => sheet.name === 'Runs')!;
        await testExcel.types(runs, 'D3', 'about six feet');
      });
      await page.getByRole('button', { name: /Runs!D3/ }).waitFor();
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
      await goTo(page, 'Functions');
      await page.getByText('COVE.TILT').first().click();
      await look('Functions');
      await context.close();
    },
    BROWSER_TEST_MS,
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
      await tabTo(page, /^Plan the job$/u);
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

/** Presses Tab until what has the focus says so. */
async function tabTo(page: Page, text: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < 120; presses++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (text.test(focused.trim())) return;
    passed.push(focused.trim().slice(0, 30));
  }
  throw new Error(`Tab never comes to ${String(text)}, but to ${passed.join(' | ')}`);
}
