import { bladeOf } from '../../core/cove/cove-sizes.ts';
import { computeReach } from '../../core/cove/reach.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerRows } from '../answer.ts';
import { BLADE, DEPTH, nameAsHere, OFF_CENTER } from '../cove-arguments.ts';

export const ARGUMENTS = {
  depth: DEPTH,
  offCenter: OFF_CENTER,
  ...BLADE,
} as const satisfies ArgumentTable;

const NUMBERS = 3;
/**
 * The widest cove that a blade cuts at a depth, or at a column of depths, a row each: by an approach up to
 * 75 degrees from the blade line, up to 60 (steeper loads the blade from the side) and up to 45; inches.
 * @customfunction REACH
 * @helpurl functions.html#reach
 * @param depth Depth of the cove, a column or one cell: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle, a column or one cell: inches, or
 * a text such as 3/8 or 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured, a column or one cell: inches, or a text
 * such as 9 7/8 or 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm;
 * 1/8 in when left out or 0.
 * @example =COVE.REACH({0.5;0.75;1})
 */
export function reach(
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  return answerRows(ARGUMENTS, { depth, offCenter, bladeDiameter, kerf }, NUMBERS, (given) => {
    const blade = bladeOf(given);
    const { depth: deep, offCenter: off } = given;
    const { widths, faults } = computeReach({ depth: deep, offCenter: off }, blade);
    return { numbers: widths, faults: faults.map(nameAsHere), cautions: [] };
  });
}
