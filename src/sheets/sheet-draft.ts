/** A sheet as it grows row by row; formulas that point to rows not yet placed are resolved at its end. */
import { cellName } from './cell-range.ts';
import type {
  CellDescription,
  CellValue,
  ColumnDescription,
  PrintDescription,
  SheetDescription,
} from './description.ts';
import type { StyleName } from './styles.ts';

/** A cell whose formula may name cells of rows, or of sheets, that are drafted later. */
export interface LateFormula {
  readonly value: CellValue;
  readonly style?: StyleName;
  readonly formula: () => string;
}

export type DraftCell = CellDescription | LateFormula | null;

/** A cell with a value. */
export function cell(value: CellValue | null, style: StyleName = 'plain'): CellDescription {
  return { value, style };
}

/** A cell with a formula and what it comes to; a function is asked once every row is placed. */
export function sum(
  formula: string | (() => string),
  value: CellValue,
  style: StyleName = 'plain',
): DraftCell {
  return typeof formula === 'string' ? { formula, value, style } : { formula, value, style };
}

export class SheetDraft {
  readonly #name: string;
  readonly #columns: readonly ColumnDescription[];
  readonly #rows: (readonly DraftCell[])[] = [];
  readonly #merges: string[] = [];
  readonly #breaks: number[] = [];

  constructor(name: string, columns: readonly ColumnDescription[]) {
    this.#name = name;
    this.#columns = columns;
  }

  /** The row that is added next, from 1. */
  get next(): number {
    return this.#rows.length + 1;
  }

  /** Adds a row and gives its number, from 1. */
  add(...cells: readonly DraftCell[]): number {
    return this.#rows.push(cells);
  }

  blank(): void {
    this.add();
  }

  /** Adds a row whose one text spreads over the columns `from` (from 0) to the last one. */
  spread(text: string, style: StyleName, from = 0): number {
    const cells: DraftCell[] = Array.from({ length: from }, () => null);
    const row = this.add(...cells, cell(text, style));
    this.merge(row, from, this.#columns.length - 1);
    return row;
  }

  /** Joins cells of one row, columns from 0. */
  merge(row: number, from: number, to: number): void {
    if (to > from) this.#merges.push(`${cellName(row - 1, from)}:${cellName(row - 1, to)}`);
  }

  /** A new page begins after the last row added. */
  breakPage(): void {
    if (this.#rows.length > 0) this.#breaks.push(this.#rows.length);
  }

  finish(
    print: Omit<PrintDescription, 'fitWidth' | 'breaksAfter' | 'header'>,
    freeze?: { readonly rows: number; readonly columns: number },
  ): SheetDescription {
    return {
      name: this.#name,
      columns: this.#columns,
      rows: this.#rows.map((cells) => ({ cells: cells.map(settle) })),
      merges: this.#merges,
      ...(freeze === undefined ? {} : { freeze }),
      print: { ...print, fitWidth: true, header: '', breaksAfter: this.#breaks },
    };
  }
}

function settle(one: DraftCell): CellDescription | null {
  if (one === null || typeof one.formula !== 'function') return one as CellDescription | null;
  return { ...one, formula: one.formula() };
}
