/** Puts rows under those of a table in the grid. */
import { CellValueType, type ICellData } from '@univerjs/core';
import {
  FormulaDataModel,
  IDefinedNamesService,
  SetDefinedNameMutation,
} from '@univerjs/engine-formula';
import {
  InsertRowMutation,
  InsertRowMutationUndoFactory,
  RemoveRowMutation,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
} from '@univerjs/sheets';
import { absoluteRange, parseRange, type CellRange } from '../../core/cells/cell-range.ts';
import { failed, fault, ok, type Fault, type Outcome } from '../../core/faults/fault.ts';
import { nameKey, formulaParts } from '../formulas/formula-parts.ts';
import { shiftFormula } from '../formulas/shift-formula.ts';
import type { TablePlace } from '../host.ts';
import { MOST_TABLE_COLUMNS } from '../tables/limits.ts';
import { noRoom, roomBelow, type NewRow, type RoomAsked } from '../tables/room-below.ts';
import { finishTyping } from './finish-typing.ts';
import type { Grid } from './grid.ts';
import type { GridSheet } from './grid-sheets.ts';
import { growMetadata, growsAlong, type Growth } from './grow-metadata.ts';
import { oneChange, type OneChange } from './one-change.ts';
import { placesOf, type GridPlace } from './places.ts';
import { toCustomData } from './sheet-metadata.ts';
import { KEEP } from './watch-moves.ts';

const ADDING = 'addingRows';

/**
 * One step for Undo.
 *
 * @returns Line of the first; or host.gone, host.no-room, table.too-many-rows, host.refused.
 */
export async function appendRows(
  grid: Grid,
  wanted: TablePlace,
  rows: readonly NewRow[],
): Promise<Outcome<{ readonly line: number }>> {
  // A cell that is being typed in keeps what was typed, and may be one of the table's.
  await finishTyping(grid);
  const name = wanted.table ?? wanted.sheet;
  const found = placesOf(grid).find(({ place }) => place.key === wanted.key);
  if (found === undefined) return failed(fault('host.gone', ADDING, name));
  const { range = { left: 0, right: MOST_TABLE_COLUMNS }, sheet } = found;
  const asked: RoomAsked = {
    name,
    sheet: sheet.name,
    rows: found.rows,
    all: found.all,
    left: range.left,
    right: range.right,
    ...('bottom' in range ? { bottom: range.bottom } : {}),
  };
  const room = roomBelow(asked, rows.length);
  if (!room.ok) return room;
  const line = room.value;
  const taken = inTheWay(sheet, asked, line, rows);
  if (taken !== null) return failed(taken);
  const change = oneChange(grid);
  try {
    makeSheetReach(grid, sheet, line + rows.length, change);
    putCells(grid, found, line, rows, change);
    if (found.range !== undefined) {
      growTable(grid, sheet, { table: found.range, bottom: line + rows.length - 2 }, change);
    }
  } catch (error) {
    change.takeBack();
    return failed(fault('host.refused', ADDING, error instanceof Error ? error.message : ''));
  }
  change.keep();
  return ok({ line });
}

/** A formula that answers nothing yet looks blank, and is no blank cell; merged ones are no row of a table. */
function inTheWay(
  { worksheet }: GridSheet,
  asked: RoomAsked,
  line: number,
  rows: readonly NewRow[],
): Fault | null {
  for (const [index, texts] of rows.entries()) {
    const row = line - 1 + index;
    for (const [column, text] of texts.entries()) {
      if (text === null) continue;
      const { f, si } = worksheet.getCellRaw(row, column) ?? {};
      if ((f ?? si ?? '') !== '' || worksheet.getMergedCell(row, column) !== null) {
        return noRoom(asked, row, column, rows.length);
      }
    }
  }
  return null;
}

