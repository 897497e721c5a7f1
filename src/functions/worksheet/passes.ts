import { failed, ok } from '../../core/faults/fault.ts';
import { answerEach } from '../answer.ts';
import { heightsOf, PASSES } from '../pass-arguments.ts';

export const ARGUMENTS = PASSES;

/**
 * How many passes a depth takes: a first one, even steps, and a light last one. A pass takes 1/8 in
 * at most, and no more than 1/16 in is usual.
 * @customfunction PASSES
 * @helpurl functions.html#passes
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param [firstPass] Height of the first pass: inches, or a text such as 1/16 or 1.5 mm; 1/16 in
 * when left out or 0.
 * @param [step] The most that a later pass takes: inches, or a text such as 1/16 or 1.5 mm; 1/16 in
 * when left out or 0.
 * @param [lastPass] What is left for the light last pass: inches, or a text such as 1/32 or 0.8 mm;
 * 1/32 in when left out, 0 for none.
 * @example =COVE.PASSES("3/4")
 */
export function passes(
  depth: any[][],
  firstPass?: any[][],
  step?: any[][],
  lastPass?: any[][],
): any[][] {
  return answerEach(ARGUMENTS, { depth, firstPass, step, lastPass }, (given) => {
    const heights = heightsOf(given);
    return heights.ok ? ok(heights.value.length) : failed(...heights.faults);
  });
}
