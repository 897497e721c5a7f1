/** What writing does to the grid, step by step, each with how it is taken back. */
import { generateRandomId, mergeWorksheetSnapshotWithDefault } from '@univerjs/core';
import { RemoveDefinedNameMutation, SetDefinedNameMutation } from '@univerjs/engine-formula';
import {
  InsertSheetMutation,
  InsertSheetUndoMutationFactory,
  RemoveSheetMutation,
  RemoveSheetUndoMutationFactory,
  SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
} from '@univerjs/sheets';
import { absoluteRange, soundRange } from '../../core/cells/cell-range.ts';
import type { SheetDescription } from '../../sheets/grammar/description.ts';
import type { WriteChoice } from '../host.ts';
import { describedSheet } from '../workbook/described-workbook.ts';
import { describedGridStyles } from './convert-style.ts';
import type { GridSheet } from './grid-sheets.ts';
import type { OneChange } from './one-change.ts';
import type { PaintedDrawing } from './paint-drawings.ts';
import { placePictures, removePictures } from './place-pictures.ts';
import type { PlannedName } from './plan-writing.ts';
import { sheetData } from './sheet-data.ts';
import type { Grid } from './grid.ts';

/** Puts a sheet behind all others, with its pictures; returns its id. */
export function insertSheet(
  grid: Grid,
  sheet: SheetDescription,
  owner: WriteChoice['owner'],
  drawings: readonly PaintedDrawing[],
  change: OneChange,
): string {
  const book = grid.book().getWorkbook();
  const id = generateRandomId();
  const described = describedSheet(sheet, { ours: owner === 'tool' });
  const params = {
    unitId: book.getUnitId(),
    index: book.getSheets().length,
    sheet: mergeWorksheetSnapshotWithDefault(sheetData(described, id)),
    styles: describedGridStyles(),
  };
  change.make(
    { id: InsertSheetMutation.id, params },
    { id: RemoveSheetMutation.id, params: InsertSheetUndoMutationFactory(grid.services, params) },
  );
  placePictures(grid, id, drawings, change);
  return id;
}

/** Formulas that name it keep naming it, as those of Excel do: so they read the one in its place. */
export function removeSheet(grid: Grid, { id, name }: GridSheet, change: OneChange): void {
  removePictures(grid, id, change);
  const params = { unitId: grid.book().getId(), subUnitId: id, subUnitName: name };
  change.make(
    { id: RemoveSheetMutation.id, params },
    { id: InsertSheetMutation.id, params: RemoveSheetUndoMutationFactory(grid.services, params) },
  );
}

export function defineName(
  grid: Grid,
  { name, sheet, range, before }: PlannedName,
  change: OneChange,
): void {
  const unitId = grid.book().getId();
  const params = {
    unitId,
    id: before?.id ?? generateRandomId(10),
    name,
    formulaOrRefString: absoluteRange(sheet, soundRange(range)),
    localSheetId: SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
  };
  const back =
    before === undefined
      ? { id: RemoveDefinedNameMutation.id, params }
      : { id: SetDefinedNameMutation.id, params: { unitId, ...before } };
  change.make({ id: SetDefinedNameMutation.id, params }, back);
}
