/** Long texts kept with a workbook, out of sight: each a custom XML part under a namespace of its own. */
import type { KeptTextKey } from '../host.ts';

export const KEPT_TEXTS: readonly KeptTextKey[] = ['plan', 'written-plan'];
export type KeptTexts = Readonly<Partial<Record<KeptTextKey, string>>>;

/** With another text under a key; without one, that goes. */
export function withText(texts: KeptTexts, key: KeptTextKey, text: string | undefined): KeptTexts {
  const others = Object.entries(texts).filter(([own]) => own !== key);
  return Object.fromEntries(text === undefined ? others : [...others, [key, text]]);
}

export function namespaceOf(key: KeptTextKey): string {
  return `urn:coveledger:${key}`;
}

/** @param text JSON: what XML can't hold stands there as an escape, but for two characters that it may not. */
export function wrapText(key: KeptTextKey, text: string): string {
  const escaped = text
    .replace(/[\uFFFE\uFFFF]/gu, (one) => `\\u${one.charCodeAt(0).toString(16)}`)
    .replace(/&/gu, '&amp;')
    .replace(/</gu, '&lt;')
    .replace(/>/gu, '&gt;');
  return `<kept xmlns="${namespaceOf(key)}">${escaped}</kept>`;
}

/** The key and the text of such a part; undefined for any other. */
export function unwrapText(
  xml: string,
): { readonly key: KeptTextKey; readonly text: string } | undefined {
  const [, namespace, text] =
    /^\uFEFF?\s*(?:<\?xml[^>]*\?>)?\s*<kept xmlns="([^"]*)"\s*>([^<]*)<\/kept>\s*$/u.exec(xml) ??
    [];
  const key = KEPT_TEXTS.find((one) => namespaceOf(one) === namespace);
  if (key === undefined || text === undefined) return undefined;
  const plain = text.replace(
    /&(lt|gt|quot|apos|amp);/gu,
    (_, name: string) => ENTITIES[name] ?? '',
  );
  return { key, text: plain };
}

const ENTITIES: Readonly<Record<string, string>> = {
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  amp: '&',
};
