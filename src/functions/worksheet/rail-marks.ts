import { COVE_SIZES } from '../../core/cove/cove-sizes.ts';
import { computeCut } from '../../core/cove/cut.ts';
import { checkRails } from '../../core/cove/rail-hold.ts';
import {
  layOutRails,
  USUAL_HALF_TABLE_INCHES,
  type Rail,
  type RailMark,
} from '../../core/cove/rails.ts';
import { computeFlats } from '../../core/cove/stock.ts';
import type { Argument } from '../../core/faults/argument.ts';
import { failed, fault, ok } from '../../core/faults/fault.ts';
import type { ArgumentTable } from '../argument.ts';
import { answerOnce } from '../answer.ts';
import { cellError } from '../cell-error.ts';
import type { Result } from '../cell.ts';
import { COVE, nameAsHere, settingOf, sizeArgument } from '../cove-arguments.ts';

const SIZE = { kind: 'length', least: 'above 0', blank: 'refused' } as const;
const { width: WIDTH, depth: DEPTH, offCenter: OFF_CENTER, ...BLADE } = COVE;

export const ARGUMENTS = {
  width: WIDTH,
  depth: DEPTH,
  offCenter: { ...OFF_CENTER, blank: 'refused' },
  blankWidth: sizeArgument(COVE_SIZES.blankWidth),
  tableFront: { name: 'tableFront', ...SIZE },
  tableBack: { name: 'tableBack', ...SIZE },
  tiltSide: { name: 'tiltSide', kind: 'word', allowed: ['left', 'right'] },
  nearFlat: sizeArgument(COVE_SIZES.nearFlat),
  ...BLADE,
} as const satisfies ArgumentTable;

/**
 * Where the two rails cross the table's edges: a small table with its headings, in inches to the
 * right of the blade line (less than 0 is to the left of it). The table is taken to be 72 in wide, the
 * widest that there are, the blade midway. Marks hold at the final height and
 * tilt; clamp both rails at both ends and make a trial cut in scrap first.
 * @customfunction RAILMARKS
 * @helpurl functions.html#railmarks
 * @param width Width of the cove at its face: inches, or a text such as 3 1/2 or 90 mm.
 * @param depth Depth of the cove: inches, or a text such as 7/8 or 22 mm.
 * @param offCenter How far the deepest line lies from the middle: inches, or a text such as 3/8 or
 * 10 mm; 0 for a blade that stays upright. The deep side lies toward the far rail.
 * @param blankWidth Width of the blank, which is the space between the rails: inches, or a text such
 * as 4 1/2 or 115 mm.
 * @param tableFront From the middle of the raised blade to the table's front edge: inches, or a text
 * such as 16 1/2 or 420 mm.
 * @param tableBack From the middle of the raised blade to the table's back edge: inches, or a text
 * such as 10 1/2 or 265 mm.
 * @param [tiltSide] The side to which the blade tilts: the word left, also when left out, for a feed
 * from left to right, or right for a feed from right to left.
 * @param [nearFlat] Flat of the blank beside the near edge of the cove: inches, or a text such as 3/4
 * or 19 mm; the cove sits midway when left out.
 * @param [bladeDiameter] Diameter of the blade as measured: inches, or a text such as 9 7/8 or
 * 250 mm; 10 in when left out or 0.
 * @param [kerf] Thickness of the cut: inches, or a text such as 3/32 or 2.4 mm; 1/8 in when left out or 0.
 * @example =COVE.RAILMARKS("3 5/8", "7/8", "3/8", "4 1/2", "16 1/2", "10 1/2", "left")
 */
export function railMarks(
  width: any[][],
  depth: any[][],
  offCenter: any[][],
  blankWidth: any[][],
  tableFront: any[][],
  tableBack: any[][],
  tiltSide?: any[][],
  nearFlat?: any[][],
  bladeDiameter?: any[][],
  kerf?: any[][],
): any[][] {
  const sizes = { width, depth, offCenter, blankWidth, tableFront, tableBack };
  const ranges = { ...sizes, tiltSide, nearFlat, bladeDiameter, kerf };
  return answerOnce(ARGUMENTS, ranges, (given) => {
    const blank = {
      blankWidth: given.blankWidth,
      ...(given.nearFlat === undefined ? {} : { nearFlat: given.nearFlat }),
    };
    // The blank's thickness isn't asked for: it is never too small.
    const setting = settingOf(given, { ...blank, blankThickness: Infinity });
    if (!setting.ok) return failed(...setting.faults);
    const blade = { diameter: given.bladeDiameter, kerf: given.kerf };
    const cut = computeCut(blade, setting.value);
    const flats = computeFlats(given.width, blank);
    const table = { front: given.tableFront, back: given.tableBack };
    const midway = given.nearFlat === undefined;
    const faults = checkRails(blade, setting.value, cut, { ...flats, midway }, table);
    if (faults.length > 0) return failed(...faults.map(nameAsHere));
    const { approach } = setting.value;
    const { feed, near, far } = layOutRails(approach, cut, flats, table, given.tiltSide);
    return ok([
      [
        `Fed ${feed}`,
        'Front edge, inches right of blade line',
        'Back edge, inches right of blade line',
      ],
      writeRail('near', near),
      writeRail('far', far),
    ]);
  });
}

function writeRail(which: 'near' | 'far', rail: Rail): Result[] {
  return [
    which === 'near' ? 'Near rail' : 'Far rail',
    writeMark(`mark.${which}.front`, rail.front),
    writeMark(`mark.${which}.back`, rail.back),
  ];
}

/** A mark past the widest table can't be made: its own cell says so. */
function writeMark(name: Argument, { fromBlade, onTable }: RailMark): Result {
  if (onTable) return fromBlade;
  const limit = { inches: USUAL_HALF_TABLE_INCHES };
  return cellError([fault('rails.off-table', name, { inches: Math.abs(fromBlade) }, { limit })]);
}
