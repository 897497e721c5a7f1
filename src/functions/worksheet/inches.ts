import { ok } from '../../core/faults/fault.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerEach } from '../answer.ts';

export const ARGUMENTS = {
  length: { name: 'length', kind: 'length', least: 'any', blank: 'refused' },
} as const satisfies ArgumentTable;

/**
 * Number of inches of a length as people write it: 3 1/2, 3-1/2", 7' 4 3/8", 90 mm, 2.29 m. A number
 * is inches already.
 * @customfunction INCHES
 * @helpurl functions.html#inches
 * @param length The length: inches, or a text such as 7' 4 3/8" or 90 mm.
 * @example =COVE.INCHES("90 mm")
 */
export function inches(length: any[][]): any[][] {
  return answerEach(ARGUMENTS, { length }, (given) => ok(given.length));
}
