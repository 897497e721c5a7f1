/** The page with the sheet and the pane, in a real Chromium: one browser and one server for a file of tests. */
import { afterAll, beforeAll, describe } from '@jest/globals';
import type {} from '@univerjs/sheets-ui/facade';
import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';

import { servePages, type PageServer } from '../../src/cli/page-server.ts';
import type { Grid } from '../../src/hosts/grid/grid.ts';
import { builtPages } from './built-pages.ts';
import { browserTestsRun, startChromium } from './chromium.ts';

declare global {
  // The page's own handle on its grid.
  var grid: Grid;
}

/** Beside those that this machine's own programs are likely to have. */
const FIRST_PORT = 43_217;
export const PAGE_TEST_MS = 120_000;
/** Longer than anything here takes on a busy machine. */
const LONGEST_WAIT_MS = 30_000;

export interface PageChoice {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  /** Without the demo, that most tests work on: as whoever comes for the first time finds the page. */
  readonly blank?: boolean;
  /** What was kept before, and all else of a browser's profile; a new one where absent. */
  readonly context?: BrowserContext;
  /** Run in the page before anything of it. */
  readonly before?: () => void;
  /** Bytes that the browser has room for; as many as it likes where absent. */
  readonly room?: number;
  /** Whether the browser may keep the page's files; it takes a while, beside whatever is tested. */
  readonly keepsFiles?: boolean;
}

export interface OpenedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong in the page without being said in it. */
  readonly errors: readonly string[];
  /** Addresses that were asked for. */
  readonly asked: readonly string[];
  /** As much room as the browser likes. */
  readonly makeRoom: () => Promise<void>;
}

export interface PageSuite {
  readonly open: (choice?: PageChoice) => Promise<OpenedPage>;
  readonly origin: () => string;
}

/** The tests are listed as skipped where Chromium is missing, but fail there with CI set. */
export function pageSuite(
  title: string,
  tests: (suite: PageSuite) => void,
  pages: () => string = builtPages,
): void {
  (browserTestsRun ? describe : describe.skip)(title, () => {
    let browser: Browser | undefined;
    let served: PageServer | undefined;
    beforeAll(async () => {
      served = await servePages(pages(), FIRST_PORT);
      browser = await startChromium();
    }, PAGE_TEST_MS);
    afterAll(async () => {
      await browser?.close();
      await served?.close();
    });
    const origin = (): string => `http://localhost:${served!.port}`;
    tests({ origin, open: (choice) => openPage(browser!, origin(), choice) });
  });
}

async function openPage(
  browser: Browser,
  origin: string,
  { width = 1280, height = 800, dark = false, ...choice }: PageChoice = {},
): Promise<OpenedPage> {
  const { blank = false, context: given, before, room, keepsFiles = false } = choice;
  const context =
    given ??
    (await browser.newContext({
      viewport: { width, height },
      colorScheme: dark ? 'dark' : 'light',
      acceptDownloads: true,
      serviceWorkers: keepsFiles ? 'allow' : 'block',
      permissions: ['clipboard-read', 'clipboard-write'],
    }));
  context.setDefaultTimeout(LONGEST_WAIT_MS);
  const page = await context.newPage();
  if (before !== undefined) await page.addInitScript(before);
  const tools = await context.newCDPSession(page);
  const giveRoom = async (quotaSize?: number): Promise<void> => {
    const size = quotaSize === undefined ? {} : { quotaSize };
    await tools.send('Storage.overrideQuotaForOrigin', { origin, ...size });
  };
  if (room !== undefined) await giveRoom(room);
  const errors: string[] = [];
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(`${origin}/${blank || given !== undefined ? '' : '#demo'}`);
  await isReady(page);
  return { page, context, errors, asked, makeRoom: () => giveRoom() };
}

/** Until sheet and pane stand. */
export async function isReady(page: Page): Promise<void> {
  await page.waitForFunction(() => 'grid' in globalThis);
  await page.waitForFunction(() => document.querySelector('#pane [role=tab]') !== null);
}

/** What cells of a sheet show. */
export function shownIn(page: Page, sheet: string, range: string): Promise<string[][]> {
  return page.evaluate(
    ([name, cells]) => grid.book().getSheetByName(name)!.getRange(cells).getDisplayValues(),
    [sheet, range] as const,
  );
}

/** Every text that a sheet shows, a line each. */
/** @param columns as many from the first; all where absent */
export function textsOn(page: Page, sheet: string, columns?: number): Promise<string> {
  return page.evaluate(
    ([name, most]) => {
      const found = grid.book().getSheetByName(name)!;
      const width = Math.min(found.getLastColumn() + 1, most);
      return found
        .getRange(0, 0, found.getLastRow() + 1, width)
        .getDisplayValues()
        .flat()
        .join('\n');
    },
    [sheet, columns ?? Infinity] as const,
  );
}

export function sheetNames(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    grid
      .book()
      .getSheets()
      .map((sheet) => sheet.getSheetName()),
  );
}

/** As a person types: into the cell, then Enter. */
export async function typeInto(
  page: Page,
  sheet: string,
  cell: string,
  text: string,
): Promise<void> {
  await selectCell(page, sheet, cell);
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

const [SOON_MS, LATER_MS] = [10_000, 30_000];

/** Types a formula, once more where a busy machine lost a key of it; till it has its answer. */
export async function typeUntil(
  page: Page,
  sheet: string,
  cell: string,
  formula: string,
  answer: number,
): Promise<void> {
  const isThere = (timeout: number): Promise<unknown> =>
    page.waitForFunction(
      ([name, at, value]) => grid.book().getSheetByName(name)!.getRange(at).getValue() === value,
      [sheet, cell, answer] as const,
      { timeout },
    );
  await typeInto(page, sheet, cell, formula);
  await isThere(SOON_MS).catch(async () => {
    await page.keyboard.press('Escape');
    await typeInto(page, sheet, cell, formula);
    await isThere(LATER_MS);
  });
}

/** Puts the sheet in sight, the cell in the selection and the keyboard in the sheet. */
export async function selectCell(page: Page, sheet: string, cell: string): Promise<void> {
  await page.evaluate(
    ([name, at]) => {
      const found = grid.book().getSheetByName(name)!;
      grid.book().setActiveSheet(found);
      found.getRange(at).activate();
    },
    [sheet, cell] as const,
  );
  while (await page.evaluate(() => document.activeElement?.closest('#grid-place') === null)) {
    await page.keyboard.press('F6');
  }
}

/** What the person gets to keep when they press a button. */
export async function downloaded(
  page: Page,
  press: () => Promise<void>,
): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const saving = page.waitForEvent('download');
  await press();
  const file = await saving;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

/** Waits until the work is kept. */
export async function isKept(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    document.getElementById('kept')?.textContent.startsWith('Kept in this browser'),
  );
}
