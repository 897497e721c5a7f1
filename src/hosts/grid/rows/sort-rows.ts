/** Sorts rows of the grid by one of their columns. */
import { ObjectMatrix, type ICellData, type IRange, type Nullable } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import {
  ReorderRangeMutation,
  ReorderRangeUndoMutationFactory,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SetWorksheetRowHeightMutation,
} from '@univerjs/sheets';
import { cellName, rangesOverlap } from '../../../core/cells/cell-range.ts';
import { failed, fault, ok, type Outcome } from '../../../core/faults/fault.ts';
import { own } from '../../../core/faults/argument.ts';
import type { BareReading } from '../../../core/units/length.ts';
import { shiftFormula } from '../../formulas/shift-formula.ts';
import { finishTyping } from '../finish-typing.ts';
import type { Grid } from '../grid.ts';
import { oneChange, type OneChange } from '../one-change.ts';
import { cellText } from '../to-file/cell-text.ts';
import { cellRange, gridRange, type HeadedRows } from './headed-rows.ts';
import { orderOfRows, type SortedCell } from './order-of-rows.ts';

export interface SortChoice {
  /** From 0 among the headings. */
  readonly column: number;
  readonly isDescending: boolean;
  readonly reading: BareReading;
}

/**
 * Cells go with their row, their looks, heights and ticks too, and a formula keeps speaking of the cells of its own
 * row: the grid's own sorting leaves it with those of the row it came from. One step for Undo.
 *
 * @returns Faults grid.sort-merged, grid.sort-spilled, host.refused.
 */
export async function sortRows(
  grid: Grid,
  rows: HeadedRows,
  choice: SortChoice,
): Promise<Outcome<void>> {
  await finishTyping(grid);
  const worksheet = grid.book().getWorkbook().getSheetBySheetId(rows.sheetId);
  if (worksheet === null || worksheet === undefined) {
    return failed(fault('host.gone', 'sheet', rows.sheet));
  }
  const { range } = rows;
  const merged = worksheet.getMergeData().find((one) => rangesOverlap(cellRange(one), range));
  if (merged !== undefined) {
    const cell = cellName(merged.startRow, merged.startColumn);
    return failed(fault('grid.sort-merged', own(rows.sheet), cell));
  }
  const spilled = spillIn(grid, rows);
  if (spilled !== undefined) return failed(fault('grid.sort-spilled', own(rows.sheet), spilled));
  const cells = keysOf(grid, rows, choice.column);
  const order = orderOfRows(cells, choice.isDescending, choice.reading);
  const from = new Map(order.map((old, at) => [range.top + at, range.top + old]));
  const change = oneChange(grid);
  try {
    reorder(grid, rows, from, change);
  } catch (error) {
    change.takeBack();
    const why = error instanceof Error ? error.message : '';
    return failed(fault('host.refused', 'sorting', why));
  }
  change.keep();
  return ok(undefined);
}

function reorder(
  grid: Grid,
  { range, sheetId }: HeadedRows,
  from: ReadonlyMap<number, number>,
  change: OneChange,
): void {
  const place = { unitId: grid.book().getId(), subUnitId: sheetId };
  const formulas = formulasAfter(grid, { range, sheetId }, from);
  const order = { ...place, range: gridRange(range), order: Object.fromEntries(from) };
  change.make(
    { id: ReorderRangeMutation.id, params: order },
    { id: ReorderRangeMutation.id, params: ReorderRangeUndoMutationFactory(order) },
  );
  if (Object.keys(formulas).length > 0) {
    const params = { ...place, cellValue: formulas };
    change.make(
      { id: SetRangeValuesMutation.id, params },
      {
        id: SetRangeValuesMutation.id,
        params: SetRangeValuesUndoMutationFactory(grid.services, params),
      },
    );
  }
  const worksheet = grid.book().getWorkbook().getSheetBySheetId(sheetId);
  const before = Object.fromEntries(
    [...from.keys()].map((row) => [row, worksheet?.getRowManager().getRowHeight(row) ?? 0]),
  );
  if (new Set(Object.values(before)).size < 2) return;
  const heights = Object.fromEntries([...from].map(([row, old]) => [row, before[old] ?? 0]));
  const setting = (rowHeight: Record<number, number>) => ({
    id: SetWorksheetRowHeightMutation.id,
    params: { ...place, ranges: [gridRange(range)], rowHeight },
  });
  change.make(setting(heights), setting(before));
}

type FormulaCells = Record<number, Record<number, ICellData>>;

/**
 * Every formula of the rows as it reads in the row where it will stand. Cells filled from one of them lean on it:
 * they get a formula of their own, wherever they stand.
 */
function formulasAfter(
  grid: Grid,
  { range, sheetId }: Pick<HeadedRows, 'range' | 'sheetId'>,
  from: ReadonlyMap<number, number>,
): FormulaCells {
  const worksheet = grid.book().getWorkbook().getSheetBySheetId(sheetId);
  const formulas = grid.services.get(FormulaDataModel);
  const to = new Map([...from].map(([row, old]) => [old, row]));
  const after: FormulaCells = {};
  worksheet?.getCellMatrix().forValue((row, column, cell) => {
    if ((cell?.f ?? cell?.si ?? '') === '') return;
    const isMoved = to.has(row) && range.left <= column && column <= range.right;
    if (!isMoved && (cell?.si ?? '') === '') return;
    const unit = grid.book().getId();
    const formula = formulas.getFormulaStringByCell(row, column, sheetId, unit) ?? cell?.f ?? '';
    if (formula === '') return;
    const at = isMoved ? (to.get(row) ?? row) : row;
    (after[at] ??= {})[column] = { f: shiftFormula(formula, at - row, 0), si: null };
  });
  return after;
}

function keysOf(grid: Grid, { range, sheetId }: HeadedRows, column: number): SortedCell[] {
  return Array.from({ length: range.bottom - range.top + 1 }, (_, index) => {
    const cell = grid.readCell(grid.book(), sheetId, range.top + index, range.left + column);
    if (cell?.p !== undefined && cell.p !== null) return cellText(cell.p);
    return cell?.v ?? null;
  });
}

/** A formula whose answers fill several of the rows. */
function spillIn(grid: Grid, { range, sheetId }: HeadedRows): string | undefined {
  const all = grid.services.get(FormulaDataModel).getArrayFormulaRange();
  let found: string | undefined;
  new ObjectMatrix<Nullable<IRange>>(all[grid.book().getId()]?.[sheetId] ?? {}).forValue(
    (_, __, spill) => {
      if (spill === null || spill === undefined || spill.endRow === spill.startRow) return;
      if (!rangesOverlap(cellRange(spill), range)) return;
      found ??= cellName(spill.startRow, spill.startColumn);
    },
  );
  return found;
}
