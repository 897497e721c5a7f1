import { failed, ok } from '../../core/faults/fault.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { answerEach } from '../answer.ts';
import { COVE, settingOf } from '../cove-arguments.ts';

export const ARGUMENTS = {
  ...COVE,
  measuredFrom: { name: 'measuredFrom', kind: 'word', allowed: ['blade', 'front'] },
} as const;

/**
 * Approach angle that cuts a cove, in degrees from the blade line (0 is a rip cut); with "front" as
 * the last argument in degrees from the table's front edge, which is 90 less it. Not rounded.
 * @customfunction APPROACH
 * @helpurl functions.html#approach
 * @param width Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle: inches, or a text such as 3/8 or
 * 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @param [measuredFrom] The word front for degrees from the table's front edge; blade, or left out,
 * for degrees from the blade line.
 * @example =COVE.APPROACH("3 5/8", "7/8", "3/8")
 */
export function approach(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  measuredFrom?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf, measuredFrom };
  return answerEach(ARGUMENTS, ranges, (given) => {
    const setting = settingOf(given);
    if (!setting.ok) return failed(...setting.faults);
    const fromBlade = toDegrees(setting.value.approach);
    return ok(given.measuredFrom === 'front' ? 90 - fromBlade : fromBlade);
  });
}
