import { bladeOf } from '../../core/cove/cove-sizes.ts';
import { computeWindow, WINDOW_TOLERANCE_INCHES } from '../../core/exact/window.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerRows } from '../answer.ts';
import { COVE, judgeCove } from '../cove-arguments.ts';

export const ARGUMENTS = {
  ...COVE,
  tolerance: {
    name: 'tolerance',
    kind: 'length',
    least: 'above 0',
    blank: WINDOW_TOLERANCE_INCHES,
    most: 1 / 4,
  },
} as const satisfies ArgumentTable;

const NUMBERS = 3;

/**
 * How exactly a cove must be set: by how many degrees the approach from the blade line and the tilt from
 * upright, and by how many inches the height may be off, either way and all three at once, with the
 * outline nowhere off by more than the tolerance; a row for each cove of a column.
 * @customfunction WINDOW
 * @helpurl functions.html#window
 * @param width Width of the cove at its face, a column or one cell: inches, or a text such as 3 1/2
 * or 90 mm.
 * @param depth Depth of the cove, a column or one cell: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle, a column or one cell: inches, or
 * a text such as 3/8 or 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured, a column or one cell: inches, or a text
 * such as 9 7/8 or 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut, a column or one cell: inches, or a text such as 3/32 or 2.4 mm;
 * 1/8 in when left out or 0.
 * @param [tolerance] How far the outline may be off, square to itself, a column or one cell: inches,
 * or a text such as 1/32 or 0.5 mm; 1/64 in when left out or 0.
 * @example =COVE.WINDOW("3 5/8", "7/8", "3/8")
 */
export function window(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  tolerance?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf, tolerance };
  return answerRows(ARGUMENTS, ranges, NUMBERS, (given) => {
    const { setting, faults } = judgeCove(given);
    if (setting === undefined || faults.length > 0) return { numbers: [], faults, cautions: [] };
    const { approach, tilt, height } = computeWindow(setting, bladeOf(given), given.tolerance);
    return { numbers: [approach, tilt, height], faults: [], cautions: [] };
  });
}
