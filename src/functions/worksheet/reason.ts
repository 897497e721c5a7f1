import { answerCells } from '../answer.ts';
import { judgeCove } from '../cove-arguments.ts';
import { sayReasons } from '../say-reasons.ts';
import { COVE_AND_STOCK, stockOf } from '../stock-arguments.ts';

export const ARGUMENTS = COVE_AND_STOCK;

/**
 * Says in words why a cove can't be made, every reason on a line of its own, then what to be careful
 * of ("Caution: …"); nothing where nothing is to be said. Takes the same arguments as COVE.FEASIBLE.
 * @customfunction REASON
 * @helpurl functions.html#reason
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
 * @example =COVE.REASON(9, "7/8", "3/8", 10, "1/8", 1, 9)
 */
export function reason(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  stockThickness?: any[][],
  stockWidth?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf, stockThickness, stockWidth };
  return answerCells(ARGUMENTS, ranges, {
    answer: (given) => {
      const { faults, cautions } = judgeCove(given, stockOf(given));
      return sayReasons(faults, cautions);
    },
    refuse: (faults) => sayReasons(faults, []),
  });
}
