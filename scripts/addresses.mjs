/** Where the add-in is served and where its people find help: filled in from this one place. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

/** Microsoft supports its library from this address alone. */
export const OFFICE_ADDRESS = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';
/** The addresses that manifest.xml is written for; a build puts its own in their place. */
export const DEVELOPMENT_ORIGIN = 'https://localhost:3000';

/**
 * The addresses of a build: `origin` and `support` of package.json's config, or as given by
 * --env origin=https://… --env support=https://…
 * @throws Error where one doesn't begin with https://, which is all that an add-in is served from.
 */
export function readAddresses(given = {}) {
  const { config } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const origin = httpsAddress('origin', given.origin ?? config.origin);
  const support = given.support ?? config.support ?? `${origin}/functions.html`;
  return { origin, support: httpsAddress('support', support) };
}

function httpsAddress(name, given) {
  const address = String(given).replace(/\/+$/u, '');
  if (URL.canParse(address) && new URL(address).protocol === 'https:') return address;
  throw new Error(`${name}=${given}: give an address that begins with https://`);
}
