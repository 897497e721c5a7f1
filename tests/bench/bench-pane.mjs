/** The built pane in a real Chromium: from its script's start to the first look, and to functions registered. */
/* global document, requestAnimationFrame -- in the page */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { chromium } from 'playwright-core';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const LOADS = 7;
const OFFICE = '**/appsforoffice.microsoft.com/**';
const KINDS = { '.html': 'text/html', '.js': 'text/javascript', '.json': 'application/json' };

/** Milliseconds that a warm load may take to its first paint, after its script starts. */
const PAINT_BUDGET_MS = 500;

/** As much of Excel's library as registering functions needs; it says that no program is there. */
const LIBRARY = `window.Office = { HostType: { Excel: 'Excel' }, onReady: () => Promise.resolve({ host: null }) };
window.CustomFunctions = { associate() {}, ErrorCode: {}, Error: class {} };`;

/** Notes the first frame in which the pane's tabs are there. */
function noteFirstLook() {
  const look = () => {
    if (document.querySelector('[role=tablist]') === null) requestAnimationFrame(look);
    else requestAnimationFrame(() => performance.mark('first look'));
  };
  look();
}

export async function bench() {
  if (!existsSync(join(dist, 'main.js')))
    throw new Error('There is no dist/. Run npm run build first.');
  const server = createServer((request, response) => {
    const file = join(dist, new URL(request.url, 'http://localhost').pathname);
    if (!file.startsWith(dist) || !existsSync(file)) return void response.writeHead(404).end();
    response.setHeader('Content-Type', KINDS[extname(file)] ?? 'application/octet-stream');
    response.setHeader('Cache-Control', 'max-age=600');
    response.end(readFileSync(file));
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  try {
    const context = await browser.newContext({ viewport: { width: 320, height: 700 } });
    await context.route(OFFICE, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: LIBRARY }),
    );
    await context.addInitScript(noteFirstLook);
    const address = `http://127.0.0.1:${server.address().port}/pane.html`;
    const loads = [];
    for (let load = 0; load <= LOADS; load++) loads.push(await timeLoad(context, address));
    const warm = loads.slice(1);
    const paint = middle(warm.map((one) => one.look));
    const registered = middle(warm.map((one) => one.registered));
    const rows = [
      row('first look, cold', loads[0].look),
      row('first look, warm', paint),
      row(
        'functions registered, warm',
        registered,
        registered / paint,
        'of the time to the first look',
      ),
      row('main.js, kB gz', kilobytes('main.js')),
      row(
        'all scripts, kB gz',
        readdirSync(dist)
          .filter((name) => name.endsWith('.js'))
          .reduce((sum, name) => sum + kilobytes(name), 0),
      ),
      row(
        'budget of the first look, warm',
        PAINT_BUDGET_MS,
        paint / PAINT_BUDGET_MS,
        'of the budget used',
      ),
    ];
    if (paint > PAINT_BUDGET_MS) process.exitCode = 1;
    return rows;
  } finally {
    await browser.close();
    server.close();
  }
}

async function timeLoad(context, address) {
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName('first look').length > 0);
  const times = await page.evaluate(() => {
    const at = (name) => performance.getEntriesByName(name)[0].startTime;
    const start = at('script start');
    return { look: at('first look') - start, registered: at('functions registered') - start };
  });
  await page.close();
  return times;
}

const middle = (values) =>
  values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)];
const kilobytes = (name) => gzipSync(readFileSync(join(dist, name))).length / 1000;
const row = (what, value, ratio, of = '') => ({
  what,
  'ms or kB': Number(value.toFixed(1)),
  ratio: ratio === undefined ? '' : Number(ratio.toFixed(3)),
  of,
});
