/** A sheet as HTML for the printer: tables with the sheet's own widths, heights, joins and styles. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { CellRange } from '../../core/cells/cell-range.ts';
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import { marginsOf, POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { make } from '../shell/element.ts';
import { styleCell } from './print-style.ts';
import { keptTogether, partBlock, printBlocks, type Rows } from './print-blocks.ts';
import type { PrintedPicture, PrintedSheet } from './printed-sheet.ts';

const PAPER_WIDTHS_INCHES = {
  letter: [8.5, 11],
  a4: [210 / MM_PER_INCH, 297 / MM_PER_INCH],
} as const;

/**
 * @param addressOf An address for a picture's PNG.
 * @returns One element a block: each begins on a new page.
 */
export function printTables(
  sheet: PrintedSheet,
  addressOf: (picture: PrintedPicture) => string,
): HTMLElement[] {
  const scale = printScale(sheet);
  return printBlocks(sheet).map((rows) => {
    const block = make('div', { className: 'printed' });
    block.style.setProperty('--print-scale', String(scale));
    const rowsOf = (some: Rows): HTMLElement[] => makeRows(sheet, some, scale, addressOf);
    const { above, heads, body } = partBlock(sheet.print, rows);
    if (above !== undefined) block.append(makeTable(sheet, scale, [], [rowsOf(above)]));
    const bodies = keptTogether(sheet, body).map(rowsOf);
    block.append(makeTable(sheet, scale, heads === undefined ? [] : rowsOf(heads), bodies));
    return block;
  });
}

/** At most 1: what is too wide for the page is made smaller where the sheet says so. */
export function printScale({ columns, print }: Pick<PrintedSheet, 'columns' | 'print'>): number {
  if (!print.fitWidth) return 1;
  const wide = columns.reduce((sum, width) => sum + width, 0);
  return Math.min(1, roomOf(print) / Math.max(wide, 1));
}

/** Width between the margins, in points. */
function roomOf(print: PrintDescription): number {
  const inches = PAPER_WIDTHS_INCHES[print.paper][print.orientation === 'portrait' ? 0 : 1];
  const { left, right } = marginsOf(print);
  return (inches - left - right) * POINTS_PER_INCH;
}

function makeTable(
  { columns }: PrintedSheet,
  scale: number,
  repeats: readonly HTMLElement[],
  bodies: readonly (readonly HTMLElement[])[],
): HTMLTableElement {
  const table = make('table');
  table.style.width = points(columns.reduce((sum, width) => sum + width, 0) * scale);
  const widths = columns.map((width) => {
    const column = make('col');
    column.style.width = points(width * scale);
    return column;
  });
  table.append(make('colgroup', {}, ...widths));
  if (repeats.length > 0) table.append(make('thead', {}, ...repeats));
  for (const rows of bodies) table.append(make('tbody', {}, ...rows));
  return table;
}

function makeRows(
  sheet: PrintedSheet,
  [from, to]: Rows,
  scale: number,
  addressOf: (picture: PrintedPicture) => string,
): HTMLElement[] {
  const made: HTMLElement[] = [];
  for (let row = from; row <= to; row++) {
    const { height = 0 } = sheet.rows[row] ?? {};
    const line = make('tr', {}, ...makeCells(sheet, row, scale, addressOf));
    line.style.height = points(height * scale);
    if (height > 0) made.push(line);
  }
  return made;
}

function makeCells(
  sheet: PrintedSheet,
  row: number,
  scale: number,
  addressOf: (picture: PrintedPicture) => string,
): HTMLElement[] {
  const { columns, merges, pictures, rows } = sheet;
  return columns.flatMap((_, column) => {
    const merge = merges.find((one) => isIn(one, row, column));
    if (merge !== undefined && (merge.top !== row || merge.left !== column)) return [];
    const cell = make('td');
    if (merge !== undefined) {
      cell.rowSpan = merge.bottom - merge.top + 1;
      cell.colSpan = merge.right - merge.left + 1;
    }
    const content = rows[row]?.cells[column] ?? null;
    const next = rows[row]?.cells[(merge?.right ?? column) + 1]?.text ?? '';
    if (content !== null) styleCell(cell, content, { scale, isNextBlank: next === '' });
    for (const picture of pictures) {
      if (picture.row !== row || picture.column !== column) continue;
      const image = make('img', { src: addressOf(picture), alt: picture.alt });
      image.style.width = points(picture.width * scale);
      image.style.height = points(picture.height * scale);
      cell.className = 'with-picture';
      cell.append(image);
    }
    return [cell];
  });
}

function isIn({ top, left, bottom, right }: CellRange, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

function points(value: number): string {
  return `${Number(value.toFixed(3))}pt`;
}
