/** What a number is said to count, by what stands with it: a unit of length, a percent, money. */
import { isCurrency, isSameCurrency } from './currency.ts';

export type LengthMark = 'in' | 'ft' | 'mm' | 'cm' | 'm';

export type StatedUnit =
  | { readonly kind: 'length'; readonly unit: LengthMark }
  | { readonly kind: 'percent' }
  | { readonly kind: 'degrees' }
  /** Its sign or letters, as they stand. */
  | { readonly kind: 'money'; readonly currency: string }
  /** Whatever else, as it stands: kg, pcs, /ft. */
  | { readonly kind: 'other'; readonly text: string };

const SPELLINGS: readonly (readonly [LengthMark, RegExp])[] = [
  ['ft', /^(?:ft|feet|foot|lf|lft|')$/u],
  ['in', /^(?:in|ins|inch|inches|"|'')$/u],
  ['mm', /^(?:mm|millimet(?:er|re)s?)$/u],
  ['cm', /^(?:cm|centimet(?:er|re)s?)$/u],
  ['m', /^(?:m|met(?:er|re)s?)$/u],
];
const DEGREES = /^(?:°|º|deg|degs|degrees?)$/u;
const PERCENT = /^(?:%|pct|percent|per cent)$/u;
/** Longest text that could be one. */
const LONGEST_UNIT = 24;

/** The unit of length that a word or a mark is; undefined for any other. */
export function lengthMarkOf(word: string): LengthMark | undefined {
  if (word.length > LONGEST_UNIT) return undefined;
  const plain = word
    .trim()
    .toLowerCase()
    .replace(/[′’‘`´]/gu, "'")
    .replace(/[″”“]/gu, '"')
    .replace(/(?<=.)\.$/u, '');
  return SPELLINGS.find(([, spelling]) => spelling.test(plain))?.[0];
}

/**
 * @param text What stands before and after the number, blanks at its ends ignored.
 * @param shopCurrency Money's own sign or letters where they are known: it goes before all else but lengths.
 * @returns Undefined where nothing stands there.
 */
export function statedUnitOf(text: string, shopCurrency = ''): StatedUnit | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  if (trimmed.length > LONGEST_UNIT) return { kind: 'other', text: trimmed };
  const unit = lengthMarkOf(trimmed);
  if (unit !== undefined) return { kind: 'length', unit };
  const word = trimmed.toLowerCase();
  if (PERCENT.test(word)) return { kind: 'percent' };
  if (DEGREES.test(word)) return { kind: 'degrees' };
  const isShops = shopCurrency !== '' && isSameCurrency(trimmed, shopCurrency);
  if (isShops || isCurrency(trimmed)) return { kind: 'money', currency: trimmed };
  return { kind: 'other', text: trimmed };
}

/** As it stands beside a number: mm, %, $, kg. */
export function sayStatedUnit(stated: StatedUnit): string {
  switch (stated.kind) {
    case 'length':
      return stated.unit;
    case 'percent':
      return '%';
    case 'degrees':
      return '°';
    case 'money':
      return stated.currency;
    case 'other':
      return stated.text;
  }
}
