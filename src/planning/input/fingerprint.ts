/** Tells whether inputs are still those that a plan was made from. */
import { hashText } from '../../core/hash-text.ts';
import { sameName } from '../job.ts';
import type { RawTable } from './raw-table.ts';

/**
 * A short text that changes with any cell, heading or order of rows, but not with where on its
 * sheet a table stands; see hashText. Nor with Hours: they are written down when the job is done, and the
 * plan that it was done by stays that of these inputs.
 */
export function fingerprint(tables: readonly RawTable[]): string {
  const planned = tables.filter(({ name }) => !sameName(name, 'Hours'));
  const text = JSON.stringify(
    planned.map(({ name, headings, rows, merges = [] }) => [
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
