import { failed, ok } from '../../core/faults/fault.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { answerEach } from '../answer.ts';
import { SLOPED_CROWN, slopedCutOf } from '../crown-arguments.ts';

export const ARGUMENTS = SLOPED_CROWN;

/**
 * Miter that cuts a crown lying flat on the saw's table where it stays on its wall and the ceiling
 * begins to slope, in degrees from a square crosscut; the blade tilts by COVE.CROWNSLOPEBEVEL. Not rounded. Try it in scrap first.
 * @customfunction CROWNSLOPEMITER
 * @helpurl functions.html#crownslopemiter
 * @param spring Spring of the crown: degrees between its back and the wall, above 0 and below 90.
 * @param pitch Pitch of the ceiling along that wall: degrees from level, above 0 and below 90.
 * @param [meets] What the slope meets there: the word level, also when left out, or slope for another
 * slope of that pitch, as at a ridge.
 * @example =COVE.CROWNSLOPEMITER(38, 12, "slope")
 */
export function crownSlopeMiter(spring: any[][], pitch: any[][], meets?: any[][]): any[][] {
  return answerEach(ARGUMENTS, { spring, pitch, meets }, (given) => {
    const cut = slopedCutOf(given);
    return cut.ok ? ok(toDegrees(cut.value.miter)) : failed(...cut.faults);
  });
}
