import { failed, ok } from '../../core/faults/fault.ts';
import { computeBoardFeet } from '../../core/lumber/board-feet.ts';
import {
  LONGEST_RUN_INCHES,
  THICKEST_INCHES,
  WIDEST_INCHES,
} from '../../core/units/plausible-length.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerEach } from '../answer.ts';

const SIZE = { kind: 'exact length', least: 'above 0', blank: 'refused' } as const;

export const ARGUMENTS = {
  thickness: { name: 'thickness', ...SIZE, most: THICKEST_INCHES },
  width: { name: 'width', ...SIZE, most: WIDEST_INCHES },
  length: { name: 'length', ...SIZE, most: LONGEST_RUN_INCHES },
  quantity: { name: 'quantity', kind: 'whole number', least: 0, most: 1_000_000, blank: 1 },
} as const satisfies ArgumentTable;

/**
 * Board feet of lumber by the plain rule: nominal thickness (under 1 in counts as 1 in) × width ×
 * length / 144, not rounded.
 * @customfunction BOARDFEET
 * @helpurl functions.html#boardfeet
 * @param thickness Nominal thickness: inches, or a text such as 1 1/4 or 32 mm.
 * @param width Width of the board: inches, or a text such as 5 1/2 or 140 mm.
 * @param length Length of the board: inches, or a text such as 8' or 2.4 m.
 * @param [quantity] How many such boards: a whole number; 1 when left out.
 * @example =COVE.BOARDFEET(1, 6, "8'", 10)
 */
export function boardFeet(
  thickness: any[][],
  width: any[][],
  length: any[][],
  quantity?: any[][],
): any[][] {
  return answerEach(ARGUMENTS, { thickness, width, length, quantity }, (given) => {
    const each = computeBoardFeet(given);
    return each.ok ? ok(Number(each.value.mul(given.quantity))) : failed(...each.faults);
  });
}
