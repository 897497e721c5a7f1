/** How a sheet's rows part into what is printed: blocks between forced page breaks, rows that stay together. */
import type { PrintDescription } from '../../sheets/grammar/description.ts';
import type { PrintedSheet } from './printed-sheet.ts';

/** Rows from and to, from 0, both included. */
export type Rows = readonly [from: number, to: number];

/** Each begins on a new page. */
export function printBlocks({ rows, print }: Pick<PrintedSheet, 'rows' | 'print'>): Rows[] {
  const last = rows.length - 1;
  const ends = [...new Set([...(print.breaksAfter ?? []).map((row) => row - 1), last])]
    .filter((end) => end >= 0 && end <= last)
    .sort((one, other) => one - other);
  return ends.map((end, index) => [index === 0 ? 0 : (ends[index - 1] ?? 0) + 1, end] as const);
}

export interface PrintedBlock {
  /** What stands above the heads, printed once before them. */
  readonly above?: Rows;
  /** What every page of the block repeats. */
  readonly heads?: Rows;
  /** The rest; none where it ends before it begins. */
  readonly body: Rows;
}

/** @returns What of a block repeats: no heads before the block that the sheet's title rows stand in. */
export function partBlock({ titleRows }: PrintDescription, [from, to]: Rows): PrintedBlock {
  if (titleRows === undefined) return { body: [from, to] };
  const [first, last] = [titleRows[0] - 1, titleRows[1] - 1];
  if (to < last) return { body: [from, to] };
  return {
    ...(from < first ? { above: [from, first - 1] } : {}),
    heads: [first, last],
    body: [Math.max(from, last + 1), to],
  };
}

/**
 * Rows of a block in groups that no page break parts: those that a picture or a joined cell stands
 * over; each other row is a group of its own.
 */
export function keptTogether({ rows, merges, pictures }: PrintedSheet, [from, to]: Rows): Rows[] {
  const joined = new Set<number>();
  const join = (first: number, last: number): void => {
    for (let row = first; row < last; row++) joined.add(row);
  };
  for (const { top, bottom } of merges) join(top, bottom);
  for (const { row, height } of pictures) {
    let last = row;
    let left = height - (rows[row]?.height ?? 0);
    while (left > 0.5 && last < rows.length - 1) left -= rows[++last]?.height ?? 0;
    join(row, last);
  }
  const groups: Rows[] = [];
  let first = from;
  for (let row = from; row <= to; row++) {
    if (row < to && joined.has(row)) continue;
    groups.push([first, row]);
    first = row + 1;
  }
  return groups;
}
