import { describe, expect, test } from '@jest/globals';
import { makePages } from '../../scripts/make-pages.mjs';
import { SCRIPT_HASH } from '../../src/exports/shop-view/script.ts';
import { OFFICE_ADDRESS, readAddresses } from '../../scripts/addresses.mjs';

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

  test('lets the help page do nothing but look as it does', async () => {
    const policy = policyOf((await pagesOf(readAddresses()))['functions.html']);
    expect(policy.get('default-src')).toEqual(["'none'"]);
    expect(policy.has('script-src')).toBe(false);
  });

  test('lets saw.html run its own script and that of the page for the saw', async () => {
    const policy = policyOf((await pagesOf(readAddresses()))['saw.html']);
    expect(policy.get('default-src')).toEqual(["'none'"]);
    expect(policy.get('script-src')).toEqual(["'self'", `'sha256-${SCRIPT_HASH}'`]);
  });

  test('stands before anything that a page loads', async () => {
    const pages = await pagesOf(readAddresses());
    for (const name of ['pane.html', 'index.html', 'functions.html', 'saw.html']) {
      const html = pages[name]!;
      const first = /<(?:script|link|style|img)\b/u.exec(html)?.index ?? Infinity;
      expect(html.indexOf('Content-Security-Policy')).toBeLessThan(first);
    }
  });
});
