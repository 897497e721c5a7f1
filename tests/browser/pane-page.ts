/** The built pane in a page of Chromium, beside a fake of Excel, or beside nothing. */
import type { Browser, BrowserContext, Page } from 'playwright-core';

import type { FakeExcel } from '../hosts/excel-fake/fake-excel.ts';

/** The pane's width in Excel for Mac, for Windows and on the web. */
export const PANE_WIDTHS = [270, 320, 350] as const;

const OFFICE = '**/appsforoffice.microsoft.com/**';

/** Longer than anything here takes on a busy machine, but the planning of a large house. */
const LONGEST_WAIT_MS = 30_000;

declare global {
  // What fake-office-page.ts leaves in the page.
  var testExcel: FakeExcel;
  var registered: Record<string, (...given: unknown[]) => unknown[][]>;
}

export interface PaneChoice {
  /** A script in the place of Microsoft's library; blocked where absent. */
  readonly library?: string;
  readonly width?: number;
  /** Run in the page once the library is there, before the pane looks at the workbook; or its text. */
  readonly before?: (() => void) | string;
}

export interface OpenedPane {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong in the page without being said in it. */
  readonly errors: readonly string[];
}

export async function openPane(
  browser: Browser,
  origin: string,
  { library, width = 320, before }: PaneChoice = {},
): Promise<OpenedPane> {
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    acceptDownloads: true,
  });
  context.setDefaultTimeout(LONGEST_WAIT_MS);
  const start = typeof before === 'function' ? `;(${before.toString()})();` : `;${before ?? ''}`;
  await context.route(OFFICE, (route) =>
    library !== undefined && route.request().url().endsWith('/office.js')
      ? route.fulfill({ contentType: 'text/javascript', body: library + start })
      : route.abort(),
  );
  const errors: string[] = [];
  const page = await context.newPage();
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    const blocked = message.text().includes('net::ERR_FAILED');
    if (message.type() === 'error' && !blocked) errors.push(message.text());
  });
  await page.goto(`${origin}/pane.html`);
  await page.getByRole('tablist').waitFor();
  return { page, context, errors };
}
