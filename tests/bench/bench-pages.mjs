/**
 * The built page in a real Chromium, cold: what it asks for until the sheet stands, the pane stands
 * and the tables are checked, as a host hands it out (gzip), and how soon. Fails beyond the budget of time.
 */
/* global document -- in the page */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { servePages } from '../../build/cli/page-server.js';

const dist = process.env.PAGES ?? join(import.meta.dirname, '..', '..', 'dist');
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const FIRST_PORT = 43_317;
const LOADS = 3;

/** What is asked for on the way to each; the budgets of sizes are the build's own (scripts/bundle-parts.mjs). */
const STEPS = ['first', 'sheet', 'pane', 'planner'];
/** From asking for the page to formulas worked out: cold, on two cores. */
const READY_BUDGET_MS = 4_000;

export async function bench() {
  if (!existsSync(join(dist, 'index.html'))) {
    throw new Error('The page is not built. Run npm run build first.');
  }
  const server = await servePages(dist, FIRST_PORT);
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  try {
    const address = `http://localhost:${server.port}/`;
    const loads = [];
    for (let load = 0; load < LOADS; load++) loads.push(await loadCold(browser, address));
    const sizes = STEPS.map((step) => {
      const files = loads[0].files.filter((file) => file.step === step);
      const kilobytes = files.reduce((sum, { name }) => sum + kilobytesOf(name), 0);
      return row(`${step}: ${files.length} files, kB gz`, kilobytes);
    });
    const rows = [
      ...sizes,
      ...['sheet', 'pane', 'checked'].map((step) => row(`${step}, ms`, middle(loads, step))),
      row('functions answer, ms', middle(loads, 'answer'), READY_BUDGET_MS),
    ];
    if (rows.some(({ 'of the budget': used }) => used > 1)) {
      console.error('Later than the budget of the page: see the row below whose share is over 1.');
      process.exitCode = 1;
    }
    return rows;
  } finally {
    await browser.close();
    await server.close();
  }
}

/** When each step was done, and which file was asked for on the way to which. */
async function loadCold(browser, address) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() =>
    document.getElementById('pane').textContent.includes('No problems'),
  );
  await page.waitForFunction(() => performance.getEntriesByName('functions answer').length > 0);
  const load = await page.evaluate(() => {
    const at = (name) => performance.getEntriesByName(name)[0].startTime;
    const [sheet, pane] = [at('grid shown'), at('pane shown')];
    const loaded = at('pane loaded');
    const files = performance.getEntriesByType('resource').map(({ name, startTime }) => ({
      name: new URL(name).pathname,
      step:
        startTime < at('script start')
          ? 'first'
          : startTime < sheet
            ? 'sheet'
            : startTime < loaded
              ? 'pane'
              : 'planner',
    }));
    return { files, sheet, pane, answer: at('functions answer'), checked: performance.now() };
  });
  await context.close();
  return { ...load, files: [{ name: '/index.html', step: 'first' }, ...load.files] };
}

const kilobytesOf = (name) => gzipSync(readFileSync(join(dist, name))).length / 1000;
const middle = (loads, step) =>
  loads.map((load) => load[step]).toSorted((one, other) => one - other)[Math.floor(LOADS / 2)];
const row = (what, value, budget) => ({
  what,
  'kB or ms': Number(value.toFixed(1)),
  budget: budget ?? '',
  'of the budget': budget === undefined ? '' : Number((value / budget).toFixed(3)),
});
