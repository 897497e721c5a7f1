/** Why a cell of the grid holds an error, in our function's own words, where the grid shows its own few. */
import { ObjectMatrix, type Injector, type IRange, type Nullable } from '@univerjs/core';
import { ErrorType, FormulaDataModel } from '@univerjs/engine-formula';
import { CellAlertManagerService, type ICellAlert } from '@univerjs/sheets-ui';
import { own } from '../../core/faults/argument.ts';
import { cellName } from '../../core/cells/cell-range.ts';
import { fault } from '../../core/faults/fault.ts';
import { callsOurs } from '../formulas/file-formulas.ts';
import { GridError, type AnswerNote, type GridCell } from './grid-function.ts';

/** Of the notice that comes up over a cell with an error. */
const ALERT_KEY = 'SHEET_FORMULA_ALERT';

interface Reason {
  readonly name: string;
  readonly cells: readonly (readonly GridCell[])[];
}

/** What a cell shows, by its row and column from 0: an answer that spills into it too. */
type Shown = (row: number, column: number) => unknown;

export interface ErrorReasons {
  /** What a function answered in a formula's cell. */
  readonly note: (answered: AnswerNote) => void;
  /** From now on the grid says them over the cells. */
  readonly show: (services: Injector, shownOf: (place: Location) => Shown) => void;
  /**
   * Why a cell shows an error, or why nothing stands in it where answers of another cell's formula
   * would; that cell is named then. Empty where there is no such reason.
   */
  readonly of: (services: Injector, place: Location, shown: Shown) => string;
}

export function errorReasons(): ErrorReasons {
  const reasons = new Map<string, Reason>();
  const keyOf = (...place: readonly (string | number)[]): string => place.join('\n');
  /** Of a formula's answer in the cell at `row` and `col`; empty where it is none of ours, or sound. */
  const answered = (services: Injector, place: Location, formulaAt: FormulaCell): string => {
    const { unitId, subUnitId, row, col } = place;
    const formulas = services.get(FormulaDataModel);
    const { startRow, startColumn } = formulaAt;
    const formula = formulas.getFormulaStringByCell(startRow, startColumn, subUnitId, unitId) ?? '';
    if (!callsOurs(formula)) return '';
    const bare = unquotedFraction(formula);
    if (bare !== undefined) return fault('function.fraction-unquoted', 'aLength', bare).message;
    const known = reasons.get(keyOf(unitId, subUnitId, startRow, startColumn));
    const cell = known?.cells[row - startRow]?.[col - startColumn];
    return cell instanceof GridError ? cell.message : '';
  };
  const reasonOf = (services: Injector, place: Location, shown: Shown): string => {
    const { row, col } = place;
    const ranges = services.get(FormulaDataModel).getArrayFormulaRange();
    for (const spill of spillsOver(ranges[place.unitId]?.[place.subUnitId], row, col)) {
      const { startRow, startColumn } = spill;
      if (shown(startRow, startColumn) === ErrorType.SPILL) {
        const blocked = sayBlocked(spill, shown);
        if (blocked !== '') return blocked;
        continue;
      }
      const said = answered(services, place, spill);
      if (said !== '') return said;
      // A row at fault has its error once, and blanks beside it.
      const first = { ...place, col: startColumn };
      const head = shown(row, col) === '' ? answered(services, first, spill) : '';
      if (head !== '') return `${cellName(row, startColumn)}: ${head}`;
    }
    const value = shown(row, col);
    return isError(value) ? answered(services, place, { startRow: row, startColumn: col }) : '';
  };
  return {
    note: ({ name, unitId, sheetId, row, column, cells }) => {
      const key = keyOf(unitId, sheetId, row, column);
      if (cells.flat().some((cell) => cell instanceof GridError)) reasons.set(key, { name, cells });
      // Of several functions in one formula another may have failed.
      else if (reasons.get(key)?.name === name) reasons.delete(key);
    },
    show: (services, shownOf) => {
      const alerts = services.get(CellAlertManagerService);
      const show = alerts.showAlert.bind(alerts);
      alerts.showAlert = (alert: ICellAlert) => {
        const { key, location } = alert;
        const reason = key === ALERT_KEY ? reasonOf(services, location, shownOf(location)) : '';
        show(reason === '' ? alert : { ...alert, message: reason });
      };
    },
    of: reasonOf,
  };
}

/** A cell of a sheet, its row and column from 0. */
export type Location = Pick<ICellAlert['location'], 'unitId' | 'subUnitId' | 'row' | 'col'>;
type FormulaCell = Pick<IRange, 'startRow' | 'startColumn'>;

/** As files and the grid itself show it: #N/A, #DIV/0!, #NAME?. */
const ERROR = /^#[A-Z/0-9]+[!?]?$/u;

export function isError(value: unknown): value is string {
  return typeof value === 'string' && ERROR.test(value);
}

/** Where the answers of formulas stand over a cell, or would stand. */
function spillsOver(
  ranges: Nullable<ConstructorParameters<typeof ObjectMatrix<Nullable<IRange>>>[0]>,
  row: number,
  column: number,
): IRange[] {
  const found: IRange[] = [];
  new ObjectMatrix<Nullable<IRange>>(ranges ?? {}).forValue((_, __, range) => {
    const isOver =
      range !== null &&
      range !== undefined &&
      range.startRow <= row &&
      row <= range.endRow &&
      range.startColumn <= column &&
      column <= range.endColumn;
    if (isOver) found.push(range);
  });
  return found;
}

/** More cells than these are not looked through for the one in the way. */
const MOST_LOOKED_AT = 10_000;

function sayBlocked(spill: IRange, shown: Shown): string {
  const { startRow, endRow, startColumn, endColumn } = spill;
  let left = MOST_LOOKED_AT;
  for (let row = startRow; row <= endRow; row++) {
    for (let column = startColumn; column <= endColumn; column++) {
      if (left-- === 0) return '';
      if (row === startRow && column === startColumn) continue;
      if ((shown(row, column) ?? '') === '') continue;
      const formula = cellName(startRow, startColumn);
      const until = `${formula}:${cellName(endRow, endColumn)}`;
      const details = { details: { until, cell: cellName(row, column) } };
      return fault('grid.spill-blocked', own(formula), null, details).message;
    }
  }
  return '';
}

/** `3 1/2` as a woodworker types it, where a text was meant. */
function unquotedFraction(formula: string): string | undefined {
  return /\d+\s+\d+\s*\/\s*\d+/u.exec(formula.replace(/"[^"]*"/gu, '""'))?.[0];
}
