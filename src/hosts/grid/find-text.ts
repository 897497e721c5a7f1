/** Finds what a person reads in the cells of the grid's sheets. */
import type { Grid } from './grid.ts';
import { gridSheets } from './grid-sheets.ts';
import { shownText } from './rows/headed-rows.ts';

export interface FoundCell {
  readonly sheetId: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Cells looked through at most, and found at most. */
const [MOST_LOOKED_AT, MOST_FOUND] = [400_000, 10_000];

/**
 * Cells whose shown text holds the words, whatever their case: the sheet in sight first, then the others in their
 * order, each from left to right and down. Hidden sheets are passed over.
 */
export function findText(grid: Grid, words: string): FoundCell[] {
  const wanted = fold(words);
  const found: FoundCell[] = [];
  if (wanted === '') return found;
  const inSight = grid.book().getActiveSheet().getSheetId();
  const sheets = gridSheets(grid).filter(({ worksheet }) => !worksheet.isSheetHidden());
  const turn = sheets.findIndex(({ id }) => id === inSight);
  let left = MOST_LOOKED_AT;
  for (const { id, name, worksheet } of [...sheets.slice(turn), ...sheets.slice(0, turn)]) {
    const { startRow, endRow, startColumn, endColumn } = worksheet.getCellMatrix().getDataRange();
    for (let row = startRow; row <= endRow; row++) {
      if (!worksheet.getRowVisible(row)) continue;
      for (let column = startColumn; column <= endColumn; column++) {
        if (left-- === 0 || found.length === MOST_FOUND) return found;
        if (fold(shownText(worksheet, row, column)).includes(wanted)) {
          found.push({ sheetId: id, sheet: name, row, column });
        }
      }
    }
  }
  return found;
}

/** Inch marks and apostrophes are typed straight or curled. */
function fold(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[’‘]/gu, "'")
    .replace(/[“”″]/gu, '"')
    .replace(/′/gu, "'");
}
