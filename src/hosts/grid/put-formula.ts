/** Puts a formula into the selected cell, where the person asked for it. */
import { ICommandService, type ICellData } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import { failed, fault, ok, type Outcome } from '../../core/faults/fault.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import { finishTyping } from './finish-typing.ts';
import type { Grid } from './grid.ts';

const AS_TEXT = '@';

/**
 * @param formula In English, with commas, with its equals sign.
 * @returns Where it stands; or host.cell-not-blank.
 */
export async function putFormula(
  grid: Grid,
  formula: string,
): Promise<Outcome<{ readonly sheet: string; readonly cell: string }>> {
  if (!formula.startsWith('=')) throw new RangeError(`"${formula}" is no formula.`);
  const book = grid.book();
  const sheet = book.getActiveSheet();
  const active = book.getActiveCell();
  // What is being typed into the cell is kept, so that it is no blank one then.
  await finishTyping(grid);
  const [row, column] = [active?.getRow() ?? 0, active?.getColumn() ?? 0];
  const cell = cellName(row, column);
  const there = grid.readCell(book, sheet.getSheetId(), row, column);
  if (holdsSomething(there)) {
    return failed(fault('host.cell-not-blank', 'cell', `${sheet.getSheetName()}!${cell}`));
  }
  const style = sheet.getSheet().getComposedCellStyle(row, column);
  // In a cell formatted as text it would stay a text.
  const isText = style.n?.pattern === AS_TEXT;
  const degrees = grid.degreesOf(formula, isText ? undefined : style.n?.pattern);
  const format = isText || degrees !== null ? { s: { ...style, n: null, ...degrees } } : {};
  const value: ICellData = { f: formula, ...format };
  await grid.services.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
    unitId: book.getId(),
    subUnitId: sheet.getSheetId(),
    range: { startRow: row, startColumn: column, endRow: row, endColumn: column },
    value,
  });
  return ok({ sheet: sheet.getSheetName(), cell });
}

/** A formula that gives "" has no value, and a cell that another's answer spills into no formula. */
function holdsSomething(cell: ICellData | undefined): boolean {
  const { v, f, p, si } = cell ?? {};
  return [v, f, si].some((one) => (one ?? '') !== '') || (p ?? null) !== null;
}
