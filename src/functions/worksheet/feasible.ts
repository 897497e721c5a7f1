import { failed, ok } from '../../core/faults/fault.ts';
import { answerEach } from '../answer.ts';
import { isBadInput } from '../cell-error.ts';
import { judgeCove } from '../cove-arguments.ts';
import { COVE_AND_STOCK, stockOf } from '../stock-arguments.ts';

export const ARGUMENTS = COVE_AND_STOCK;

/**
 * TRUE when a cove can be made with this blade, on a saw whose blade tilts to 45 degrees from upright
 * and rises to half its diameter less 1 7/8 in, by an approach up to 75 degrees from the blade line,
 * and from this stock where it is given; else FALSE. COVE.REASON says why not.
 * @customfunction FEASIBLE
 * @helpurl functions.html#feasible
 * @param width Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle: inches, or a text such as 3/8 or
 * 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @param [stockThickness] Thickness of the blank, of which 1/4 in must stay above the cove: inches, or
 * a text such as 1 1/8 or 28 mm; not looked at when left out or 0.
 * @param [stockWidth] Width of the blank, of which 1/8 in must stay flat on each side of the cove:
 * inches, or a text such as 4 1/2 or 115 mm; not looked at when left out or 0.
 * @example =COVE.FEASIBLE("3 5/8", "7/8", "3/8", 10, "1/8", "1 1/4", "4 1/2")
 */
export function feasible(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  stockThickness?: any[][],
  stockWidth?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf, stockThickness, stockWidth };
  return answerEach(ARGUMENTS, ranges, (given) => {
    const { faults } = judgeCove(given, stockOf(given));
    return isBadInput(faults) ? failed(...faults) : ok(faults.length === 0);
  });
}
