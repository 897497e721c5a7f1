/** One of a few words, as people write them: mitre for miter, coped for cope, bought for buy. */
import { findNearNames } from '../../core/words/near-words.ts';

/** Read wherever the other is allowed. None that could mean two of a column's words. Common practice [C]. */
const SAME_WORD: Readonly<Record<string, string>> = {
  coped: 'cope',
  returned: 'return',
  squared: 'square',
  bought: 'buy',
  purchased: 'buy',
  each: 'piece',
  ea: 'piece',
  pc: 'piece',
  pcs: 'piece',
  ft: 'foot',
  feet: 'foot',
  lf: 'foot',
  'lineal foot': 'foot',
  'linear foot': 'foot',
  bf: 'board foot',
  'bd ft': 'board foot',
  'board feet': 'board foot',
  m: 'metre',
  meter: 'metre',
  'square meter': 'square metre',
  ...{ 'cubic meter': 'cubic metre', 'm³': 'cubic metre', m3: 'cubic metre', cbm: 'cubic metre' },
  'meter a pass': 'metre a pass',
  'meter a cut': 'metre a cut',
  'meter a rip': 'metre a rip',
  'square meter a coat': 'square metre a coat',
  'finished length': 'finished',
  'cased openings': 'cased opening',
};

export type WordReading<Word extends string> =
  | { readonly word: Word }
  /** What it may be meant for, in words; empty where nothing is near. */
  | { readonly may: string };

/** Case, hyphens, spaces and a plural make no other word, and mitre is miter. */
export function readWord<Word extends string>(
  text: string,
  allowed: readonly Word[],
): WordReading<Word> {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[\s_‐-]+/gu, ' ')
    .replace(/\bmitre/gu, 'miter')
    .replace(/(?<=miter)ed\b/gu, '');
  const same = SAME_WORD[plain] ?? SAME_WORD[plain.replace(/s$/u, '')] ?? plain;
  const word = allowed.find((one) => one === text.trim() || one === same || `${one}s` === same);
  if (word !== undefined) return { word };
  const near = findNearNames(plain, allowed);
  return { may: near.length < allowed.length ? near.join(' or ') : '' };
}
