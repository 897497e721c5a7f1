/** The page for the saw in a real browser, from disk and with no network. */
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';

import { writeShopView } from '../../src/exports/shop-view/shop-view.ts';
import { isCovePlan, type JobPlan } from '../../src/planning/job-plan.ts';
import { addressOfSetUp } from '../../src/sheets/set-ups/set-up-code.ts';
import { planOf } from '../planning/make-job.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';
import { BROWSER_TEST_MS } from './browser-suite.ts';
import { browserTestsRun, startChromium } from './chromium.ts';
import { findViolations } from './find-violations.ts';
import { numbersIn, withoutSideOrUnit } from './numbers-in-view.ts';
import { builtPages } from './built-pages.ts';
import { serveFolder, type Served } from './serve-folder.ts';

const PHONE = { viewport: { width: 390, height: 844 } };

(browserTestsRun ? describe : describe.skip)('The page for the saw', () => {
  let browser: Browser;
  let folder: string;
  let address: string;
  let plan: JobPlan;
  let served: Served;

  beforeAll(async () => {
    plan = await planOf(DEMO);
    served = await serveFolder(builtPages());
    browser = await startChromium();
    folder = await mkdtemp(join(tmpdir(), 'coveledger-saw-'));
    const file = join(folder, 'saw.html');
    await writeFile(file, writeShopView(plan));
    address = pathToFileURL(file).href;
  }, BROWSER_TEST_MS);
  afterAll(async () => {
    await browser.close();
    await served.close();
    await rm(folder, { recursive: true, force: true });
  });

  async function open(
    choice: BrowserContextOptions = {},
    prepare?: (page: Page) => Promise<unknown>,
  ): Promise<{ page: Page; errors: string[]; close: () => Promise<void> }> {
    const context = await browser.newContext({ ...PHONE, offline: true, ...choice });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    await prepare?.(page);
    await page.goto(address);
    return { page, errors, close: () => context.close() };
  }
  const shown = (page: Page): Promise<string[]> =>
    page.locator('.screen:visible h2').allTextContents();
  const step = (page: Page, name: string): Promise<void> =>
    page.getByRole('button', { name, exact: true }).click();

  test('has the cautions read once a day, then pages from screen to screen', async () => {
    const { page, errors, close } = await open();
    expect(await shown(page)).toEqual(['Read first']);
    expect(await page.getByRole('button').allTextContents()).toEqual(['I have read these']);
    await step(page, 'I have read these');
    expect(await shown(page)).toEqual(['All that is to be done']);
    await step(page, 'Next');
    const [first = ''] = await shown(page);
    await page.reload();
    expect(await shown(page)).toEqual([first]);
    // Opened anew, as from the phone's files, it goes on where it was closed.
    await page.goto('about:blank');
    await page.goto(address);
    expect(await shown(page)).toEqual([first]);
    await step(page, 'Back');
    expect(await shown(page)).toEqual(['All that is to be done']);
    expect(errors).toEqual([]);
    await close();
  });

  test('keeps each tick on the device, and takes it back at a second tap', async () => {
    const { page, errors, close } = await open();
    await step(page, 'I have read these');
    await page
      .getByRole('link', { name: /at the saw/u })
      .first()
      .click();
    const [title = ''] = await shown(page);
    const box = page.getByRole('checkbox', { name: /Pass 1 of/u }).locator('visible=true');
    const all = await page.locator('.screen:visible [data-tick]').count();
    await box.click();
    await page.reload();
    expect(await shown(page)).toEqual([title]);
    expect(await box.isChecked()).toBe(true);
    await step(page, 'All');
    const line = page.getByRole('link', { name: title });
    expect(await line.textContent()).toMatch(new RegExp(`1 of ${all - 1} done$`, 'u'));
    await line.click();
    await box.click();
    await page.reload();
    expect(await box.isChecked()).toBe(false);
    // One edge goes up the wall, so a tick at one takes the other's off.
    await page.getByRole('checkbox', { name: 'upper edge' }).locator('visible=true').click();
    const lower = page.getByRole('checkbox', { name: 'lower edge' }).locator('visible=true');
    await lower.click();
    const upper = page.getByRole('checkbox', { name: 'upper edge' }).locator('visible=true');
    expect([await upper.isChecked(), await lower.isChecked()]).toEqual([false, true]);
    expect(errors).toEqual([]);
    await close();
  });

  test('says so where the device refuses to keep ticks', async () => {
    const { page, close } = await open({}, (one) =>
      one.addInitScript(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      }),
    );
    await step(page, 'I have read these');
    expect(await page.getByRole('status').textContent()).toMatch(/refuses to keep ticks/u);
    await close();
  });

  test('shows all of it, one below the other, where scripts don’t run', async () => {
    const { page, close } = await open({ javaScriptEnabled: false });
    const titles = await shown(page);
    expect(titles.length).toBeGreaterThan(20);
    expect(await page.locator('.screen').count()).toBe(titles.length);
    expect(await page.getByRole('button').locator('visible=true').count()).toBe(0);
    await close();
  });

  test.each([390, 270, 1024])(
    'fits a screen %d wide, light and dark, and hides nothing from a screen reader',
    async (width) => {
      const { page, close } = await open({
        viewport: { width, height: 800 },
        colorScheme: width === 390 ? 'dark' : 'light',
      });
      await step(page, 'I have read these');
      for (const name of [/at the saw/u, /its corners/u, /stick 1 of/u]) {
        await page.getByRole('link', { name }).first().click();
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        const numbers = await numbersIn(page.locator('.screen.shown'));
        expect(withoutSideOrUnit(numbers)).toEqual([]);
        // Both marks of both rails among them.
        const marks = numbers.filter(({ label }) => / rail, /u.test(label));
        if (String(name) === String(/at the saw/u)) expect(marks.length).toBeGreaterThanOrEqual(4);
        if (width === 390) expect(await findViolations(page, '.foreign')).toEqual([]);
        await step(page, 'All');
      }
      await close();
    },
  );

  test('opens a printed code without the job, refuses one that is cut short, and opens again without a network', async () => {
    const [one] = plan.profiles.filter(isCovePlan);
    const at = { ...plan.job.shop, pageAddress: `${served.origin}/` };
    const code = addressOfSetUp(one!, at)!;
    const { page, errors, close } = await open({ offline: false, serviceWorkers: 'allow' });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(code);
    expect(await shown(page)).toEqual(['Read first']);
    await step(page, 'I have read these');
    expect(await shown(page)).toEqual([`${one!.profile.name}: at the saw`]);
    const numbers = await numbersIn(page.locator('.screen.shown'));
    expect(withoutSideOrUnit(numbers)).toEqual([]);
    expect(numbers.filter(({ label }) => / rail, /u.test(label))).toHaveLength(4);
    await page.getByRole('checkbox', { name: /Pass 1 of/u }).click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await findViolations(page, '.foreign')).toEqual([]);
    await page.evaluate(() => navigator.serviceWorker.ready);
    // Another code scanned in the same window; back again, its tick is there.
    await page.goto(code.slice(0, -3));
    await page.getByRole('alert').getByText('cut short or changed').waitFor();
    expect(await page.locator('dd').count()).toBe(0);
    await page.context().setOffline(true);
    await page.goto('about:blank');
    await page.goto(code);
    expect(await shown(page)).toEqual([`${one!.profile.name}: at the saw`]);
    expect(await page.getByRole('checkbox', { name: /Pass 1 of/u }).isChecked()).toBe(true);
    await page.goto(`${served.origin}/saw.html`);
    await page.getByRole('alert').getByText('holds no code of a set-up').waitFor();
    // What follows the # never leaves the browser.
    expect(asked.filter((url) => url.includes('Reading') && !url.includes('#'))).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});
