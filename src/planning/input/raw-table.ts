/** An input table as it came, before anyone reads a meaning into it. Hosts make these. */
import { columnLetters } from '../../core/cells/cell-range.ts';
import type { Where } from '../../core/faults/fault.ts';

/** `error` is a cell's error such as #N/A; `uncalculated` a formula without a cached value. */
export type RawCell =
  | string
  | number
  | boolean
  | null
  | { readonly kind: 'date' }
  | { readonly kind: 'error'; readonly text: string }
  | { readonly kind: 'uncalculated' };

export interface RawRow {
  /** Row of the sheet, or first line of the record in the file; from 1. */
  readonly line: number;
  readonly cells: readonly RawCell[];
}

export interface RawTable {
  /** Runs, Openings, Profiles, Shop or Stock (or what a caller looks for). */
  readonly name: string;
  readonly source: { readonly kind: 'sheet' | 'file'; readonly name: string };
  readonly headings: RawRow;
  /** Blank rows are left out. */
  readonly rows: readonly RawRow[];
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
