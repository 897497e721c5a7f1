/**
 * The columns of a table, each by its name: the one file where a table's columns become letters.
 * Cells, sums and formulas ask a table for its columns, so that a column is put in on one line.
 */
import { cellName, columnLetters } from '../../core/cells/cell-range.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import { cell, sum, type DraftCell, type SheetRow } from './sheet-draft.ts';
import type { CellValue, ColumnDescription } from './description.ts';
import type { StyleName } from './styles.ts';

/** What a heading may name besides its words. */
export interface HeadingFacts {
  readonly unit: LengthUnit;
  readonly currency: string;
}

export interface Column {
  readonly heading?: string | ((facts: HeadingFacts) => string) | null;
  /** Of the heading. */
  readonly style: StyleName;
  /** How many columns of the sheet it is wide; its cells are joined over them. */
  readonly wide: number;
}

/** Null for a cell that only has the headings' look. */
type Heading = NonNullable<Column['heading']> | null;

/** A column whose heading stands at its left; `wide` in columns of the sheet. */
export function left(heading: Heading, wide = 1): Column {
  return { heading, style: 'heading', wide };
}

/** A column whose heading stands at its right, over numbers. */
export function right(heading: Heading, wide = 1): Column {
  return { heading, style: 'headingRight', wide };
}

/** A column of a list within a list: its heading stands out less. */
export function noted(heading: Heading, wide = 1): Column {
  return { heading, style: 'stick', wide };
}

/** A column without a heading. */
export function bare(wide = 1): Column {
  return { style: 'heading', wide };
}

/** Cells by the names of their columns. */
export type NamedCells<Name extends string> = Readonly<Partial<Record<Name, DraftCell>>>;

export class Columns<Name extends string> {
  readonly #columns: readonly (readonly [Name, Column])[];
  readonly #starts: ReadonlyMap<Name, number>;
  /** How many columns of the sheet the table takes. */
  readonly width: number;

  constructor(named: Readonly<Record<Name, Column>>) {
    this.#columns = Object.entries(named) as [Name, Column][];
    const starts = new Map<Name, number>();
    let next = 0;
    for (const [name, { wide }] of this.#columns) {
      starts.set(name, next);
      next += wide;
    }
    this.#starts = starts;
    this.width = next;
  }

  /** Where a column begins on the sheet, from 0. */
  start(name: Name): number {
    const start = this.#starts.get(name);
    if (start === undefined) throw new RangeError(`No column is called “${name}”.`);
    return start;
  }

  /** The last column of the sheet that it takes, from 0. */
  end(name: Name): number {
    const wide = this.#columns.find(([one]) => one === name)?.[1].wide ?? 1;
    return this.start(name) + wide - 1;
  }

  /** A cell of a row: `G12`. */
  at(name: Name, row: number): string {
    return `${columnLetters(this.start(name))}${row}`;
  }

  /** A cell whose row stays where the formula is copied: `G$12`. */
  inRow(name: Name, row: number): string {
    return `${columnLetters(this.start(name))}$${row}`;
  }

  /** A cell that stays where the formula is copied: `$G$12`. */
  fixed(name: Name, row: number): string {
    return `$${this.inRow(name, row)}`;
  }

  /** A column's cells from row to row: `G4:G9`. */
  range(name: Name, first: number, last: number): string {
    return `${this.at(name, first)}:${this.at(name, last)}`;
  }

  /** The same, its rows kept where the formula is copied: `G$4:G$9`. */
  rowsOf(name: Name, first: number, last: number): string {
    return `${this.inRow(name, first)}:${this.inRow(name, last)}`;
  }

  /** The same, kept whole: `$G$4:$G$9`; one row is a cell. */
  fixedRange(name: Name, first: number, last: number): string {
    if (first === last) return this.fixed(name, first);
    return `${this.fixed(name, first)}:${this.fixed(name, last)}`;
  }

  /** Cells of one row from column to column: `F12:H12`. */
  across(from: Name, to: Name, row: number): string {
    return `${this.at(from, row)}:${this.at(to, row)}`;
  }

  /** `SUM(G4:G9)`, or 0 where there is no row. */
  sum(name: Name, first: number, last: number): string {
    return last < first ? '0' : `SUM(${this.range(name, first, last)})`;
  }

  /** A column's sum as a cell. */
  sumCell(
    name: Name,
    [first, last]: readonly [first: number, last: number],
    value: CellValue,
    style: StyleName,
  ): DraftCell {
    return sum(this.sum(name, first, last), value, style);
  }

  /**
   * A row of the table, up to the last cell given; columns of the sheet that belong to one of the
   * table are joined.
   */
  row(cells: NamedCells<Name>): SheetRow {
    const all = this.#spread(cells, null);
    return {
      cells: all.slice(0, all.findLastIndex((one) => one !== null) + 1),
      joins: this.joins(),
    };
  }

  /** A row of the whole table in which nothing is joined; `rest` stands where no cell is given. */
  loose(cells: NamedCells<Name>, rest: DraftCell = null): SheetRow {
    return { cells: this.#spread(cells, rest) };
  }

  /**
   * The row of headings.
   *
   * @param facts What the headings name; a table whose headings name nothing needs none.
   * @param given Words for columns whose headings come with the data.
   */
  headings(facts?: HeadingFacts, given?: Readonly<Partial<Record<Name, string>>>): SheetRow {
    const headed = this.#columns.map(([name, { heading = null, style }]) => {
      const said = given?.[name] ?? heading;
      if (typeof said !== 'function') return [name, cell(said, style)] as const;
      if (facts === undefined) throw new RangeError(`The heading of “${name}” lacks its facts.`);
      return [name, cell(said(facts), style)] as const;
    });
    return this.row(Object.fromEntries(headed) as NamedCells<Name>);
  }

  /** The columns that are joined in a row: first and last, from 0. */
  joins(): readonly (readonly [from: number, to: number])[] {
    return this.#columns.flatMap(([name, { wide }]) => (wide === 1 ? [] : [this.join(name)]));
  }

  /** The columns of the sheet that one takes: first and last, from 0. */
  join(name: Name): readonly [from: number, to: number] {
    return [this.start(name), this.end(name)];
  }

  #spread(cells: NamedCells<Name>, rest: DraftCell): DraftCell[] {
    return this.#columns.flatMap(([name, { wide }]) => {
      const { [name]: given = rest } = cells;
      return [given, ...Array.from({ length: wide - 1 }, () => rest)];
    });
  }
}

export type ColumnName<Table> = Table extends Columns<infer Name> ? Name : never;

/** The columns of a table, from left to right, from the sheet's first column on. */
export function columns<const Name extends string>(
  named: Readonly<Record<Name, Column>>,
): Columns<Name> {
  return new Columns(named);
}

/**
 * The columns of a sheet that bears these tables, one below the other. Where a table is wider than
 * there are widths, in characters, the columns beyond them are as wide as the last.
 */
export function gridFor(
  widths: readonly [number, ...number[]],
  tables: readonly { readonly width: number }[],
): ColumnDescription[] {
  const count = Math.max(widths.length, ...tables.map(({ width }) => width));
  const last = widths.at(-1) ?? widths[0];
  return Array.from({ length: count }, (_, column) => ({ width: widths[column] ?? last }));
}

/** Cells of a sheet's column by its place, from 0, from row to row: `C4:C9`; one row is a cell. */
export function rangeAt(column: number, first: number, last: number): string {
  const top = cellName(first - 1, column);
  return first === last ? top : `${top}:${cellName(last - 1, column)}`;
}
