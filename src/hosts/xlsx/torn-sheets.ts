/** Sheets whose end is missing: the library reads what is there, and says nothing of the rest. */
import { strFromU8, unzipSync } from 'fflate';

const SHEET = /(?:^|\/)worksheets\/[^/]+\.xml$/iu;
const CLOSED = /<\/(?:[\w.-]+:)?worksheet\s*>|<(?:[\w.-]+:)?worksheet(?:\s[^>]*)?\/>/u;
const OPENED = /<((?:[\w.-]+:)?)sheetData\s*>/u;

/**
 * @param bytes An .xlsx file that was seen to be a zip.
 * @returns Whether the XML of a sheet stops before its end (ECMA-376 part 1, 18.3.1.99: worksheet is its
 *   root), or its cells do. What can't be unpacked is left to the library.
 */
export function hasTornSheet(bytes: Uint8Array): boolean {
  try {
    return Object.values(unzipSync(bytes, { filter: ({ name }) => SHEET.test(name) })).some(isTorn);
  } catch {
    return false;
  }
}

function isTorn(sheet: Uint8Array): boolean {
  // UTF-16, which the standard allows and hardly anybody writes, is left to the library.
  if (sheet[0] === 0xff || sheet[0] === 0xfe || sheet[1] === 0) return false;
  const text = strFromU8(sheet);
  if (!CLOSED.test(text)) return true;
  const opened = OPENED.exec(text);
  return opened !== null && !text.includes(`</${opened[1] ?? ''}sheetData`);
}
