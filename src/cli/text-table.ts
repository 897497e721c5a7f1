/** Tables of plain text: no color, a line under the headings. */
import Table from 'cli-table3';
import { onOneLine } from './terminal.ts';

export interface TextColumn {
  readonly heading: string;
  /** Numbers are lined up on the right. */
  readonly align?: 'left' | 'right';
}

const PLAIN = {
  ...{ top: '', 'top-mid': '', 'top-left': '', 'top-right': '' },
  ...{ bottom: '', 'bottom-mid': '', 'bottom-left': '', 'bottom-right': '' },
  ...{ left: '', 'left-mid': '', right: '', 'right-mid': '' },
  ...{ mid: '-', 'mid-mid': '  ', middle: '  ' },
};

/** Its lines. Headings may hold line ends; cells are put on one line each. */
export function drawTable(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
): string[] {
  const table = new Table({
    head: columns.map(({ heading }) => heading),
    colAligns: columns.map(({ align }) => align ?? 'left'),
    chars: PLAIN,
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0, compact: true },
  });
  table.push(...rows.map((row) => row.map(onOneLine)));
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}
