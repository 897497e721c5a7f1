/** Tells whether inputs are still those that a plan was made from. */
import { hashText } from '../../core/hash-text.ts';
import type { RawTable } from './raw-table.ts';

/**
 * A short text that changes with any cell, heading or order of rows, but not with where on its
 * sheet a table stands; see hashText.
 */
export function fingerprint(tables: readonly RawTable[]): string {
  const text = JSON.stringify(
    tables.map(({ name, headings, rows, merges = [] }) => [
      name,
      headings.cells,
      rows.map(({ cells }) => cells),
      ...merges.map(({ top, left, bottom, right }) => [
        top - headings.line,
        left,
        bottom - headings.line,
        right,
      ]),
    ]),
  );
  return hashText(text);
}
