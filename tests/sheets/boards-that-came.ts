/** The boards that a yard delivered, typed into the sheet Yard as one would. */
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { rowWith, sheetOf } from './sheet-jobs.ts';
import type { Typed } from './single-edits.ts';

export const BOARDS_CAME = 'the boards that came, and their invoice';

/**
 * Widths in inches and lengths in feet, with their surface measure. The first four are printed: the illustrated
 * guide to NHLA grades, and B. Sabastina, hardwood grading report, 1998 (10 3/4 ft counts as 10). The next
 * two are exact halves, 7 1/2, which go up and down in turns [D].
 */
export const BOARDS: readonly (readonly [wide: number, long: number, face: number])[] = [
  [6.5, 8, 4],
  [8, 12, 8],
  [10, 13, 11],
  [6 + 7 / 16, 10.75, 5],
  [9, 10, 8],
  [9, 10, 7],
];

/** 7 % shrunk (1,000 billed are 930: K. D. Atherholt, WoodWeb, 12 Feb 2001) and 15 % for a straight line. */
export const INVOICE = { dried: 7, straight: 15, billed: 55, price: 6 } as const;

export const yardRow = (workbook: WorkbookDescription): number =>
  rowWith(sheetOf(workbook, 'Yard'), 'No.') + 1;

export function typeBoards(workbook: WorkbookDescription): Typed {
  const sheet = sheetOf(workbook, 'Yard');
  const first = yardRow(workbook);
  const lineOf = (label: string): number => rowWith(sheet, label);
  return [
    ...BOARDS.flatMap(([wide, long], at): Typed => [
      [['Yard', first + at, 4], 1],
      [['Yard', first + at, 5], wide],
      [['Yard', first + at, 6], long],
    ]),
    [['Yard', lineOf('Shrunk since it was measured, %'), 4], INVOICE.dried],
    [['Yard', lineOf('Straight-line ripped, % added'), 4], INVOICE.straight],
    [['Yard', lineOf('Billed'), 4], INVOICE.billed],
    [['Yard', lineOf('Price of one on the invoice'), 4], INVOICE.price],
  ];
}
