/**
 * Long texts kept in an .xlsx file as custom XML parts (ECMA-376 part 1, 15.2.4 and 15.2.5), where
 * Excel's add-in keeps them too.
 */
import { strFromU8, strToU8, unzipSync } from 'fflate';
import {
  KEPT_TEXTS,
  namespaceOf,
  unwrapText,
  wrapText,
  type KeptTexts,
} from '../workbook/kept-text.ts';

const RELATIONSHIPS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const PROPERTIES = 'application/vnd.openxmlformats-officedocument.customXmlProperties+xml';
const DATA = 'http://schemas.openxmlformats.org/officeDocument/2006/customXml';
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
/** A part's id must be a GUID; ours are fixed, so that bytes repeat. */
const IDS = {
  plan: '{6E0A6B0C-6F1B-4B8E-9A35-0B5C1F5D6A01}',
  'written-plan': '{6E0A6B0C-6F1B-4B8E-9A35-0B5C1F5D6A02}',
} as const;
/** A plan of 100,000 pieces comes to less. */
const LARGEST_PART_BYTES = 60_000_000;

/** What is kept in a file; of what can't be read nothing. */
export function keptTextsOf(bytes: Uint8Array): KeptTexts {
  const parts = unzipSync(bytes, {
    filter: ({ name, originalSize }) =>
      /^customXml\/item\d+\.xml$/u.test(name) && originalSize <= LARGEST_PART_BYTES,
  });
  const found = Object.values(parts).flatMap((part) => {
    const kept = unwrapText(strFromU8(part));
    return kept === undefined ? [] : [[kept.key, kept.text] as const];
  });
  return Object.fromEntries(found);
}

/** Adds the texts to a workbook's parts, which have none yet. */
export function addKeptTexts(parts: Record<string, Uint8Array>, texts: KeptTexts): void {
  const keys = KEPT_TEXTS.filter((key) => texts[key] !== undefined);
  const put = (name: string, xml: string): void => {
    parts[name] = strToU8(xml);
  };
  const change = (name: string, edit: (xml: string) => string): void => {
    const part = parts[name];
    if (part === undefined) throw new RangeError(`The workbook has no part ${name}.`);
    parts[name] = strToU8(edit(strFromU8(part)));
  };
  keys.forEach((key, at) => {
    const number = at + 1;
    put(`customXml/item${number}.xml`, HEAD + wrapText(key, texts[key] ?? ''));
    put(
      `customXml/itemProps${number}.xml`,
      `${HEAD}<ds:datastoreItem ds:itemID="${IDS[key]}" xmlns:ds="${DATA}"><ds:schemaRefs><ds:schemaRef ds:uri="${namespaceOf(key)}"/></ds:schemaRefs></ds:datastoreItem>`,
    );
    put(
      `customXml/_rels/item${number}.xml.rels`,
      `${HEAD}<Relationships xmlns="${PACKAGE}"><Relationship Id="rId1" Type="${RELATIONSHIPS}/customXmlProps" Target="itemProps${number}.xml"/></Relationships>`,
    );
    change('[Content_Types].xml', (xml) =>
      xml.replace(
        '</Types>',
        `<Override PartName="/customXml/itemProps${number}.xml" ContentType="${PROPERTIES}"/></Types>`,
      ),
    );
    change('xl/_rels/workbook.xml.rels', (xml) =>
      xml.replace(
        '</Relationships>',
        `<Relationship Id="rIdKept${number}" Type="${RELATIONSHIPS}/customXml" Target="../customXml/item${number}.xml"/></Relationships>`,
      ),
    );
  });
}
