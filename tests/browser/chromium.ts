/** A real Chromium, driven. With CI set the tests that need it fail where it is missing. */
import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Where the program is: CHROMIUM of the environment, or one of the usual places. */
export const chromiumPath = [process.env['CHROMIUM'] ?? '', ...PLACES].find((path) =>
  existsSync(path),
);
export const browserTestsRun = chromiumPath !== undefined || process.env['CI'] !== undefined;

/** @throws Error that says what is missing. */
export async function startChromium(): Promise<Browser> {
  if (chromiumPath === undefined) {
    throw new Error('Chromium is not installed: the tests of the pane need it (Debian: chromium).');
  }
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  });
}
