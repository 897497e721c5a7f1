/** Sheets that the library would read as if nothing were wrong: cut off, or naming texts that aren't there. */
import { strFromU8, unzipSync } from 'fflate';
import { fault, type Fault } from '../../core/faults/fault.ts';

const SHEET = /(?:^|\/)worksheets\/[^/]+\.xml$/iu;
const TEXTS = /(?:^|\/)sharedStrings\.xml$/iu;
const CLOSED = /<\/(?:[\w.-]+:)?worksheet\s*>|<(?:[\w.-]+:)?worksheet(?:\s[^>]*)?\/>/u;
const OPENED = /<((?:[\w.-]+:)?)sheetData\s*>/u;
const TEXT = /<(?:[\w.-]{1,20}:)?si[\s/>]/gu;
/** A cell whose value is the number of a shared text, from 0 (ECMA-376 part 1, 18.18.11). */
const TEXT_CELL =
  /<(?:[\w.-]{1,20}:)?c\s([^<>]*)>\s*<(?:[\w.-]{1,20}:)?v(?:\s[^<>]*)?(?:\/>|>([^<]{0,40}))/gu;
const IS_TEXT = /(?:^|\s)t\s*=\s*["']s["']/u;
const PLACE = /(?:^|\s)r\s*=\s*["']([A-Z]{1,3}\d{1,7})["']/u;

/**
 * @param bytes An .xlsx file that was seen to be a zip.
 * @returns file.torn where the XML of a sheet stops before its end (ECMA-376 part 1, 18.3.1.99: worksheet is
 *   its root), or its cells do; file.lost-text where a cell names a text that the file doesn't have, which
 *   would be read as blank. Null for none; what can't be unpacked is left to the library.
 */
export function damageOf(bytes: Uint8Array, fileName: string): Fault | null {
  let parts: Record<string, Uint8Array>;
  try {
    parts = unzipSync(bytes, { filter: ({ name }) => SHEET.test(name) || TEXTS.test(name) });
  } catch {
    return null;
  }
  const named = Object.entries(parts).filter(([, part]) => !isUtf16(part));
  const sheets = named.filter(([name]) => SHEET.test(name)).map(([, part]) => strFromU8(part));
  if (sheets.some(isTorn)) return fault('file.torn', 'workbook', fileName);
  // Where texts are in UTF-16 they aren't counted here.
  if (named.length < Object.keys(parts).length) return null;
  const texts = named
    .filter(([name]) => TEXTS.test(name))
    .reduce((sum, [, part]) => sum + (strFromU8(part).match(TEXT)?.length ?? 0), 0);
  for (const sheet of sheets) {
    const cell = lostText(sheet, texts);
    if (cell !== null) return fault('file.lost-text', 'workbook', fileName, { details: { cell } });
  }
  return null;
}

/** Which the standard allows and hardly anybody writes. */
function isUtf16(part: Uint8Array): boolean {
  return part[0] === 0xff || part[0] === 0xfe || part[1] === 0;
}

function isTorn(text: string): boolean {
  if (!CLOSED.test(text)) return true;
  const opened = OPENED.exec(text);
  return opened !== null && !text.includes(`</${opened[1] ?? ''}sheetData`);
}

/** The first cell that names a text which isn't among so many. */
function lostText(sheet: string, texts: number): string | null {
  for (const [, attributes = '', value = ''] of sheet.matchAll(TEXT_CELL)) {
    if (!IS_TEXT.test(attributes)) continue;
    const number = value.trim();
    if (/^\d+$/u.test(number) && Number(number) < texts) continue;
    return PLACE.exec(attributes)?.[1] ?? 'a cell';
  }
  return null;
}
