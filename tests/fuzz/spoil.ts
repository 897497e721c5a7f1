/** Ways in which files are spoiled: by a slip, by a bad disk, or by somebody who wants to harm. */
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Chance } from './chance.ts';

/** Texts that readers trip over, put in a cell's or an attribute's place. */
export const HOSTILE_TEXTS: readonly string[] = [
  '',
  ' ',
  '0',
  '-1',
  '1e308',
  '-0',
  'NaN',
  'Infinity',
  '1/0',
  '3 9/8',
  `7'${' '.repeat(32_000)}x`,
  `${' '.repeat(10_000)}3 1/2`,
  '9'.repeat(400),
  `${'1'.repeat(40)}.${'1'.repeat(400)}`,
  '1-'.repeat(5_000),
  "'".repeat(20_000),
  '¼'.repeat(9_000),
  '4-Mar',
  '2026-03-04',
  '46085',
  '15%',
  '(4.10)',
  '$4.10',
  '4.10 €',
  '1,234.5',
  '1.234,5',
  '=1+1',
  '@SUM(1)',
  '\u001b]0;owned\u0007\u001b[2J',
  'left\u202eright',
  'line\none',
  'line\rtwo',
  '\ufffe\uffff',
  '\ud800',
  'é'.normalize('NFD'),
  'a\u200bb',
  '__proto__',
  'constructor',
  '１２ ３／４',
  '5 feet 3 and 1/2 inches',
  '<x>&amp;]]>',
];

/** One spoiled copy of a CSV file. */
export function spoilText(text: string, { below, pick }: Chance): string {
  const at = below(text.length + 1);
  const cut = Math.min(text.length, at + below(40));
  const lines = text.split('\n');
  const line = below(lines.length);
  const cells = (lines[line] ?? '').split(',');
  const cell = below(cells.length);
  const withCell = (what: string): string =>
    [
      ...lines.slice(0, line),
      [...cells.slice(0, cell), what, ...cells.slice(cell + 1)].join(','),
      ...lines.slice(line + 1),
    ].join('\n');
  return pick([
    () => text.slice(0, at) + text.slice(cut),
    () => text.slice(0, at),
    () => text.slice(0, at) + pick(HOSTILE_TEXTS) + text.slice(at),
    () => withCell(pick(HOSTILE_TEXTS)),
    () => withCell(`"${pick(HOSTILE_TEXTS).replaceAll('"', '""')}"`),
    () =>
      text.slice(0, at) + pick(['"', ',', ';', '\t', '\r', '\n', '\0', '\ufeff']) + text.slice(at),
    () => [...lines.slice(0, line), ...lines.slice(line + 1)].join('\n'),
    () => [...lines, lines[line] ?? ''].join('\n'),
    () => text.replaceAll(',', pick([';', '\t', ', ', ',,'])),
    () => text.replaceAll('\n', pick(['\r\n', '\r', '\n\n'])),
  ])();
}

/** One spoiled copy of a file's bytes: bits turned, a piece cut out, the end gone. */
export function spoilBytes(bytes: Uint8Array, { below, pick }: Chance): Uint8Array {
  const at = below(bytes.length);
  return pick([
    () => {
      const turned = bytes.slice();
      for (let times = 1 + below(3); times > 0; times -= 1) {
        const place = below(bytes.length);
        turned[place] = (turned[place] ?? 0) ^ (1 << below(8));
      }
      return turned;
    },
    () => bytes.slice(0, at),
    () => Uint8Array.from([...bytes.subarray(0, at), ...bytes.subarray(at + 1 + below(200))]),
  ])();
}

/** One copy of an .xlsx file with a part spoiled before it is packed, so that the zip itself is sound. */
export function spoilPart(workbook: Uint8Array, chance: Chance): Uint8Array {
  const { below, pick } = chance;
  const parts = unzipSync(workbook);
  const names = Object.keys(parts).filter((name) => /\.(xml|rels)$/u.test(name));
  const sheets = names.filter((name) => /sheet\d+\.xml$|sharedStrings|styles/u.test(name));
  const name = pick(below(3) === 0 ? names : sheets);
  const xml = strFromU8(parts[name] ?? new Uint8Array());
  parts[name] = strToU8(spoilXml(xml, chance));
  const gone = below(20) === 0 ? pick(names) : '';
  const kept = Object.entries(parts).filter(([one]) => one !== gone);
  return zipSync(Object.fromEntries(kept), { level: 1 });
}

function spoilXml(xml: string, { below, pick }: Chance): string {
  const nth = <T>(found: Iterable<T>): T | undefined => {
    const all = [...found];
    return all.length === 0 ? undefined : all[below(all.length)];
  };
  const replaced = (found: RegExpMatchArray | undefined, by: string): string => {
    if (found?.index === undefined) return xml;
    return xml.slice(0, found.index) + by + xml.slice(found.index + found[0].length);
  };
  const escaped = (text: string): string =>
    text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
  return pick([
    () => replaced(nth(xml.matchAll(/"[^"<>]*"/gu)), `"${escaped(pick(HOSTILE_TEXTS))}"`),
    () => replaced(nth(xml.matchAll(/(?<=<v>)[^<]*/gu)), escaped(pick(HOSTILE_TEXTS))),
    () => replaced(nth(xml.matchAll(/(?<=<t[^>]*>)[^<]*/gu)), escaped(pick(HOSTILE_TEXTS))),
    () => replaced(nth(xml.matchAll(/<[a-z]+[^>]*>/giu)), ''),
    () =>
      replaced(
        nth(xml.matchAll(/ t="[a-zA-Z]+"/gu)),
        ` t="${pick(['s', 'n', 'b', 'e', 'd', 'str', 'inlineStr', 'q'])}"`,
      ),
    () =>
      replaced(
        nth(xml.matchAll(/ r="[A-Z]+\d+"/gu)),
        ` r="${pick(['A1', 'XFD1048576', 'ZZZ9', 'a0', ''])}"`,
      ),
    () => replaced(nth(xml.matchAll(/ s="\d+"/gu)), ` s="${pick(['0', '99999', '-1', 'x'])}"`),
    () => xml.slice(0, below(xml.length)),
    () =>
      xml.replace(
        /formatCode="[^"]*"/u,
        `formatCode="${'&quot;'.repeat(3_000)}${'['.repeat(3_000)}"`,
      ),
    () =>
      xml.replace(
        /formatCode="[^"]*"/u,
        `formatCode="${pick(['0%', '0.00&quot; mm&quot;', '[$€-407]0', 'd-mmm', '0,', '?/?', '@', ';;;'])}"`,
      ),
  ])();
}
