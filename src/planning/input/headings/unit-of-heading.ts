/** The unit of length that a heading names: Length (ft), Width mm. */
import { lengthMarkOf, type LengthMark } from '../../../core/units/stated-unit.ts';

export type HeadingUnit = LengthMark;

const SAID: Readonly<Record<HeadingUnit, string>> = {
  in: 'inches',
  ft: 'feet',
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
};

export const sayUnit = (unit: HeadingUnit): string => SAID[unit];

/** No heading with a unit is longer. */
const LONGEST_HEADING = 60;
const LAST_WORD = /(\p{L}+|['"])[.\s)\]]*$/u;

/** The unit that a heading names as its last word: Len (ft), Feet, Width mm. */
export function unitOfHeading(heading: string): HeadingUnit | undefined {
  if (heading.length > LONGEST_HEADING) return undefined;
  const plain = plainMarks(heading.trim().toLowerCase());
  return lengthMarkOf(LAST_WORD.exec(plain)?.[1] ?? '');
}

/** The heading without the unit that it names as its last word; nothing where it is the unit alone. */
export function headingWithoutUnit(heading: string): string {
  if (heading.length > LONGEST_HEADING) return heading;
  return plainMarks(heading)
    .replace(LAST_WORD, '')
    .replace(/[\s,([]+$/u, '');
}

function plainMarks(text: string): string {
  return text.replace(/[′’]/gu, "'").replace(/[″”]/gu, '"');
}
