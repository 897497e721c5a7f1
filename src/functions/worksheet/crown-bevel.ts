import { failed, ok } from '../../core/faults/fault.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { answerEach } from '../answer.ts';
import { CROWN, crownCutOf } from '../crown-arguments.ts';

export const ARGUMENTS = CROWN;

/**
 * Bevel that cuts a crown lying flat on the saw's table: tilt of the blade in degrees from upright;
 * the saw turns by COVE.CROWNMITER. Not rounded.
 * @customfunction CROWNBEVEL
 * @helpurl functions.html#crownbevel
 * @param spring Spring of the crown: degrees between its back and the wall, above 0 and below 90.
 * @param [corner] Corner of the two walls: degrees between them, above 0 and below 180; 90 when left
 * out or 0. An outside corner takes the same angles, cut the other way round.
 * @example =COVE.CROWNBEVEL(38, 90)
 */
export function crownBevel(spring: any[][], corner?: any[][]): any[][] {
  return answerEach(ARGUMENTS, { spring, corner }, (given) => {
    const cut = crownCutOf(given);
    return cut.ok ? ok(toDegrees(cut.value.bevel)) : failed(...cut.faults);
  });
}
