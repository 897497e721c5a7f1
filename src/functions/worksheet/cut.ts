import { computeCut } from '../../core/cove/cut.ts';
import { computeArcLength, computeSectionArea } from '../../core/cove/outline.ts';
import { computeUndercut } from '../../core/cove/undercut.ts';
import { degrees, toRadians } from '../../core/units/angle.ts';
import { THICKEST_INCHES } from '../../core/units/plausible-length.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerRows } from '../answer.ts';
import { checkSetting } from '../check-setting.ts';
import { BLADE } from '../cove-arguments.ts';

export const ARGUMENTS = {
  approach: {
    name: 'approach',
    kind: 'angle',
    from: 'the blade line',
    limits: { above: 0, most: 90 },
    blank: 'refused',
  },
  // No table saw's blade leans as far as 60 degrees: common practice [C].
  tilt: {
    name: 'tilt',
    kind: 'angle',
    from: 'upright',
    limits: { least: 0, most: 60 },
    blank: 'refused',
  },
  height: {
    name: 'height',
    kind: 'length',
    least: 'above 0',
    blank: 'refused',
    most: THICKEST_INCHES,
  },
  ...BLADE,
} as const satisfies ArgumentTable;

const NUMBERS = 6;

/**
 * The cove that a setting of the saw cuts, a row each: its width, how far off center its deepest line
 * lies and the length along its curve, in inches; the area of its section, in square inches; how far
 * its deep side leans past upright (0 for not at all) and how far off center the middle of the blade
 * tops out, in inches; and what is to be said in words. Its depth is the height.
 * @customfunction CUT
 * @helpurl functions.html#cut
 * @param approach Approach angle, a column or one cell: degrees from the blade line, above 0 and at
 * most 90. An angle measured from the table's front edge is 90 less it.
 * @param tilt Tilt of the blade, a column or one cell: degrees from upright, 0 to 60.
 * @param height Height of the highest tooth above the table, a column or one cell: inches, or a text
 * such as 3/4 or 19 mm.
 * @param [bladeDiameter] Diameter of the blade as measured, a column or one cell: inches, or a text
 * such as 9 7/8 or 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm;
 * 1/8 in when left out or 0.
 * @example =COVE.CUT(33, 27, "7/8")
 */
export function cut(
  approach: any[][],
  tilt: any[][],
  height: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  const ranges = { approach, tilt, height, bladeDiameter, kerf };
  return answerRows(ARGUMENTS, ranges, NUMBERS, (given) => {
    const blade = { diameter: given.bladeDiameter, kerf: given.kerf };
    const setting = {
      approach: toRadians(degrees(given.approach)),
      tilt: toRadians(degrees(given.tilt)),
      height: given.height,
    };
    const faults = checkSetting(setting, blade);
    if (faults.length > 0) return { numbers: [], faults, cautions: [] };
    const { width, offCenter, bladeMiddle } = computeCut(blade, setting);
    const undercut = computeUndercut(blade, setting)?.beyondFace ?? 0;
    const curve = computeArcLength(blade, setting);
    const area = computeSectionArea(blade, setting);
    const numbers = [width, offCenter, curve, area, undercut, bladeMiddle];
    return { numbers, faults, cautions: [] };
  });
}
