/** Ranges of cells and how they go together: as in a spreadsheet's own arithmetic. */
import type { Argument } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import type { Cell, Range } from './cell.ts';

/** A range with its size; a single cell stands for every row and column. */
export interface Block {
  readonly rows: number;
  readonly columns: number;
  readonly at: (row: number, column: number) => Cell;
}

/** A block with what faults call it. */
export type NamedBlock = readonly [name: Argument, block: Block];

/** A whole column of a sheet: more answers than that have nowhere to stand. */
export const MOST_CELLS = 1_048_576;
/** Rows of a sheet in Excel: a range of so many is a column as a whole. */
export const WHOLE_COLUMN = 1_048_576;

const NOTHING: Block = { rows: 1, columns: 1, at: () => undefined };

/** An omitted argument is one blank cell; ragged rows are filled with blanks. */
export function blockOf(range: Range): Block {
  // A host may hand a single cell over bare.
  const rows: readonly unknown[] = Array.isArray(range) ? range : [[range]];
  const columns = rows.reduce<number>(
    (most, row) => Math.max(most, Array.isArray(row) ? row.length : 1),
    0,
  );
  if (rows.length === 0 || columns === 0) return NOTHING;
  const cellAt = (row: number, column: number): Cell => {
    const cells = rows[row];
    if (Array.isArray(cells)) return cells[column] as Cell;
    return column === 0 ? cells : undefined;
  };
  const oneRow = rows.length === 1;
  const oneColumn = columns === 1;
  return {
    rows: rows.length,
    columns,
    at: (row, column) => cellAt(oneRow ? 0 : row, oneColumn ? 0 : column),
  };
}

export function isBlankCell(cell: Cell): boolean {
  return cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');
}

/** How many rows there are down to the last that is filled. */
export function lastFilled(rows: number, isFilled: (row: number) => boolean): number {
  let last = rows;
  while (last > 0 && !isFilled(last - 1)) last -= 1;
  return last;
}

export interface Fit {
  readonly rows: number;
  readonly columns: number;
  readonly faults: readonly Fault[];
}

/**
 * The size that blocks make together: 1 × 1, 1 × n, n × 1 and m × n cells stretch to each other.
 * Faults: `function.shape` for each that doesn't, `function.too-many-cells`.
 */
export function fitTogether(blocks: readonly NamedBlock[]): Fit {
  const rows = Math.max(...blocks.map(([, block]) => block.rows));
  const columns = Math.max(...blocks.map(([, block]) => block.columns));
  const faults = blocks
    .filter(([, block]) => ![1, rows].includes(block.rows) || ![1, columns].includes(block.columns))
    .map(([name, block]) =>
      sizeFault('function.shape', name, block, { wantedRows: rows, wantedColumns: columns }),
    );
  if (faults.length === 0 && rows * columns > MOST_CELLS) {
    faults.push(fault('function.too-many-cells', 'ranges', rows * columns, { limit: MOST_CELLS }));
  }
  return { rows, columns, faults };
}

/** Blocks of one column, or single cells; else `function.one-column` beside what fitTogether finds. */
export function fitColumns(blocks: readonly NamedBlock[]): Fit {
  const wide = blocks
    .filter(([, block]) => block.columns > 1)
    .map(([name, block]) => sizeFault('function.one-column', name, block));
  return wide.length > 0 ? { rows: 1, columns: 1, faults: wide } : fitTogether(blocks);
}

/** Single cells only; else `function.one-cell` for each range. */
export function fitSingles(blocks: readonly NamedBlock[]): Fit {
  const faults = blocks
    .filter(([, block]) => block.rows > 1 || block.columns > 1)
    .map(([name, block]) => sizeFault('function.one-cell', name, block));
  return { rows: 1, columns: 1, faults };
}

export function sizeFault(
  code: 'function.shape' | 'function.one-column' | 'function.one-cell',
  name: Argument,
  { rows, columns }: Block,
  more: Readonly<Record<string, number>> = {},
): Fault {
  return fault(code, name, rows * columns, { details: { rows, columns, ...more } });
}
