/** Puts copied cells onto the active sheet, as one step for whoever takes it back. */
import {
  CellValueType,
  Rectangle,
  type ICellData,
  type IRange,
  type Nullable,
} from '@univerjs/core';
import {
  AddWorksheetMergeMutation,
  InsertColMutation,
  InsertRowMutation,
  RemoveColMutation,
  RemoveRowMutation,
  RemoveWorksheetMergeMutation,
  SetRangeValuesMutation,
} from '@univerjs/sheets';
import { failed, fault, ok, type Outcome } from '../../../core/faults/fault.ts';
import { cellName } from '../../../core/cells/cell-range.ts';
import { oneChange, type OneChange } from '../one-change.ts';
import type { Grid } from '../grid.ts';
import { copiedSize, type CopiedCell, type CopiedCells } from './copied-cells.ts';
import { MOST_PASTED_CELLS } from './limits.ts';
import { isDayOrTime, typedMeaning } from './typed-meaning.ts';

interface Place {
  readonly unitId: string;
  readonly subUnitId: string;
}

/**
 * They go from the top left of what is selected on, and again where that is a multiple of them. They
 * take the style that is there, but number formats come along.
 *
 * @returns Nothing; or one fault, and nothing was changed: grid.paste-too-many, grid.paste-merged.
 */
export function putCells(grid: Grid, copied: CopiedCells): Outcome<void> {
  const book = grid.book();
  const sheet = book.getActiveSheet();
  const selected = sheet.getSelection()?.getActiveRange()?.getRange();
  const size = copiedSize(copied);
  if (selected === undefined || size.rows * size.columns === 0) return ok(undefined);
  const worksheet = sheet.getSheet();
  const single = mergeAt(worksheet.getMergeData(), selected);
  const target =
    single !== null && size.rows * size.columns === 1
      ? topLeft(selected)
      : targetOf(selected, size);
  const count = rowsOf(target) * columnsOf(target);
  if (count > MOST_PASTED_CELLS) {
    return failed(fault('grid.paste-too-many', 'paste', count, { limit: MOST_PASTED_CELLS }));
  }
  const met =
    single !== null && rowsOf(target) * columnsOf(target) === 1
      ? []
      : meetings(worksheet.getMergeData(), target);
  const cut = met.find((merge) => !Rectangle.contains(target, merge));
  if (cut !== undefined) {
    const where = `${cellName(cut.startRow, cut.startColumn)}:${cellName(cut.endRow, cut.endColumn)}`;
    return failed(fault('grid.paste-merged', 'paste', where));
  }
  const place = { unitId: book.getId(), subUnitId: sheet.getSheetId() };
  const change = oneChange(grid);
  try {
    makeRoom(change, place, target, worksheet.getRowCount(), worksheet.getColumnCount());
    joinCells(change, place, met, mergesIn(copied, target, size));
    const held = (row: number, column: number): Nullable<ICellData> =>
      worksheet.getCellRaw(row, column);
    const styles = book.getWorkbook().getStyles();
    const isText = (row: number, column: number): boolean =>
      styles.get(held(row, column)?.s)?.n?.pattern === '@';
    const { id } = SetRangeValuesMutation;
    change.make(
      { id, params: { ...place, cellValue: pastedCells(copied, target, size, isText) } },
      { id, params: { ...place, cellValue: heldCells(target, held) } },
    );
  } catch (error) {
    change.takeBack();
    throw error;
  }
  change.keep();
  sheet.getRange(target.startRow, target.startColumn, rowsOf(target), columnsOf(target)).activate();
  return ok(undefined);
}

function targetOf(selected: IRange, size: { rows: number; columns: number }): IRange {
  const { startRow, startColumn } = selected;
  // Whole columns and rows are selected without their ends.
  const [rows, columns] = [rowsOf(selected) || 1, columnsOf(selected) || 1];
  const fits = rows % size.rows === 0 && columns % size.columns === 0;
  return {
    startRow,
    startColumn,
    endRow: startRow + (fits ? rows : size.rows) - 1,
    endColumn: startColumn + (fits ? columns : size.columns) - 1,
  };
}

function topLeft({ startRow, startColumn }: IRange): IRange {
  return { startRow, startColumn, endRow: startRow, endColumn: startColumn };
}

function rowsOf({ startRow, endRow }: IRange): number {
  return Number.isFinite(endRow - startRow) ? endRow - startRow + 1 : 0;
}

function columnsOf({ startColumn, endColumn }: IRange): number {
  return Number.isFinite(endColumn - startColumn) ? endColumn - startColumn + 1 : 0;
}

function meetings(merges: readonly IRange[], target: IRange): IRange[] {
  return merges.filter((merge) => Rectangle.intersects(merge, target));
}

/** The joined cells that are selected as the one that they are. */
function mergeAt(merges: readonly IRange[], selected: IRange): IRange | null {
  return merges.find((merge) => Rectangle.equals(merge, selected)) ?? null;
}

