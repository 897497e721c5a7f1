import { bladeOf, coveOf } from '../../core/cove/cove-sizes.ts';
import { sayTrial } from '../../core/exact/say-trial.ts';
import { judgeTrial } from '../../core/exact/trial-cut.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerRows } from '../answer.ts';
import { COVE, DEPTH, judgeCove, nameAsHere, OFF_CENTER, WIDTH } from '../cove-arguments.ts';

export const ARGUMENTS = {
  width: COVE.width,
  depth: COVE.depth,
  offCenter: { ...COVE.offCenter, blank: 'refused' },
  measuredWidth: { ...WIDTH, name: 'measuredWidth' },
  measuredDepth: { ...DEPTH, name: 'measuredDepth' },
  measuredOffCenter: { ...OFF_CENTER, name: 'measuredOffCenter' },
  bladeDiameter: COVE.bladeDiameter,
  kerf: COVE.kerf,
} as const satisfies ArgumentTable;

const NUMBERS = 3;

/**
 * What to move after a trial cut that was measured: by how many degrees the approach from the blade line and the
 * tilt from upright, by how many inches the height, more or (below 0) less than they read now; and in
 * words what was likely wrong. Unplug the saw before you set it.
 * @customfunction TRIAL
 * @helpurl functions.html#trial
 * @param width Width of the cove aimed at: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove aimed at: inches, or a text such as 7/8 or 22 mm.
 * @param offCenter How far its deepest line lies from the middle, 0 for none: inches, or a text such
 * as 3/8 or 10 mm.
 * @param measuredWidth Width of the trial cut: inches, or a text such as 3 9/16 or 90.5 mm.
 * @param measuredDepth Depth of the trial cut: inches, or a text such as 27/32 or 21.5 mm.
 * @param [measuredOffCenter] How far its deepest line lies from its middle, below 0 toward the near
 * rail: inches, or a text such as 5/16 or 8 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @example =COVE.TRIAL("3 5/8", "7/8", "3/8", "3 11/16", "57/64", "3/8")
 */
export function trial(
  width: any[][],
  depth: any[][],
  offCenter: any[][],
  measuredWidth: any[][],
  measuredDepth: any[][],
  measuredOffCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  const aimedAt = { width, depth, offCenter, bladeDiameter, kerf };
  const ranges = { ...aimedAt, measuredWidth, measuredDepth, measuredOffCenter };
  return answerRows(ARGUMENTS, ranges, NUMBERS, (given) => {
    const aimed = judgeCove(given);
    if (aimed.faults.length > 0) return { numbers: [], faults: aimed.faults, cautions: [] };
    const judged = judgeTrial(coveOf(given), bladeOf(given), {
      width: given.measuredWidth,
      depth: given.measuredDepth,
      offCenter: given.measuredOffCenter,
    });
    if (!judged.ok) return { numbers: [], faults: judged.faults.map(nameAsHere), cautions: [] };
    const { approach, tilt, height } = judged.value.moves;
    return { numbers: [approach, tilt, height], faults: [], cautions: sayTrial(judged.value) };
  });
}
