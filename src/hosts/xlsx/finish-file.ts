/**
 * What the library can't write is put right in its finished parts: errors as cached values, names that
 * stay hidden, pictures at their own size, the program's name.
 */
import { strFromU8, strToU8, unzipSync } from 'fflate';

import { MADE } from '../made-mark.ts';
import type { KeptTexts } from '../workbook/kept-text.ts';
import { packedParts, packPart, zipParts } from '../zip/packed-parts.ts';
import { addKeptTexts } from './kept-parts.ts';
import { ownSizes } from './xlsx-pictures.ts';

/** Stands before an error's code until the file is finished; a character that no font has. */
const ERROR = '\uE0E0error:';

/** A formula's cached error as the library takes it: a text that is turned into an error here. */
export function errorResult(code: string): string {
  return `${ERROR}${code}`;
}

/** What the library has packed and nothing changes, most of it pictures and cells, goes along as it is. */
export function finishFile(workbook: Uint8Array, texts: KeptTexts = {}): Uint8Array {
  const packed = packedParts(workbook);
  const asWritten = unzipSync(workbook, { filter: ({ name }) => !name.endsWith('.png') });
  const parts = { ...asWritten };
  addKeptTexts(parts, texts);
  const changed = new Map(
    Object.entries(parts).flatMap(([name, bytes]) => {
      const done = finished(name, bytes);
      return done === asWritten[name] ? [] : [[name, packPart(name, done)] as const];
    }),
  );
  return zipParts([...new Map([...packed, ...changed]).values()]);
}

function finished(name: string, bytes: Uint8Array): Uint8Array {
  const edit = editOf(name);
  if (edit === undefined) return bytes;
  const xml = strFromU8(bytes);
  const edited = edit(xml);
  return edited === xml ? bytes : strToU8(edited);
}

function editOf(name: string): ((xml: string) => string) | undefined {
  if (/^xl\/drawings\/drawing\d+\.xml$/u.test(name)) return ownSizes;
  if (/^xl\/worksheets\/sheet\d+\.xml$/u.test(name)) return errors;
  if (name === 'xl/workbook.xml') return hidden;
  return name === 'docProps/app.xml' ? writtenBy : undefined;
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
