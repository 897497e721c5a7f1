/**
 * The columns of a table, each by its name: the one file where a table's columns become letters.
 * Cells, sums and formulas ask a table for its columns, so that a column is put in on one line.
 */
import { cellName, columnLetters } from '../../core/cells/cell-range.ts';
import type { LengthUnit } from '../../core/units/length-unit.ts';
import type { CellValue, ColumnDescription } from './description.ts';
import { cell, sum, type DraftCell, type SheetRow } from './sheet-draft.ts';
import type { StyleName } from './styles.ts';

/** What a heading may name besides its words. */
export interface HeadingFacts {
  readonly unit: LengthUnit;
  readonly currency: string;
  /** What percents of the offcut allowance are of. */
  readonly allowanceOf?: string;
}

/** Null for a cell that only has the headings' style. */
type Heading = string | ((facts: HeadingFacts) => string) | null;

export interface Column {
  readonly heading: Heading;
  /** Of the heading. */
  readonly style: StyleName;
  /** How many columns of the sheet it is wide; its cells are joined over them. */
  readonly wide: number;
  /** Its width, where the table has a sheet for itself. */
  readonly characters?: number;
}

/** A column whose heading stands at its left; `wide` in columns of the sheet. */
export function left(heading: Heading, wide = 1): Column {
  return { heading, style: 'heading', wide };
}

/** A column whose heading stands at its right, over numbers. */
export function right(heading: Heading, wide = 1): Column {
  return { heading, style: 'headingRight', wide };
}

/** A column whose heading stands in its middle, over signs or counts. */
export function middle(heading: Heading, wide = 1): Column {
  return { heading, style: 'headingCenter', wide };
}

/** A column of a list within a list: its heading stands out less. */
export function noted(heading: Heading, wide = 1): Column {
  return { heading, style: 'stick', wide };
}

/** A column without a heading. */
export function bare(wide = 1): Column {
  return { heading: null, style: 'heading', wide };
}

/** A column with its width in characters, for a table that has a sheet for itself. */
export function sized(characters: number, column: Column): Column {
  return { ...column, characters };
}

interface PlacedColumn extends Column {
  /** From 0. */
  readonly start: number;
}

/** A cell for every column, null where it is blank: none is forgotten when a column comes in. */
export type AllCells<Name extends string> = Readonly<Record<Name, DraftCell>>;
export type SomeCells<Name extends string> = Readonly<Partial<Record<Name, DraftCell>>>;

export class Columns<Name extends string> {
  readonly #columns: ReadonlyMap<Name, PlacedColumn>;
  /** How many columns of the sheet the table takes. */
  readonly width: number;

  constructor(columns: ReadonlyMap<Name, PlacedColumn>, width: number) {
    this.#columns = columns;
    this.width = width;
  }

  /** Where a column begins on the sheet, from 0. */
  start(name: Name): number {
    return this.#column(name).start;
  }

  /** The last column of the sheet that it takes, from 0. */
  end(name: Name): number {
    const { start, wide } = this.#column(name);
    return start + wide - 1;
  }

  /** A cell of a row: `G12`. */
  at(name: Name, row: number): string {
    return cellName(row - 1, this.start(name));
  }

  /** A cell whose row stays where the formula is copied: `G$12`. */
  inRow(name: Name, row: number): string {
    return `${columnLetters(this.start(name))}$${row}`;
  }

  /** A cell that stays where the formula is copied: `$G$12`. */
  fixed(name: Name, row: number): string {
    return `$${this.inRow(name, row)}`;
  }

  /** A cell whose column stays where the formula is copied: `$G12`. */
  inColumn(name: Name, row: number): string {
    return `$${this.at(name, row)}`;
  }

  /** All of the table's columns from row to row: `A4:K9`. */
  area(first: number, last: number): string {
    return `${cellName(first - 1, 0)}:${cellName(last - 1, this.width - 1)}`;
  }

  /** A column's cells from row to row: `G4:G9`. */
  range(name: Name, first: number, last: number): string {
    return `${this.at(name, first)}:${this.at(name, last)}`;
  }

  /** Cells of several columns beside each other, from row to row: `G4:H9`. */
  rangeTo(from: Name, to: Name, first: number, last: number): string {
    return `${this.at(from, first)}:${cellName(last - 1, this.end(to))}`;
  }

  /** A column's cells, its rows kept where the formula is copied: `G$4:G$9`. */
  rowsOf(name: Name, first: number, last: number): string {
    return `${this.inRow(name, first)}:${this.inRow(name, last)}`;
  }

