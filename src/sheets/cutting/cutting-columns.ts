/** The columns of the cutting sheet, the same for its sticks and for the lists before and after them. */
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { columnPoints, POINTS_PER_INCH } from '../grammar/page-size.ts';
import { cell, type DraftCell } from '../grammar/sheet-draft.ts';

const WIDTHS = [4, 4, 23, 11, 12.5, 12.5, 16, 18, 16, 18, 17.5] as const;
export const COLUMNS = WIDTHS.map((width) => ({ width }));

/** Columns from 0 that are joined or added up. */
export const COLUMN = {
  tick: 0,
  number: 1,
  what: 2,
  length: 3,
  part: 5,
  leftEnd: 6,
  rightEnd: 8,
  last: WIDTHS.length - 1,
} as const;

/** Letters of the columns that sums go by: of pieces' lengths, of sticks', of kept offcuts'. */
export const LETTER = { piece: 'E', stick: 'F', kept: 'K' } as const;

/** Programs round the widths of columns; a drawing that reached past the last would shrink the page. */
const AIR_MM = 1.5;

/** Width of a drawing over all columns, in millimetres. */
export const BAR_WIDTH_MM =
  (WIDTHS.reduce((all, width) => all + columnPoints(width), 0) / POINTS_PER_INCH) * 25.4 - AIR_MM;

export function headings(unit: LengthUnit): DraftCell[] {
  return [
    cell('Cut', 'heading'),
    cell('No.', 'heading'),
    cell('Piece', 'heading'),
    cell('Length', 'headingRight'),
    cell(`(${unit})`, 'headingRight'),
    cell(`Part; or stick (${unit})`, 'heading'),
    cell('Left end, angle from square', 'heading'),
    cell('Left, length is to the', 'heading'),
    cell('Right end, angle from square', 'heading'),
    cell('Right, length is to the', 'heading'),
    cell(`Lay it; or offcut kept (${unit})`, 'heading'),
  ];
}
