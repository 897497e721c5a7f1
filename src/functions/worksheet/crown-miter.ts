import { failed, ok } from '../../core/faults/fault.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { answerEach } from '../answer.ts';
import { CROWN, crownCutOf } from '../crown-arguments.ts';

export const ARGUMENTS = CROWN;

/**
 * Miter that cuts a crown lying flat on the saw's table, in degrees from a square crosscut; the blade
 * tilts by COVE.CROWNBEVEL. Not rounded.
 * @customfunction CROWNMITER
 * @helpurl functions.html#crownmiter
 * @param spring Spring of the crown: degrees between its back and the wall, above 0 and below 90.
 * @param [corner] Corner of the two walls: degrees between them, above 0 and below 180; 90 when left
 * out or 0. An outside corner takes the same angles, cut the other way round.
 * @example =COVE.CROWNMITER(38, 90)
 */
export function crownMiter(spring: any[][], corner?: any[][]): any[][] {
  return answerEach(ARGUMENTS, { spring, corner }, (given) => {
    const cut = crownCutOf(given);
    return cut.ok ? ok(toDegrees(cut.value.miter)) : failed(...cut.faults);
  });
}
