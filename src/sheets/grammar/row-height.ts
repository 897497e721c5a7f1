/**
 * Heights of rows whose text needs more than the standard height: not every program works them out
 * when it opens a file, and none does for merged cells, so that lines would be missing in print.
 */
import { parseRange } from '../../core/cells/cell-range.ts';
import type { CellDescription, ColumnDescription, SheetDescription } from './description.ts';
import { columnPixels, PIXELS_PER_INCH, POINTS_PER_INCH, STANDARD_COLUMN } from './page-size.ts';
import { STANDARD_FONT, STYLES, type CellStyle } from './styles.ts';
import { textEms } from './text-width.ts';

/** What files and Excel give a row without a height of its own [M]. */
export const STANDARD_POINTS = 15;
/** Excel's highest row (Microsoft, "Excel specifications and limits"). */
const MOST_POINTS = 409;
/** Excel's rows are whole pixels of 3/4 point. */
const STEPS_PER_POINT = 4 / 3;
/** A height this little over whole pixels, from arithmetic, is these pixels. */
const STEP_SLACK_PIXELS = 1e-9;

/** Points of a line for each point of the font, and points besides. */
interface LineRoom {
  readonly line: number;
  readonly besides: number;
}

/** Arial's ascent, descent and gap, and air [M]. */
const USUAL_ROOM: LineRoom = { line: 1.28, besides: 2 };
/** As high as Excel itself makes a row of Arial, one to four lines: 12.75 points for 10 [M]. */
const CLOSE_ROOM: LineRoom = { line: 1.275, besides: 0 };

/** Programs round the widths of letters and leave a margin in cells, so texts count a little wider [M]. */
const LETTER_AIR = 1.03;
const CELL_AIR_PIXELS = 5;

/** Height in points by row from 0, of rows that say theirs and of those that need more. */
export function rowHeights(sheet: SheetDescription): Map<number, { height: number }> {
  const widths = mergedWidths(sheet);
  const heights = new Map<number, { height: number }>();
  sheet.rows.forEach(({ cells, height }, row) => {
    const needed = cells.map((cell, column) => {
      const width = widths.get(`${row},${column}`) ?? columnWidth(sheet.columns, column);
      return cell === null ? 0 : pointsNeeded(cell, width, USUAL_ROOM);
    });
    const most = Math.min(Math.max(0, ...needed), MOST_POINTS);
    if (height !== undefined) heights.set(row, { height });
    else if (most > STANDARD_POINTS) heights.set(row, { height: Math.ceil(most * 4) / 4 });
  });
  return heights;
}

/**
 * Height of one row in points, no more than its lines need.
 *
 * @param joins Columns, from 0, that are joined in it: first and last.
 */
export function closeHeight(
  cells: readonly (CellDescription | null)[],
  columns: readonly ColumnDescription[],
  joins: readonly (readonly [from: number, to: number])[],
): number {
  const needed = cells.map((cell, column) => {
    const to = joins.find(([from]) => from === column)?.[1] ?? column;
    return cell === null ? 0 : pointsNeeded(cell, widthOf(columns, column, to), CLOSE_ROOM);
  });
  const points = Math.max(STANDARD_FONT.size * CLOSE_ROOM.line, ...needed);
  return Math.min(wholePixels(points), MOST_POINTS);
}

/** The least height of whole pixels that holds so many points: any other comes back changed. */
export function wholePixels(points: number): number {
  return Math.ceil(points * STEPS_PER_POINT - STEP_SLACK_PIXELS) / STEPS_PER_POINT;
}

function pointsNeeded(
  { value, style = 'plain' }: CellDescription,
  width: number,
  room: LineRoom,
): number {
  if (value === null) return 0;
  const { size = STANDARD_FONT.size, bold = false, wrap = false }: CellStyle = STYLES[style];
  const em = (size / POINTS_PER_INCH) * PIXELS_PER_INCH * LETTER_AIR;
  const lines = wrap ? linesOf(String(value), (width - CELL_AIR_PIXELS) / em, bold) : 1;
  return lines * size * room.line + room.besides;
}

/** Lines that the text breaks into between words, in a column so many ems wide. */
function linesOf(text: string, width: number, bold: boolean): number {
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    lines += 1;
    // Most texts have room as they are.
    if (textEms(paragraph.trimEnd(), bold) <= width) continue;
    let used = 0;
    for (const word of paragraph.split(/(?<= )/)) {
      const length = textEms(word.trimEnd(), bold);
      if (used > 0 && used + length > width) {
        lines += 1;
        used = 0;
      }
      // A word longer than the column is broken anywhere.
      lines += Math.max(0, Math.ceil(length / width) - 1);
      used += textEms(word, bold);
    }
  }
  return lines;
}

/** The width in pixels over which the first cell of a merge spreads. */
function mergedWidths(sheet: SheetDescription): Map<string, number> {
  const widths = new Map<string, number>();
  for (const merge of sheet.merges ?? []) {
    const range = parseRange(merge);
    if (range === null) continue;
    const width = widthOf(sheet.columns, range.left, range.right);
    // A cell that spreads over several rows has room in all of them: it makes none higher.
    const oneRow = range.top === range.bottom;
    widths.set(`${range.top},${range.left}`, oneRow ? width : Infinity);
  }
  return widths;
}

function widthOf(columns: readonly ColumnDescription[], from: number, to: number): number {
  let width = 0;
  for (let column = from; column <= to; column++) width += columnWidth(columns, column);
  return width;
}

function columnWidth(columns: readonly ColumnDescription[], column: number): number {
  return columnPixels(columns[column]?.width ?? STANDARD_COLUMN);
}
