import { computeNestedCut } from '../../core/crown/nested-cut.ts';
import { failed, ok } from '../../core/faults/fault.ts';
import { degrees, toDegrees, toRadians } from '../../core/units/angle.ts';
import { answerEach } from '../answer.ts';
import type { ArgumentTable } from '../argument.ts';
import { CROWN } from '../crown-arguments.ts';

export const ARGUMENTS = {
  corner: { ...CROWN.corner, blank: 'refused' },
} as const satisfies ArgumentTable;

/**
 * Miter that cuts a crown nested, upside down at its spring between fence and table, in degrees from a
 * square crosscut, whatever its spring; the blade stays upright. Not rounded. For crown that lies flat
 * take COVE.CROWNMITER and COVE.CROWNBEVEL.
 * @customfunction CROWNNESTEDMITER
 * @helpurl functions.html#crownnestedmiter
 * @param corner Corner of the two walls: degrees between them, above 0 and below 180. An outside corner takes
 * the same angle, cut the other way round.
 * @example =COVE.CROWNNESTEDMITER(135)
 */
export function crownNestedMiter(corner: any[][]): any[][] {
  return answerEach(ARGUMENTS, { corner }, (given) => {
    const cut = computeNestedCut({ corner: toRadians(degrees(given.corner)) });
    return cut.ok ? ok(toDegrees(cut.value.miter)) : failed(...cut.faults);
  });
}
