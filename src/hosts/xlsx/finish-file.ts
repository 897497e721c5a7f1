/**
 * What the library can't write is put right in its finished parts: errors as cached values, names that
 * stay hidden, pictures at their own size, the program's name.
 */
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from 'fflate';

import { MADE } from '../made-mark.ts';
import type { KeptTexts } from '../workbook/kept-text.ts';
import { addKeptTexts } from './kept-parts.ts';
import { ownSizes } from './xlsx-pictures.ts';

/** Earliest that a zip can say, in whichever time zone: parts tell nothing of when. */
const WRITTEN = new Date(1980, 0, 1);
/** Stands before an error's code until the file is finished; a character that no font has. */
const ERROR = '\uE0E0error:';

/** A formula's cached error as the library takes it: a text that is turned into an error here. */
export function errorResult(code: string): string {
  return `${ERROR}${code}`;
}

export function finishFile(workbook: Uint8Array, texts: KeptTexts = {}): Uint8Array {
  const parts: Zippable = {};
  const unpacked = unzipSync(workbook);
  addKeptTexts(unpacked, texts);
  for (const [name, bytes] of Object.entries(unpacked)) {
    // A PNG is packed already.
    parts[name] = [finished(name, bytes), { level: name.endsWith('.png') ? 0 : 6 }];
  }
  return zipSync(parts, { mtime: WRITTEN });
}

function finished(name: string, bytes: Uint8Array): Uint8Array {
  if (/^xl\/drawings\/drawing\d+\.xml$/u.test(name)) return strToU8(ownSizes(strFromU8(bytes)));
  if (/^xl\/worksheets\/sheet\d+\.xml$/u.test(name)) return strToU8(errors(strFromU8(bytes)));
  if (name === 'xl/workbook.xml') return strToU8(hidden(strFromU8(bytes)));
  if (name === 'docProps/app.xml') return strToU8(writtenBy(strFromU8(bytes)));
  return bytes;
}

/** ECMA-376 part 1, 18.18.11: a cell of type e holds an error. */
function errors(xml: string): string {
  return xml.includes(ERROR)
    ? xml.replace(
        new RegExp(String.raw`(<c [^>]*?)t="str"([^>]*>(?:(?!</c>).)*?<v>)${ERROR}`, 'gsu'),
        (_, before: string, between: string) => `${before}t="e"${between}`,
      )
    : xml;
}

/** ECMA-376 part 1, 22.2.2.1: the program that wrote it, where the library names itself. */
function writtenBy(xml: string): string {
  return xml.replace(/(<Application>)[^<]*/u, '$1Coveledger');
}

function hidden(xml: string): string {
  return xml.replaceAll(`<definedName name="${MADE}"`, `<definedName name="${MADE}" hidden="1"`);
}
