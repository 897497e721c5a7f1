/** Gives the person a file to keep, by the browser's own saving. */

/** Long enough for any browser to have begun saving. */
const KEEP_ADDRESS_MS = 60_000;

const TYPES: Readonly<Record<string, string>> = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  zip: 'application/zip',
  csv: 'text/csv',
  html: 'text/html',
};

/** @param name With its ending, which says what kind of file it is. */
export function saveFile(name: string, bytes: Uint8Array): void {
  const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
  const type = TYPES[ending] ?? 'application/octet-stream';
  const address = URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEEP_ADDRESS_MS);
}
