/** One cove at the saw, from the code on its printed page: the page's frame, and what is shown of a code. */
import type { Outcome } from '../../core/faults/fault.ts';
import { readSawCode } from '../../planning/saw-code/read-saw-code.ts';
import { printExact } from '../../sheets/words/print-length.ts';
import { STYLE } from './look.ts';
import { setUpScreen } from './set-up-screen.ts';
import { SCRIPT_SOURCE, shopDocument, shopHead, type ShopDocument } from './shop-page.ts';

const TITLE = 'At the saw';

/** Its own files alone; the fragment never leaves the browser. */
const POLICY = `default-src 'none'; style-src 'unsafe-inline'; script-src 'self' ${SCRIPT_SOURCE}; worker-src 'self'; connect-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'`;

/** Between a code and the name of a screen: no sign of either. */
const SCREEN_SIGN = '&';

/** @param script Its file, which fills the page. */
export function writeSawPage(script: string): string {
  return [
    '<!doctype html>',
    '<html lang="en">',
    ...shopHead(TITLE, POLICY),
    '<link rel="icon" href="icon-32.png">',
    `<style>${STYLE}</style></head>`,
    '<body><main>',
    '<noscript><p>This page reads its numbers from the code by JavaScript, which is turned off here. They stand on the printed page.</p></noscript>',
    `</main><script src="${script}" defer></script></body></html>`,
    '',
  ].join('\n');
}

/** The code in an address's fragment, without the screen that is shown. */
export function codeIn(hash: string): string {
  return hash.replace(/^#/u, '').split(SCREEN_SIGN)[0] ?? '';
}

/** What a code's page shows, and says in its title; faults as readSawCode has them. */
export function sawDocument(code: string): Outcome<ShopDocument & { readonly title: string }> {
  const read = readSawCode(code);
  if (!read.ok) return read;
  const { profile, setUp, shop, blanks, hasNote } = read.value;
  const kept = hasNote ? 'A note of its own, its' : 'Its';
  const document = shopDocument({
    title: TITLE,
    heading: '',
    made: [
      'From the code on a printed page of Set-ups: the same numbers, to the last one.',
      `${kept} corners and its trial cut stand on that page.`,
    ],
    leastBlank: printExact(shop.leastBlankLength, shop),
    screens: [setUpScreen(shop, { profile, setUp }, blanks)],
    ticks: 'Ticks stay on this device, for this very set-up.',
    base: `${code}${SCREEN_SIGN}`,
  });
  return { ...read, value: { ...document, title: `${profile.name}: ${TITLE.toLowerCase()}` } };
}
