/** Shows those rows of the chosen cell's table that hold what the person says. */
import type { Grid } from '../../hosts/grid/grid.ts';
import {
  BLANK,
  countShown,
  showAllRows,
  showRowsWith,
  valuesToShow,
} from '../../hosts/grid/rows/filter-rows.ts';
import { headedRows, type HeadedRows } from '../../hosts/grid/rows/headed-rows.ts';
import { ask } from '../shell/ask.ts';
import { make } from '../shell/element.ts';
import { columnField, sayNoRows } from './ask-to-sort.ts';

/** Values beyond which none is listed. */
const MOST_VALUES = 500;

export async function askToFilter(grid: Grid): Promise<void> {
  const rows = headedRows(grid);
  if (rows === undefined) {
    sayNoRows('filter');
    return;
  }
  const by = columnField('Show rows by', rows);
  const list = valueList(grid, rows);
  list.fill(by.chosen());
  by.select.addEventListener('change', () => list.fill(by.chosen()));
  const isFiltered = countShown(grid, rows.sheetId) !== undefined;
  const answer = await ask({
    title: `Filter ${rows.sheet}`,
    says: [
      'Rows out of sight stay in the sheet: they count, and are planned, printed and saved as ever.',
      by.field,
      list.field,
    ],
    choices: [
      { name: 'these', label: 'Show the ticked', first: true },
      ...(isFiltered ? [{ name: 'all', label: 'Show all rows' } as const] : []),
      { name: 'no', label: 'Cancel' },
    ],
  });
  if (answer === 'all') showAllRows(grid, rows.sheetId);
  if (answer === 'these') showRowsWith(grid, rows, by.chosen(), list.ticked());
}

function valueList(
  grid: Grid,
  rows: HeadedRows,
): {
  readonly field: HTMLElement;
  readonly fill: (column: number) => void;
  readonly ticked: () => ReadonlySet<string>;
} {
  const all = make('input', { type: 'checkbox' });
  const field = make('fieldset', { className: 'values' });
  let boxes: { readonly value: string; readonly box: HTMLInputElement }[] = [];
  let unlisted: readonly string[] = [];
  const lookAtAll = (): void => {
    all.checked = boxes.every(({ box }) => box.checked);
    all.indeterminate = !all.checked && boxes.some(({ box }) => box.checked);
  };
  all.addEventListener('change', () => {
    for (const { box } of boxes) box.checked = all.checked;
  });
  field.addEventListener('change', lookAtAll);
  return {
    field,
    fill: (column) => {
      const values = [...valuesToShow(grid, rows, column)];
      boxes = values.slice(0, MOST_VALUES).map(([value, shown]) => ({
        value,
        box: make('input', { type: 'checkbox', checked: shown }),
      }));
      unlisted = values.slice(MOST_VALUES).map(([value]) => value);
      field.replaceChildren(
        make('legend', {}, rows.headings[column] ?? ''),
        make('label', {}, all, 'All'),
        ...boxes.map(({ value, box }) =>
          make('label', {}, box, value.trim() === BLANK ? '(blank)' : value),
        ),
        ...(unlisted.length === 0
          ? []
          : [make('p', {}, `${unlisted.length} more aren’t listed: their rows stay in sight.`)]),
      );
      lookAtAll();
    },
    ticked: () =>
      new Set([...boxes.filter(({ box }) => box.checked).map(({ value }) => value), ...unlisted]),
  };
}
