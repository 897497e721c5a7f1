/** Where Cutting has the lengths and the boxes that tests type over. */
import { cellName } from '../../src/core/cells/cell-range.ts';
import type { WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { cutPieces, cutSticks, type CutRow } from './cut-rows.ts';
import { PIECES_AT, rowWith, sheetOf } from './sheet-jobs.ts';

/** Sheet, row and column, from 0. */
export type Place = readonly [sheet: string, row: number, column: number];

/** Where Cutting has the length of a piece, and what it is off by; row and columns from 0. */
export function cutRow(
  workbook: WorkbookDescription,
  no: number,
): {
  readonly at: Place;
  readonly length: number;
  readonly off: string;
} {
  const pieces = sheetOf(workbook, 'Pieces');
  const { cells } = pieces.rows[rowWith(pieces, 'No.') + no]!;
  const all = cutPieces(sheetOf(workbook, 'Cutting'));
  const found = all.find(({ mark }) => mark === cells[PIECES_AT.mark]?.value)!;
  const [row, column] = found.lengthAt;
  // Another one's length would change with it.
  if (all.filter(({ lengthAt }) => lengthAt === found.lengthAt).length > 1) {
    throw new Error(`No. ${no} shares its length.`);
  }
  return {
    at: ['Cutting', row - 1, column],
    length: found.length,
    off: `Cutting!${cellName(found.row - 1, found.off)}`,
  };
}

/** A length of the first sticks that share their numbers. */
export function cutAlike(workbook: WorkbookDescription): CutRow {
  const sticks = cutSticks(sheetOf(workbook, 'Cutting'));
  return sticks.find(({ layOut, pieces }) => layOut.sticks > 1 && pieces.length > 0)!.pieces[0]!;
}

/** Of a stick or of a piece on Cutting. */
export function boxOf({ row, box }: { readonly row: number; readonly box: number }): Place {
  return ['Cutting', row - 1, box];
}