function makeRoom(
  change: OneChange,
  place: Place,
  target: IRange,
  rows: number,
  columns: number,
): void {
  if (target.endRow >= rows) {
    const range = { startRow: rows, endRow: target.endRow, startColumn: 0, endColumn: columns - 1 };
    change.make(
      { id: InsertRowMutation.id, params: { ...place, range } },
      { id: RemoveRowMutation.id, params: { ...place, range } },
    );
  }
  if (target.endColumn >= columns) {
    const range = {
      startRow: 0,
      endRow: Math.max(rows - 1, target.endRow),
      startColumn: columns,
      endColumn: target.endColumn,
    };
    change.make(
      { id: InsertColMutation.id, params: { ...place, range } },
      { id: RemoveColMutation.id, params: { ...place, range } },
    );
  }
}

function joinCells(
  change: OneChange,
  place: Place,
  gone: readonly IRange[],
  come: readonly IRange[],
): void {
  const [add, remove] = [AddWorksheetMergeMutation.id, RemoveWorksheetMergeMutation.id];
  const removed = { ...place, ranges: [...gone] };
  const added = { ...place, ranges: [...come] };
  if (gone.length > 0) change.make({ id: remove, params: removed }, { id: add, params: removed });
  if (come.length > 0) change.make({ id: add, params: added }, { id: remove, params: added });
}

function mergesIn(
  copied: CopiedCells,
  target: IRange,
  size: { rows: number; columns: number },
): IRange[] {
  const found: IRange[] = [];
  for (let row = target.startRow; row <= target.endRow; row += size.rows) {
    for (let column = target.startColumn; column <= target.endColumn; column += size.columns) {
      for (const { top, left, bottom, right } of copied.merges) {
        found.push({
          startRow: row + top,
          startColumn: column + left,
          endRow: row + bottom,
          endColumn: column + right,
        });
      }
    }
  }
  return found;
}

type Matrix = Record<number, Record<number, ICellData>>;

/** What is there before, so that it can be put back. */
function heldCells(
  target: IRange,
  held: (row: number, column: number) => Nullable<ICellData>,
): Record<number, Record<number, ICellData | null>> {
  const made: Record<number, Record<number, ICellData | null>> = {};
  for (let row = target.startRow; row <= target.endRow; row++) {
    const ofRow: Record<number, ICellData | null> = {};
    for (let column = target.startColumn; column <= target.endColumn; column++) {
      const cell = held(row, column);
      const { v = null, t = null, f = null, si = null, p = null, s = null } = cell ?? {};
      ofRow[column] = cell === null || cell === undefined ? null : { v, t, f, si, p, s };
    }
    made[row] = ofRow;
  }
  return made;
}

function pastedCells(
  { rows }: CopiedCells,
  target: IRange,
  size: { rows: number; columns: number },
  isText: (row: number, column: number) => boolean,
): Matrix {
  const made: Matrix = {};
  for (let row = target.startRow; row <= target.endRow; row++) {
    const from = rows[(row - target.startRow) % size.rows] ?? [];
    const ofRow: Record<number, ICellData> = {};
    for (let column = target.startColumn; column <= target.endColumn; column++) {
      const cell = from[(column - target.startColumn) % size.columns] ?? null;
      ofRow[column] = cell === null ? BLANK : pasted(cell, isText(row, column));
    }
    made[row] = ofRow;
  }
  return made;
}

/** A cell's former content goes, its style stays. */
const NOTHING = { f: null, si: null, p: null } as const;
const BLANK: ICellData = { ...NOTHING, v: null };

function pasted(cell: CopiedCell, intoText: boolean): ICellData {
  const { text, number, format, isText = false, mayBeFormula = false } = cell;
  if (mayBeFormula && !intoText && /^=./su.test(text)) return { ...NOTHING, f: text, v: null };
  if (isText) return asText(text);
  // A number is shown rounded: what is behind it is meant. A day is meant as it is shown.
  if (number !== undefined) {
    if (intoText)
      return asText(format !== undefined && isDayOrTime(format) ? text : String(number));
    return asNumber(number, format);
  }
  const meaning = intoText ? { kind: 'text' as const } : typedMeaning(text);
  if (meaning.kind === 'number') return asNumber(meaning.value, meaning.format);
  if (meaning.kind === 'boolean') {
    return { ...NOTHING, v: meaning.value ? 1 : 0, t: CellValueType.BOOLEAN };
  }
  return asText(text);
}

function asText(text: string): ICellData {
  return { ...NOTHING, v: text, t: CellValueType.STRING };
}

function asNumber(value: number, pattern: Nullable<string>): ICellData {
  const format = pattern === undefined || pattern === null ? {} : { s: { n: { pattern } } };
  return { ...NOTHING, v: value, t: CellValueType.NUMBER, ...format };
}
