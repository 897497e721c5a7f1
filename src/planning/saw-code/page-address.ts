/** The address at which the page is hosted, as a phone at the saw would open it. */

/** As many signs as leave a code's squares large enough to be scanned. */
const MOST_SIGNS = 120;
/** RFC 3986: scheme, host, port and path, without a person's name, a query or a fragment. */
const ADDRESS = /^https?:\/\/[a-z0-9.-]+(?::\d{1,5})?(?:\/[\w.~!$&'()*+,;=:%-]*)*$/iu;
const THIS_MACHINE = /^https?:\/\/(?:localhost|127\.[\d.]+)(?:[:/]|$)/iu;

/**
 * @param typed As a person copies it from a browser, with or without the page's own name at its end.
 * @returns The address up to its last `/`; undefined for what no phone could open.
 */
export function pageAddressOf(typed: string): string | undefined {
  const plain = typed.trim();
  if (plain.length > MOST_SIGNS || !ADDRESS.test(plain) || THIS_MACHINE.test(plain)) {
    return undefined;
  }
  const folder = plain.replace(/\/[\w.-]+\.html$/iu, '/');
  return folder.endsWith('/') ? folder : `${folder}/`;
}
