import { failed, ok } from '../../core/faults/fault.ts';
import { answerOnce } from '../answer.ts';
import { heightsOf, PASSES } from '../pass-arguments.ts';

export const ARGUMENTS = PASSES;

/**
 * Heights of the passes, one below the other: the highest tooth above the table, in inches; the last
 * is the depth itself. Takes the same arguments as COVE.PASSES, from single cells.
 * @customfunction PASSHEIGHTS
 * @helpurl functions.html#passheights
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param [firstPass] Height of the first pass: inches, or a text such as 1/16 or 1.5 mm; 1/16 in
 * when left out or 0.
 * @param [step] The most that a later pass takes: inches, or a text such as 1/16 or 1.5 mm; 1/16 in
 * when left out or 0.
 * @param [lastPass] What is left for the light last pass: inches, or a text such as 1/32 or 0.8 mm;
 * 1/32 in when left out, 0 for none.
 * @example =COVE.PASSHEIGHTS("3/4")
 */
export function passHeights(
  depth: any[][],
  firstPass?: any[][],
  step?: any[][],
  lastPass?: any[][],
): any[][] {
  return answerOnce(ARGUMENTS, { depth, firstPass, step, lastPass }, (given) => {
    const heights = heightsOf(given);
    return heights.ok ? ok(heights.value.map((height) => [height])) : failed(...heights.faults);
  });
}
