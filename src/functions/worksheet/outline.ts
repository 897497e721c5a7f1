import { computeCut } from '../../core/cove/cut.ts';
import { computeOutline } from '../../core/cove/outline.ts';
import { failed, ok } from '../../core/faults/fault.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerOnce } from '../answer.ts';
import { COVE, settingOf } from '../cove-arguments.ts';

/** Inches: far below what a flat of any kerf is wide, far above what its sums are off by. */
const SAME_POINT_IN = 1e-9;

export const ARGUMENTS = {
  ...COVE,
  points: { name: 'points', kind: 'whole number', least: 4, most: 2000, blank: 64 },
} as const satisfies ArgumentTable;

/**
 * Points of a cove's outline, one below the other, from the near edge over the deepest line to the
 * far edge, such as a chart of points is drawn from: how far across from the near edge, and how deep, in inches.
 * @customfunction OUTLINE
 * @helpurl functions.html#outline
 * @param width Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param [offCenter] How far the deepest line lies from the middle: inches, or a text such as 3/8 or
 * 10 mm; 0 when left out.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @param [points] How many points: a whole number, 4 to 2000; 64 when left out or 0.
 * @example =COVE.OUTLINE("3 5/8", "7/8", "3/8")
 */
export function outline(
  width: any[][],
  depth: any[][],
  offCenter?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
  points?: any[][],
): any[][] {
  const ranges = { width, depth, offCenter, bladeDiameter, kerf, points };
  return answerOnce(ARGUMENTS, ranges, (given) => {
    const setting = settingOf(given);
    if (!setting.ok) return failed(...setting.faults);
    const blade = { diameter: given.bladeDiameter, kerf: given.kerf };
    const { near: nearEdge } = computeCut(blade, setting.value);
    // The core gives both sides alike, each with its deepest point: two of them where the kerf leaves a
    // flat, else the same one twice. Of an odd number the near side has one point more.
    const nearPoints = Math.ceil(given.points / 2);
    const farPoints = given.points - nearPoints;
    const near = computeOutline(blade, setting.value, nearPoints - 1).slice(0, nearPoints);
    const [top, ...beyond] = computeOutline(blade, setting.value, farPoints).slice(farPoints + 1);
    const isShared = top !== undefined && Math.abs(top.u - (near.at(-1)?.u ?? 0)) < SAME_POINT_IN;
    const far = isShared
      ? beyond
      : computeOutline(blade, setting.value, farPoints - 1).slice(farPoints);
    return ok([...near, ...far].map(({ u, depth: deep }) => [u - nearEdge, deep]));
  });
}
