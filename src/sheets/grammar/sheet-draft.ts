/** A sheet as it grows row by row; formulas that point to rows not yet placed are resolved at its end. */
import type { Drawing } from '../../drawings/drawing.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import type {
  CellDescription,
  CellValue,
  ColumnDescription,
  HighlightDescription,
  PlacedDrawing,
  PrintDescription,
  SheetDescription,
  TableDescription,
} from './description.ts';
import { closeHeight, wholePixels } from './row-height.ts';
import type { StyleName } from './styles.ts';

/** A cell whose formula may name cells of rows, or of sheets, that are drafted later. */
export interface LateFormula {
  readonly value: CellValue;
  readonly style?: StyleName;
  readonly formula: () => string;
}

export type DraftCell = CellDescription | LateFormula | null;

/** One row before it has its place. */
export interface SheetRow {
  readonly cells: readonly DraftCell[];
  /** Columns from 0 that are joined: first and last. */
  readonly joins?: readonly (readonly [from: number, to: number])[];
  /** Its height, where its lines don't tell it. */
  readonly points?: number;
}

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
  readonly #joins = new Map<number, (readonly [from: number, to: number])[]>();
  readonly #breaks: number[] = [];
  readonly #heights = new Map<number, number>();
  readonly #drawings: PlacedDrawing[] = [];
  readonly #tables: TableDescription[] = [];
  readonly #highlights: HighlightDescription[] = [];
  readonly #isClose: boolean;
  readonly #printed: number;

  /**
   * @param isClose Whether each row says its height, no more than its lines need.
   * @param printed How many of the columns are printed; the others are for the screen.
   */
  constructor(
    name: string,
    columns: readonly ColumnDescription[],
    isClose = false,
    printed = columns.length,
  ) {
    this.#name = name;
    this.#columns = columns;
    this.#isClose = isClose;
    this.#printed = printed;
  }

  /** The row that is added next, from 1. */
  get next(): number {
    return this.#rows.length + 1;
  }

  /** Adds a row and gives its number, from 1. */
  add(...cells: readonly DraftCell[]): number {
    return this.#rows.push(cells);
  }

  /** Adds a row as a table makes it, and gives its number, from 1. */
  put({ cells, joins = [], points }: SheetRow): number {
    const row = this.add(...cells);
    for (const [from, to] of joins) this.merge(row, from, to);
    if (points !== undefined) this.setHeight(row, points);
    return row;
  }

  blank(): void {
    this.add();
  }

  /** Gives a row its height, in points, rounded up to whole pixels. */
  setHeight(row: number, points: number): void {
    this.#heights.set(row, wholePixels(points));
  }

  /** Adds a row whose one text spreads over the columns `from` (from 0) to the last that is printed. */
  spread(text: string, style: StyleName, from = 0): number {
    const cells: DraftCell[] = Array.from({ length: from }, () => null);
    const row = this.add(...cells, cell(text, style));
    this.merge(row, from, this.#printed - 1);
    return row;
  }

  /** Joins cells of one row, columns from 0. */
  merge(row: number, from: number, to: number): void {
    if (to <= from) return;
    const joins = this.#joins.get(row);
    if (joins === undefined) this.#joins.set(row, [[from, to]]);
    else joins.push([from, to]);
  }

  /** Height in points that a row has been given, or that its lines need. */
  pointsOf(row: number): number {
    const cells = (this.#rows[row - 1] ?? []).map((one) =>
      one === null || typeof one.formula === 'function' ? null : (one as CellDescription),
    );
    return this.#heights.get(row) ?? closeHeight(cells, this.#columns, this.#joins.get(row) ?? []);
  }

  /** How many drawings it has so far. */
  get drawn(): number {
    return this.#drawings.length;
  }

  /** Puts a drawing at a cell, row from 1 and column from 0. The caller makes its rows high enough. */
  draw(row: number, column: number, drawing: Drawing, name?: string): void {
    const at = cellName(row - 1, column);
    this.#drawings.push({ at, drawing, ...(name === undefined ? {} : { name }) });
  }

  /** Makes a table proper, which can be sorted and filtered, of rows from that of its headings (from 1) on. */
  addTable(name: string, heads: number, last: number, columns: number): void {
    this.#tables.push({
      name,
      range: `${cellName(heads - 1, 0)}:${cellName(last - 1, columns - 1)}`,
    });
  }

  /** Marks cells of `range` with a style where a formula, relative to its first cell, is true. */
  highlight(range: string, formula: string, style: StyleName): void {
    this.#highlights.push({ range, formula, style });
  }

  /** A new page begins after the last row added, or after another. */
  breakPage(after = this.#rows.length): void {
    if (after > 0) this.#breaks.push(after);
  }

  /** Shrunk to the page's width unless told otherwise. */
  finish(
    print: Omit<PrintDescription, 'fitWidth' | 'breaksAfter' | 'header'> & {
      readonly fitWidth?: boolean;
    },
    freeze?: { readonly rows: number; readonly columns: number },
  ): SheetDescription {
    return {
      name: this.#name,
      columns: this.#columns,
      rows: this.#rows.map((cells, index) => ({
        cells: cells.map(settle),
        ...this.#height(index + 1),
      })),
      merges: [...this.#joins].flatMap(([row, joins]) =>
        joins.map(([from, to]) => `${cellName(row - 1, from)}:${cellName(row - 1, to)}`),
      ),
      ...(freeze === undefined ? {} : { freeze }),
      ...(this.#drawings.length === 0 ? {} : { drawings: this.#drawings }),
      ...(this.#tables.length === 0 ? {} : { tables: this.#tables }),
      ...(this.#highlights.length === 0 ? {} : { highlights: this.#highlights }),
      print: {
        fitWidth: true,
        ...print,
        ...(this.#printed < this.#columns.length ? { printedColumns: this.#printed } : {}),
        header: '',
        breaksAfter: this.#breaks,
      },
    };
  }

  #height(row: number): { readonly height?: number } {
    const height = this.#isClose ? this.pointsOf(row) : this.#heights.get(row);
    return height === undefined ? {} : { height };
  }
}

function settle(one: DraftCell): CellDescription | null {
  if (one === null || typeof one.formula !== 'function') return one as CellDescription | null;
  return { ...one, formula: one.formula() };
}
