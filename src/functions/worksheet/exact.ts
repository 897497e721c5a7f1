import { bladeOf } from '../../core/cove/cove-sizes.ts';
import { computeSensitivities } from '../../core/exact/sensitivity.ts';
import { failed, ok } from '../../core/faults/fault.ts';
import { answerOnce } from '../answer.ts';
import { COVE, settingOf } from '../cove-arguments.ts';

export const ARGUMENTS = COVE;

/**
 * How much a cove changes for a little more of each thing that is set or taken as known, a row each: what it is,
 * by how much (degrees of the approach from the blade line and of the tilt from upright, else inches), and the
 * changes of width, depth and off-center in inches. Takes single cells.
 * @customfunction EXACT
 * @helpurl functions.html#exact
 * @param width Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle: inches, or a text such as 3/8 or
 * 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @example =COVE.EXACT("3 5/8", "7/8", "3/8")
 */
export function exact(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  return answerOnce(ARGUMENTS, { width, depth, offCenter, bladeDiameter, kerf }, (given) => {
    const setting = settingOf(given);
    if (!setting.ok) return failed(...setting.faults);
    return ok(
      computeSensitivities(setting.value, bladeOf(given)).map(({ cause, by, change }) => [
        cause,
        by,
        change.width,
        change.depth,
        change.offCenter,
      ]),
    );
  });
}
