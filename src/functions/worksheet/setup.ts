import { planPasses } from '../../core/cove/passes.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { answerRows } from '../answer.ts';
import { COVE, judgeCove, nameAsHere } from '../cove-arguments.ts';

export const ARGUMENTS = COVE;

const NUMBERS = 4;

/**
 * The whole set-up of a cove, or of a column of coves in one call, a row each: approach in degrees
 * from the blade line, approach in degrees from the table's front edge, tilt in degrees from upright,
 * how many passes of 1/16 in at most, and what is to be said of it in words. Not rounded. Read your
 * saw's manual first: some forbid this cut.
 * @customfunction SETUP
 * @helpurl functions.html#setup
 * @param width Width of the cove at its face, a column or one cell: inches, or a text such as 3 1/2
 * or 90 mm.
 * @param depth Depth of the cove, a column or one cell: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle, a column or one cell: inches, or
 * a text such as 3/8 or 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured, a column or one cell: inches, or a text
 * such as 9 7/8 or 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm;
 * 1/8 in when left out or 0.
 * @example =COVE.SETUP("3 5/8", "7/8", "3/8")
 */
export function setup(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf };
  return answerRows(ARGUMENTS, ranges, NUMBERS, (given) => {
    const { setting, ...judged } = judgeCove(given);
    const passes = planPasses(given.depth);
    const faults = [...judged.faults, ...passes.faults.map(nameAsHere)];
    const cautions = [...judged.cautions, ...passes.cautions];
    if (setting === undefined || faults.length > 0) return { numbers: [], faults, cautions };
    const fromBlade = toDegrees(setting.approach);
    const numbers = [fromBlade, 90 - fromBlade, toDegrees(setting.tilt), passes.heights.length];
    return { numbers, faults, cautions };
  });
}
