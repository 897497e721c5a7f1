/** Cells that name a text which the file doesn't have: the library would read them as blank. */
import { strFromU8 } from 'fflate';
import { fault, type Fault } from '../../core/faults/fault.ts';
import { partNames, SHEET, unpack } from './scan-sheets.ts';

const TEXTS = /(?:^|\/)sharedStrings\.xml$/iu;
const TEXT = /<(?:[\w.-]{1,20}:)?si[\s/>]/gu;
/** A cell whose value is the number of a shared text, from 0 (ECMA-376 part 1, 18.18.11). */
const TEXT_CELL =
  /<(?:[\w.-]{1,20}:)?c\s([^<>]*)>\s*<(?:[\w.-]{1,20}:)?v(?:\s[^<>]*)?(?:\/>|>([^<]{0,40}))/gu;
const IS_TEXT = /(?:^|\s)t\s*=\s*["']s["']/u;
const PLACE = /(?:^|\s)r\s*=\s*["']([A-Z]{1,3}\d{1,7})["']/u;

/**
 * @param bytes An .xlsx file that was seen to be a zip, its sizes bounded.
 * @returns file.lost-text, or null; what can't be unpacked is left to the library.
 */
export function lostTextFault(bytes: Uint8Array, fileName: string): Fault | null {
  let texts = 0;
  for (const name of partNames(bytes, TEXTS)) {
    const xml = textOf(bytes, name);
    if (xml === null) return null;
    texts += xml.match(TEXT)?.length ?? 0;
  }
  for (const name of partNames(bytes, SHEET)) {
    const cell = lostText(textOf(bytes, name) ?? '', texts);
    if (cell !== null) return fault('file.lost-text', 'workbook', fileName, { details: { cell } });
  }
  return null;
}

/** Letter by letter as bytes: only marks and digits matter. Null for UTF-16, which hardly anybody writes. */
function textOf(bytes: Uint8Array, name: string): string | null {
  const part = unpack(bytes, name);
  if (part === null || part[0] === 0xff || part[0] === 0xfe || part[1] === 0) return null;
  return strFromU8(part, true);
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
