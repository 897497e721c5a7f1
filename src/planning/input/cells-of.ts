/** The cells of a row that must change where something is said about them later, by heading. */
import type { HeadingKey } from '../../core/faults/argument.ts';
import type { CellsOf } from '../room-rows.ts';
import type { RowReader } from './row-reader.ts';

export function cellsOf<One extends HeadingKey>(
  row: RowReader,
  headings: readonly One[],
): CellsOf<One> {
  const cells = headings.map((heading) => [heading, row.where(heading)] as const);
  return Object.fromEntries(cells) as Record<One, (typeof cells)[number][1]>;
}
