/** An input table as it came, before anyone reads a meaning into it. Hosts make these. */
import { columnLetters, type CellRange } from '../../core/cells/cell-range.ts';
import { NAMES } from '../../core/faults/argument-words.ts';
import { own, type Argument, type ArgumentKey, phrase } from '../../core/faults/argument.ts';
import type { Caution, Where } from '../../core/faults/fault.ts';
import type { StatedUnit } from '../../core/units/stated-unit.ts';

/** A number whose cell shows more than its digits: 0.15 as 15%, 90 as 90.00 mm, 7 as 07. */
export interface ShownNumber {
  readonly kind: 'shown';
  /** The number that is seen, without the rounding of what is seen: 15 where the cell holds 0.15. */
  readonly value: number;
  /** All that is seen, with a decimal point: what the cell says where a name is wanted. */
  readonly text: string;
  /** What stands with the number. */
  readonly unit?: StatedUnit;
}

/**
 * A number under a format that shows another number or none (thousands left out, nothing for 0): what
 * is meant can't be told.
 */
export interface VeiledNumber {
  readonly kind: 'veiled';
  readonly held: number;
  /** What is seen instead: 8 where the cell holds 8000; empty for nothing. */
  readonly text: string;
}

/**
 * `date` is a day or time, with the day as 2026-03-04 where it is known; `error` a cell's error such as
 * #N/A; `uncalculated` a formula without a cached value.
 */
export type RawCell =
  | string
  | number
  | boolean
  | null
  | ShownNumber
  | VeiledNumber
  | { readonly kind: 'date'; readonly day?: string }
  | { readonly kind: 'error'; readonly text: string }
  | { readonly kind: 'uncalculated' };

export interface RawRow {
  /** Row of the sheet, or first line of the record in the file; from 1. */
  readonly line: number;
  readonly cells: readonly RawCell[];
}

export interface RawTable {
  /** Runs, Walls, Trim, Openings, Profiles, Shop, Stock, Work, Job or Hours (or what a caller looks for). */
  readonly name: string;
  readonly source: { readonly kind: 'sheet' | 'file'; readonly name: string };
  readonly headings: RawRow;
  /** Blank rows are left out. */
  readonly rows: readonly RawRow[];
  /** What a person should know of how it was read: rows out of sight, values that may be old. */
  readonly cautions?: readonly Caution[];
  /** Of its sheet's cells below the headings, those that are merged; each has more than one cell. */
  readonly merges?: readonly CellRange[];
  /** Columns, from 0, that are out of sight. */
  readonly hiddenColumns?: readonly number[];
  /** Where the person chose which columns stand for ours. */
  readonly mapped?: {
    /** As the table has them; `headings` has ours in their place. */
    readonly theirs: readonly RawCell[];
    /** Columns, from 0, that were chosen for none of ours, whatever they are headed. */
    readonly leftOut: readonly number[];
  };
}

/** The place of a cell, by its line and its column from 0. */
export function whereIs(table: RawTable, line: number, column: number): Where {
  return table.source.kind === 'sheet'
    ? { sheet: table.source.name, cell: `${columnLetters(column)}${line}` }
    : { file: table.source.name, line, column: column + 1 };
}

/** What a fault calls a column, by its place from 0, that has no heading. */
export function columnArgument(column: number, table: Pick<RawTable, 'name'>): Argument {
  return phrase('columnOf', {
    column: own(columnLetters(column)),
    table: tableArgument(table.name),
  });
}

/** What a fault calls a table: a sheet of the job, or what the person calls it. */
export function tableArgument(name: string): Argument {
  const key = `sheet.${name}`;
  return key in NAMES ? (key as ArgumentKey) : own(name);
}
