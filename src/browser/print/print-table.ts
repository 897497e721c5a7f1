/** A sheet as HTML for the printer: tables with the sheet's own widths, heights, joins and styles. */
import { MM_PER_INCH } from '../../core/units/length-unit.ts';
import type { CellRange } from '../../core/cells/cell-range.ts';
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import { marginsOf, POINTS_PER_INCH } from '../../sheets/grammar/page-size.ts';
import { escapeHtml } from '../../exports/shop-view/markup.ts';
import { cellStyle, cellWords } from './print-style.ts';
import { keptTogether, partBlock, printBlocks, type Rows } from './print-blocks.ts';
import type { PrintedPicture, PrintedSheet } from './printed-sheet.ts';

const PAPER_INCHES = {
  letter: [8.5, 11],
  a4: [210 / MM_PER_INCH, 297 / MM_PER_INCH],
} as const;

/**
 * @param addressOf An address for a picture's PNG.
 * @param isWanted Of a block, by the text that it begins with; absent, all are printed.
 * @returns HTML of one element a block: each begins on a new page.
 */
export function printTables(
  sheet: PrintedSheet,
  addressOf: (png: Uint8Array) => string,
  isWanted: (heading: string) => boolean = () => true,
): string[] {
  const scale = printScale(sheet);
  const print: Printing = { sheet, scale, addressOf };
  return printBlocks(sheet)
    .filter((rows) => isWanted(headingOf(sheet, rows)))
    .map((rows) => {
      const { above, heads, body } = partBlock(sheet.print, rows);
      const bodies = keptTogether(sheet, body).map((some) => makeRows(print, some));
      return [
        `<div class="printed" style="--print-scale:${scale}">`,
        above === undefined ? '' : makeTable(print, '', [makeRows(print, above)]),
        makeTable(print, heads === undefined ? '' : makeRows(print, heads), bodies),
        '</div>',
      ].join('');
    });
}

/** What a block begins with. */
export function headingOf({ rows }: PrintedSheet, [from, to]: Rows): string {
  for (const { cells } of rows.slice(from, to + 1)) {
    const text = cells.find((cell) => (cell?.text ?? '') !== '')?.text;
    if (text !== undefined) return text;
  }
  return '';
}

interface Printing {
  readonly sheet: PrintedSheet;
  readonly scale: number;
  readonly addressOf: (png: Uint8Array) => string;
}

/** At most 1: what is too wide for the page is made smaller where the sheet says so. */
export function printScale({ columns, print }: Pick<PrintedSheet, 'columns' | 'print'>): number {
  if (!print.fitWidth) return 1;
  const wide = columns.reduce((sum, width) => sum + width, 0);
  return Math.min(1, roomOf(print) / Math.max(wide, 1));
}

/** Of the paper as it lies. */
export function paperInches({ paper, orientation }: PrintDescription): {
  readonly width: number;
  readonly height: number;
} {
  const [short, long] = PAPER_INCHES[paper];
  return orientation === 'portrait'
    ? { width: short, height: long }
    : { width: long, height: short };
}

/** Width between the margins, in points. */
function roomOf(print: PrintDescription): number {
  const { left, right } = marginsOf(print);
  return (paperInches(print).width - left - right) * POINTS_PER_INCH;
}

function makeTable(
  { sheet: { columns }, scale }: Printing,
  repeats: string,
  bodies: readonly string[],
): string {
  const wide = columns.reduce((sum, width) => sum + width, 0) * scale;
  const widths = columns.map((width) => `<col style="width:${points(width * scale)}">`);
  return [
    `<table style="width:${points(wide)}"><colgroup>${widths.join('')}</colgroup>`,
    repeats === '' ? '' : `<thead>${repeats}</thead>`,
    ...bodies.map((rows) => `<tbody>${rows}</tbody>`),
    '</table>',
  ].join('');
}

function makeRows(print: Printing, [from, to]: Rows): string {
  const made: string[] = [];
  for (let row = from; row <= to; row++) {
    const { height = 0 } = print.sheet.rows[row] ?? {};
    if (height === 0) continue;
    made.push(`<tr style="height:${points(height * print.scale)}">${makeCells(print, row)}</tr>`);
  }
  return made.join('');
}

function makeCells(print: Printing, row: number): string {
  const { sheet, scale } = print;
  const { columns, merges, pictures, rows } = sheet;
  const cells = columns.map((_, column) => {
    const merge = merges.find((one) => isIn(one, row, column));
    if (merge !== undefined && (merge.top !== row || merge.left !== column)) return '';
    const joins =
      merge === undefined
        ? ''
        : ` rowspan="${merge.bottom - merge.top + 1}" colspan="${merge.right - merge.left + 1}"`;
    const content = rows[row]?.cells[column] ?? null;
    const next = rows[row]?.cells[(merge?.right ?? column) + 1]?.text ?? '';
    const here = pictures.filter((one) => one.row === row && one.column === column);
    const look = here.length === 0 ? '' : ' class="with-picture"';
    const style = content === null ? '' : ` style="${escapeHtml(cellStyle(content, scale))}"`;
    const words = content === null ? '' : cellWords(content, next === '');
    return `<td${joins}${look}${style}>${words}${here.map((one) => makePicture(print, one)).join('')}</td>`;
  });
  return cells.join('');
}

function makePicture({ scale, addressOf }: Printing, picture: PrintedPicture): string {
  const { width, height, alt, image } = picture;
  const size = `width:${points(width * scale)};height:${points(height * scale)}`;
  return 'svg' in image
    ? `<div class="picture" style="${size}">${image.svg}</div>`
    : `<img class="picture" style="${size}" src="${escapeHtml(addressOf(image.png))}" alt="${escapeHtml(alt)}">`;
}

function isIn({ top, left, bottom, right }: CellRange, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

function points(value: number): string {
  return `${Number(value.toFixed(3))}pt`;
}
