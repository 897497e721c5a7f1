/** The board's end as DXF. */
import type { LengthUnit } from '../core/units/length-unit.ts';
import { CHORD_ERROR_INCHES, planBoardEnd, type BoardEndView } from './board-end.ts';
import type { Point } from './drawing.ts';
import { nameOfUnit, writeDxf } from './dxf.ts';

export interface DxfView extends BoardEndView {
  readonly unit: LengthUnit;
  /** Comments at the top of the file: a name, the cautions. */
  readonly notes?: readonly string[];
}

const LAYERS = { BOARD: 7, COVE: 1, DEEPEST: 5, MIDDLE: 3 } as const;

/**
 * Writes the end of the blank as DXF: on BOARD all round with the cove cut out, on COVE the curve
 * alone from edge to edge, on DEEPEST and MIDDLE an upright at the deepest line and at the middle of
 * the cove. It lies as the section does: face down, seen from the front of the saw along the feed.
 *
 * @param view Blade, setting and blank in inches, angles in radians; the file is in `unit`.
 * @returns ASCII text; the curve within 0.0005 in of the true one.
 * @throws RangeError for a cove that doesn't fit in the blank (a bug of the caller's).
 */
export function outlineToDxf(view: DxfView): string {
  const { board, cove, deepest, middle, farSide, width, thickness } = planBoardEnd(view);
  const { unit, notes = [] } = view;
  const upright = ([x]: Point): Point[] => [
    [x, 0],
    [x, thickness],
  ];
  return writeDxf({
    notes: [
      ...notes,
      `Units: ${nameOfUnit(unit)}. The curve is true to ${CHORD_ERROR_INCHES} in.`,
      `Face down, seen from the front of the saw along the feed: far rail at the ${farSide}. X from the left side, Y up from the face.`,
      'BOARD is all round with the cove cut out; COVE repeats its curve alone: follow one of the two.',
    ],
    unit,
    extent: [width, thickness],
    layers: LAYERS,
    lines: [
      { layer: 'BOARD', points: board, closed: true },
      { layer: 'COVE', points: cove },
      { layer: 'DEEPEST', points: upright(deepest) },
      { layer: 'MIDDLE', points: upright(middle) },
    ],
  });
}
