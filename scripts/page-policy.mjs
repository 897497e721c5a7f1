/**
 * The pages' Content-Security-Policy, put into their heads as they are built: what is not named here
 * is not loaded. It was tried in a browser with a stand-in for Microsoft's library; the real one in a
 * real Excel is unverified. Where it is refused something there, the console names the directive.
 *
 * A worker from a file of our own takes its policy from the headers of its host, or from the page in
 * some browsers; `wasm-unsafe-eval` is for the solver in it, and lets no script be made of text.
 */

import { SCRIPT_SOURCE } from '../build/exports/shop-view/shop-page.js';

/** The pane: our own files, and Microsoft's library with the parts and reports that it asks for. */
export function panePolicy(office) {
  const library = URL.canParse(office) ? ` ${new URL(office).origin}` : '';
  return [
    "default-src 'none'",
    `script-src 'self' 'wasm-unsafe-eval'${library}`,
    "worker-src 'self'",
    // The pane's look is made of style elements at work.
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data:",
    "font-src 'self' data:",
    "connect-src 'self' https:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/**
 * The grid's page: our own files alone; drawings are pictures made on the spot, and so is the page for the saw,
 * which is shown in a frame under this policy and its own.
 */
export const PAGE_POLICY = [
  "default-src 'none'",
  `script-src 'self' 'wasm-unsafe-eval' ${SCRIPT_SOURCE}`,
  'frame-src blob:',
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The help page: text and its own style. */
export const HELP_POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** @throws Error where the page says no charset, after which the policy goes */
export function withPolicy(html, policy) {
  const charset = /<meta charset="utf-8" ?\/?>/u;
  if (!charset.test(html)) throw new Error('The page has no place for its policy.');
  return html.replace(
    charset,
    (found) => `${found}\n<meta http-equiv="Content-Security-Policy" content="${policy}">`,
  );
}
