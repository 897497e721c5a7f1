/** The unit of length that a heading names: Length (ft), Width mm. */

export type HeadingUnit = 'in' | 'ft' | 'mm' | 'cm' | 'm';

const SPELLINGS: readonly (readonly [HeadingUnit, RegExp])[] = [
  ['ft', /^(?:ft|feet|foot|lf|lft|')$/u],
  ['in', /^(?:in|ins|inch|inches|")$/u],
  ['mm', /^(?:mm|millimet(?:er|re)s?)$/u],
  ['cm', /^(?:cm|centimet(?:er|re)s?)$/u],
  ['m', /^(?:m|met(?:er|re)s?)$/u],
];

const SAID: Readonly<Record<HeadingUnit, string>> = {
  in: 'inches',
  ft: 'feet',
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
};

export const sayUnit = (unit: HeadingUnit): string => SAID[unit];

const LAST_WORD = /(\p{L}+|['"])[.\s)\]]*$/u;

/** The unit that a heading names as its last word: Len (ft), Feet, Width mm. */
export function unitOfHeading(heading: string): HeadingUnit | undefined {
  const plain = plainMarks(heading.trim().toLowerCase());
  const last = LAST_WORD.exec(plain)?.[1] ?? '';
  return SPELLINGS.find(([, spelling]) => spelling.test(last))?.[0];
}

/** The heading without the unit that it names as its last word; nothing where it is the unit alone. */
export function headingWithoutUnit(heading: string): string {
  return plainMarks(heading)
    .replace(LAST_WORD, '')
    .replace(/[\s,([]+$/u, '');
}

function plainMarks(text: string): string {
  return text.replace(/[′’]/gu, "'").replace(/[″”]/gu, '"');
}
