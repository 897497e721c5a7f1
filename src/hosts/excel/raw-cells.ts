/** Cells as Excel gives them, as the tables' reader takes them. */
import type { RawCell, RawRow } from '../../planning/input/raw-table.ts';
import { isBlankRow } from '../tables/raw-rows.ts';
import { shownCell } from '../tables/shown-number.ts';

/** A block of cells that was read: each list has the block's rows and columns. */
export interface ReadBlock {
  /** First row and column, from 0. */
  readonly top: number;
  readonly left: number;
  readonly values: readonly (readonly unknown[])[];
  readonly valueTypes: readonly (readonly unknown[])[];
  readonly numberFormat: readonly (readonly unknown[])[];
}

/** The rows that aren't blank, their cells from column A on. */
export function rawRows(block: ReadBlock): RawRow[] {
  const before: readonly RawCell[] = Array.from({ length: block.left }, () => null);
  return block.values.flatMap((values, r) => {
    const cells = values.map((value, c) =>
      rawCell(value, block.valueTypes[r]?.[c], block.numberFormat[r]?.[c]),
    );
    if (isBlankRow(cells)) return [];
    const last = cells.findLastIndex((cell) => cell !== null);
    return [{ line: block.top + r + 1, cells: [...before, ...cells.slice(0, last + 1)] }];
  });
}

function rawCell(value: unknown, type: unknown, format: unknown): RawCell {
  if (type === 'Error') return { kind: 'error', text: String(value) };
  if (typeof value === 'number')
    return typeof format === 'string' ? shownCell(value, format) : value;
  if (typeof value === 'boolean') return value;
  return typeof value === 'string' && value !== '' ? value : null;
}
