import { failed, ok } from '../../core/faults/fault.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { answerEach } from '../answer.ts';
import { COVE, OFF_CENTER, settingOf } from '../cove-arguments.ts';

export const ARGUMENTS = { ...COVE, offCenter: { ...OFF_CENTER, blank: 'refused' } } as const;

/**
 * Tilt of the blade that cuts a cove whose deepest line lies off center, in degrees from upright
 * (0 is a blade square to the table). Not rounded.
 * @customfunction TILT
 * @helpurl functions.html#tilt
 * @param width Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param offCenter How far the deepest line lies from the middle: inches, or a text such as 3/8 or
 * 10 mm; 0 for a blade that stays upright.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @example =COVE.TILT("3 5/8", "7/8", "3/8")
 */
export function tilt(
  width: any[][],
  depth: any[][],
  offCenter: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  return answerEach(ARGUMENTS, { width, depth, offCenter, bladeDiameter, kerf }, (given) => {
    const setting = settingOf(given);
    return setting.ok ? ok(toDegrees(setting.value.tilt)) : failed(...setting.faults);
  });
}
