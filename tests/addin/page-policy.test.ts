import { describe, expect, test } from '@jest/globals';
import { makePages } from '../../scripts/make-pages.mjs';
import { SCRIPT_HASH } from '../../src/exports/shop-view/script.ts';
import { FAULT_CODES, FAULT_HELP } from '../../src/cli/fault-help/fault-help.ts';
import { raise } from '../../src/cli/fault-help/raise.ts';
import { WORDING } from '../../src/core/faults/wording.ts';
import { OFFICE_ADDRESS, readAddresses } from '../../scripts/addresses.mjs';
import { count } from '../deep.ts';

/** As the build makes them, each under its name. */
const pagesOf = (
  addresses: Readonly<Record<'origin' | 'support', string>> & { readonly office?: string },
): Promise<Readonly<Record<string, string>>> => makePages(addresses);

/** Each directive of a page's policy with what it allows. */
function policyOf(html: string | undefined): ReadonlyMap<string, readonly string[]> {
  const found = [
    ...(html ?? '').matchAll(/<meta http-equiv="Content-Security-Policy" content="([^"]*)">/gu),
  ];
  expect(found).toHaveLength(1);
  return new Map(
    found[0]![1]!.split('; ').map((directive) => {
      const [name = '', ...allowed] = directive.split(' ');
      return [name, allowed];
    }),
  );
}

describe('The page of help on messages', () => {
  test('has each code once, with a message that its example raises, and a way back', async () => {
    // A code without an entry doesn't compile; an example that doesn't raise its code stops the build.
    const page = (await pagesOf(readAddresses()))['help.html'] ?? '';
    const anchors = [...page.matchAll(/<section id="([^"]*\.[^"]*)">/gu)].map(([, code]) => code);
    expect(anchors).toEqual(expect.arrayContaining(Object.keys(WORDING)));
    expect(new Set(anchors).size).toBe(Object.keys(WORDING).length);
    expect(anchors).toHaveLength(Object.keys(WORDING).length);
    expect(page).toContain('<a href="index.html">');
    expect(page).not.toMatch(/undefined|NaN<|\[object/u);
  });

  test('has examples that are sound once they are mended', async () => {
    const codes = FAULT_CODES.filter((code) => FAULT_HELP[code][1].kind !== 'told');
    // Evenly out of all of them; the deep run takes each.
    const looked = codes.filter(
      (_, at) => at % Math.ceil(codes.length / count(codes.length)) === 0,
    );
    for (const code of looked) {
      const raised = await raise(code, FAULT_HELP[code][1]);
      expect([code, raised.fault?.code, await raised.standsMended()]).toEqual([code, code, false]);
    }
    expect(codes.length).toBeGreaterThan(150);
  });
});

describe('The policy of a page', () => {
  test('lets the pane run its own scripts and Microsoft’s library, and none that are made of text', async () => {
    const pages = await pagesOf(readAddresses());
    const policy = policyOf(pages['pane.html']);
    expect(policy.get('default-src')).toEqual(["'none'"]);
    expect(policy.get('script-src')).toEqual([
      "'self'",
      "'wasm-unsafe-eval'",
      new URL(OFFICE_ADDRESS).origin,
    ]);
    expect(policy.get('worker-src')).toEqual(["'self'"]);
    expect(pages['pane.html']).toContain(`src="${OFFICE_ADDRESS}"`);
  });

  test('names no other place where the library comes from our own', async () => {
    const pages = await pagesOf({ ...readAddresses(), office: 'office-js/office.js' });
    expect(policyOf(pages['pane.html']).get('script-src')).toEqual([
      "'self'",
      "'wasm-unsafe-eval'",
    ]);
  });

  test('lets the page with the sheet load and ask for nothing but its own files', async () => {
    const policy = policyOf((await pagesOf(readAddresses()))['index.html']);
    expect(Object.fromEntries(policy)).toEqual({
      'default-src': ["'none'"],
      // The page for the saw, over the page.
      'script-src': ["'self'", "'wasm-unsafe-eval'", `'sha256-${SCRIPT_HASH}'`],
      'frame-src': ['blob:'],
      'worker-src': ["'self'"],
      'style-src': ["'self'", "'unsafe-inline'"],
      'img-src': ["'self'", 'data:', 'blob:'],
      'font-src': ["'self'", 'data:'],
      'connect-src': ["'self'"],
      'base-uri': ["'none'"],
      'form-action': ["'none'"],
    });
  });

  test('lets the help pages do nothing but look as they do', async () => {
    const pages = await pagesOf(readAddresses());
    for (const name of ['functions.html', 'help.html']) {
      const policy = policyOf(pages[name]);
      expect(policy.get('default-src')).toEqual(["'none'"]);
      expect(policy.has('script-src')).toBe(false);
    }
  });

  test('lets saw.html run its own script and that of the page for the saw', async () => {
    const policy = policyOf((await pagesOf(readAddresses()))['saw.html']);
    expect(policy.get('default-src')).toEqual(["'none'"]);
    expect(policy.get('script-src')).toEqual(["'self'", `'sha256-${SCRIPT_HASH}'`]);
  });

  test('stands before anything that a page loads', async () => {
    const pages = await pagesOf(readAddresses());
    for (const name of ['pane.html', 'index.html', 'functions.html', 'help.html', 'saw.html']) {
      const html = pages[name]!;
      const first = /<(?:script|link|style|img)\b/u.exec(html)?.index ?? Infinity;
      expect(html.indexOf('Content-Security-Policy')).toBeLessThan(first);
    }
  });
});
