/** Shows the rows of the grid that hold certain values, by the grid's own filter: a view, the cells stay as they are. */
import { ICommandService, type IMutationInfo, type IRange } from '@univerjs/core';
import { SetWorksheetActiveOperation } from '@univerjs/sheets';
import {
  FILTER_MUTATIONS,
  ReCalcSheetsFilterMutation,
  RemoveSheetsFilterMutation,
  SetSheetsFilterCriteriaMutation,
  SetSheetsFilterRangeMutation,
  SheetsFilterService,
  UniverSheetsFilterPlugin,
  type FilterModel,
  type IAutoFilter,
  type IFilterColumn,
} from '@univerjs/sheets-filter';
import { drawAnew } from '../draw-anew.ts';
import type { Grid } from '../grid.ts';
import { oneChange } from '../one-change.ts';
import { gridRange, shownText, type HeadedRows } from './headed-rows.ts';

const LATE_PART_MS = 20;

/** What a blank cell shows. */
export const BLANK = '';

/**
 * From now on the grid knows what a filter is; one that was kept with the workbook is in force again.
 *
 * @param tell Whether rows of the sheet in sight are out of sight, now and whenever that may have changed.
 */
export async function startFilter(grid: Grid, tell: (isFiltered: boolean) => void): Promise<void> {
  grid.addPart(UniverSheetsFilterPlugin);
  // A part that comes late is started on a timer of the grid's own.
  while (!grid.services.has(SheetsFilterService)) {
    await new Promise((resolve) => setTimeout(resolve, LATE_PART_MS));
  }
  const show = (): void => {
    drawAnew(grid);
    tell(filterOf(grid, grid.book().getActiveSheet().getSheetId()) !== null);
  };
  let waits = false;
  grid.services.get(ICommandService).onCommandExecuted(({ id }) => {
    if (waits || !(FILTER_MUTATIONS.has(id) || id === SetWorksheetActiveOperation.id)) return;
    waits = true;
    setTimeout(() => {
      waits = false;
      show();
    });
  });
  show();
}

/** What a column's cells show, each once, in the order in which it comes up, and whether its rows are in sight. */
export function valuesToShow(
  grid: Grid,
  { range, sheetId }: HeadedRows,
  column: number,
): ReadonlyMap<string, boolean> {
  const worksheet = grid.book().getWorkbook().getSheetBySheetId(sheetId);
  const at = range.left + column;
  const chosen = filterOf(grid, sheetId)?.getFilterColumn(at)?.getColumnData().filters;
  const values = new Map<string, boolean>();
  for (let row = range.top; worksheet && row <= range.bottom; row++) {
    const text = shownText(worksheet, row, at);
    const isChosen = text === BLANK ? chosen?.blank === true : chosen?.filters?.includes(text);
    values.set(text, chosen === undefined || isChosen === true);
  }
  return values;
}

/** Shows the rows whose cell in a column shows one of `values`; what was chosen in other columns stays. One step for Undo. */
export function showRowsWith(
  grid: Grid,
  { range, sheetId }: HeadedRows,
  column: number,
  values: ReadonlySet<string>,
): void {
  const headed = gridRange({ ...range, top: Math.max(0, range.top - 1) });
  const at = range.left + column;
  const filters = {
    ...(values.has(BLANK) ? { blank: true as const } : {}),
    filters: [...values].filter((value) => value !== BLANK),
  };
  changeFilter(grid, sheetId, (steps, before) => {
    const isSame =
      before?.ref.startRow === headed.startRow && before.ref.startColumn === headed.startColumn;
    if (before !== undefined && !isSame) takeOff(steps, before);
    const kept = isSame ? before : undefined;
    steps.range(headed, kept?.ref);
    steps.criteria(at, { colId: at, filters }, columnOf(kept, at));
  });
}

/** Shows all rows again. */
export function showAllRows(grid: Grid, sheetId: string): void {
  if (filterOf(grid, sheetId) === null) return;
  changeFilter(grid, sheetId, (steps, filter) => {
    if (filter !== undefined) takeOff(steps, filter);
  });
}

/** Of the rows that could be in sight those that are; undefined where none was chosen. */
export function countShown(
  grid: Grid,
  sheetId: string,
): { readonly shown: number; readonly of: number } | undefined {
  const model = filterOf(grid, sheetId);
  if (model === null) return undefined;
  const { startRow, endRow } = model.getRange();
  const of = endRow - startRow;
  return { shown: of - model.filteredOutRows.size, of };
}

/** Sorted rows are looked at anew: which are in sight goes with what they hold. */
export function filterAnew(grid: Grid, sheetId: string): void {
  if (filterOf(grid, sheetId) === null) return;
  const params = { unitId: grid.book().getId(), subUnitId: sheetId };
  grid.services
    .get(ICommandService)
    .syncExecuteCommand(ReCalcSheetsFilterMutation.id, params, { onlyLocal: true });
}

interface Steps {
  range(now: IRange, before: IRange | undefined): void;
  criteria(column: number, now: IFilterColumn | null, before: IFilterColumn | null): void;
  remove(before: IRange): void;
}

function changeFilter(
  grid: Grid,
  sheetId: string,
  make: (steps: Steps, before: IAutoFilter | undefined) => void,
): void {
  const place = { unitId: grid.book().getId(), subUnitId: sheetId };
  const change = oneChange(grid);
  const setRange = (range: IRange): IMutationInfo => ({
    id: SetSheetsFilterRangeMutation.id,
    params: { ...place, range },
  });
  const remove: IMutationInfo = { id: RemoveSheetsFilterMutation.id, params: place };
  const criteria = (col: number, one: IFilterColumn | null): IMutationInfo => ({
    id: SetSheetsFilterCriteriaMutation.id,
    params: { ...place, col, criteria: one },
  });
  make(
    {
      range: (now, before) =>
        change.make(setRange(now), before === undefined ? remove : setRange(before)),
      criteria: (column, now, before) =>
        change.make(criteria(column, now), criteria(column, before)),
      remove: (before) => change.make(remove, setRange(before)),
    },
    filterOf(grid, sheetId)?.serialize(),
  );
  change.keep();
}

function takeOff(steps: Steps, { ref, filterColumns = [] }: IAutoFilter): void {
  for (const one of filterColumns) steps.criteria(one.colId, null, one);
  steps.remove(ref);
}

function columnOf(filter: IAutoFilter | undefined, column: number): IFilterColumn | null {
  return filter?.filterColumns?.find(({ colId }) => colId === column) ?? null;
}

function filterOf(grid: Grid, sheetId: string): FilterModel | null {
  return (
    grid.services.get(SheetsFilterService).getFilterModel(grid.book().getId(), sheetId) ?? null
  );
}