/** Rows at the sheet's end, where it has too few. */
function makeSheetReach(
  grid: Grid,
  { id, worksheet }: GridSheet,
  count: number,
  change: OneChange,
): void {
  const there = worksheet.getRowCount();
  if (count <= there) return;
  const params = {
    unitId: grid.book().getId(),
    subUnitId: id,
    range: {
      startRow: there,
      endRow: count - 1,
      startColumn: 0,
      endColumn: worksheet.getColumnCount() - 1,
    },
  };
  change.make(
    { id: InsertRowMutation.id, params },
    { id: RemoveRowMutation.id, params: InsertRowMutationUndoFactory(grid.services, params) },
  );
}

/** Beyond the rows that were prepared, each cell has the look of the one above and its formula. */
function putCells(
  grid: Grid,
  { sheet, range }: GridPlace,
  line: number,
  rows: readonly NewRow[],
  change: OneChange,
): void {
  const { id, worksheet } = sheet;
  const unitId = grid.book().getId();
  const formulas = grid.services.get(FormulaDataModel);
  const above = line - 2;
  const isHeading = range !== undefined && above <= range.top;
  const cellAt = (row: number, column: number, text: string | null): ICellData | null => {
    const there = worksheet.getCellRaw(row, column);
    const cell: ICellData = text === null ? {} : { v: text, t: CellValueType.STRING };
    const isNew = range !== undefined && row > range.bottom && column >= range.left;
    if (isNew && column <= range.right && !isHeading) {
      const model = worksheet.getCellRaw(above, column);
      if ((there?.s ?? null) === null && (model?.s ?? null) !== null) cell.s = model?.s ?? null;
      const formula = formulas.getFormulaStringByCell(above, column, id, unitId) ?? '';
      if (text === null && formula !== '') cell.f = shiftFormula(formula, row - above, 0);
    }
    return Object.keys(cell).length === 0 ? null : cell;
  };
  const cellValue: Record<number, Record<number, ICellData>> = {};
  rows.forEach((texts, index) => {
    const row = line - 1 + index;
    const width = Math.max(texts.length, (range?.right ?? -1) + 1);
    for (let column = 0; column < width; column++) {
      const cell = cellAt(row, column, texts[column] ?? null);
      if (cell !== null) (cellValue[row] ??= {})[column] = cell;
    }
  });
  const params = { unitId, subUnitId: id, cellValue };
  change.make(
    { id: SetRangeValuesMutation.id, params },
    {
      id: SetRangeValuesMutation.id,
      params: SetRangeValuesUndoMutationFactory(grid.services, params),
    },
  );
}

function growTable(
  grid: Grid,
  { id, name, kept, worksheet }: GridSheet,
  growth: Growth,
  change: OneChange,
): void {
  if (kept === undefined || growth.bottom <= growth.table.bottom) return;
  const unitId = grid.book().getId();
  const custom = worksheet.getCustomMetadata();
  const keep = (made: typeof custom) => ({
    id: KEEP.id,
    params: { unitId, subUnitId: id, custom: made },
  });
  change.make(keep({ ...custom, ...toCustomData(growMetadata(kept, growth)) }), keep(custom));
  const names = grid.services.get(IDefinedNamesService).getDefinedNameMap(unitId) ?? {};
  for (const known of Object.values(names)) {
    const range = rangeOn(name, known.formulaOrRefString);
    if (range === null || range.top === growth.table.top || !growsAlong(range, growth)) continue;
    const formulaOrRefString = absoluteRange(name, { ...range, bottom: growth.bottom });
    change.make(
      { id: SetDefinedNameMutation.id, params: { unitId, ...known, formulaOrRefString } },
      { id: SetDefinedNameMutation.id, params: { unitId, ...known } },
    );
  }
}

/** The range that a name stands for, where it is one on the sheet. */
function rangeOn(sheet: string, text: string): CellRange | null {
  const [first] = formulaParts(text);
  if (first?.kind !== 'sheet' || nameKey(first.name) !== nameKey(sheet)) return null;
  return parseRange(text.slice(text.lastIndexOf('!') + 1).replaceAll('$', ''));
}
