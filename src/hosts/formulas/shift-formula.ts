/** A formula as it reads in another cell: what it says of cells without a dollar sign moves along. */
import {
  columnLetters,
  MOST_SHEET_COLUMNS,
  MOST_SHEET_ROWS,
  parseRange,
} from '../../core/cells/cell-range.ts';
import { outsideQuotes } from './outside-quotes.ts';

const BEFORE = String.raw`(?<![\p{L}\p{N}_.$])`;
const AFTER = String.raw`(?![\p{L}\p{N}_.(!])`;
/** A cell; whole columns; whole rows. */
const REFERENCE = new RegExp(
  [
    String.raw`${BEFORE}(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})${AFTER}`,
    String.raw`${BEFORE}(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})${AFTER}`,
    String.raw`${BEFORE}(\$?)([1-9]\d{0,6}):(\$?)([1-9]\d{0,6})${AFTER}`,
  ].join('|'),
  'giu',
);
const OFF_SHEET = '#REF!';

/** @param rows Down, and columns to the right, from the cell that the formula was written in. */
export function shiftFormula(formula: string, rows: number, columns: number): string {
  if (rows === 0 && columns === 0) return formula;
  const column = (dollar: string, letters: string): string | null => {
    const at =
      (parseRange(`${letters.toUpperCase()}1`)?.left ?? -1) + (dollar === '' ? columns : 0);
    return at >= 0 && at < MOST_SHEET_COLUMNS ? `${dollar}${columnLetters(at)}` : null;
  };
  const row = (dollar: string, number: string): string | null => {
    const at = Number(number) + (dollar === '' ? rows : 0);
    return at >= 1 && at <= MOST_SHEET_ROWS ? `${dollar}${at}` : null;
  };
  return outsideQuotes(formula, (part) =>
    part.replace(REFERENCE, (...found: string[]) => {
      const [, c$ = '', c, r$ = '', r, a$ = '', a, b$ = '', b, d$ = '', d, e$ = '', e] = found;
      if (c !== undefined) return both(column(c$, c), row(r$, r ?? ''), '');
      if (a !== undefined) return both(column(a$, a), column(b$, b ?? ''), ':');
      return both(row(d$, d ?? ''), row(e$, e ?? ''), ':');
    }),
  );
}

function both(one: string | null, other: string | null, between: string): string {
  return one === null || other === null ? OFF_SHEET : `${one}${between}${other}`;
}
