import { bladeOf, coveOf } from '../../core/cove/cove-sizes.ts';
import { findNearest } from '../../core/cove/nearest.ts';
import { failed, ok } from '../../core/faults/fault.ts';
import { sayChange } from '../../core/words/say-change.ts';
import { answerOnce } from '../answer.ts';
import { isBadInput } from '../cell-error.ts';
import { judgeCove } from '../cove-arguments.ts';
import { COVE_AND_STOCK, stockOf } from '../stock-arguments.ts';

export const ARGUMENTS = COVE_AND_STOCK;

/**
 * The nearest cove that can be made where one can't: a row for each size that may change alone, what
 * changes and what it becomes in inches, the least change first; "none this way" where no change of it
 * helps. Takes the same arguments as COVE.FEASIBLE, from single cells; one row, "as asked", where it can be made.
 * @customfunction NEAREST
 * @helpurl functions.html#nearest
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
 * @example =COVE.NEAREST(6, "5/8", "3/8")
 */
export function nearest(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  stockThickness?: any[][],
  stockWidth?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf, stockThickness, stockWidth };
  return answerOnce(ARGUMENTS, ranges, (given) => {
    const { faults } = judgeCove(given, stockOf(given));
    if (isBadInput(faults)) return failed(...faults);
    const isGiven = given.stockThickness !== undefined || given.stockWidth !== undefined;
    const stock = isGiven ? stockOf(given) : undefined;
    const found = findNearest(coveOf(given), bladeOf(given), {}, stock).filter(
      ({ change }) =>
        (change !== 'thicker stock' || given.stockThickness !== undefined) &&
        (change !== 'wider stock' || given.stockWidth !== undefined),
    );
    if (found.length === 0) return ok([['as asked', '']]);
    return ok(found.map(({ change, to }) => [sayChange(change), to ?? 'none this way']));
  });
}
