/** Tests in a real Chromium over the built pages: one browser and one server for a file of tests. */
import { afterAll, beforeAll, describe } from '@jest/globals';
import type { Browser } from 'playwright-core';

import { builtPages } from './built-pages.ts';
import { bundleScript } from './bundle-script.ts';
import { browserTestsRun, startChromium } from './chromium.ts';
import { openPane, type OpenedPane, type PaneChoice } from './pane-page.ts';
import { serveFolder, type Served } from './serve-folder.ts';

/** A page load, a plan and its writing take seconds on a busy machine. */
export const BROWSER_TEST_MS = 120_000;

export interface BrowserSuite {
  /** The pane in a page with no workbook beside it. */
  readonly alone: (choice?: PaneChoice) => Promise<OpenedPane>;
  /** The pane beside a fake of Excel; `before` sets the workbook up. */
  readonly besideExcel: (choice?: PaneChoice) => Promise<OpenedPane>;
}

/** The tests are listed as skipped where Chromium is missing, but fail there with CI set. */
export function browserSuite(title: string, tests: (suite: BrowserSuite) => void): void {
  (browserTestsRun ? describe : describe.skip)(title, () => {
    let browser: Browser | undefined;
    let served: Served | undefined;
    let library: Promise<string> | undefined;
    /** Made where a test needs it: a bundle of its own takes seconds. */
    const fakeOffice = (): Promise<string> => (library ??= bundleScript('fake-office-page'));
    beforeAll(async () => {
      served = await serveFolder(builtPages());
      browser = await startChromium();
    }, BROWSER_TEST_MS);
    afterAll(async () => {
      await browser?.close();
      await served?.close();
    });
    tests({
      alone: (choice) => openPane(browser!, served!.origin, choice),
      besideExcel: async (choice) =>
        openPane(browser!, served!.origin, { library: await fakeOffice(), ...choice }),
    });
  });
}
