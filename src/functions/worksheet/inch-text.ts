import { ok } from '../../core/faults/fault.ts';
import { formatInches } from '../../core/units/format-length.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerEach } from '../answer.ts';

export const ARGUMENTS = {
  inches: { name: 'inches', kind: 'exact length', least: 'any', blank: 'refused' },
  denominator: { name: 'denominator', kind: 'whole number', least: 1, most: 128, blank: 16 },
} as const satisfies ArgumentTable;

/**
 * A length as a text in inches and a fraction, such as 3 1/2", rounded to the nearest sixteenth or to
 * the fraction asked for.
 * @customfunction INCHTEXT
 * @helpurl functions.html#inchtext
 * @param inches The length: inches, or a text such as 90 mm.
 * @param [denominator] The finest fraction: a whole number, 1 to 128; 16 when left out or 0.
 * @example =COVE.INCHTEXT(3.54, 32)
 */
export function inchText(inches: any[][], denominator?: any[][]): any[][] {
  return answerEach(ARGUMENTS, { inches, denominator }, (given) =>
    ok(formatInches(given.inches, { denominator: given.denominator, marks: 'inch mark' })),
  );
}
