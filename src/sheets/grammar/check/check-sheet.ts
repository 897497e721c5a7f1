/** What is wrong with a described sheet's columns, rows, cells and page; see check-ranges.ts too. */
import { cellName, MOST_SHEET_COLUMNS, MOST_SHEET_ROWS } from '../../../core/cells/cell-range.ts';
import { isCleanText, MOST_CELL_TEXT } from './clean-text.ts';
import type { CellDescription, PrintDescription, SheetDescription } from '../description.ts';
import { STYLES } from '../styles.ts';

/** Microsoft, "Excel specifications and limits". */
const LONGEST_FORMULA = 8_192;
const WIDEST_COLUMN = 255;
const HIGHEST_ROW_POINTS = 409;
const MOST_PAGE_BREAKS = 1_026;
const LONGEST_HEADER = 255;
/** What the host itself puts into the header or footer: section marks and "Page &P of &N". */
const HEADER_MARKS = 20;

/** One sentence for each thing that is wrong with them. */
export function checkSheet(sheet: SheetDescription): string[] {
  return [
    ...checkColumns(sheet),
    ...checkRows(sheet),
    ...checkFreeze(sheet),
    ...checkPrint(sheet.print),
  ];
}

/** Whether a formula could be written: no equals sign first, not blank, not too long, clean. */
export function isFormula(formula: string): boolean {
  return (
    formula.trim() !== '' &&
    !formula.trimStart().startsWith('=') &&
    formula.length <= LONGEST_FORMULA &&
    isCleanText(formula)
  );
}

export function isStyle(style: string | undefined): boolean {
  return style === undefined || Object.hasOwn(STYLES, style);
}

function checkColumns(sheet: SheetDescription): string[] {
  const wrong: string[] = [];
  if (sheet.columns.length > MOST_SHEET_COLUMNS) wrong.push('it has too many columns.');
  sheet.columns.forEach(({ width, style }, index) => {
    const column = `column ${index + 1}`;
    if (!(width > 0 && width <= WIDEST_COLUMN)) wrong.push(`${column} can not be ${width} wide.`);
    if (!isStyle(style)) wrong.push(`${column} has no known style ("${String(style)}").`);
  });
  return wrong;
}

function checkRows(sheet: SheetDescription): string[] {
  const wrong: string[] = [];
  if (sheet.rows.length > MOST_SHEET_ROWS) wrong.push('it has too many rows.');
  sheet.rows.forEach(({ cells, height }, row) => {
    if (height !== undefined && !(height > 0 && height <= HIGHEST_ROW_POINTS)) {
      wrong.push(`row ${row + 1} can not be ${height} points high.`);
    }
    if (cells.length > MOST_SHEET_COLUMNS) wrong.push(`row ${row + 1} has too many cells.`);
    cells.forEach((cell, column) => {
      if (cell === null) return;
      wrong.push(...checkCell(cell).map((what) => `${cellName(row, column)} ${what}`));
    });
  });
  return wrong;
}

function checkCell({ value, formula, style }: CellDescription): string[] {
  const wrong: string[] = [];
  if (typeof value === 'number' && !Number.isFinite(value)) {
    wrong.push(`holds ${value}, which is no number that a cell can hold.`);
  }
  if (typeof value === 'string') {
    if (value.length > MOST_CELL_TEXT) wrong.push(`holds ${value.length} characters of text.`);
    if (!isCleanText(value)) wrong.push('holds a character XML can not hold.');
  }
  if (formula !== undefined) {
    if (!isFormula(formula)) wrong.push(`has a formula that can not be written ("${formula}").`);
    if (value === null) wrong.push('has a formula without its calculated value.');
  }
  if (!isStyle(style)) wrong.push(`has no known style ("${String(style)}").`);
  return wrong;
}

function checkFreeze({ freeze }: SheetDescription): string[] {
  if (freeze === undefined) return [];
  const sound =
    isCount(freeze.rows, MOST_SHEET_ROWS) && isCount(freeze.columns, MOST_SHEET_COLUMNS);
  return sound ? [] : [`${freeze.rows} rows and ${freeze.columns} columns can not stay in sight.`];
}

function checkPrint(print: PrintDescription): string[] {
  const wrong: string[] = [];
  const { titleRows, breaksAfter = [], start, printedColumns = 1 } = print;
  if (!(
    Number.isInteger(printedColumns) &&
    printedColumns >= 1 &&
    printedColumns <= MOST_SHEET_COLUMNS
  )) {
    wrong.push(`${printedColumns} columns can not be printed.`);
  }
  if (start !== undefined && !(isMargin(start.left) && isMargin(start.top))) {
    wrong.push(`its pages can not start ${start.left} and ${start.top} in from the edges.`);
  }
  if (titleRows !== undefined) {
    const [first, last] = titleRows;
    if (!(isRow(first) && isRow(last) && first <= last)) {
      wrong.push(`rows ${first} to ${last} can not be title rows.`);
    }
  }
  for (const row of breaksAfter) {
    if (!isRow(row)) wrong.push(`a page can not break after row ${row}.`);
  }
  if (new Set(breaksAfter).size < breaksAfter.length) wrong.push('a page break stands twice.');
  if (breaksAfter.length > MOST_PAGE_BREAKS) wrong.push('it has too many page breaks.');
  for (const text of [print.header, print.footer]) {
    if (!isCleanText(text)) wrong.push('header or footer holds a character XML can not hold.');
    if (text.replaceAll('&', '&&').length > LONGEST_HEADER - HEADER_MARKS) {
      wrong.push(`a header or footer of ${text.length} characters does not fit.`);
    }
  }
  return wrong;
}

function isCount(value: number, most: number): boolean {
  return Number.isInteger(value) && value >= 0 && value < most;
}

/** Up to half of the narrowest paper. */
function isMargin(inches: number): boolean {
  return inches >= 0 && inches <= 4;
}

function isRow(value: number): boolean {
  return Number.isInteger(value) && value >= 1 && value <= MOST_SHEET_ROWS;
}
