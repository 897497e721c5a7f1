import { expect, test } from '@jest/globals';
import type { Page } from 'playwright-core';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import { describeInput } from '../../src/sheets/describe-input.ts';
import { tablesOf, type Tables } from '../planning/make-job.ts';
import { DEMO } from '../sheets/sheet-jobs.ts';
import { BROWSER_TEST_MS, browserSuite } from './browser-suite.ts';
import { goTo, planJob } from './pane-steps.ts';

/** 300 lengths of bought base, each of its own, made by a rule: long in the planning. */
const LONG: Tables = {
  runs: [
    'Room,Run,Profile,Length',
    ...Array.from({ length: 300 }, (_, at) => `Hall,${at},Base,${120 + ((at * 7919) % 1280)}/16`),
  ].join('\n'),
  stock:
    'For,Kind,Class,Width,Length,Price,Per,Have,Buy\n' +
    "Base,stick,,,8',9.50,,,\nBase,stick,,,10',12.70,,,\nBase,stick,,,12',15.10,,,\n" +
    "Base,stick,,,14',19,,,\nBase,stick,,,16',21.30,,,",
};

const SECONDS = 'Seconds to look for a cheaper plan';

/** Opens the job from a file, and stays where it is planned. */
async function openJob(page: Page, tables: Tables): Promise<void> {
  await page.locator('input[type=file]').setInputFiles({
    name: 'trim.xlsx',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from(await writeWorkbook(describeInput(tablesOf(tables)))),
  });
  await page
    .getByText(/^No problems/)
    .first()
    .waitFor();
  await goTo(page, 'Plan');
}

/** The kinds of our own files that the page asks for from now on. */
function askedFor(page: Page): string[] {
  const names: string[] = [];
  page.on('request', (request) => {
    const name = /\/([a-z-]+)[^/]*\.(?:js|wasm)$/u.exec(request.url())?.[1];
    if (name === 'plan-worker' || name === 'highs') names.push(name);
  });
  return names;
}

browserSuite('The planner in a worker', ({ alone }) => {
  test(
    'plans under the page’s policy, and asks for worker and solver only when a plan is made',
    async () => {
      const { page, context, errors } = await alone();
      const asked = askedFor(page);
      await openJob(page, DEMO);
      // The totals beside the list are counted in the worker, by the quick plan, which needs no solver.
      expect(asked.filter((name) => name !== 'plan-worker')).toEqual([]);
      await planJob(page);
      expect(asked).toEqual(['plan-worker', 'highs']);
      expect(page.workers()).toHaveLength(1);
      expect(await page.getByText('bound not finished').count()).toBe(0);
      await planJob(page, 'Plan again');
      expect(asked).toHaveLength(2);
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'tells how far it is, and a stop keeps the best plan so far',
    async () => {
      const { page, context, errors } = await alone();
      await openJob(page, LONG);
      await page.getByRole('textbox', { name: SECONDS }).fill('3600');
      await page.getByRole('button', { name: 'Plan the job' }).click();
      await page.getByText(/^Lumber and its labor so far \$[\d,.]+; /).waitFor();
      await page.getByRole('button', { name: 'Stop' }).click();
      await page.getByRole('heading', { name: 'What it comes to' }).waitFor();
      await page.getByRole('button', { name: 'Plan again' }).waitFor();
      expect(await page.getByText('bound not finished').count()).toBeGreaterThan(0);
      expect(await page.getByText('nothing was planned').count()).toBe(0);
      const saving = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the sheets as a file' }).click();
      await saving;
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test.each([
    ['plan-worker', 0],
    ['highs', 1],
  ])(
    'makes a plan all the same where %s does not come',
    async (name, unfinished) => {
      const { page, context, errors } = await alone();
      await context.route(`**/${name}*`, (route) => route.abort());
      await openJob(page, DEMO);
      await planJob(page);
      const said = await page.getByText('bound not finished').count();
      expect(Math.min(said, 1)).toBe(unfinished);
      expect(errors).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'with 0 seconds makes the quick plan and needs none; what is no number is said',
    async () => {
      const { page, context } = await alone();
      const asked = askedFor(page);
      await openJob(page, DEMO);
      await page.getByRole('textbox', { name: SECONDS }).fill('soon');
      await page.getByText('“soon” is not a number').waitFor();
      const button = page.getByRole('button', { name: 'Plan the job' });
      expect(await button.getAttribute('aria-disabled')).toBe('true');
      await planJob(page, 'Plan the job', 0);
      expect(asked).toEqual([]);
      await context.close();
    },
    BROWSER_TEST_MS,
  );

  test(
    'stands in a page that makes no script of text and loads nothing from elsewhere',
    async () => {
      const { page, context } = await alone();
      const refused = await page.evaluate(async () => {
        const names: string[] = [];
        document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
          names.push(effectiveDirective),
        );
        (setTimeout as (text: string) => void)('globalThis.ranText = true');
        const script = document.createElement('script');
        script.src = 'https://elsewhere.example/a.js';
        const isOver = new Promise((resolve) => {
          script.onerror = resolve;
        });
        document.head.append(script);
        await isOver;
        await new Promise((resolve) => setTimeout(resolve, 50));
        return names.sort();
      });
      expect(refused).toEqual(['script-src', 'script-src-elem']);
      await context.close();
    },
    BROWSER_TEST_MS,
  );
});