  /** The same, kept whole: `$G$4:$G$9`; one row is a cell. */
  fixedRange(name: Name, first: number, last: number): string {
    if (first === last) return this.fixed(name, first);
    return `${this.fixed(name, first)}:${this.fixed(name, last)}`;
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

  /** These columns of one row, added up: `SUM(F12:H12)`, or `SUM(F12,H12)` where another is between. */
  sumOfRow(names: readonly [Name, Name, ...Name[]], row: number): string {
    const cells = names.map((name) => this.at(name, row));
    const isRun = names.every((name, at) => {
      const next = names[at + 1];
      return next === undefined || this.start(next) === this.end(name) + 1;
    });
    return isRun ? `SUM(${cells[0] ?? ''}:${cells.at(-1) ?? ''})` : `SUM(${cells.join(',')})`;
  }

  /** A row of the table. A column several columns of the sheet wide becomes one joined cell. */
  row(cells: AllCells<Name>): SheetRow {
    return { ...this.loose(cells), joins: this.joins() };
  }

  /** A row of the table in which some columns stay blank, joined as any other. */
  sparseRow(cells: SomeCells<Name>): SheetRow {
    return { ...this.loose(cells), joins: this.joins() };
  }

  /** A row in which nothing is joined; `rest` stands where no cell is given. */
  loose(cells: SomeCells<Name>, rest: DraftCell = null): SheetRow {
    const all = Array.from({ length: this.width }, () => rest);
    for (const [name, { start }] of this.#columns) {
      const { [name]: given } = cells;
      if (given !== undefined) all[start] = given;
    }
    // What is blank at the end is left out.
    return { cells: all.slice(0, all.findLastIndex((one) => one !== null) + 1) };
  }

  /**
   * The row of headings.
   *
   * @param facts What the headings name; a table whose headings name nothing needs none.
   * @param given Words for columns whose headings come with the data.
   */
  headings(facts?: HeadingFacts, given?: Readonly<Partial<Record<Name, string>>>): SheetRow {
    const headed = [...this.#columns].map(([name, { heading, style }]) => {
      const said = given?.[name] ?? heading;
      if (typeof said !== 'function') return [name, cell(said, style)] as const;
      if (facts === undefined) throw new RangeError(`The heading of “${name}” lacks its facts.`);
      return [name, cell(said(facts), style)] as const;
    });
    return this.row(Object.fromEntries(headed) as Record<Name, DraftCell>);
  }

  /** The columns that are joined in a row: first and last, from 0. */
  joins(): readonly (readonly [from: number, to: number])[] {
    return [...this.#columns].flatMap(([name, { wide }]) => (wide === 1 ? [] : [this.join(name)]));
  }

  /** The columns of the sheet that one takes: first and last, from 0. */
  join(name: Name): readonly [from: number, to: number] {
    return [this.start(name), this.end(name)];
  }

  /** The columns of the sheet that the table has for itself, each as wide as it says. */
  grid(): ColumnDescription[] {
    return [...this.#columns].map(([name, { characters }]) => {
      if (characters === undefined) throw new RangeError(`“${name}” has no width.`);
      return { width: characters };
    });
  }

  #column(name: Name): PlacedColumn {
    const column = this.#columns.get(name);
    if (column === undefined) throw new RangeError(`No column is called “${name}”.`);
    return column;
  }
}

export type ColumnName<Table> = Table extends Columns<infer Name> ? Name : never;

/** The columns of a table, from left to right, from the sheet's first column on. */
export function columns<const Name extends string>(
  named: Readonly<Record<Name, Column>>,
): Columns<Name> {
  const placed = new Map<Name, PlacedColumn>();
  let next = 0;
  for (const [name, column] of Object.entries(named) as [Name, Column][]) {
    placed.set(name, { ...column, start: next });
    next += column.wide;
  }
  return new Columns(placed, next);
}

/**
 * A table whose rows stand among those of another: each of its columns lies over one of that table,
 * or from one to another. It moves with them.
 */
export function columnsOver<const Name extends string, Under extends string>(
  table: Columns<Under>,
  named: Readonly<Record<Name, readonly [first: Under, last?: Under]>>,
): Columns<Name> {
  const placed = new Map<Name, PlacedColumn>();
  for (const [name, [first, last = first]] of Object.entries(named) as [
    Name,
    readonly [Under, Under?],
  ][]) {
    const start = table.start(first);
    placed.set(name, { ...bare(table.end(last) - start + 1), start });
  }
  return new Columns(placed, table.width);
}

/**
 * The columns of a sheet that bears several tables, one below the other. A width, in characters,
 * belongs to a place on the sheet, whatever stands there. Where a table is wider than there are
 * widths, the columns beyond them are as wide as the last.
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
