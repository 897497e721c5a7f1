/**
 * Heights of rows whose text needs more than the standard height: not every program works them out
 * when it opens a file, and none does for merged cells, so that lines would be missing in print.
 */
import { parseRange } from '../../sheets/cell-range.ts';
import type { CellDescription, SheetDescription } from '../../sheets/description.ts';
import { STYLES, type CellStyle } from '../../sheets/styles.ts';
import { STANDARD_FONT } from './xlsx-style.ts';

/** What the library writes as the height of rows without one. */
const STANDARD_POINTS = 15;
/** Excel's highest row (Microsoft, "Excel specifications and limits"). */
const MOST_POINTS = 409;
/** Points of a line for each point of the font: Arial's ascent, descent and gap, and air [M]. */
const LINE_POINTS = 1.28;
/** Width of a column without one, in characters (ECMA-376 part 1, 18.3.1.81). */
const STANDARD_WIDTH = 8.43;
/** Widths in digits of the standard font, rounded up by kinds of letters [M]; others are as wide. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ ijltfrI.,:;'"!|()[\]/-]/, 0.55],
  [/[mwMW@%]/, 1.6],
  [/\p{Lu}/u, 1.3],
  [/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Extended_Pictographic}]/u, 2],
];
const BOLD_FACTOR = 1.1;

/** Height in points by row from 0, of rows that say theirs and of those that need more. */
export function rowHeights(sheet: SheetDescription): Map<number, { height: number }> {
  const widths = mergedWidths(sheet);
  const heights = new Map<number, { height: number }>();
  sheet.rows.forEach(({ cells, height }, row) => {
    const needed = cells.map((cell, column) => {
      const width = widths.get(`${row},${column}`) ?? columnWidth(sheet, column);
      return cell === null ? 0 : pointsNeeded(cell, width);
    });
    const most = Math.min(Math.max(0, ...needed), MOST_POINTS);
    if (height !== undefined) heights.set(row, { height });
    else if (most > STANDARD_POINTS) heights.set(row, { height: Math.ceil(most * 4) / 4 });
  });
  return heights;
}

function pointsNeeded({ value, style = 'plain' }: CellDescription, width: number): number {
  if (value === null) return 0;
  const { size = STANDARD_FONT.size, bold = false, wrap = false }: CellStyle = STYLES[style];
  const factor = (size / STANDARD_FONT.size) * (bold ? BOLD_FACTOR : 1);
  const lines = wrap ? linesOf(String(value), width / factor) : 1;
  return lines * size * LINE_POINTS + 2;
}

/** Lines that the text breaks into between words, in a column so many digits wide. */
function linesOf(text: string, width: number): number {
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    lines += 1;
    let used = 0;
    for (const word of paragraph.split(/(?<= )/)) {
      const length = digitsOf(word.trimEnd());
      if (used > 0 && used + length > width) {
        lines += 1;
        used = 0;
      }
      // A word longer than the column is broken anywhere.
      lines += Math.max(0, Math.ceil(length / width) - 1);
      used += digitsOf(word);
    }
  }
  return lines;
}

function digitsOf(text: string): number {
  let digits = 0;
  for (const character of text) {
    digits += WIDTHS.find(([kind]) => kind.test(character))?.[1] ?? 1;
  }
  return digits;
}

/** The width over which the first cell of a merge spreads. */
function mergedWidths(sheet: SheetDescription): Map<string, number> {
  const widths = new Map<string, number>();
  for (const merge of sheet.merges ?? []) {
    const range = parseRange(merge);
    if (range === null) continue;
    let width = 0;
    for (let c = range.left; c <= range.right; c++) width += columnWidth(sheet, c);
    // A cell that spreads over several rows has room in all of them: it makes none higher.
    const oneRow = range.top === range.bottom;
    widths.set(`${range.top},${range.left}`, oneRow ? width : Infinity);
  }
  return widths;
}

function columnWidth(sheet: SheetDescription, column: number): number {
  return sheet.columns[column]?.width ?? STANDARD_WIDTH;
}
