/** The grid's host in a real Chromium, called from here. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

import { afterAll, beforeAll, describe } from '@jest/globals';
import type { IWorkbookData, IWorksheetData } from '@univerjs/core';
import type { Browser, Page } from 'playwright-core';
import type { WorkbookHost } from '../../src/hosts/host.ts';
import { bundleScript } from './bundle-script.ts';
import { pack } from './pack.ts';
import { browserTestsRun, startChromium } from './chromium.ts';
import type { GridTest } from './grid-page-host.ts';

declare global {
  // What grid-page-host.ts leaves in the page.
  var gridTest: GridTest;
}

export interface GridPage {
  readonly page: () => Page;
  /** Everything of it but `watch` and what is told of progress: these stay in the page. */
  readonly host: WorkbookHost;
  /** Puts a workbook of a person's in the grid. */
  readonly open: (sheets: readonly Partial<IWorksheetData>[]) => Promise<void>;
  /** The workbook as the grid saves it. */
  readonly saved: () => Promise<IWorkbookData>;
  /** Waits until formulas have been worked out. */
  readonly settle: () => Promise<void>;
}

const START_MS = 120_000;
const ADDRESS = 'http://grid.test/';
const LOOKS = join(
  import.meta.dirname,
  '../../node_modules/@univerjs/preset-sheets-core/lib/index.css',
);
const pageWith = (looks: string): string =>
  '<!doctype html><html lang="en"><meta charset="utf-8"><title>Grid</title>' +
  `<style>html,body,#grid{height:100%;margin:0}${looks}</style><div id="grid"></div>` +
  '<script src="script.js"></script></html>';

/** One page for all tests of a file: listed as skipped where Chromium is missing, but fail with CI set. */
export function gridSuite(title: string, tests: (grid: GridPage) => void): void {
  (browserTestsRun ? describe : describe.skip)(title, () => {
    let browser: Browser | undefined;
    let page: Page;
    beforeAll(async () => {
      const script = bundleScript('grid-page-host');
      browser = await startChromium();
      page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
      const [body, html] = [await script, pageWith(await readFile(LOOKS, 'utf8'))];
      await page.route(`${ADDRESS}**`, (route) =>
        route.request().url() === ADDRESS
          ? route.fulfill({ contentType: 'text/html', body: html })
          : route.fulfill({ contentType: 'text/javascript', body }),
      );
      await page.goto(ADDRESS);
      await page.waitForFunction(() => 'gridTest' in globalThis);
    }, START_MS);
    afterAll(() => browser?.close());
    const settle = (): Promise<void> => page.evaluate(() => gridTest.settle());
    tests({
      page: () => page,
      host: hostIn(() => page),
      open: (sheets) => page.evaluate((given) => gridTest.open(given), JSON.stringify(sheets)),
      settle,
      saved: async () => {
        const text = await page.evaluate(() => JSON.stringify(gridTest.grid.book().save()));
        return JSON.parse(text) as IWorkbookData;
      },
    });
  });
}

type Answer = { readonly text: string } | { readonly wrong: string };

type Method = Exclude<keyof WorkbookHost, 'kind' | 'can' | 'watch' | 'watchRow'>;
type Called = Readonly<Record<Method, (...some: readonly unknown[]) => Promise<unknown>>>;

/** An exception of the page's is one here: a RangeError is a bug of the caller's, as ever. */
function hostIn(page: () => Page): WorkbookHost {
  const call =
    (name: Method) =>
    async (...given: readonly unknown[]): Promise<never> => {
      const answer: Answer = await page().evaluate(
        async ([method, text]): Promise<Answer> => {
          try {
            const { host, unpack } = gridTest;
            const called = host as unknown as Called;
            return { text: JSON.stringify(await called[method](...unpack(text))) };
          } catch (error) {
            if (error instanceof RangeError) return { wrong: error.message };
            throw error;
          }
        },
        [name, pack(given)] as const,
      );
      if ('wrong' in answer) throw new RangeError(answer.wrong);
      return JSON.parse(answer.text) as never;
    };
  return {
    kind: 'grid',
    can: {
      showCells: true,
      putFormulas: true,
      appendRows: true,
      writeInPlace: true,
      undoWrites: true,
    },
    survey: call('survey'),
    readTable: call('readTable'),
    write: call('write'),
    appendRows: call('appendRows'),
    show: call('show'),
    putFormula: call('putFormula'),
    listSeparator: call('listSeparator'),
    recall: call('recall'),
    remember: call('remember'),
    keptText: call('keptText'),
    keepText: call('keepText'),
    readSheet: call('readSheet'),
    watch: () => {
      throw new Error('watched in the page only');
    },
    watchRow: () => {
      throw new Error('watched in the page only');
    },
  };
}
