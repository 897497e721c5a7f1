/** Ranges as people write them (A1, B2:D9), and the size of a worksheet. */

/** Size of a worksheet since Excel 2007 (Microsoft, "Excel specifications and limits"). */
export const MOST_SHEET_ROWS = 1_048_576;
export const MOST_SHEET_COLUMNS = 16_384;

/** Rows and columns from 0, both ends included. */
export interface CellRange {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const RANGE = /^([A-Z]{1,3})([1-9]\d{0,6})(?::([A-Z]{1,3})([1-9]\d{0,6}))?$/;

/** Reads A1 or A1:C9; null where it is not written so, runs backwards or leaves the sheet. */
export function parseRange(text: string): CellRange | null {
  const found = RANGE.exec(text);
  if (found === null) return null;
  const [, left = '', top = '', right = left, bottom = top] = found;
  const range = {
    top: Number(top) - 1,
    left: columnNumber(left),
    bottom: Number(bottom) - 1,
    right: columnNumber(right),
  };
  const forwards = range.top <= range.bottom && range.left <= range.right;
  const inside = range.bottom < MOST_SHEET_ROWS && range.right < MOST_SHEET_COLUMNS;
  return forwards && inside ? range : null;
}

/** The range of a description that has been checked. */
export function soundRange(text: string): CellRange {
  const range = parseRange(text);
  if (range === null) throw new RangeError(`"${text}" is no range of a sheet.`);
  return range;
}

export function rangesOverlap(one: CellRange, other: CellRange): boolean {
  return (
    one.top <= other.bottom &&
    other.top <= one.bottom &&
    one.left <= other.right &&
    other.left <= one.right
  );
}

/** A, B, ... Z, AA, ... for columns from 0. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/** A1, B7, ... for a row and a column from 0. */
export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** A1:B7 for a range of more cells than one. */
export function rangeName({ top, left, bottom, right }: CellRange): string {
  return `${cellName(top, left)}:${cellName(bottom, right)}`;
}

/** A range with dollar signs and its sheet in quotes, as names and formulas write it. */
export function absoluteRange(sheet: string, range: CellRange): string {
  const corner = (row: number, column: number): string => `$${columnLetters(column)}$${row + 1}`;
  const first = corner(range.top, range.left);
  const last = corner(range.bottom, range.right);
  return `${quoteSheet(sheet)}!${first === last ? first : `${first}:${last}`}`;
}

/** A sheet's name as formulas write it. */
export function quoteSheet(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'`;
}

function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}
