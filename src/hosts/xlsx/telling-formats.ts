/** Whether the number formats of a file can show anything but a number, before any cell is read. */
import { strFromU8, unzipSync } from 'fflate';

import { shownCell } from '../tables/shown-number.ts';

const STYLES = /(?:^|\/)styles\.xml$/iu;
const FORMAT_CODE = /\bformatCode\s*=\s*(?:"([^"]*)"|'([^']*)')/gu;
const FORMAT_NUMBER = /\bnumFmtId\s*=\s*["']\s*(\d{1,9})\s*["']/gu;
/** ECMA-376 part 1, 18.8.30: General, plain numbers, exponents, fractions, brackets, text. */
const PLAIN_NUMBERS = new Set([0, 1, 2, 3, 4, 11, 12, 13, 37, 38, 39, 40, 48, 49]);
/** Formats from here on are the file's own, with a code. */
const FIRST_OWN = 164;
const SAMPLES = [1.5, -1.5, 0, 1000] as const;

/**
 * @param bytes An .xlsx file that was seen to be a zip.
 * @returns False only where every format in it, used or not, leaves numbers as they are.
 */
export function showsMoreThanNumbers(bytes: Uint8Array): boolean {
  try {
    const parts = Object.values(unzipSync(bytes, { filter: ({ name }) => STYLES.test(name) }));
    return parts.some((part) => tells(strFromU8(part)));
  } catch {
    return true;
  }
}

function tells(xml: string): boolean {
  // In UTF-16, which hardly anybody writes, nothing is found below.
  if (xml.includes('\0') || xml.startsWith('\uFFFD')) return true;
  for (const [, number] of xml.matchAll(FORMAT_NUMBER)) {
    const id = Number(number);
    if (id < FIRST_OWN && !PLAIN_NUMBERS.has(id)) return true;
  }
  for (const [, double, single] of xml.matchAll(FORMAT_CODE)) {
    const code = (double ?? single ?? '').replace(/&quot;/gu, '"');
    // Of what is escaped otherwise only the letters matter, and they tell too much rather than too little.
    if (SAMPLES.some((one) => shownCell(one, code) !== one)) return true;
  }
  return false;
}
