/** What is to be known of the cell that the person has chosen: why it shows an error, or what may stand in it. */
import {
  BooleanNumber,
  CommandType,
  ICommandService,
  LocaleService,
  type ICommandInfo,
  type IDisposable,
  type Worksheet,
} from '@univerjs/core';
import { SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import {
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SheetsSelectionsService,
  SetWorksheetActiveOperation,
} from '@univerjs/sheets';
import { cellName, rangeName } from '../../core/cells/cell-range.ts';
import type { ValidationDescription } from '../../sheets/grammar/description.ts';
import { choicesOf, ruleOf, sayChoices } from './cell-choices.ts';
import { isError } from './error-reasons.ts';
import type { Grid } from './grid.ts';
import { shownText } from './rows/headed-rows.ts';
import { tablesNow } from './tables-now.ts';

const MOVES = new Set([
  SetFormulaCalculationResultMutation.id,
  SetRangeValuesMutation.id,
  SetSelectionsOperation.id,
  SetWorksheetActiveOperation.id,
]);
/** Whoever walks through cells is told of the one where they stay. */
const SETTLE_MS = 80;

/** All that the page shows and says of the cell that is chosen. */
export interface ChosenCell {
  /** What is wrong with it, why it shows an error, or what may stand in it; empty where nothing is to be said. */
  readonly says: string;
  /** For a screen reader: where it is, under which heading, what stands there, and what is said of it. */
  readonly heard: string;
  /** The words that it is filled with, where it is filled from a list. */
  readonly choices: readonly string[];
  readonly isBold: boolean;
  /** Of its number; empty for none. */
  readonly format: string;
}

/** Sentences about a cell of a sheet by its name, row and column from 0: what must change there. */
export type FaultsAt = (sheet: string, row: number, column: number) => readonly string[];

export interface CellWatch extends IDisposable {
  /** What is known of cells has changed. */
  readonly again: () => void;
}

/** Calls `tell` whenever any of it changes, a moment after the last move. */
export function watchChosenCell(
  grid: Grid,
  faultsAt: FaultsAt,
  tell: (cell: ChosenCell) => void,
): CellWatch {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let told = '';
  let sheet = '';
  const look = (): void => {
    timer = undefined;
    const cell = chosenCell(grid, faultsAt);
    const text = JSON.stringify(cell);
    if (text === told) return;
    told = text;
    const before = sheet;
    sheet = grid.book().getActiveSheet().getSheetName();
    tell(before === sheet ? cell : { ...cell, heard: `${sheet}: ${cell.heard}` });
  };
  const again = (): void => {
    timer ??= setTimeout(look, SETTLE_MS);
  };
  const listener = grid.services
    .get(ICommandService)
    .onCommandExecuted(({ id, type }: Readonly<ICommandInfo>) => {
      if (type !== CommandType.COMMAND && MOVES.has(id)) again();
    });
  again();
  return {
    again,
    dispose: () => {
      clearTimeout(timer);
      listener.dispose();
    },
  };
}

export function chosenCell(grid: Grid, faultsAt: FaultsAt = () => []): ChosenCell {
  const book = grid.book();
  const worksheet = book.getActiveSheet().getSheet();
  const selection = grid.services.get(SheetsSelectionsService).getCurrentLastSelection();
  const active = selection?.primary;
  const nothing = { says: '', heard: '', choices: [], isBold: false, format: '' };
  if (selection === null || selection === undefined) return nothing;
  if (!active) return nothing;
  // Undo may have taken away the rows that are still selected.
  const [rows, columns] = [worksheet.getRowCount(), worksheet.getColumnCount()];
  if (active.actualRow >= rows || active.actualColumn >= columns) return nothing;
  const [row, column] = [active.actualRow, active.actualColumn];
  const rule = ruleOf(grid, row, column);
  const choices = rule === undefined ? [] : choicesOf(grid, rule);
  const faults = faultsAt(worksheet.getName(), row, column);
  // Why a formula answers an error says more than that its cell holds one.
  const reason = sayError(grid, row, column);
  const said = reason === '' ? [...faults, sayRule(grid, rule)] : [reason];
  const says = said.filter((one) => one !== '').join(' ');
  const style = worksheet.getComposedCellStyle(row, column);
  const { startRow, endRow, startColumn, endColumn } = selection.range;
  const last = { row: Math.min(endRow, rows - 1), column: Math.min(endColumn, columns - 1) };
  // The grid says NaN of rows and columns that are selected whole.
  const isOne = Number.isNaN(endRow - startRow + endColumn - startColumn)
    ? false
    : last.row === startRow && last.column === startColumn;
  const range = isOne
    ? cellName(row, column)
    : rangeName({
        top: startRow || 0,
        left: startColumn || 0,
        bottom: Number.isNaN(endRow) ? rows - 1 : last.row,
        right: Number.isNaN(endColumn) ? columns - 1 : last.column,
      });
  const heading = headingOver(grid, worksheet, row, column);
  const shown = shownText(worksheet, row, column);
  const holds = shown.trim() === '' ? 'blank' : shown;
  const heard = `${range}${heading === '' ? '' : `, ${heading}`}: ${holds}.`;
  return {
    says,
    heard: says === '' ? heard : `${heard} ${faults.length > 0 ? 'At fault: ' : ''}${says}`,
    choices,
    isBold: style.bl === BooleanNumber.TRUE,
    format: style.n?.pattern ?? '',
  };
}

/** Of the table that the cell stands in, else what stands over it in the rows that stay in sight. */
function headingOver(grid: Grid, worksheet: Worksheet, row: number, column: number): string {
  const sheet = worksheet.getName();
  const table = [...tablesNow(grid.book().getWorkbook()).values()].find(
    ({ sheet: name, range }) =>
      name === sheet &&
      range.top < row &&
      row <= range.bottom &&
      range.left <= column &&
      column <= range.right,
  );
  const frozen = worksheet.getFreeze().ySplit - 1;
  const at = table?.range.top ?? frozen;
  return at < 0 || at >= row ? '' : shownText(worksheet, at, column).trim();
}

function sayRule(grid: Grid, rule: ValidationDescription | undefined): string {
  return rule === undefined ? '' : sayChoices(grid, rule);
}

/** Why the cell shows an error; empty where it shows none. */
function sayError(grid: Grid, row: number, column: number): string {
  const book = grid.book();
  const subUnitId = book.getActiveSheet().getSheetId();
  const reason = grid.whyError({ unitId: book.getId(), subUnitId, row, col: column });
  if (reason !== '') return reason;
  const shown = grid.readCell(book, subUnitId, row, column)?.v;
  return isError(shown) ? sayCode(grid, shown) : '';
}

/** In the grid's own few words. */
function sayCode(grid: Grid, code: string): string {
  const key = ERROR_WORDS[code];
  if (key === undefined) return code;
  return `${code}: ${grid.services.get(LocaleService).t(`sheets-formula-ui.error.${key}`)}.`;
}

const ERROR_WORDS: Readonly<Record<string, string>> = {
  '#DIV/0!': 'divByZero',
  '#NAME?': 'name',
  '#VALUE!': 'value',
  '#NUM!': 'num',
  '#N/A': 'na',
  '#CYCLE!': 'cycle',
  '#REF!': 'ref',
  '#SPILL!': 'spill',
  '#CALC!': 'calc',
  '#NULL!': 'null',
};
