/** Sorts the table of the chosen cell as the person says. */
import { sayFault } from '../../core/faults/fault.ts';
import type { BareReading } from '../../core/units/length.ts';
import { rangeName } from '../../core/cells/cell-range.ts';
import type { Grid } from '../../hosts/grid/grid.ts';
import { headedRows, type HeadedRows } from '../../hosts/grid/rows/headed-rows.ts';
import { sortRows } from '../../hosts/grid/rows/sort-rows.ts';
import { ask } from '../shell/ask.ts';
import { make } from '../shell/element.ts';
import { dropNotice, showNotice } from '../shell/notices.ts';

/** @param reading How a bare number is read in a column of lengths. */
export async function askToSort(grid: Grid, reading: BareReading): Promise<void> {
  const rows = headedRows(grid);
  if (rows === undefined) {
    sayNoRows('sort');
    return;
  }
  const by = columnField('Sort by', rows);
  const answer = await ask({
    title: `Sort ${rows.sheet}`,
    says: [
      `Rows ${rangeName(rows.range)} go together with all of their cells. Lengths go by what they measure. Undo puts them back.`,
      by.field,
    ],
    choices: [
      { name: 'up', label: 'Smallest or A first', first: true },
      { name: 'down', label: 'Largest or Z first' },
      { name: 'no', label: 'Cancel' },
    ],
  });
  if (answer === undefined || answer === 'no') return;
  const column = by.chosen();
  const sorted = await sortRows(grid, rows, { column, isDescending: answer === 'down', reading });
  if (sorted.ok) dropNotice('rows');
  else showNotice('rows', { kind: 'problem', says: sorted.faults.map(sayFault) });
}

export function columnField(
  label: string,
  { headings, chosen }: HeadedRows,
): {
  readonly field: HTMLElement;
  readonly chosen: () => number;
  readonly select: HTMLSelectElement;
} {
  const options = headings.map((heading, at) => make('option', { value: String(at) }, heading));
  const select = make('select', { name: 'column' }, ...options);
  select.value = String(chosen);
  const field = make('label', { className: 'field' }, label, select);
  return { field, select, chosen: () => Number(select.value) };
}

export function sayNoRows(deed: 'sort' | 'filter'): void {
  showNotice('rows', {
    kind: 'problem',
    says: [
      `Choose a cell of the table that you want to ${deed}: one with headings and at least two rows. On a written sheet only its tables can be: elsewhere rows belong together as they stand.`,
    ],
  });
}
